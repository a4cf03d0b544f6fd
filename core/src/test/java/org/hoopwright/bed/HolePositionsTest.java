package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.LengthUnit;
import org.junit.jupiter.api.Test;

class HolePositionsTest {

  private static Point at(HolePositions positions, String hole) {
    return positions.points().getOrDefault(HoleId.of(hole), new Point(1e6, 1e6));
  }

  private static List<String> codes(HolePositions positions) {
    return positions.findings().stream()
        .map(f -> f.code().code() + " " + f.pointer() + " " + f.about())
        .toList();
  }

  private static Layout teaching(Map<String, Point> at) {
    Map<HoleRef, Point> refs = new java.util.LinkedHashMap<>();
    at.forEach((name, p) -> refs.put(HoleRef.of(name), p));
    return Willowbank.teaching().at(refs).build();
  }

  /** Positions of a variant of the example frame under the labels that its skip rules state. */
  private static HolePositions stated(LayoutBuilder builder) {
    Bed plain = StatedAssignment.assign(Willowbank.hundred().build()).bed().orElseThrow();
    return HolePositions.of(builder.build(), plain.labels());
  }

  @Property(tries = 100)
  void holesShareEachHalfInEqualArcs(
      @ForAll @DoubleRange(min = 100, max = 400) double length,
      @ForAll @DoubleRange(min = 100, max = 300) double width,
      @ForAll @DoubleRange(min = 1.5, max = 4) double exponent,
      @ForAll @IntRange(min = 2, max = 40) int left,
      @ForAll @IntRange(min = 2, max = 40) int right) {
    Layout layout =
        Willowbank.teaching()
            .hoop(new Hoop.Superellipse(length, width, exponent))
            .holes(
                new EachSide<>(left / 2, right / 2),
                new EachSide<>(left - left / 2, right - right / 2))
            .tieOff()
            .build();
    HolePositions positions = HolePositions.of(layout);
    Outline outline = HoopOutline.of(layout).outline().orElseThrow();
    for (Side side : Side.values()) {
      int count = side == Side.LEFT ? left : right;
      double half = outline.halfLengthMm(side);
      List<Double> arcs = new ArrayList<>();
      for (HoleId hole : org.hoopwright.frame.Ring.of(layout).list(side)) {
        arcs.add(outline.arcOf(side, at(positions, hole.toString())));
      }
      for (int i = 0; i < count; i++) {
        double before = i == 0 ? -arcs.get(0) : arcs.get(i - 1); // mirrored in the axis point
        assertThat(arcs.get(i) - before).isCloseTo(half / count, within(1e-4));
      }
      assertThat(2 * (half - arcs.get(count - 1))).isCloseTo(half / count, within(1e-4));
    }
    assertThat(positions.findings()).isEmpty();
  }

  @Test
  void aCircleHasItsHolesAtEqualAngles() {
    Layout layout = Willowbank.teaching().hoop(new Hoop.Superellipse(200, 200, 2)).build();
    HolePositions positions = HolePositions.of(layout);
    for (int i = 0; i < 4; i++) {
      double angle = Math.PI * (2 * i + 1) / 16;
      Point right = at(positions, "R" + (i + 1) + "H");
      assertThat(right.x()).isCloseTo(100 * Math.sin(angle), within(1e-6));
      assertThat(right.y()).isCloseTo(100 * Math.cos(angle), within(1e-6));
      assertThat(at(positions, "L" + (i + 1) + "H")).isEqualTo(right.mirrored());
      Point low = at(positions, "R" + (i + 1) + "T");
      assertThat(low.y()).isCloseTo(-right.y(), within(1e-6));
    }
  }

  @Test
  void coordinatesComeFirstAndMoveNoOtherHole() {
    HolePositions plain = HolePositions.of(teaching(Map.of()));
    HolePositions moved =
        HolePositions.of(teaching(Map.of("2H", new Point(21, 53), "L1T", new Point(-8, -59))));
    assertThat(at(moved, "R2H")).isEqualTo(new Point(21, 53));
    assertThat(at(moved, "L2H")).isEqualTo(new Point(-21, 53));
    assertThat(at(moved, "L1T")).isEqualTo(new Point(-8, -59));
    assertThat(moved.findings()).isEmpty();
    plain
        .points()
        .forEach(
            (hole, p) -> {
              if (!List.of("L2H", "R2H", "L1T").contains(hole.toString())) {
                assertThat(at(moved, hole.toString())).isEqualTo(p);
              }
            });
  }

  @Test
  void theLaterOfTwoNamesCounts() {
    Map<String, Point> names = new java.util.LinkedHashMap<>();
    names.put("L2H", new Point(-20, 54));
    names.put("2H", new Point(22, 53));
    assertThat(at(HolePositions.of(teaching(names)), "L2H")).isEqualTo(new Point(-22, 53));
  }

  @Test
  void inchesAreTheSamePlaces() {
    Layout inches =
        Willowbank.teaching()
            .units(LengthUnit.INCH)
            .hoop(new Hoop.Superellipse(120 / 25.4, 100 / 25.4, 2))
            .at(Map.of(HoleRef.of("2H"), new Point(21 / 25.4, 53 / 25.4)))
            .build();
    HolePositions mm = HolePositions.of(teaching(Map.of("2H", new Point(21, 53))));
    HolePositions in = HolePositions.of(inches);
    mm.points()
        .forEach((hole, p) -> assertThat(at(in, hole.toString()).distanceTo(p)).isLessThan(1e-9));
  }

  private static final List<Double> MAINS = List.of(5.5, 17.0, 28.5, 40.0, 52.0, 64.0, 78.0, 92.0);

  private static final List<Double> CROSSES =
      List.of(
          24.0, 45.0, 66.0, 84.0, 99.0, 112.0, 125.0, 137.5, 150.0, 162.5, 175.0, 187.5, 200.0,
          213.0, 227.0, 243.0, 260.0, 282.0, 305.0);

  @Test
  void offsetsPutStringsOnTheOutline() {
    HolePositions positions =
        stated(
            Willowbank.hundred()
                .mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(MAINS)))
                .crossesOffsets(EachSide.both(new StringOffsets.Crosses(CROSSES))));
    Outline outline = HoopOutline.of(Willowbank.hundred().build()).outline().orElseThrow();
    assertThat(at(positions, "R8H").x()).isEqualTo(78.0); // main 7, because 7H is skipped
    assertThat(at(positions, "L10T").x()).isEqualTo(-92.0);
    assertThat(at(positions, "L7H").y()).isEqualTo(165 - 24.0); // X1
    assertThat(at(positions, "R7T").y()).isEqualTo(165 - 305.0); // X19
    assertThat(at(positions, "L1H"))
        .as("its coordinates come first")
        .isEqualTo(new Point(-5.1, 164.9));
    positions.points().forEach((hole, p) -> assertThat(outline.distanceTo(p)).isBetween(-1.0, 1.0));
  }

  @Test
  void mainsMayFanOut() {
    List<Double> narrow = MAINS.stream().map(x -> x * 0.8).toList();
    HolePositions positions =
        stated(
            Willowbank.hundred()
                .mainsOffsets(
                    new EachSide<>(
                        new StringOffsets.Mains(MAINS, narrow),
                        StringOffsets.Mains.parallel(MAINS))));
    assertThat(at(positions, "L2H").x()).isEqualTo(-17.0);
    assertThat(at(positions, "L2T").x()).isEqualTo(-17.0 * 0.8);
    assertThat(at(positions, "R2T").x()).isEqualTo(17.0);
  }

  @Test
  void offsetsOutsideTheHoopAreFindings() {
    List<Double> wide = new ArrayList<>(MAINS);
    wide.set(7, 125.0);
    List<Double> deep = new ArrayList<>(CROSSES);
    deep.set(18, 331.0);
    HolePositions positions =
        stated(
            Willowbank.hundred()
                .mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(wide)))
                .crossesOffsets(
                    new EachSide<>(
                        new StringOffsets.Crosses(CROSSES), new StringOffsets.Crosses(deep))));
    assertThat(codes(positions))
        .contains(
            "offset-outside /mains/offsets/7 [L8, L10H]",
            "offset-outside /mains/offsets/7 [R8, R10T]",
            "offset-outside /crosses/offsets/right/18 [X19, R7T]");
    assertThat(positions.points()).as("the arc law stands in").hasSize(70);
  }

  @Test
  void aSharedHoleTakesTheMainsOffset() {
    // R4H and L4H carry main 4 and cross 1; main 4's offset puts it 9.7 mm below the inside of the
    // head.
    List<Double> mains = List.of(5.0, 20.0, 34.0, 45.0);
    LayoutBuilder builder =
        Layout.builder("Willowbank shared")
            .hoop(new Hoop.Superellipse(330, 248, 2.1))
            .holes(6, 6)
            .shared("4H")
            .mains(8)
            .mainsSkip()
            .crosses(5)
            .mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(mains)));
    Layout near =
        builder
            .crossesOffsets(
                EachSide.both(new StringOffsets.Crosses(List.of(10.0, 60.0, 120.0, 200.0, 270.0))))
            .build();
    Layout far =
        builder
            .crossesOffsets(
                EachSide.both(new StringOffsets.Crosses(List.of(13.5, 60.0, 120.0, 200.0, 270.0))))
            .build();
    Assignment assigned = StatedAssignment.assign(near);
    assertThat(assigned.findings()).isEmpty();
    Bed bed = assigned.bed().orElseThrow();
    assertThat(bed.labels().left().get(3)).isEqualTo(HoleLabel.BOTH);
    assertThat(bed.position(HoleId.of("R4H")).x()).isEqualTo(45.0);
    assertThat(codes(HolePositions.of(far, bed.labels())))
        .containsExactly(
            "offsets-differ /crosses/offsets/0 [L4H]", "offsets-differ /crosses/offsets/0 [R4H]");
  }

  @Test
  void orderAlongTheOutlineIsChecked() {
    assertThat(codes(HolePositions.of(teaching(Map.of("L3H", new Point(-15, 57))))))
        .containsExactly("hole-order /holes/at/L3H [L2H, L3H]");
    assertThat(codes(HolePositions.of(teaching(Map.of("R3H", new Point(50, -3))))))
        .containsExactly("hole-order /holes/at/R3H [R3H, R4H]");
    assertThat(
            codes(
                HolePositions.of(
                    teaching(Map.of("R3H", new Point(49, 8), "R4H", new Point(49, 8))))))
        .as("two holes at one place")
        .containsExactly("hole-order /holes/at/R4H [R3H, R4H]");
    HolePositions offsets =
        stated(
            Willowbank.hundred()
                .mainsOffsets(
                    EachSide.both(
                        StringOffsets.Mains.parallel(
                            List.of(5.5, 17.0, 28.5, 40.0, 52.0, 64.0, 92.0, 110.0)))));
    assertThat(codes(offsets)).contains("hole-order /mains/offsets/7 [L10H, L11H]");
  }

  @Test
  void withoutOutlineThereAreNoPositions() {
    Layout layout = Willowbank.teaching().hoop(new Hoop.Superellipse(0, 100, 2)).build();
    HolePositions positions = HolePositions.of(layout);
    assertThat(positions.points()).isEmpty();
    assertThat(codes(positions)).as("a rule reports the hoop").isEmpty();
  }

  @Test
  void labelsOfAnotherFrameAreRefused() {
    Layout layout = Willowbank.teaching().build();
    Labels labels = new Labels(List.of(HoleLabel.MAIN), List.of());
    assertThatThrownBy(() -> HolePositions.of(layout, labels))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("left side (1) must be that of its holes (8)");
  }
}
