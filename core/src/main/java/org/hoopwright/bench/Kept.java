package org.hoopwright.bench;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.SpanId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/**
 * How much of a half-done job can stay when it is to go on by a route: for each end the passes that
 * are the route's own, in an order that the route's time order allows. What is strung last comes
 * out first, so each end keeps its first passes.
 *
 * <p>A knotted end cannot be pulled again: unless it agrees with the route as it is, its piece is
 * cut out.
 */
final class Kept {

  private final HalfDone state; // its short end is the route's
  private final Route route;
  private final int leadLimit;
  private final Map<EndName, Integer> keep = new EnumMap<>(EndName.class);
  private final Set<Integer> cutOut = new TreeSet<>();

  private Kept(HalfDone state, Route route, int leadLimit) {
    this.state = state;
    this.route = route;
    this.leadLimit = leadLimit;
  }

  /**
   * What can stay.
   *
   * @param state the state on the route's bed, with the route's short end
   * @param route the route
   * @param leadLimit the most mains that one side may be ahead
   * @param without pieces that are to be cut out whatever the route
   */
  static Kept of(HalfDone state, Route route, int leadLimit, Set<Integer> without) {
    Kept kept = new Kept(state, route, leadLimit);
    kept.cutOut.addAll(without);
    kept.begin();
    int before;
    do {
      before = kept.strung();
      kept.inOrder();
      kept.withinLead();
      kept.piecesThatCannotStay();
    } while (kept.strung() < before);
    return kept;
  }

  int keep(EndName end) {
    return keep.getOrDefault(end, 0);
  }

  /** Pieces that are cut out. */
  Set<Integer> cutOut() {
    return cutOut;
  }

  /** How many spans with a pull of their own come out. */
  int undone() {
    return state.pulled().size() - strung();
  }

  /** Spans that stay. */
  Set<SpanId> spans() {
    Set<SpanId> spans = new HashSet<>();
    for (StrungPiece piece : state.pieces()) {
      for (StrungEnd end : piece.ends()) {
        end.passes().subList(0, keep(end.name())).forEach(p -> spans.add(p.span()));
      }
    }
    return spans;
  }

  private int strung() {
    return keep.values().stream().mapToInt(i -> i).sum();
  }

  private void begin() {
    for (int i = 0; i < state.pieces().size(); i++) {
      StrungPiece piece = state.pieces().get(i);
      if (piece.broken() || i >= route.pieces().size()) {
        drop(i);
      }
      for (StrungEnd end : piece.ends()) {
        keep.put(end.name(), cutOut.contains(i) ? 0 : agreeing(end));
      }
    }
  }

  private void drop(int piece) {
    if (piece < state.pieces().size() && !state.pieces().get(piece).isEmpty()) {
      cutOut.add(piece);
      state.pieces().get(piece).ends().forEach(e -> keep.put(e.name(), 0));
    }
  }

  private int agreeing(StrungEnd end) {
    List<Pass> wanted = route.end(end.name()).map(StringEnd::passes).orElse(List.of());
    int i = 0;
    while (i < end.passes().size()
        && i < wanted.size()
        && end.passes().get(i).equals(wanted.get(i))
        && state.pulled().contains(end.passes().get(i).span())
        && !state.misweaves().contains(end.passes().get(i).span())) {
      i++;
    }
    return i;
  }

  /** After the opening mains nothing stays that the route strings after something missing. */
  private void inOrder() {
    boolean missing = false;
    for (EndName end : List.of(EndName.SHORT, EndName.LONG)) {
      missing |= keep(end) < route.opening(end);
    }
    for (Moment m : route.order()) {
      if (m.what() != Moment.What.PASS || m.pass() < route.opening(m.end())) {
        continue;
      }
      if (missing && keep(m.end()) > m.pass()) {
        keep.put(m.end(), m.pass());
      }
      missing |= keep(m.end()) <= m.pass();
    }
  }

  private void withinLead() {
    int a = Math.min(keep(EndName.SHORT), route.opening(EndName.SHORT));
    int b = Math.min(keep(EndName.LONG), route.opening(EndName.LONG));
    if (a > b + leadLimit) {
      keep.put(EndName.SHORT, b + leadLimit);
    } else if (b > a + leadLimit) {
      keep.put(EndName.LONG, a + leadLimit);
    }
  }

  private void piecesThatCannotStay() {
    for (int i = 0; i < state.pieces().size(); i++) {
      if (!cutOut.contains(i) && !canStay(i)) {
        drop(i);
      }
    }
    if (cutOut.contains(0)) {
      drop(1); // its knots are tied round the mains, and its crosses are woven through them
    }
  }

  private boolean canStay(int index) {
    StrungPiece piece = state.pieces().get(index);
    if (piece.isEmpty()) {
      return true;
    }
    Set<SpanId> stay = spans();
    for (StrungEnd end : piece.ends()) {
      boolean knotted = end.knot().isPresent();
      if (knotted && keep(end.name()) < end.passes().size()) {
        return false;
      }
      boolean finished =
          keep(end.name()) == route.end(end.name()).map(e -> e.passes().size()).orElse(0);
      if (knotted && (!finished || !stay.contains(end.knot().get().anchor()))) {
        return false;
      }
    }
    // Both ends hang on the first spans: the centre loop, or the start of the crosses.
    return index == 0
        ? keep(EndName.SHORT) > 0 && keep(EndName.LONG) > 0
        : keep(EndName.FINISH) > 0;
  }

  /**
   * Whether the route ties those ends that are knotted, or held by a starting clamp, as they are.
   */
  boolean knotsAgree(Route variant) {
    for (int i = 0; i < state.pieces().size(); i++) {
      if (cutOut.contains(i) || state.pieces().get(i).isEmpty()) {
        continue;
      }
      for (StrungEnd end : state.pieces().get(i).ends()) {
        StringEnd wanted = variant.end(end.name()).orElseThrow();
        if (end.knot().isPresent() && !end.knot().get().equals(wanted.finish())) {
          return false;
        }
        boolean clamped = end.name() == EndName.START && end.knot().isEmpty();
        if (clamped && wanted.startingClamp().isEmpty()) {
          return false;
        }
      }
    }
    return true;
  }
}
