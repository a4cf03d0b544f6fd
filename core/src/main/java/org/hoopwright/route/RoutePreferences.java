package org.hoopwright.route;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToLongBiFunction;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;

/** The usual preferences, in their usual order: {@link #standard()}. */
public final class RoutePreferences {

  /**
   * How many of the maker's wishes are not met: direction, pieces, short side, the side where
   * crosses start.
   */
  public static final RoutePreference MAKER =
      simple("maker", "keeps to what the frame's maker asks", RoutePreferences::makersWishesMissed);

  /** Crosses from the head down before crosses from the throat up. */
  public static final RoutePreference DIRECTION =
      new RoutePreference() {
        @Override
        public String name() {
          return "direction";
        }

        @Override
        public long value(Route route, Bed bed) {
          return route.direction() == Direction.HEAD_TO_THROAT ? 0 : 1;
        }

        @Override
        public String show(Route route, Bed bed) {
          return route.direction().word();
        }

        @Override
        public String reason() {
          return "crosses from the head down";
        }
      };

  /** Fewest departures from the plain order. */
  public static final RoutePreference DEPARTURES =
      simple(
          "departures",
          "fewer departures from the plain order",
          (r, b) -> r.measures().departures());

  /** Fewest passes that meet a covered hole. */
  public static final RoutePreference COVERED =
      simple("covered", "fewer covered holes", (r, b) -> r.measures().covered());

  /** Fewest doubled runs. */
  public static final RoutePreference DOUBLED =
      simple("doubled", "fewer doubled runs", (r, b) -> r.measures().doubled());

  /** Fewest knots. */
  public static final RoutePreference KNOTS =
      simple("knots", "fewer knots", (r, b) -> r.measures().knots());

  /** Shortest longest run. */
  public static final RoutePreference LONGEST_RUN =
      simple("longestRun", "a shorter longest run", (r, b) -> r.measures().longestRun());

  /** Least string. */
  public static final RoutePreference STRING =
      simple("string", "less string", (r, b) -> r.measures().stringMm());

  /**
   * Fewest pairs of runs that must lie one upon the other, because three share a stretch; see
   * {@link LaidRuns}. Not among the {@link #standard()} ones.
   */
  public static final RoutePreference STACKED =
      simple(
          "stacked",
          "fewer runs that lie upon another",
          (route, bed) -> LaidRuns.of(bed, route).stacked());

  private static final List<RoutePreference> STANDARD =
      List.of(MAKER, DIRECTION, DEPARTURES, COVERED, DOUBLED, KNOTS, LONGEST_RUN, STRING);

  private RoutePreferences() {}

  /** The usual preferences in their usual order. */
  public static List<RoutePreference> standard() {
    return STANDARD;
  }

  private static RoutePreference simple(
      String name, String reason, ToLongBiFunction<Route, Bed> value) {
    return new RoutePreference() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public long value(Route route, Bed bed) {
        return value.applyAsLong(route, bed);
      }

      @Override
      public String reason() {
        return reason;
      }
    };
  }

  private static long makersWishesMissed(Route route, Bed bed) {
    Layout layout = bed.layout();
    long missed = 0;
    Optional<Direction> direction = layout.direction();
    if (direction.isPresent() && direction.get() != route.direction()) {
      missed++;
    }
    OptionalInt pieces = layout.pieces();
    if (pieces.isPresent() && pieces.getAsInt() != route.pieces().size()) {
      missed++;
    }
    Optional<Side> shortSide = layout.shortSide();
    if (shortSide.isPresent() && shortSide.get() != route.shortSide()) {
      missed++;
    }
    Optional<Side> startSide = layout.startSide();
    if (startSide.isPresent() && startSide.get() != crossesStartSide(route, bed)) {
      missed++;
    }
    return missed;
  }

  /** The side on which the first cross of the route's direction enters the hoop. */
  public static Side crossesStartSide(Route route, Bed bed) {
    SpanId first =
        SpanId.cross(route.direction() == Direction.HEAD_TO_THROAT ? 1 : bed.crossCount());
    return route.pieces().stream()
        .flatMap(p -> p.ends().stream())
        .flatMap(e -> e.passes().stream())
        .filter(p -> p.span().equals(first))
        .map(Pass::from)
        .map(HoleId::side)
        .findFirst()
        .orElseThrow();
  }
}
