package org.hoopwright.patterns.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Route;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.HostileLayouts;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class DrawingTest {

  private static final String SCRIPT = "</title><script>alert(1)</script> & \" ' ]]> <!-- ";

  /** Made once: every test of all drawings looks at the same ones. */
  private static final Map<String, Drawing> ALL = all();

  static Stream<Arguments> drawings() {
    return ALL.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  private static Map<String, Drawing> all() {
    Map<String, Drawing> all = new LinkedHashMap<>();
    for (BenchPlan plan : SamplePlans.all()) {
      Bed bed = plan.bed();
      String name = bed.layout().name();
      all.put(name + ", layout", Drawing.layout(bed.layout()));
      all.put(name + ", bed", Drawing.bed(bed));
      DrawingOptions back = DrawingOptions.builder().back(true).build();
      all.put(name + ", bed from the back", Drawing.bed(bed, back));
      all.put(name + ", route", Drawing.route(bed, plan.route()));
      all.put(name + ", route from the back", Drawing.route(bed, plan.route(), back));
      int last = plan.steps().size();
      for (int step : new int[] {0, 9, last / 3, last / 2, last * 3 / 4, last}) {
        all.put(name + ", step " + step, Drawing.plan(plan, step));
      }
    }
    Layout bad =
        Willowbank.hundred().blocked("L7H", "R4T").mainsSkip("7H", "9H", "7T", "30T").build();
    all.put("findings", Drawing.layout(bad, withFindings(bad)));
    return all;
  }

  private static DrawingOptions withFindings(Layout layout) {
    List<Finding> findings = Checker.bed(layout, StatedAssignment::assign).findings();
    return DrawingOptions.builder().findings(findings).build();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void isWellFormedWithUniqueIds(String name, Drawing drawing) {
    Picture picture = Picture.read(drawing.svg());
    assertThat(picture.ids()).doesNotHaveDuplicates();
    assertThat(picture.byId("drawing-title").getTextContent()).isNotBlank();
    assertThat(picture.byId("drawing-desc").getTextContent()).isNotBlank();
    assertThat(picture.byId("drawing").getAttribute("aria-labelledby"))
        .isEqualTo("drawing-title drawing-desc");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void noTextOverlapsAnotherOrLeavesThePage(String name, Drawing drawing) {
    Picture picture = Picture.read(drawing.svg());
    assertThat(picture.texts()).hasSizeGreaterThan(10);
    assertThat(picture.textFaults()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void asksForNothingFromElsewhereAndHasNoScript(String name, Drawing drawing) {
    assertThat(drawing.svg().replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http", "url(", "@import", "<script", "href", "<image");
  }

  @Test
  void showsEveryHoleSpanRunAndKnotOnce() {
    for (BenchPlan plan : SamplePlans.all()) {
      Route route = plan.route();
      Bed bed = plan.bed();
      Picture picture = Picture.read(Drawing.plan(plan, plan.steps().size()).svg());
      for (Side side : Side.values()) {
        for (HoleId hole : bed.ring().list(side)) {
          picture.byId("hole-" + hole);
          picture.byId("name-" + hole);
        }
      }
      for (Span span : bed.spans()) {
        picture.byId("span-" + span.id());
        picture.byId("pass-" + span.id());
      }
      long ends = route.pieces().stream().mapToLong(p -> p.ends().size()).sum();
      assertThat(picture.ids().stream().filter(id -> id.matches("knot-[a-z]+")))
          .hasSize((int) ends);
      long passes =
          route.pieces().stream()
              .flatMap(p -> p.ends().stream())
              .mapToLong(e -> Math.max(1, e.passes().size()))
              .sum();
      // A run before every pass but an end's first, one to each knot, and the centre loop.
      assertThat(picture.ids().stream().filter(id -> id.startsWith("run-")))
          .hasSize((int) passes + 1);
    }
  }

  @Test
  void numbersPassesInTimeOrder() {
    BenchPlan plan = SamplePlans.of("willowbank-100");
    Picture picture = Picture.read(Drawing.route(plan.bed(), plan.route()).svg());
    List<String> numbers =
        plan.route().order().stream()
            .filter(m -> m.pass() >= 0)
            .map(m -> plan.route().end(m.end()).orElseThrow().passes().get(m.pass()).span())
            .map(span -> picture.byId("pass-" + span).getTextContent())
            .toList();
    assertThat(numbers).hasSize(35).first().isEqualTo("1");
    for (int i = 0; i < numbers.size(); i++) {
      assertThat(numbers.get(i)).isEqualTo(String.valueOf(i + 1));
    }
  }

  @Test
  void interruptsTheLowerStringAtEveryCrossing() {
    for (boolean back : new boolean[] {false, true}) {
      Bed bed = SamplePlans.of("willowbank-100").bed();
      Picture picture =
          Picture.read(Drawing.bed(bed, DrawingOptions.builder().back(back).build()).svg());
      for (Span span : bed.spans()) {
        long under =
            bed.crossings(span.id()).stream()
                .filter(c -> (span.id().isCross() == c.crossOver()) == back)
                .count();
        String d = picture.byId("span-" + span.id()).getAttribute("d");
        assertThat(d.chars().filter(c -> c == 'M').count() - 1)
            .as("%s", span.id())
            .isEqualTo(under);
      }
    }
  }

  @Test
  void turnsTheFrameOverForTheBack() {
    Bed bed = SamplePlans.of("willowbank-98-uneven").bed();
    Picture face = Picture.read(Drawing.bed(bed).svg());
    Picture back =
        Picture.read(Drawing.bed(bed, DrawingOptions.builder().back(true).build()).svg());
    List<Point> a = Picture.points(face.byId("span-X3"));
    List<Point> b = Picture.points(back.byId("span-X3"));
    assertThat(a.get(0).x()).isCloseTo(-b.get(0).x(), org.assertj.core.api.Assertions.within(0.2));
    assertThat(a.get(0).y()).isCloseTo(b.get(0).y(), org.assertj.core.api.Assertions.within(0.2));
  }

  @Test
  void laysRunsBesideEachOther() {
    for (BenchPlan plan : SamplePlans.all()) {
      Picture picture = Picture.read(Drawing.route(plan.bed(), plan.route()).svg());
      List<Element> runs =
          picture.elements("g").stream()
              .filter(g -> g.getAttribute("id").startsWith("run-"))
              .toList();
      List<List<Point>> lines =
          runs.stream()
              .map(g -> Picture.points((Element) g.getElementsByTagName("path").item(0)))
              .map(p -> p.subList(2, p.size() - 2))
              .toList();
      for (int i = 0; i < lines.size(); i++) {
        for (int j = i + 1; j < lines.size(); j++) {
          double nearest = Double.MAX_VALUE;
          for (Point p : lines.get(i)) {
            for (Point q : lines.get(j)) {
              nearest = Math.min(nearest, p.distanceTo(q));
            }
          }
          assertThat(nearest)
              .as("%s and %s", runs.get(i).getAttribute("id"), runs.get(j).getAttribute("id"))
              .isGreaterThan(4);
        }
      }
    }
  }

  @Test
  void tellsSpecialHolesApartByShapeAndWords() {
    Layout layout = SamplePlans.of("willowbank-100-worn").bed().layout();
    Picture picture = Picture.read(Drawing.layout(layout).svg());
    assertThat(picture.byId("hole-L11H").getElementsByTagName("rect").getLength()).isEqualTo(1);
    assertThat(picture.byId("hole-L10H").getElementsByTagName("circle").getLength()).isEqualTo(2);
    assertThat(picture.byId("hole-L8H").getElementsByTagName("path").getLength()).isEqualTo(1);
    assertThat(picture.byId("hole-L4H").getElementsByTagName("path").getLength()).isZero();
    assertThat(picture.texts().stream().map(Picture.Text::text))
        .contains("11H blocked", "10H shared", "8H tie-off", "4H");
    assertThat(picture.byId("hole-L11H").getTextContent()).isEqualTo("Hole L11H, blocked.");
  }

  @Test
  void marksFindingsAtTheirHolesAndListsThem() {
    Layout bad = Willowbank.hundred().blocked("L7H", "R4T").build();
    Picture picture = Picture.read(Drawing.layout(bad, withFindings(bad)).svg());
    assertThat(
            picture.elements("g").stream()
                .filter(g -> g.getAttribute("class").equals("finding error"))
                .map(Element::getTextContent))
        .anyMatch(t -> t.contains("error at L7H"))
        .anyMatch(t -> t.contains("error at R4T"));
    assertThat(picture.byId("finding-1-1").getTextContent()).startsWith("error: ");
  }

  @Test
  void aNameInjectsNothing() {
    String evil = SCRIPT + "\u202e\u0000\uD800\uFFFE" + "x".repeat(5000);
    Layout layout = Willowbank.teaching().build();
    Layout renamed =
        Layout.builder(evil)
            .hoop(layout.hoop())
            .holes(4, 4)
            .mains(4)
            .mainsSkip()
            .crosses(4)
            .build();
    Picture picture = Picture.read(Drawing.layout(renamed).svg());
    assertThat(picture.elements("script")).isEmpty();
    assertThat(picture.byId("drawing-title").getTextContent())
        .startsWith("</title><script>alert(1)</script>")
        .doesNotContain("\u202e")
        .hasSizeLessThan(200);
  }

  @Test
  void drawsAnyLayout() {
    for (int seed = 0; seed < 60; seed++) {
      Layout layout = HostileLayouts.of(Draw.from(seed));
      Picture picture = Picture.read(Drawing.layout(layout, withFindings(layout)).svg());
      assertThat(picture.ids()).as("seed %d", seed).doesNotHaveDuplicates();
      assertThat(picture.page().width()).as("seed %d", seed).isBetween(100.0, 6000.0);
    }
  }

  @Test
  void theSameDrawingHasTheSameBytesWhateverTheLocale() {
    BenchPlan plan = SamplePlans.of("willowbank-squash");
    String before = Drawing.plan(plan, 30).svg();
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(Drawing.plan(plan, 30).svg()).isEqualTo(before);
    } finally {
      Locale.setDefault(usual);
    }
  }

  @Test
  void showsOnlyWhatIsThereAtAStep() {
    BenchPlan plan = SamplePlans.of("willowbank-100");
    Picture start = Picture.read(Drawing.plan(plan, 0).svg());
    Picture end = Picture.read(Drawing.plan(plan, plan.steps().size()).svg());
    for (Span span : plan.bed().spans()) {
      assertThat(classes(start, "span-" + span.id())).contains("open");
      assertThat(classes(end, "span-" + span.id())).contains("pulled");
    }
    assertThat(end.ids()).noneMatch(id -> id.startsWith("clamp-"));
    assertThat(classes(end, "knot-long")).contains("laid");
    assertThat(classes(start, "knot-long")).contains("open");
  }

  private static List<String> classes(Picture picture, String id) {
    return List.of(picture.byId(id).getAttribute("class").split(" "));
  }

  @Test
  void refusesWhatCannotBeMeant() {
    BenchPlan plan = SamplePlans.of("willowbank-teaching");
    assertThatThrownBy(() -> Drawing.plan(plan, plan.steps().size() + 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be from 0 to " + plan.steps().size());
    assertThatThrownBy(() -> DrawingOptions.builder().widthMm(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("from 40 to 2000 mm");
    assertThatThrownBy(() -> DrawingOptions.builder().idPrefix("1\"><script>"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void severalDrawingsCanStandInOnePage() {
    Bed bed = SamplePlans.of("willowbank-teaching").bed();
    Drawing a = Drawing.bed(bed, DrawingOptions.builder().idPrefix("a-").build());
    Drawing b = Drawing.bed(bed, DrawingOptions.builder().idPrefix("b-").build());
    Picture page = Picture.read("<div>" + a.inline() + b.inline() + "</div>");
    assertThat(page.ids()).doesNotHaveDuplicates();
  }
}
