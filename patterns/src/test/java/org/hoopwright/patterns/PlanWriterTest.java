package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hoopwright.Plan;
import org.hoopwright.bed.Span;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.route.Piece;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.StringEnd;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.Force;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanWriterTest {

  private static final double TENTH = 0.05 + 1e-9;

  static Stream<String> samples() {
    return Samples.list().stream().map(Sample::name);
  }

  private static Json written(Plan plan) {
    return Json.parse(PlanWriter.write(plan, Optional.empty()));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void parsesBackWithEverythingThePlanHas(String name) {
    Plan plan = Plans.best(Samples.layout(name), Job.standard());
    Json json = written(plan);

    assertThat(json.names())
        .containsExactly(
            "format",
            "layout",
            "options",
            "holes",
            "spans",
            "route",
            "pieces",
            "start",
            "weave",
            "steps",
            "estimates",
            "cautions",
            "findings");
    assertThat(json.at("format").text()).isEqualTo("hoopwright/plan-1");
    assertThat(json.at("layout", "name").text()).isEqualTo(plan.bench().bed().layout().name());
    holesAndSpans(plan, json);
    pieces(plan, json);
    weave(plan, json);
    steps(plan, json);
    assertThat(json.at("cautions").texts()).isEqualTo(plan.cautions());
    assertThat(json.at("findings").items()).hasSameSizeAs(plan.findings());
    assertThat(json.at("estimates", "spanTension").names())
        .hasSameSizeAs(plan.bench().bed().spans());
  }

  private static void holesAndSpans(Plan plan, Json json) {
    var positions = plan.bench().bed().positions();
    assertThat(json.at("holes").names())
        .containsExactlyElementsOf(positions.keySet().stream().map(Object::toString).toList());
    positions.forEach(
        (hole, p) -> {
          assertThat(json.at("holes", hole.toString(), 0).number()).isCloseTo(p.x(), within(TENTH));
          assertThat(json.at("holes", hole.toString(), 1).number()).isCloseTo(p.y(), within(TENTH));
        });
    List<Span> spans = plan.bench().bed().spans();
    for (int i = 0; i < spans.size(); i++) {
      Json span = json.at("spans", i);
      assertThat(span.names()).containsExactly("id", "from", "to", "length");
      assertThat(span.at("id").text()).isEqualTo(spans.get(i).id().toString());
      assertThat(span.at("from").text()).isEqualTo(spans.get(i).from().toString());
      assertThat(span.at("to").text()).isEqualTo(spans.get(i).to().toString());
      assertThat(span.at("length").number()).isCloseTo(spans.get(i).lengthMm(), within(TENTH));
    }
  }

  private static void pieces(Plan plan, Json json) {
    List<Piece> pieces = plan.bench().route().pieces();
    for (int i = 0; i < pieces.size(); i++) {
      Json piece = json.at("pieces", i);
      assertThat(piece.names()).containsExactly("role", "cutLength", "ends");
      assertThat(piece.at("role").text()).isEqualTo(pieces.get(i).role().word());
      for (int e = 0; e < 2; e++) {
        StringEnd end = pieces.get(i).ends().get(e);
        Json written = piece.at("ends", e);
        assertThat(written.at("name").text()).isEqualTo(end.name().word());
        assertThat(written.at("passes").items())
            .extracting(
                p -> p.at("span").text() + " " + p.at("from").text() + ">" + p.at("to").text())
            .containsExactlyElementsOf(end.passes().stream().map(Object::toString).toList());
        assertThat(written.at("finish").names()).containsExactly("kind", "hole", "anchor");
        assertThat(written.at("finish", "hole").text()).isEqualTo(end.finish().hole().toString());
        assertThat(written.at("finish", "anchor").text())
            .isEqualTo(end.finish().anchor().toString());
        assertThat(written.has("begin")).isEqualTo(end.startingClamp().isPresent());
        assertThat(written.at("length").names())
            .containsExactly("total", "spans", "runs", "frame", "knot", "reach", "stretch");
      }
    }
  }

  /** Where strings lie beside others is data of the route, and said where they are threaded. */
  @ParameterizedTest
  @MethodSource("samples")
  void saysHowRunsLieSideBySide(String name) {
    Json json = written(Plans.best(Samples.layout(name), Job.standard()));
    List<String> runs = json.at("route", "runs").items().stream().map(r -> text(r, "run")).toList();
    List<Json> steps = json.at("steps").items();
    assertThat(steps.stream().filter(s -> s.has("run")).map(s -> text(s, "run")))
        .isSubsetOf(runs)
        .containsAll(runs);
    for (Json run : json.at("route", "runs").items()) {
      List<String> beside = run.at("beside").texts();
      List<String> upon = run.at("upon").texts();
      assertThat(runs).containsAll(beside).containsAll(upon);
      List<String> say =
          steps.stream()
              .filter(s -> s.has("run") && text(s, "run").equals(text(run, "run")))
              .map(s -> text(s, "say"))
              .toList();
      assertThat(say)
          .allSatisfy(
              s -> {
                assertThat(s.contains(" it lies ")).isEqualTo(beside.size() + upon.size() > 0);
                assertThat(s.contains("lies upon the run")).isEqualTo(!upon.isEmpty());
                assertThat(s.contains("the " + text(run, "half") + " side of the run"))
                    .isEqualTo(!beside.isEmpty());
              });
    }
    for (Json hole : json.at("route", "sharedHoles").items()) {
      assertThat(hole.at("faceToBack").texts()).hasSizeGreaterThan(1).doesNotHaveDuplicates();
      assertThat(steps.stream().map(s -> text(s, "say")))
          .anyMatch(s -> s.contains(" In " + text(hole, "hole") + " it goes on the "));
    }
  }

  private static String text(Json json, String member) {
    return json.at(member).text();
  }

  private static void weave(Plan plan, Json json) {
    for (Span cross : plan.bench().bed().crosses()) {
      Json mains = json.at("weave", cross.id().toString());
      assertThat(mains.names())
          .containsExactlyElementsOf(
              plan.bench().bed().crossings(cross.id()).stream()
                  .map(c -> c.main().toString())
                  .toList());
      List<String> words = mains.names().stream().map(m -> mains.at(m).text()).toList();
      for (int i = 1; i < words.size(); i++) {
        assertThat(words.get(i)).isIn("over", "under").isNotEqualTo(words.get(i - 1));
      }
    }
    if (plan.bench().bed().meets(org.hoopwright.bed.SpanId.of("R1"), cross(1))) {
      assertThat(json.at("weave", "X1", "R1").text()).isEqualTo("over");
    }
  }

  private static org.hoopwright.bed.SpanId cross(int number) {
    return org.hoopwright.bed.SpanId.cross(number);
  }

  private static void steps(Plan plan, Json json) {
    List<Step> steps = plan.bench().steps();
    assertThat(json.at("steps").items()).hasSameSizeAs(steps);
    for (int i = 0; i < steps.size(); i++) {
      Json step = json.at("steps", i);
      assertThat(step.at("n").number()).isEqualTo(i + 1);
      assertThat(step.at("do").text()).isEqualTo(steps.get(i).word());
      assertThat(step.at("say").text()).isEqualTo(steps.get(i).say());
      List<String> names = new ArrayList<>(step.names());
      names.remove("run"); // only where runs meet, see saysHowRunsLieSideBySide
      assertThat(names).containsExactlyElementsOf(members(steps.get(i)));
    }
  }

  private static List<String> members(Step step) {
    String own =
        switch (step.word()) {
          case "cut" -> "piece length";
          case "lace", "weave" -> "span from to piece end";
          case "unlace" -> "span piece end";
          case "pull" -> "tails at tension";
          case "hold" -> "span at";
          case "set-clamp" -> "clamp span near distance side";
          case "free-clamp" -> "clamp";
          case "knot" -> "hole anchor kind piece end";
          case "trim" -> "piece end";
          case "release", "check" -> "";
          default -> throw new AssertionError(step.word());
        };
    return Stream.of("n do " + own + " say").flatMap(s -> Stream.of(s.split(" +"))).toList();
  }

  @Test
  void coversHolesAsTheRouteSays() {
    Plan plan = Plans.best(Willowbank.hundred().build(), Plans.pieces(1));
    Json route = written(plan).at("route");

    assertThat(route.names())
        .containsExactly(
            "family",
            "mainsStart",
            "direction",
            "shortSide",
            "rank",
            "why",
            "covered",
            "runs",
            "sharedHoles");
    assertThat(plan.bench().route().measures().coveredHoles()).isNotEmpty();
    assertThat(route.at("covered").items())
        .extracting(c -> c.at("hole").text() + c.at("for").text() + c.at("keepOpen").text())
        .containsExactlyElementsOf(
            plan.bench().route().measures().coveredHoles().stream()
                .map(c -> "" + c.hole() + c.span() + c.keepOpen().word())
                .toList());
    assertThat(route.at("rank").names())
        .containsExactly(
            "direction", "departures", "covered", "doubled", "knots", "longestRun", "string");
    assertThat(route.at("rank", "knots").number()).isEqualTo(2);
  }

  @Test
  void ranksByTheMakersWishesWhereThereAreAny() {
    Layout layout = Willowbank.hundred().pieces(2).build();
    Json rank = written(Plans.best(layout, Job.standard())).at("route", "rank");

    assertThat(rank.names()).startsWith("maker", "direction");
    assertThat(rank.at("maker").number()).isZero();
  }

  @Test
  void statesTheUsualOptionsInTheirOrder() {
    Json options = written(Plans.best(Willowbank.hundred().build(), Job.standard())).at("options");

    assertThat(options.names())
        .containsExactly(
            "pieces",
            "mainsTension",
            "crossesTension",
            "lastPullExtra",
            "runLimit",
            "knotLimit",
            "leadLimit",
            "machineClamps",
            "startingClamps",
            "gauge",
            "material");
    assertThat(options.at("pieces").text()).isEqualTo("either");
    assertThat(options.at("mainsTension").number()).isEqualTo(244.7);
    assertThat(options.at("gauge").text()).isEqualTo("16");
  }

  @Test
  void statesEverythingThatWasAskedFor() {
    Job job =
        Job.builder()
            .routes(
                RouteRequest.builder()
                    .pieces(2)
                    .direction(Direction.HEAD_TO_THROAT)
                    .mainsStart(End.THROAT)
                    .runLimit(5)
                    .knotLimit(7)
                    .build())
            .mainsTension(Force.ofNewtons(230))
            .crossesTension(Force.ofNewtons(220))
            .lastPullExtra(Force.ofNewtons(9.04))
            .strings(
                new StringSpec(Gauge.G17, Material.POLYESTER),
                new StringSpec(Gauge.G16, Material.NATURAL_GUT))
            .leadLimit(3)
            .startMethod(StartMethod.ANCHOR_MAIN)
            .anchorSide(Side.LEFT)
            .clampInHeadZoneAllowed(true)
            .bench(
                Bench.builder()
                    .startingClamps(2)
                    .clampLengthMm(13)
                    .clampDistanceMm(14)
                    .reachMm(240)
                    .build())
            .build();
    Json options = written(Plans.best(Willowbank.hundred().build(), job)).at("options");

    assertThat(options.at("pieces").number()).isEqualTo(2);
    assertThat(options.at("mainsTension").number()).isEqualTo(230);
    assertThat(options.at("crossesTension").number()).isEqualTo(220);
    assertThat(options.at("lastPullExtra").number()).isEqualTo(9);
    assertThat(options.at("gauge").names()).containsExactly("mains", "crosses");
    assertThat(options.at("gauge", "mains").text()).isEqualTo("17");
    assertThat(options.at("material", "crosses").text()).isEqualTo("natural-gut");
    assertThat(options.names())
        .endsWith(
            "direction",
            "mainsStart",
            "start",
            "anchorSide",
            "clampInHeadZone",
            "clampLength",
            "clampDistance",
            "reach");
    assertThat(options.at("start").text()).isEqualTo("anchor-main");
    assertThat(options.at("anchorSide").text()).isEqualTo("left");
  }

  @Test
  void statesTheLayoutFileOnlyWhenThereIsOne() {
    Plan plan = Plans.best(Willowbank.teaching().build(), Job.standard());

    assertThat(written(plan).at("layout").names()).containsExactly("name");
    assertThat(
            Json.parse(PlanWriter.write(plan, Optional.of("ab12"))).at("layout", "sha256").text())
        .isEqualTo("ab12");
  }

  @Test
  void writesSeveralPlansWithOrWithoutSteps() {
    Plan plan = Plans.best(Willowbank.teaching().build(), Job.standard());
    Json bare =
        Json.parse(PlanWriter.writeAll(List.of(plan, plan), Optional.empty(), /* steps= */ false));
    Json full =
        Json.parse(PlanWriter.writeAll(List.of(plan, plan), Optional.empty(), /* steps= */ true));

    assertThat(bare.names()).containsExactly("plans");
    assertThat(bare.at("plans").items()).hasSize(2).noneMatch(p -> p.has("steps"));
    assertThat(full.at("plans").items()).hasSize(2).allMatch(p -> p.has("steps"));
    assertThat(full.at("plans", 1).value()).isEqualTo(written(plan).value());
    assertThat(PlanWriter.writeAll(List.of(), Optional.empty(), /* steps= */ true))
        .isEqualTo("{\n  \"plans\": []\n}\n");
  }

  @Test
  void indentsByTwoAndEndsEveryLineAlike() {
    String text =
        PlanWriter.write(
            Plans.best(Willowbank.hundred().build(), Job.standard()), Optional.empty());

    assertThat(text)
        .startsWith("{\n  \"format\": \"hoopwright/plan-1\",\n  \"layout\": { \"name\":");
    assertThat(text).endsWith("}\n").doesNotContain("\r").doesNotContain("\t");
    assertThat(text.lines())
        .noneMatch(l -> l.endsWith(" "))
        .contains("    \"L1H\": [-5.1, 164.9],");
  }

  @Test
  void escapesWhatDoesNotShow() {
    String name = "A\u001b[31m\"\\\n\u202e\u2028\u00e9\uD83C\uDFBE";
    String text =
        PlanWriter.write(
            Plans.best(renamed(Willowbank.teaching().build(), name), Job.standard()),
            Optional.empty());

    assertThat(text).contains("\"A\\u001b[31m\\\"\\\\\\n\\u202e\\u2028\u00e9\uD83C\uDFBE\"");
    assertThat(Json.parse(text).at("layout", "name").text()).isEqualTo(name);
  }

  static Layout renamed(Layout layout, String name) {
    return Layout.builder(name)
        .hoop(layout.hoop())
        .holes(layout.headHoles(), layout.throatHoles())
        .tieOff(layout.tieOff())
        .mains(layout.mainsCount())
        .mainsSkip(layout.mainsSkip())
        .crosses(layout.crossesCount())
        .build();
  }
}
