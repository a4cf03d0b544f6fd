package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteRequest;

/**
 * All routes of a small bed, found without any cleverness: every order in which the spans that are
 * left after the opening mains could be strung is written down, cut in every way into what the
 * short end, the long end and a second piece string, tied in every way, and kept when it breaks no
 * rule. It shares no code with the search that it judges.
 *
 * <p>The orders grow like a factorial, so this is for beds of up to 6 crosses. Not thread-safe.
 */
public final class BruteForceRoutes {

  /**
   * One route with one reading of it.
   *
   * @param start the end where the mains start
   * @param direction the order of the crosses
   * @param shortSide the side of the short end
   * @param shortOpening the opening mains of the short end
   * @param longOpening the opening mains of the long end
   * @param shortPasses passes of the short end
   * @param longPasses passes of the long end
   * @param crossPasses passes of the second piece; empty for one piece
   * @param knots knots of the short end, the long end and, for two pieces, start and finish
   * @param startingClamp where a starting clamp holds the second piece
   * @param order the time order
   */
  public record Found(
      End start,
      Direction direction,
      Side shortSide,
      int shortOpening,
      int longOpening,
      List<Pass> shortPasses,
      List<Pass> longPasses,
      List<Pass> crossPasses,
      List<Knot> knots,
      Optional<HoleId> startingClamp,
      List<Moment> order) {

    /** Passes that make the order, whatever is called short. */
    public List<List<Pass>> passes() {
      return shortSide == Side.LEFT
          ? List.of(shortPasses, longPasses, crossPasses)
          : List.of(longPasses, shortPasses, crossPasses);
    }
  }

  /** What can be remembered from bed to bed: orders of late mains and crosses, by their number. */
  private final Map<List<Object>, List<List<SpanId>>> orders = new HashMap<>();

  private record Reading(
      Bed bed,
      RouteRequest request,
      End start,
      Direction direction,
      Side shortSide,
      int shortOpening,
      int longOpening) {}

  /** A way to tie one end. */
  private record Tie(Knot knot, Optional<HoleId> clamp) {}

  /** All routes in all their readings, in no useful order. */
  public List<Found> all(Bed bed, RouteRequest request) {
    List<Found> all = new ArrayList<>();
    int n = bed.mainsPerSide();
    int least = n >= 4 && bed.crossCount() >= 5 ? n - 1 : n;
    for (End start : End.values()) {
      for (Direction direction : Direction.values()) {
        for (Side side : Side.values()) {
          for (int s = least; s <= n; s++) {
            for (int l = least; l <= n; l++) {
              Reading r = new Reading(bed, request, start, direction, side, s, l);
              if (wanted(r)) {
                ofReading(r, all);
              }
            }
          }
        }
      }
    }
    return all;
  }

  /**
   * Whether an order of passes that was found elsewhere can be tied at all.
   *
   * @param bed the bed
   * @param request what is asked
   * @param order the order; its knots, starting clamp and time order are not looked at
   */
  public static boolean canBeKnotted(Bed bed, RouteRequest request, Found order) {
    Reading r =
        new Reading(
            bed,
            request,
            order.start,
            order.direction,
            order.shortSide,
            order.shortOpening,
            order.longOpening);
    List<Found> first = new ArrayList<>();
    tie(r, order.shortPasses, order.longPasses, order.crossPasses, first, 1);
    return !first.isEmpty();
  }

  private static boolean wanted(Reading r) {
    return r.request.direction().orElse(r.direction) == r.direction
        && r.request.mainsStart().orElse(r.start) == r.start
        && r.bed.layout().mainsStart().orElse(r.start) == r.start;
  }

  private void ofReading(Reading r, List<Found> all) {
    int n = r.bed.mainsPerSide();
    List<SpanId> rest = new ArrayList<>();
    if (r.shortOpening < n) {
      rest.add(SpanId.main(r.shortSide, n));
    }
    if (r.longOpening < n) {
      rest.add(SpanId.main(r.shortSide.other(), n));
    }
    for (int j = 1; j <= r.bed.crossCount(); j++) {
      rest.add(SpanId.cross(j));
    }
    List<List<SpanId>> legal =
        orders.computeIfAbsent(
            List.of(List.copyOf(rest), r.direction),
            k ->
                permutations(rest).stream()
                    .filter(o -> crossesInTurn(o, r.bed.crossCount(), r.direction))
                    .toList());
    for (List<SpanId> order : legal) {
      for (int a = 0; a <= order.size(); a++) {
        for (int b = a; b <= order.size(); b++) {
          List<SpanId> byShort = order.subList(0, a);
          List<SpanId> byLong = order.subList(a, b);
          List<SpanId> bySecond = order.subList(b, order.size());
          if (piecesAllowed(r, byShort, bySecond) && !forbiddenRoundTheWorld(r, order)) {
            lay(r, byShort, byLong, bySecond, all);
          }
        }
      }
    }
  }

  private static List<List<SpanId>> permutations(List<SpanId> items) {
    if (items.isEmpty()) {
      return List.of(List.of());
    }
    List<List<SpanId>> all = new ArrayList<>();
    for (SpanId first : items) {
      List<SpanId> others = new ArrayList<>(items);
      others.remove(first);
      for (List<SpanId> tail : permutations(others)) {
        List<SpanId> whole = new ArrayList<>();
        whole.add(first);
        whole.addAll(tail);
        all.add(whole);
      }
    }
    return all;
  }

  private static int index(SpanId cross, int crosses, Direction direction) {
    return direction == Direction.HEAD_TO_THROAT ? cross.number() : crosses + 1 - cross.number();
  }

  /** Rules 4 and 5, on an order that holds every cross and every main that is late. */
  private static boolean crossesInTurn(List<SpanId> order, int crosses, Direction direction) {
    int lastMain = -1;
    for (int i = 0; i < order.size(); i++) {
      if (order.get(i).isMain()) {
        lastMain = i;
      }
    }
    for (int i = 0; i < order.size(); i++) {
      if (order.get(i).isMain()) {
        if (order.subList(0, i).stream().noneMatch(SpanId::isCross)) {
          return false; // rule 4: only the other end, or after a cross
        }
        continue;
      }
      int at = index(order.get(i), crosses, direction);
      boolean allBefore = true;
      boolean allAfter = true;
      for (int k = i + 1; k < order.size(); k++) {
        if (order.get(k).isCross()) {
          allBefore &= index(order.get(k), crosses, direction) > at;
          allAfter &= index(order.get(k), crosses, direction) < at;
        }
      }
      boolean mainsIn = i > lastMain;
      boolean early = (at <= 2 && allBefore) || (at >= crosses - 1 && allAfter);
      if (mainsIn ? !allBefore : !early) {
        return false;
      }
    }
    return true;
  }

  private static boolean piecesAllowed(Reading r, List<SpanId> byShort, List<SpanId> bySecond) {
    int crosses = r.bed.crossCount();
    List<SpanId> shortCrosses = byShort.stream().filter(SpanId::isCross).toList();
    if (bySecond.isEmpty()) {
      return r.request.pieces().orElse(1) == 1
          && shortCrosses.size() <= 2
          && shortCrosses.stream()
              .mapToInt(SpanId::number)
              .allMatch(j -> j <= 2 || j >= crosses - 1);
    }
    return r.request.pieces().orElse(2) == 2
        && shortCrosses.isEmpty()
        && bySecond.stream().allMatch(SpanId::isCross);
  }

  private static boolean forbiddenRoundTheWorld(Reading r, List<SpanId> order) {
    boolean mainAfterCross = false;
    for (int i = 1; i < order.size(); i++) {
      mainAfterCross |=
          order.get(i).isMain() && order.subList(0, i).stream().anyMatch(SpanId::isCross);
    }
    boolean endsWhereItStarted = r.bed.mainsPerSide() % 2 == 0;
    End mainsEnd = endsWhereItStarted ? r.start : r.start.other();
    return !r.bed.layout().aroundTheWorld() && mainAfterCross && r.direction.from() != mainsEnd;
  }

  private void lay(
      Reading r,
      List<SpanId> byShort,
      List<SpanId> byLong,
      List<SpanId> bySecond,
      List<Found> all) {
    for (List<Pass> s : trails(r, r.shortSide, r.shortOpening, byShort)) {
      for (List<Pass> l : trails(r, r.shortSide.other(), r.longOpening, byLong)) {
        if (bySecond.isEmpty()) {
          tie(r, s, l, List.of(), all, Integer.MAX_VALUE);
        } else {
          for (HoleId from :
              List.of(r.bed.span(bySecond.get(0)).from(), r.bed.span(bySecond.get(0)).to())) {
            for (List<Pass> x : onwards(r, List.of(pass(r, bySecond.get(0), from)), bySecond, 1)) {
              tie(r, s, l, x, all, Integer.MAX_VALUE);
            }
          }
        }
      }
    }
  }

  private static Pass pass(Reading r, SpanId span, HoleId from) {
    return new Pass(span, from, r.bed.span(span).other(from));
  }

  /** Opening mains of a side and then these spans, in every way they can be entered. */
  private static List<List<Pass>> trails(Reading r, Side side, int opening, List<SpanId> then) {
    List<Pass> opened = new ArrayList<>();
    End entry = r.start;
    for (int k = 1; k <= opening; k++) {
      Span main = r.bed.mains(side).get(k - 1);
      opened.add(pass(r, main.id(), entry == End.HEAD ? main.from() : main.to()));
      entry = entry.other();
    }
    for (int i = 1; i < opened.size(); i++) {
      if (!runFits(r, opened.get(i - 1).to(), opened.get(i).from())) {
        return List.of();
      }
    }
    return onwards(r, opened, then, 0);
  }

  private static List<List<Pass>> onwards(Reading r, List<Pass> passes, List<SpanId> then, int at) {
    if (at == then.size()) {
      return List.of(passes);
    }
    List<List<Pass>> all = new ArrayList<>();
    Span span = r.bed.span(then.get(at));
    for (HoleId from : List.of(span.from(), span.to())) {
      if (runFits(r, passes.get(passes.size() - 1).to(), from)) {
        List<Pass> longer = new ArrayList<>(passes);
        longer.add(pass(r, span.id(), from));
        all.addAll(onwards(r, longer, then, at + 1));
      }
    }
    return all;
  }

  private static boolean runFits(Reading r, HoleId a, HoleId b) {
    return a.side() == b.side()
        && !a.equals(b)
        && apart(r, a, b) <= r.request.runLimit()
        && layable(r, a, b);
  }

  private static int apart(Reading r, HoleId a, HoleId b) {
    return Math.abs(r.bed.ring().place(a) - r.bed.ring().place(b));
  }

  /**
   * Whether no forbidden stretch has more than a point in common with the one between two holes.
   */
  private static boolean layable(Reading r, HoleId a, HoleId b) {
    List<HoleId> list = r.bed.ring().list(a.side());
    for (int i = 0; i + 1 < list.size(); i++) {
      boolean between =
          Math.min(list.indexOf(a), list.indexOf(b)) <= i
              && i < Math.max(list.indexOf(a), list.indexOf(b));
      if (between && forbidden(r, list, i)) {
        return false;
      }
    }
    return true;
  }

  private static boolean forbidden(Reading r, List<HoleId> list, int i) {
    Side side = list.get(0).side();
    return r.bed.layout().noRun().stream()
        .anyMatch(
            no -> {
              int from = no.from().on(side).map(list::indexOf).orElse(-1);
              int to = no.to().on(side).map(list::indexOf).orElse(-1);
              return from >= 0 && to >= 0 && Math.min(from, to) <= i && i + 1 <= Math.max(from, to);
            });
  }

  /** Adds the ways to tie an order until there are so many. */
  private static void tie(
      Reading r, List<Pass> s, List<Pass> l, List<Pass> x, List<Found> all, int most) {
    for (Tie shortTie : ties(r, s.get(s.size() - 1), /* clamped= */ false)) {
      for (Tie longTie : ties(r, l.get(l.size() - 1), /* clamped= */ false)) {
        if (x.isEmpty()) {
          keep(r, s, l, x, List.of(shortTie, longTie), all);
          continue;
        }
        Pass first = x.get(0);
        Pass towardsStart = new Pass(first.span(), /* from= */ first.to(), /* to= */ first.from());
        List<Tie> starts = new ArrayList<>(ties(r, towardsStart, /* clamped= */ true));
        ties(r, towardsStart, /* clamped= */ false)
            .forEach(
                t ->
                    starts.add(
                        new Tie(
                            new Knot(Knot.Kind.STARTING, t.knot.hole(), t.knot.anchor()),
                            Optional.empty())));
        for (Tie start : starts) {
          for (Tie finish : ties(r, x.get(x.size() - 1), /* clamped= */ false)) {
            if (all.size() >= most) {
              return;
            }
            keep(r, s, l, x, List.of(shortTie, longTie, start, finish), all);
          }
        }
      }
    }
  }

  /** Rule 6 without time: holes and anchors for an end that comes out of this pass. */
  private static List<Tie> ties(Reading r, Pass last, boolean clamped) {
    HoleId exit = last.to();
    if (clamped && (r.request.startingClamps() == 0 || r.bed.inHeadZone(exit))) {
      return List.of();
    }
    List<Tie> all = new ArrayList<>();
    for (HoleId hole : r.bed.ring().list(exit.side())) {
      for (Span anchor : r.bed.spans()) {
        if (r.bed.ring().isTieOff(hole)
            && anchor.uses(hole)
            && !anchor.id().equals(last.span())
            && !hole.equals(exit)
            && apart(r, exit, hole) <= r.request.knotLimit()
            && layable(r, exit, hole)
            && r.bed.spans().stream().filter(t -> t.uses(hole)).count() < r.bed.ring().bore(hole)) {
          all.add(
              new Tie(
                  new Knot(Knot.Kind.TIE_OFF, hole, anchor.id()),
                  clamped ? Optional.of(exit) : Optional.empty()));
        }
      }
    }
    return all;
  }

  /** Writes the time order down and keeps the route when every knot has its anchor in time. */
  private static void keep(
      Reading r, List<Pass> s, List<Pass> l, List<Pass> x, List<Tie> ties, List<Found> all) {
    if (ties.stream().map(t -> t.knot.hole()).distinct().count() < ties.size()) {
      return;
    }
    BruteForceOrder order = new BruteForceOrder();
    for (int i = 0; i < Math.max(r.shortOpening, r.longOpening); i++) {
      order.pass(0, EndName.SHORT, s, i, i < r.shortOpening);
      order.pass(0, EndName.LONG, l, i, i < r.longOpening);
    }
    for (int i = r.shortOpening; i < s.size(); i++) {
      order.pass(0, EndName.SHORT, s, i, true);
    }
    boolean wait = x.isEmpty();
    order.knotOrWait(0, EndName.SHORT, ties.get(0).knot, wait);
    for (int i = r.longOpening; i < l.size(); i++) {
      order.pass(0, EndName.LONG, l, i, true);
    }
    order.knotOrWait(0, EndName.LONG, ties.get(1).knot, false);
    if (!x.isEmpty()) {
      boolean clamped = ties.get(2).clamp.isPresent();
      if (clamped) {
        order.clamp();
      } else {
        order.knotOrWait(1, EndName.START, ties.get(2).knot, false);
      }
      for (int i = 0; i < x.size(); i++) {
        order.pass(1, EndName.FINISH, x, i, true);
        if (clamped && (i == 2 || (i < 2 && i == x.size() - 1))) {
          order.knotOrWait(1, EndName.START, ties.get(2).knot, false);
        }
      }
      order.knotOrWait(1, EndName.FINISH, ties.get(3).knot, false);
    }
    if (order.legal()) {
      all.add(
          new Found(
              r.start,
              r.direction,
              r.shortSide,
              r.shortOpening,
              r.longOpening,
              List.copyOf(s),
              List.copyOf(l),
              List.copyOf(x),
              ties.stream().map(t -> t.knot).toList(),
              ties.size() == 4 ? ties.get(2).clamp : Optional.empty(),
              order.moments()));
    }
  }
}
