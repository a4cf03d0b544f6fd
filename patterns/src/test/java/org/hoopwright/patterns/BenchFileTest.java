package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialects;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchTest;
import org.hoopwright.bench.ClampRating;
import org.hoopwright.bench.JawDepth;
import org.hoopwright.bench.MachineClampKind;
import org.hoopwright.bench.Tensioner;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Severity;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.testing.Draw;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.json.JsonMapper;

/** Bench files: what they say is taken, and what is wrong is said where it is. */
class BenchFileTest {

  private static final StringSpec THIN = new StringSpec(Gauge.G18, Material.NYLON);

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonReadFeature.ALLOW_JAVA_COMMENTS).build();

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private static final Schema SCHEMA = REGISTRY.getSchema(Schemas.bench(), InputFormat.JSON);

  private static BenchResult read(String text) {
    try {
      return BenchReader.read("bench.json", text.getBytes(UTF_8));
    } catch (UnreadableFile e) {
      throw new AssertionError(text, e);
    }
  }

  private static Workbench sound(String text) {
    BenchResult result = read(text);
    assertThat(result.findings()).isEmpty();
    return result.workbench().orElseThrow();
  }

  private static String file(String members) {
    return "{\"format\": \"hoopwright/bench-1\", \"name\": \"Ours\"" + members + "}";
  }

  @Test
  void theBundledBenchIsRead() {
    Workbench bench = sound(Samples.bench());
    assertThat(bench.name()).isEqualTo("Willowbank workshop");
    assertThat(bench.bench().startingClamps()).isEqualTo(2);
    assertThat(bench.bench().reachMm()).isEqualTo(210);
    assertThat(bench.bench().leastDrawbackMm()).isEqualTo(0.3);
    assertThat(bench.bench().machineClampTests()).hasSize(4).contains(new BenchTest.Cleaned());
    ClampRating thin = bench.bench().machineClampRating(THIN);
    assertThat(thin.heldUpTo()).contains(Force.of(40, ForceUnit.POUND_FORCE));
    assertThat(thin.mustBeCleaned()).isFalse();
    assertThat(bench.bench().startingClampTests())
        .anyMatch(t -> t instanceof BenchTest.Pull p && p.depth() == JawDepth.TIP);
    Workbench.Stock hybrid = bench.string("hybrid").orElseThrow();
    assertThat(hybrid.mains().material()).isEqualTo(Material.POLYESTER);
    assertThat(hybrid.length().isPack()).isTrue();
    assertThat(hybrid.length().mainsMm()).isCloseTo(22 * 304.8, within(1e-9));
    assertThat(bench.string("set 18").orElseThrow().length().mainsMm())
        .isCloseTo(12192, within(1e-9));
    assertThat(bench.string("none")).isEqualTo(Optional.empty());
  }

  @Test
  void whatIsNotSaidIsTheDefault() {
    Bench bench = sound(file("")).bench();
    Bench usual = Bench.standard();
    assertThat(bench.machineClamps()).isEqualTo(usual.machineClamps());
    assertThat(bench.startingClamps()).isEqualTo(usual.startingClamps());
    assertThat(bench.reachMm()).isEqualTo(usual.reachMm());
    assertThat(bench.clampLengthMm()).isEqualTo(usual.clampLengthMm());
    assertThat(bench.mostDrawbackMm()).isEqualTo(usual.mostDrawbackMm());
    assertThat(bench.machineClampTests()).isEmpty();
  }

  @Test
  void everyMemberCounts() {
    Bench bench =
        sound(
                file(
                    ", \"units\": \"in\", \"clampLength\": 0.5, \"clampDistance\": 1, \"reach\": 9,"
                        + " \"tensioner\": \"lockout\", \"machineClamps\": {\"kind\": \"floating\","
                        + " \"count\": 3}, \"startingClamps\": {\"count\": 0}"))
            .bench();
    assertThat(bench.clampLengthMm()).isCloseTo(12.7, within(1e-9));
    assertThat(bench.clampDistanceMm()).isCloseTo(25.4, within(1e-9));
    assertThat(bench.reachMm()).isCloseTo(228.6, within(1e-9));
    assertThat(bench.tensioner()).isEqualTo(Tensioner.LOCKOUT);
    assertThat(bench.machineClampKind()).isEqualTo(MachineClampKind.FLOATING);
    assertThat(bench.machineClamps()).isEqualTo(3);
    assertThat(bench.startingClamps()).isZero();
    // A kind brings its own drawback, unless one is said.
    assertThat(bench.mostDrawbackMm()).isEqualTo(3.0);
    assertThat(bench.toBuilder().machineClampKind(MachineClampKind.FIXED).build().mostDrawbackMm())
        .isEqualTo(1.0);
  }

  @Test
  void everyFlawIsSaidAtItsPlace() {
    String text =
        """
        {
          // somebody's bench
          "format": "hoopwright/bench-1",
          "name": " ",
          "machineClamps": {
            "kind": "fixd", "count": 1, "drawback": [2, 1],
            "tests": [
              { "gauge": "18", "material": "nylon", "pull": 40, "result": "held" },
              { "gauge": "40", "material": "nilon", "pull": -3, "unit": "lbf", "result": "helt" },
              { "result": "cleaned", "pull": 5 } ] },
          "startingClamps": { "count": "2" },
          "reach": 5000,
          "tensionner": "lockout",
          "strings": [
            { "name": "a", "gauge": "16", "material": "nylon", "length": 0, "unit": "m" },
            { "name": "b", "mains": { "gauge": "16", "material": "nylon", "length": 6 },
              "length": 12, "unit": "m" } ]
        }
        """;
    BenchResult result = read(text);
    assertThat(result.workbench()).isEqualTo(Optional.empty());
    assertThat(result.findings())
        .extracting(f -> f.pointer() + " " + f.code())
        .contains(
            "/name " + FindingCode.WRONG_VALUE,
            "/machineClamps/kind " + FindingCode.WRONG_VALUE,
            "/machineClamps/count " + FindingCode.NUMBER_RANGE,
            "/machineClamps/drawback " + FindingCode.NUMBER_RANGE,
            "/machineClamps/tests/0/unit " + FindingCode.MISSING_MEMBER,
            "/machineClamps/tests/1/gauge " + FindingCode.WRONG_VALUE,
            "/machineClamps/tests/1/material " + FindingCode.WRONG_VALUE,
            "/machineClamps/tests/1/pull " + FindingCode.NUMBER_RANGE,
            "/machineClamps/tests/1/result " + FindingCode.WRONG_VALUE,
            "/machineClamps/tests/2/pull " + FindingCode.UNKNOWN_MEMBER,
            "/startingClamps/count " + FindingCode.WRONG_TYPE,
            "/reach " + FindingCode.NUMBER_RANGE,
            "/tensionner " + FindingCode.UNKNOWN_MEMBER,
            "/strings/0/length " + FindingCode.NUMBER_RANGE,
            "/strings/1/crosses " + FindingCode.MISSING_MEMBER,
            "/strings/1/length " + FindingCode.UNKNOWN_MEMBER);
    assertThat(result.findings()).allMatch(f -> f.severity() == Severity.ERROR);
    assertThat(result.findings()).allMatch(f -> f.place().isPresent());
    assertThat(result.findings()).extracting(Finding::fix).noneMatch(String::isEmpty);
    assertThat(result.findings().get(0).place().orElseThrow().line()).isEqualTo(4);
  }

  private static final String NYLON = "\"gauge\": \"16\", \"material\": \"nylon\"";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[]",
        "{\"format\": \"hoopwright/bench-2\", \"name\": \"Ours\"}",
        "{\"name\": \"Ours\"}",
        "{\"format\": \"hoopwright/bench-1\"}"
      })
  void whatIsNoBenchIsRefusedByBoth(String text) {
    assertThat(read(text).workbench()).isEqualTo(Optional.empty());
    assertThat(SCHEMA.validate(JSON.readTree(text))).isNotEmpty();
  }

  @Test
  void theSchemaAgreesWithTheReader() throws Exception {
    Schema meta = REGISTRY.getSchema(SchemaLocation.of(Dialects.getDraft202012().getId()));
    assertThat(meta.validate(JSON.readTree(Schemas.bench()))).isEmpty();
    assertThat(SCHEMA.validate(JSON.readTree(Samples.bench()))).isEmpty();
    String test = "\"pull\": 40, \"unit\": \"lbf\"";
    for (String good :
        List.of(
            "",
            ", \"machineClamps\": {}",
            ", \"machineClamps\": {\"drawback\": [0, 0], \"tests\": []}",
            ", \"startingClamps\": {\"tests\": [{"
                + NYLON
                + ","
                + test
                + ", \"result\": \"held\"}]}",
            ", \"strings\": [{\"name\": \"a\", \"unit\": \"m\", \"length\": 12," + NYLON + "}]")) {
      sound(file(good));
      assertThat(SCHEMA.validate(JSON.readTree(file(good)))).as(good).isEmpty();
    }
    for (String bad :
        List.of(
            ", \"reach\": -1",
            ", \"machineClamps\": {\"count\": 1}",
            ", \"machineClamps\": {\"count\": 10}",
            ", \"machineClamps\": {\"drawback\": [1]}",
            ", \"startingClamps\": {\"count\": 3}",
            ", \"startingClamps\": {\"kind\": \"fixed\"}",
            ", \"tensioner\": \"crank\"",
            ", \"clamp\": 3",
            ", \"startingClamps\": {\"tests\": [{" + NYLON + "," + test + "}]}",
            ", \"startingClamps\": {\"tests\": [{" + NYLON + ", \"result\": \"cleaned\"}]}",
            ", \"startingClamps\": {\"tests\": [{" + test + ", \"result\": \"held\"}]}",
            ", \"strings\": [{\"name\": \"a\", \"unit\": \"m\"}]",
            ", \"strings\": [{\"name\": \"a\", \"unit\": \"yd\", \"length\": 12," + NYLON + "}]")) {
      assertThat(read(file(bad)).workbench()).as(bad).isEqualTo(Optional.empty());
      assertThat(SCHEMA.validate(JSON.readTree(file(bad)))).as(bad).isNotEmpty();
    }
    String twice = "{\"name\": \"a\", \"unit\": \"m\", \"length\": 12," + NYLON + "}";
    assertThat(read(file(", \"strings\": [" + twice + "," + twice + "]")).findings())
        .extracting(Finding::message)
        .containsExactly("Two strings are named \"a\".");
    // The page that explains the format shows the bundled file.
    String page = Files.readString(Path.of("..", "docs", "bench-format.md"));
    assertThat(page).contains(Samples.bench().lines().skip(1).reduce((a, b) -> a + "\n" + b).get());
  }

  /** Whatever is left of a file, or put into it, it is read or refused with reasons. */
  @Property(tries = 400)
  void anyTextIsReadOrRefused(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    StringBuilder text = new StringBuilder(Samples.bench());
    for (int n = draw.between(1, 4); n > 0; n--) {
      int at = draw.between(0, text.length() - 1);
      switch (draw.between(0, 3)) {
        case 0 -> text.setLength(at + 1);
        case 1 -> text.deleteCharAt(at);
        case 2 -> text.insert(at, "{}[]\",:0-9e".charAt(draw.between(0, 10)));
        default -> text.replace(at, Math.min(text.length(), at + 6), "null");
      }
      if (text.isEmpty()) {
        return;
      }
    }
    BenchResult result = read(text.toString());
    assertThat(result.workbench().isEmpty())
        .isEqualTo(result.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR));
    assertThat(result.findings()).allMatch(f -> f.place().isPresent() && !f.fix().isEmpty());
  }
}
