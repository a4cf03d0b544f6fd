package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.HostileLayouts;
import org.hoopwright.testing.LayoutArbitraries;
import org.hoopwright.testing.LayoutDetails;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutWriterTest {

  private static ReadResult read(String text) {
    try {
      return LayoutReader.read("frame.json", text.getBytes(UTF_8));
    } catch (UnreadableFile e) {
      throw new AssertionError(text, e);
    }
  }

  private static void comesBack(Layout layout) {
    String text = LayoutWriter.write(layout);
    ReadResult result = read(text);
    assertThat(result.layout()).as("%s of %s", result.findings(), text).contains(layout);
    assertThat(LayoutWriter.write(result.layout().orElseThrow())).isEqualTo(text);
  }

  @Property(tries = 200)
  @Domain(LayoutArbitraries.class)
  void readingWhatWasWrittenGivesTheSameLayout(@ForAll Layout layout) {
    comesBack(layout);
  }

  /** Its outermost mains have holes nearer the axis than those beside them. */
  @Test
  void andSoForMainsPastTheWidestPart() {
    andSoForLayoutsThatSayEverything(-38);
  }

  @Property(tries = 300)
  void andSoForLayoutsThatSayEverything(@ForAll long seed) {
    Layout layout = LayoutDetails.any(Draw.from(seed)).orElseThrow();
    assertThat(Checker.layout(layout)).noneMatch(f -> f.severity() == Severity.ERROR);
    comesBack(layout);
  }

  @Property(tries = 300)
  void andSoForEveryWayToSayThings(@ForAll long seed) {
    comesBack(StatedLayouts.any(seed));
  }

  /**
   * Files are text: a wrong layout can be written too, or the writer says why no file can say it.
   */
  @Property(tries = 500)
  void wrongLayoutsComeBackOrAreRefusedWithAReason(@ForAll long seed) {
    Layout layout = HostileLayouts.of(Draw.from(seed));
    String text;
    try {
      text = LayoutWriter.write(layout);
    } catch (IllegalArgumentException e) {
      assertThat(e).hasMessageContaining("must be").hasMessageContaining("\nMaybe ");
      return;
    }
    ReadResult result = read(text);
    assertThat(result.findings()).as(text).isEmpty();
    assertThat(LayoutWriter.write(result.layout().orElseThrow())).isEqualTo(text);
  }

  static Stream<String> samples() {
    return Samples.list().stream().map(Sample::name);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void aSampleIsWrittenTheSameHoweverOftenItIsRead(String name) {
    Layout layout = Samples.layout(name);
    comesBack(layout);
    assertThat(LayoutWriter.write(layout)).doesNotContain("//").endsWith("}\n");
  }

  @Test
  void writesInOneForm() {
    Layout layout =
        Layout.builder("Willowbank teaching frame")
            .hoop(new Hoop.Superellipse(120, 100, 2))
            .holes(4, 5)
            .tieOff("1H", "L1T")
            .mains(4)
            .mainsSkip()
            .mainsOffsets(
                new EachSide<>(
                    StringOffsets.Mains.parallel(List.of(5.0, 15.5)),
                    new StringOffsets.Mains(List.of(5.0, 15.5), List.of(-0.0, 1e-7))))
            .crosses(4)
            .crossesFirst(new EachSide<>(HoleId.of("L3H"), HoleId.of("R3H")))
            .crossesLast(new EachSide<>(HoleId.of("L3T"), HoleId.of("R4T")))
            .pieces(2)
            .shortSide(Side.RIGHT)
            .aroundTheWorld(false)
            .noRun("1H", "2H")
            .build();
    assertThat(LayoutWriter.write(layout))
        .isEqualTo(
            """
            {
              "format": "hoopwright/layout-1",
              "name": "Willowbank teaching frame",
              "hoop": { "shape": "superellipse", "length": 120, "width": 100 },
              "holes": { "head": 4, "throat": 5, "tieOff": ["1H", "L1T"], "noRun": [["1H", "2H"]] },
              "mains": {
                "count": 4,
                "skip": [],
                "offsets": { "left": [5, 15.5], "right": { "head": [5, 15.5], "throat": [0, 0.0000001] } },
                "shortSide": "right"
              },
              "crosses": { "count": 4, "first": "3H", "last": ["L3T", "R4T"] },
              "pieces": 2,
              "aroundTheWorld": false
            }
            """);
  }

  @Test
  void inAListANameWithoutSideIsThatOfItsPlace() {
    String text =
        LayoutWriter.write(Samples.layout("willowbank-teaching"))
            .replace("\"crosses\": {", "\"headZone\": [\"2H\", \"R1H\"], \"crosses\": {");
    assertThat(read(text).layout().flatMap(Layout::headZone))
        .contains(new EachSide<>(HoleId.of("L2H"), HoleId.of("R1H")));
  }

  @Test
  void refusesWhatNoFileCanSay() {
    Layout layout = Samples.layout("willowbank-teaching");
    assertThatThrownBy(() -> LayoutWriter.write(layout.toBuilder().frame(1, 1 / 0.0).build()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Infinity");
    assertThatThrownBy(() -> LayoutWriter.write(layout.toBuilder().pieces(3).build()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("(3)");
    for (String name : List.of("a\nb", "\ud800", "w".repeat(10_001))) {
      Layout named =
          Layout.builder(name)
              .hoop(layout.hoop())
              .holes(layout.headHoles(), layout.throatHoles())
              .mains(4)
              .crosses(4)
              .build();
      assertThatThrownBy(() -> LayoutWriter.write(named))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("name");
    }
  }
}
