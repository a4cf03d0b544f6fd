package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class FootTest {

  private static final Superellipse HOOP = Superellipse.of(330, 248, 2.1);

  @Property
  void theNearestPlaceIsNoFartherThanTheFoot(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll Side side,
      @ForAll @DoubleRange(min = -200, max = 200) double x,
      @ForAll @DoubleRange(min = -200, max = 200) double y) {
    Outline outline = Hoops.any(seed);
    Optional<Foot> foot = Foot.of(outline, side, new Point(x, y));
    foot.ifPresent(
        f -> {
          assertThat(Math.abs(outline.distanceTo(new Point(x, y))))
              .isLessThanOrEqualTo(f.awayMm() + 1e-9);
          assertThat(f.at().distanceTo(new Point(x, y))).isEqualTo(f.awayMm());
          assertThat(Math.abs(outline.distanceTo(f.at()))).isLessThan(1e-9);
        });
    assertThat(foot.isPresent() && side.sign() * x < 0).isFalse();
  }

  @Property
  void whatIsSureOfTheOrderIsSo(
      @ForAll @DoubleRange(min = 0.5, max = 8) double exponent,
      @ForAll Side side,
      @ForAll @DoubleRange(min = 0, max = 1) double part,
      @ForAll @DoubleRange(min = 0, max = 0.1) double on,
      @ForAll @DoubleRange(min = -6, max = 6) double dx,
      @ForAll @DoubleRange(min = -6, max = 6) double dy) {
    Superellipse hoop = Superellipse.of(330, 248, exponent);
    double half = hoop.halfLengthMm(side);
    Point first = moved(hoop.atArc(side, part * half), dx, dy);
    Point second = moved(hoop.atArc(side, Math.min(1, part + on) * half), -dy, dx);
    Optional<Foot> foot = Foot.of(hoop, side, first);
    Optional<Foot> next = Foot.of(hoop, side, second);
    if (foot.isPresent() && next.isPresent()) {
      if (foot.get().surelyBefore(next.get())) {
        assertThat(hoop.arcOf(side, first)).isLessThan(hoop.arcOf(side, second));
      }
      if (next.get().surelyBefore(foot.get())) {
        assertThat(hoop.arcOf(side, second)).isLessThan(hoop.arcOf(side, first));
      }
    }
  }

  private static Point moved(Point p, double dx, double dy) {
    return new Point(p.x() + dx, p.y() + dy);
  }

  @Test
  void wellMeasuredNeighboursAreSure() {
    double half = HOOP.halfLengthMm(Side.RIGHT);
    for (int i = 1; i < 40; i++) {
      Point before = moved(HOOP.atArc(Side.RIGHT, half * (2 * i - 1) / 80), 0.3, 0.3);
      Point hole = moved(HOOP.atArc(Side.RIGHT, half * (2 * i + 1) / 80), -0.3, 0.3);
      Foot foot = Foot.of(HOOP, Side.RIGHT, before).orElseThrow();
      Foot next = Foot.of(HOOP, Side.RIGHT, hole).orElseThrow();
      assertThat(foot.surelyBefore(next)).as("hole %d", i).isTrue();
      assertThat(next.surelyBefore(foot)).as("hole %d", i).isFalse();
    }
  }

  @Test
  void aPointIsNotSureToBeBeforeItself() {
    Foot foot = Foot.on(HOOP.atArc(Side.LEFT, 100));
    assertThat(foot.surelyBefore(foot)).isFalse();
  }

  @Test
  void whatHasNoPlaceBesideOrAboveItHasNoFoot() {
    assertThat(Foot.of(HOOP, Side.RIGHT, new Point(200, 300))).isEmpty();
    assertThat(Foot.of(HOOP, Side.RIGHT, new Point(-1, 0))).as("the other side").isEmpty();
  }
}
