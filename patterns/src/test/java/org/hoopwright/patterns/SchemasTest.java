package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialects;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.Hoopwright;
import org.hoopwright.Plan;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.ClampUse;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.MachineClampKind;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.StringAtHand;
import org.hoopwright.bench.Tensioner;
import org.hoopwright.bench.WayOn;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.replay.Replay;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutDetails;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The schemas against our reader and writers, judged by another's validator. */
class SchemasTest {

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonReadFeature.ALLOW_JAVA_COMMENTS).build();

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          b ->
              b.schemas(
                  Map.of("https://hoopwright.org/schema/plan-1.schema.json", Schemas.plan())));

  private static final Schema LAYOUT = REGISTRY.getSchema(Schemas.layout(), InputFormat.JSON);
  private static final Schema PLAN = REGISTRY.getSchema(Schemas.plan(), InputFormat.JSON);

  private static final Schema WAYS = REGISTRY.getSchema(Schemas.ways(), InputFormat.JSON);

  private static List<Error> errors(String layout) {
    return LAYOUT.validate(JSON.readTree(layout));
  }

  private static ReadResult read(String text) {
    try {
      return LayoutReader.read("frame.json", text.getBytes(UTF_8));
    } catch (UnreadableFile e) {
      throw new AssertionError(text, e);
    }
  }

  static Stream<String> schemas() {
    return Stream.of(Schemas.layout(), Schemas.plan(), Schemas.ways());
  }

  @ParameterizedTest
  @MethodSource("schemas")
  void isASchemaOfItsDialect(String schema) {
    Schema meta = REGISTRY.getSchema(SchemaLocation.of(Dialects.getDraft202012().getId()));
    assertThat(meta.validate(JSON.readTree(schema))).isEmpty();
    assertThat(JSON.readTree(schema).get("title").asString()).contains("hoopwright/");
  }

  static Stream<String> samples() {
    return Samples.list().stream().map(Sample::name);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void acceptsEverySampleAndItsPlans(String name) {
    assertThat(errors(Samples.text(name))).isEmpty();
    Layout layout = Samples.layout(name);
    Plan plan = Hoopwright.plan(layout, Job.standard()).plan().orElseThrow();
    String text = PlanWriter.write(plan, Optional.of("0".repeat(64)));
    assertThat(PLAN.validate(JSON.readTree(text))).isEmpty();
    JsonNode all = JSON.readTree(PlanWriter.writeAll(List.of(plan), Optional.empty(), false));
    assertThat(PLAN.validate(all.get("plans").get(0))).isEmpty();
  }

  @Test
  void acceptsAPlanWithAllThatCanBeAskedFor() {
    Job job =
        Job.builder()
            .anchorMain(1)
            .anchorSide(Side.RIGHT)
            .backUp(ClampUse.ALWAYS)
            .thirdClamp(ClampUse.NEVER)
            .stringAtHand(StringAtHand.pack(6000, 5000))
            .bench(
                Bench.builder()
                    .clampLengthMm(13)
                    .clampDistanceMm(16)
                    .reachMm(250)
                    .machineClampKind(MachineClampKind.FLOATING)
                    .tensioner(Tensioner.DROP_WEIGHT)
                    .build())
            .build();
    Plan plan = Hoopwright.plan(Samples.layout("willowbank-100"), job).plan().orElseThrow();
    JsonNode tree = JSON.readTree(PlanWriter.write(plan, Optional.empty(), true));
    assertThat(PLAN.validate(tree)).isEmpty();
    assertThat(tree.get("forces").size()).isGreaterThan(50);
    for (String member :
        List.of(
            "anchorMain",
            "anchorSide",
            "backUp",
            "thirdClamp",
            "stringAtHand",
            "clamps",
            "tensioner",
            "reach")) {
      assertThat(tree.get("options").has(member)).as(member).isTrue();
      ((ObjectNode) tree.get("options")).put(member, "nonsense");
      assertThat(PLAN.validate(tree)).as(member).isNotEmpty();
      ((ObjectNode) tree.get("options")).remove(member);
    }
    assertThat(tree.get("forces").valueStream()).anyMatch(step -> step.has("together"));
    ((ObjectNode) tree.get("forces").get(3)).put("unheardOf", 1);
    assertThat(PLAN.validate(tree)).isNotEmpty();
  }

  /** Ways on of every kind: nothing undone, spans undone, a piece cut out, a tail bridged. */
  @ParameterizedTest
  @ValueSource(strings = {"willowbank-100", "willowbank-97", "willowbank-badminton"})
  void acceptsTheWaysOnOfHalfDoneJobs(String name) {
    ReadResult read = read(Samples.text(name));
    Plan plan = Hoopwright.plan(Samples.layout(name), Job.standard()).plan().orElseThrow();
    List<Step> steps = plan.bench().steps();
    Bed bed = plan.bench().bed();
    int tried = 0;
    for (int i = steps.size() / 2; i < steps.size() && tried < 3; i += 7) {
      HalfDone rest = HalfDone.after(plan.bench(), i);
      if (!Replay.check(bed, rest).isEmpty()) {
        i -= 6; // the tensioner pulls: one step on
        continue;
      }
      tried++;
      SpanId wrong = rest.passes().get(rest.passes().size() - 1).span();
      HalfDone misweaved =
          new HalfDone(rest.pieces(), rest.pulled(), rest.clamps(), List.of(wrong));
      for (HalfDone state : List.of(rest, misweaved)) {
        List<WayOn> ways = Hoopwright.waysOn(bed, state, bed, Job.standard(), 3);
        JsonNode tree = JSON.readTree(WaysWriter.write(read, Optional.of(read), ways));
        assertThat(WAYS.validate(tree)).isEmpty();
        List<ObjectNode> objects = new ArrayList<>();
        objects(tree.get("ways").get(0), objects);
        for (ObjectNode object : objects.subList(0, Math.min(60, objects.size()))) {
          object.put("unheardOf", 1);
          assertThat(WAYS.validate(tree)).as("%s", object).isNotEmpty();
          object.remove("unheardOf");
        }
      }
    }
    assertThat(tried).isEqualTo(3);
  }

  @Test
  void aPlanWithAMemberThatIsNoneIsRefused() {
    Plan plan =
        Hoopwright.plan(Samples.layout("willowbank-teaching"), Job.standard()).plan().orElseThrow();
    JsonNode tree = JSON.readTree(PlanWriter.write(plan, Optional.empty()));
    List<ObjectNode> objects = new ArrayList<>();
    objects(tree.get("route"), objects);
    objects(tree.get("pieces"), objects);
    objects(tree.get("steps"), objects);
    objects(tree.get("start"), objects);
    assertThat(objects).hasSizeGreaterThan(40);
    for (ObjectNode object : objects) {
      if (object.equals(tree.get("route").get("rank"))) {
        continue; // preferences have names of their own
      }
      object.put("unheardOf", "1");
      assertThat(PLAN.validate(tree)).as("%s", object).isNotEmpty();
      object.remove("unheardOf");
    }
    assertThat(PLAN.validate(tree)).isEmpty();
  }

  private static void objects(JsonNode node, List<ObjectNode> found) {
    if (node instanceof ObjectNode o) {
      found.add(o);
    }
    node.forEach(n -> objects(n, found));
  }

  static Stream<BrokenTexts.Broken> broken() {
    return BrokenTexts.all().stream();
  }

  /** What no schema can say: JSON itself, doubled members, long numbers, signs that hide. */
  private static final List<String> BEYOND =
      List.of("json-", "duplicate-member", "suspect-text", "half a character", "too near zero");

  @ParameterizedTest
  @MethodSource("broken")
  void refusesWhatTheReaderRefuses(BrokenTexts.Broken broken) {
    if (BEYOND.stream()
        .anyMatch(b -> broken.what().equals(b) || broken.expected().toString().contains(b))) {
      return;
    }
    assertThat(errors(broken.text())).isNotEmpty();
  }

  private static void agree(String text) {
    ReadResult result = read(text);
    boolean readable = !Findings.hasErrors(result.findings());
    List<Error> errors = errors(text);
    if (!readable) {
      assertThat(errors).as("the reader says %s of %s", result.findings(), text).isNotEmpty();
    } else if (result.layout().map(Checker::layout).filter(Findings::hasErrors).isEmpty()) {
      assertThat(errors).as("the reader reads %s", text).isEmpty();
    }
  }

  @Property(tries = 150)
  void acceptsWhatTheWriterWritesAndTheChecksPass(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    agree(LayoutWriter.write(LayoutDetails.any(draw).orElseThrow()));
    agree(LayoutWriter.write(StatedLayouts.any(seed)));
  }

  @Property(tries = 400)
  void agreesWithTheReaderOnFilesWithAChange(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    JsonNode tree =
        JSON.readTree(
            draw.chance(50)
                ? Samples.text(draw.oneOf(Samples.list()).name())
                : LayoutWriter.write(LayoutDetails.any(draw).orElseThrow()));
    for (int i = draw.between(1, 2); i > 0; i--) {
      change(draw, tree);
    }
    agree(tree.toString());
  }

  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "false",
          "0",
          "-1",
          "1",
          "2",
          "3",
          "4.0",
          "7",
          "10",
          "0.5",
          "501",
          "16.5",
          "1e3",
          "1e309",
          "12345678901",
          "\"\"",
          "\" \"",
          "\"x\"",
          "\"7H\"",
          "\"L7H\"",
          "\"R3T\"",
          "\"7h\"",
          "\"501H\"",
          "\"07H\"",
          "\"either\"",
          "\"left\"",
          "\"head\"",
          "\"mm\"",
          "\"points\"",
          "\"superellipse\"",
          "\"hoopwright/layout-1\"",
          "\"\\u0000\"",
          "\"\\u2003\"",
          "[]",
          "[1]",
          "[1, 2]",
          "[1, 2, 3]",
          "[\"7H\"]",
          "[\"7H\", \"R7H\"]",
          "[[1, 2]]",
          "[[\"5T\", \"6T\"]]",
          "{}",
          "{\"left\": 4, \"right\": 5}",
          "{\"left\": [1], \"right\": [2]}",
          "{\"head\": [1], \"throat\": [2]}",
          "{\"L7H\": 2}",
          "{\"7H\": [1, 2]}",
          "{\"x\": 1}");

  private static final List<String> NAMES =
      List.of(
          "$schema",
          "name",
          "count",
          "skip",
          "offsets",
          "first",
          "last",
          "left",
          "right",
          "head",
          "throat",
          "length",
          "width",
          "exponent",
          "points",
          "tieOff",
          "at",
          "bore",
          "noRun",
          "unit",
          "pieces",
          "headZone",
          "tension",
          "frame",
          "7H",
          "L1T",
          "colour",
          "");

  private static void change(Draw draw, JsonNode tree) {
    List<JsonNode> containers = new ArrayList<>();
    containers(tree, containers);
    JsonNode container = draw.oneOf(containers);
    JsonNode value = JSON.readTree(draw.oneOf(VALUES));
    if (container instanceof ObjectNode o) {
      List<String> names = new ArrayList<>(o.propertyNames());
      switch (draw.between(0, names.isEmpty() ? 0 : 3)) {
        case 0 -> o.set(draw.oneOf(NAMES), value);
        case 1 -> o.remove(draw.oneOf(names));
        case 2 -> {
          String name = draw.oneOf(names);
          JsonNode moved = o.remove(name);
          o.set(draw.oneOf(NAMES), moved);
        }
        default -> o.set(draw.oneOf(names), value);
      }
    } else if (container instanceof ArrayNode a) {
      switch (draw.between(0, a.isEmpty() ? 0 : 2)) {
        case 0 -> a.add(value);
        case 1 -> a.remove(draw.between(0, a.size() - 1));
        default -> a.set(draw.between(0, a.size() - 1), value);
      }
    }
  }

  private static void containers(JsonNode node, List<JsonNode> found) {
    if (node.isContainer()) {
      found.add(node);
      node.forEach(n -> containers(n, found));
    }
  }
}
