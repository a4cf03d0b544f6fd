package org.hoopwright.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.jspecify.annotations.Nullable;

/**
 * A variant under comparison: an order of passes with knots and their measures. Turned into a
 * {@link Route} only when needed.
 */
final class Candidate {

  final PassOrder order;
  final Knots knots;
  final Timeline.Measured measured;
  final int departures;
  final int wishesMissed;
  private final RouteModel m;
  private @Nullable Route route;

  Candidate(
      RouteModel model, PassOrder order, Knots knots, Timeline.Measured measured, int departures) {
    this.m = model;
    this.order = order;
    this.knots = knots;
    this.measured = measured;
    this.departures = departures;
    this.wishesMissed = wishesMissed(model, order);
  }

  /** How many of the maker's wishes an order misses; see {@link RoutePreferences#MAKER}. */
  private static int wishesMissed(RouteModel m, PassOrder order) {
    Layout layout = m.bed.layout();
    int missed = 0;
    if (layout.direction().isPresent() && layout.direction().get() != order.direction()) {
      missed++;
    }
    if (layout.pieces().isPresent() && layout.pieces().getAsInt() != (order.onePiece() ? 1 : 2)) {
      missed++;
    }
    if (layout.shortSide().isPresent()
        && (layout.shortSide().get() == Side.LEFT) != (order.shortSide() == RouteModel.LEFT)) {
      missed++;
    }
    if (layout.startSide().isPresent()
        && (layout.startSide().get() == Side.LEFT) != (startSide(m, order) == RouteModel.LEFT)) {
      missed++;
    }
    return missed;
  }

  /** The side on which the first cross of the order's direction enters. */
  private static int startSide(RouteModel m, PassOrder order) {
    int first = m.cross(order.direction() == Direction.HEAD_TO_THROAT ? 1 : m.crosses);
    for (int[] passes : List.of(order.shortPasses(), order.longPasses(), order.crossPasses())) {
      for (int pass : passes) {
        if (pass >> 1 == first) {
          return m.side(m.entry(pass));
        }
      }
    }
    throw new IllegalStateException("an order without its first cross");
  }

  /** The public value. */
  Route route() {
    Route r = route;
    if (r == null) {
      r = make();
      route = r;
    }
    return r;
  }

  private Route make() {
    Timeline timeline = new Timeline(m);
    List<Piece> pieces = new ArrayList<>();
    StringEnd shortEnd = end(EndName.SHORT, order.shortPasses(), knots.shortKnot());
    StringEnd longEnd = end(EndName.LONG, order.longPasses(), knots.longKnot());
    KnotChoice start = knots.start();
    KnotChoice finish = knots.finish();
    if (start == null || finish == null) {
      pieces.add(new Piece(Piece.Role.WHOLE, List.of(shortEnd, longEnd)));
    } else {
      pieces.add(new Piece(Piece.Role.MAINS, List.of(shortEnd, longEnd)));
      HoleId entry = m.hole(m.entry(order.crossPasses()[0]));
      Knot.Kind kind = start.clamped() ? Knot.Kind.TIE_OFF : Knot.Kind.STARTING;
      pieces.add(
          new Piece(
              Piece.Role.CROSSES,
              List.of(
                  new StringEnd(
                      EndName.START,
                      List.of(),
                      start.clamped() ? Optional.of(entry) : Optional.empty(),
                      knot(start, kind)),
                  end(EndName.FINISH, order.crossPasses(), finish))));
    }
    return new Route(
        order.start(),
        order.direction(),
        order.shortSide() == RouteModel.LEFT ? Side.LEFT : Side.RIGHT,
        pieces,
        order.shortOpening(),
        order.longOpening(),
        timeline.moments(order, knots),
        families(m, order),
        timeline.measures(order, knots));
  }

  static Set<Family> families(RouteModel m, PassOrder order) {
    Set<Family> families = EnumSet.noneOf(Family.class);
    if (Timeline.aroundTheWorld(m, order)) {
      families.add(Family.AROUND_THE_WORLD);
    }
    if (Timeline.box(m, order)) {
      families.add(Family.BOX);
    }
    return families;
  }

  private StringEnd end(EndName name, int[] passes, KnotChoice knot) {
    return new StringEnd(
        name,
        Arrays.stream(passes).mapToObj(m::pass).toList(),
        Optional.empty(),
        knot(knot, Knot.Kind.TIE_OFF));
  }

  private Knot knot(KnotChoice k, Knot.Kind kind) {
    return new Knot(kind, m.hole(k.hole()), m.span(k.anchor()));
  }

  /**
   * What breaks the last ties, smaller first: start at the head, short side the maker's or left,
   * passes of the short end, of the long end and of the second piece, knots. Sides are taken
   * relative to the short side, so that a mirrored layout gives the mirrored choice.
   */
  int[] tieBreak() {
    int[][] parts = {
      {order.start() == End.HEAD ? 0 : 1, order.shortSide() == m.usualShortSide ? 0 : 1},
      relative(order.shortPasses()),
      relative(order.longPasses()),
      relative(order.crossPasses()),
      relativeKnots()
    };
    int length = Arrays.stream(parts).mapToInt(p -> p.length + 1).sum();
    int[] all = new int[length];
    int at = 0;
    for (int[] part : parts) {
      all[at++] = part.length;
      System.arraycopy(part, 0, all, at, part.length);
      at += part.length;
    }
    return all;
  }

  private int[] relative(int[] passes) {
    return order.shortSide() == RouteModel.LEFT ? passes : PassOrder.mirror(m, passes);
  }

  private int[] relativeKnots() {
    List<Integer> list = new ArrayList<>();
    for (KnotChoice k :
        Arrays.asList(knots.shortKnot(), knots.longKnot(), knots.start(), knots.finish())) {
      if (k != null) {
        boolean near = m.side(k.hole()) == order.shortSide();
        int place = m.side(k.hole()) == RouteModel.LEFT ? k.hole() : k.hole() - m.leftHoles;
        list.add(k.clamped() ? 1 : 0);
        list.add(near ? 0 : 1);
        list.add(place);
        list.add(relative(new int[] {k.anchor() * 2})[0]);
      }
    }
    return list.stream().mapToInt(Integer::intValue).toArray();
  }
}
