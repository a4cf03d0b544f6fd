package org.hoopwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.geometry.Point;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.LengthUnit;
import org.junit.jupiter.api.Test;

class SizeRulesTest {

  private static List<Finding> rules(LayoutBuilder builder) {
    return Checker.layout(builder.at(java.util.Map.of()).build()).stream()
        .filter(f -> f.code() == FindingCode.RULE_SIZE)
        .toList();
  }

  private static List<String> pointers(LayoutBuilder builder) {
    return rules(builder).stream().map(Finding::pointer).toList();
  }

  private static LayoutBuilder frame(Game game, double length, double width) {
    return Willowbank.hundred()
        .game(game)
        .hoop(new Hoop.Superellipse(240, 180, 2))
        .frame(length, width);
  }

  private static LayoutBuilder hoop(Game game, double length, double width) {
    return Willowbank.hundred()
        .game(game)
        .frame(600, 215)
        .hoop(new Hoop.Superellipse(length, width, 2));
  }

  // source: ITF Rules of Tennis, Appendix II "The Racket": 73.7 cm x 31.7 cm overall, hitting
  // surface 39.4 cm x 29.2 cm
  @Test
  void tennis() {
    assertThat(pointers(frame(Game.TENNIS, 737, 317))).isEmpty();
    assertThat(pointers(frame(Game.TENNIS, 737.1, 317.1)))
        .containsExactly("/frame/length", "/frame/width");
    assertThat(pointers(hoop(Game.TENNIS, 394, 292))).isEmpty();
    assertThat(pointers(hoop(Game.TENNIS, 394.1, 292.1)))
        .containsExactly("/hoop/length", "/hoop/width");
    // The rule prints 12.5 in beside 31.7 cm, but SI takes precedence, and 12.5 in is 317.5 mm.
    Finding width =
        rules(
                Willowbank.hundred()
                    .units(LengthUnit.INCH)
                    .hoop(new Hoop.Superellipse(13, 9.75, 2))
                    .frame(29, 12.5))
            .get(0);
    assertThat(width.message())
        .isEqualTo("The frame's width (317.5 mm) is above 317 mm, the limit of the tennis rules.");
    assertThat(width.source()).contains("ITF Rules of Tennis, Appendix II \"The Racket\"");
  }

  // source: BWF Laws of Badminton, Law 4: 680 mm x 230 mm overall, stringed area 280 mm x 220 mm,
  // with an extension at most 35 mm wide 330 mm long
  @Test
  void badminton() {
    assertThat(pointers(frame(Game.BADMINTON, 680, 230))).isEmpty();
    assertThat(pointers(frame(Game.BADMINTON, 681, 231)))
        .containsExactly("/frame/length", "/frame/width");
    assertThat(pointers(hoop(Game.BADMINTON, 280, 220))).isEmpty();
    assertThat(pointers(hoop(Game.BADMINTON, 281, 221)))
        .as("an oval that is too long is also too wide for an extension")
        .containsExactly("/hoop/length", "/hoop/width");
    assertThat(rules(hoop(Game.BADMINTON, 281, 200)).get(0).source())
        .contains("BWF Laws of Badminton, Law 4");
    assertThat(pointers(drop(35, 330))).as("35 mm wide, 330 mm in all").isEmpty();
    assertThat(pointers(drop(35, 331))).containsExactly("/hoop/points");
    assertThat(pointers(drop(36, 330))).containsExactly("/hoop/points");
  }

  /** An oval with a narrow extension below it that begins 280 mm below the inside of the head. */
  private static LayoutBuilder drop(double extension, double length) {
    double top = length / 2;
    List<Point> right = new ArrayList<>();
    for (double[] at :
        new double[][] {
          {30, 0}, {80, 40}, {100, 120}, {80, 220}, {extension / 2, 280}, {extension / 2, length}
        }) {
      right.add(new Point(at[0], top - at[1]));
    }
    List<Point> all = new ArrayList<>(right);
    for (int i = right.size() - 1; i >= 0; i--) {
      all.add(right.get(i).mirrored());
    }
    return Willowbank.hundred().game(Game.BADMINTON).frame(670, 220).hoop(new Hoop.Points(all));
  }

  // source: WSF Rules of Squash, Appendix 9: 686 mm x 215 mm overall, strings 390 mm, strung area
  // 500 square centimetres
  @Test
  void squash() {
    assertThat(pointers(frame(Game.SQUASH, 686, 215))).isEmpty();
    assertThat(pointers(frame(Game.SQUASH, 686.5, 215.5)))
        .containsExactly("/frame/length", "/frame/width");
    assertThat(pointers(hoop(Game.SQUASH, 390, 160))).isEmpty();
    assertThat(pointers(hoop(Game.SQUASH, 390.5, 160))).containsExactly("/hoop/length");
    // An ellipse's area is a quarter of pi times both axes: 500 cm² at 318.31 mm x 200 mm.
    assertThat(pointers(hoop(Game.SQUASH, 318.30, 200))).isEmpty();
    assertThat(rules(hoop(Game.SQUASH, 318.32, 200)))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.pointer()).isEqualTo("/hoop");
              assertThat(f.message()).contains("500 cm²");
              assertThat(f.source())
                  .contains("WSF Rules of Squash, Appendix 9 \"Dimensions of a squash racket\"");
            });
  }

  // source: USA Racquetball Official Rules, Rule 2.4: 22 inches overall
  @Test
  void racquetball() {
    assertThat(pointers(frame(Game.RACQUETBALL, 558.8, 300))).isEmpty();
    assertThat(pointers(frame(Game.RACQUETBALL, 558.9, 300))).containsExactly("/frame/length");
    assertThat(rules(frame(Game.RACQUETBALL, 559, 300)).get(0).source())
        .contains("USA Racquetball Official Rules, Rule 2.4");
    LayoutBuilder inches =
        Willowbank.hundred()
            .game(Game.RACQUETBALL)
            .units(LengthUnit.INCH)
            .hoop(new Hoop.Superellipse(13, 9.75, 2))
            .frame(22, 10);
    assertThat(pointers(inches)).as("22 in to the last bit").isEmpty();
  }

  @Test
  void otherGamesHaveNoLimits() {
    assertThat(pointers(frame(Game.OTHER, 5000, 5000))).isEmpty();
  }

  @Test
  void withoutFrameOnlyTheHoopIsCompared() {
    LayoutBuilder noFrame =
        Layout.builder("Willowbank hoop")
            .game(Game.TENNIS)
            .hoop(new Hoop.Superellipse(400, 248, 2))
            .holes(18, 17)
            .mains(16)
            .crosses(19);
    assertThat(pointers(noFrame)).containsExactly("/hoop/length");
  }
}
