package org.hoopwright.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.HoopwrightFault;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.jspecify.annotations.Nullable;

/**
 * A variant under comparison: an order of passes with knots and their measures. Turned into a
 * {@link Route} only when one is asked for. Immutable.
 */
final class Candidate {

  final PassOrder order;
  final Knots knots;
  final int departures;
  final int wishesMissed;
  final int covered;
  final int doubled;
  final int longestRun;
  final long stringMm;
  private final RouteModel m;

  // Made on demand; a route is immutable and the same whoever makes it, so that a race does no
  // harm.
  private @Nullable Route route;

  Candidate(
      RouteModel model,
      PassOrder order,
      KnotChoice[] knots,
      Strung strung,
      int departures,
      int wishesMissed) {
    this.m = model;
    this.order = order;
    this.knots = Knots.of(knots);
    this.departures = departures;
    this.wishesMissed = wishesMissed;
    this.covered = strung.covered();
    this.doubled = strung.doubled();
    this.longestRun = strung.longestRun();
    this.stringMm = strung.stringMm();
  }

  /** The value of one of the usual preferences. */
  long value(Usual usual) {
    return switch (usual) {
      case MAKER, DIRECTION, DEPARTURES, KNOTS -> value(usual, order, departures, wishesMissed);
      case COVERED -> covered;
      case DOUBLED -> doubled;
      case LONGEST_RUN -> longestRun;
      case STRING -> stringMm;
    };
  }

  /** The value of one of the usual preferences that are the same for all knots. */
  static long value(Usual usual, PassOrder order, int departures, int wishesMissed) {
    return switch (usual) {
      case MAKER -> wishesMissed;
      case DIRECTION -> order.direction() == Direction.HEAD_TO_THROAT ? 0 : 1;
      case DEPARTURES -> departures;
      case KNOTS -> order.onePiece() ? 2 : 4;
      case COVERED, DOUBLED, LONGEST_RUN, STRING ->
          throw new HoopwrightFault(
              "The preference " + usual.name() + " was asked before there were knots.");
    };
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
    Timeline timeline = new Timeline(m, order, knots);
    List<Piece> pieces = new ArrayList<>(2);
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
        timeline.moments(),
        OrderTraits.families(m, order),
        timeline.measures(departures));
  }

  private StringEnd end(EndName name, int[] passes, KnotChoice knot) {
    return new StringEnd(name, m.passes(passes), Optional.empty(), knot(knot, Knot.Kind.TIE_OFF));
  }

  private Knot knot(KnotChoice k, Knot.Kind kind) {
    return new Knot(kind, m.hole(k.hole()), m.span(k.anchor()));
  }

  /**
   * What breaks the last ties, smaller first: start at the head, short side the maker's or left,
   * passes of the short end, of the long end and of the second piece (the shorter list first),
   * knots. Sides are taken relative to the short side, so that a mirrored layout gives the mirrored
   * choice.
   */
  int compareTies(Candidate o) {
    int c = Integer.compare(order.start() == End.HEAD ? 0 : 1, o.order.start() == End.HEAD ? 0 : 1);
    c = c != 0 ? c : Integer.compare(usualSide(), o.usualSide());
    c = c != 0 ? c : passes(order.shortPasses(), o.order.shortPasses(), o);
    c = c != 0 ? c : passes(order.longPasses(), o.order.longPasses(), o);
    c = c != 0 ? c : passes(order.crossPasses(), o.order.crossPasses(), o);
    return c != 0 ? c : knots.compare(m, order.shortSide(), o.knots, o.order.shortSide());
  }

  private int usualSide() {
    return order.shortSide() == m.usualShortSide ? 0 : 1;
  }

  private int passes(int[] own, int[] others, Candidate o) {
    if (own.length != others.length) {
      return Integer.compare(own.length, others.length);
    }
    boolean turnOwn = order.shortSide() != RouteModel.LEFT;
    boolean turnOthers = o.order.shortSide() != RouteModel.LEFT;
    for (int i = 0; i < own.length; i++) {
      int a = turnOwn ? m.mirror(own[i]) : own[i];
      int b = turnOthers ? m.mirror(others[i]) : others[i];
      if (a != b) {
        return Integer.compare(a, b);
      }
    }
    return 0;
  }
}
