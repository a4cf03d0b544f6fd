package org.hoopwright.patterns;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.hoopwright.bed.HolePositions;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.check.CheckReport;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.Layout;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * What reading and checking a layout file costs, beside a general tree of the same bytes made by
 * the library whose parser it uses. Only the ratios of one run mean anything.
 *
 * <p>The file is that of a 22 x 21 frame in which every hole has its coordinates, printed with one
 * value a line, 5 kB.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class LayoutReadBenchmark {

  private final JsonMapper mapper =
      JsonMapper.builder().enable(JsonReadFeature.ALLOW_JAVA_COMMENTS).build();

  private byte[] file = new byte[0];

  /** Writes the file and makes sure that there is nothing wrong with it. */
  @Setup
  public void write() throws UnreadableFile {
    Layout layout = Samples.layout("willowbank-badminton");
    Map<String, Object> at = new LinkedHashMap<>();
    HolePositions.of(layout)
        .points()
        .forEach((hole, p) -> at.put(hole.toString(), List.of(round(p.x()), round(p.y()))));
    // Its mains stand in equal arcs, which a governing body might not like.
    ObjectNode tree = (ObjectNode) mapper.readTree(LayoutWriter.write(layout));
    ((ObjectNode) tree.get("holes")).set("at", mapper.valueToTree(at));
    tree.remove("game");
    file =
        mapper
            .writer()
            .with(
                new DefaultPrettyPrinter()
                    .withArrayIndenter(DefaultIndenter.SYSTEM_LINEFEED_INSTANCE))
            .writeValueAsString(tree)
            .getBytes(StandardCharsets.UTF_8);
    List<Finding> findings = check().findings();
    if (file.length < 5000 || !findings.isEmpty()) {
      throw new IllegalStateException(file.length + " bytes, " + findings);
    }
  }

  private static double round(double mm) {
    return Double.parseDouble(String.format(Locale.ROOT, "%.2f", mm));
  }

  /** The general tree of these bytes. */
  @Benchmark
  public JsonNode tree() {
    return mapper.readTree(file);
  }

  /** The layout, with all that the file's text and structure may have wrong. */
  @Benchmark
  public ReadResult read() throws UnreadableFile {
    return LayoutReader.read("frame.json", file);
  }

  /** The layout, checked by every rule but those that need its routes. */
  @Benchmark
  public List<Finding> readAndCheckLayout() throws UnreadableFile {
    Draft draft = LayoutReader.read("frame.json", file).draft().orElseThrow();
    return Checker.bed(draft.layout(), StatedAssignment::assign).findings();
  }

  /** As the command does it: with its routes. */
  @Benchmark
  public CheckReport check() throws UnreadableFile {
    return LayoutReader.read("frame.json", file).report();
  }
}
