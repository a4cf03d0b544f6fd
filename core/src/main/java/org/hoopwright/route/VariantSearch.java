package org.hoopwright.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Enumerates the ways in which the ends of an order of passes can be knotted, and measures each.
 *
 * <p>A knot is tied in a tie-off hole with a free knot place, 1 to knot-limit places from the exit
 * on the same side, round an anchor: a span through that hole that has had its own pull and is not
 * that end's last. One knot a hole.
 *
 * <p>Ways that begin alike share the beginning: the frame is strung up to the first knot, copied
 * for each choice of it, strung on up to the next, and so on. The last knot of all changes nothing
 * for later passes and is only measured. Reused for the orders of one model; confined to one
 * thread.
 */
final class VariantSearch {

  /** Takes the variants of an order, in a fixed order. */
  interface Sink {
    /**
     * One variant.
     *
     * @param knots which knots; only the arrays' contents of this call are valid
     * @param strung the finished frame; reused for the next variant
     */
    void variant(PassOrder order, KnotChoice[] knots, Strung strung);
  }

  /** Indices of the knots that a sink sees; a single piece has the first two. */
  static final int SHORT = 0;

  static final int LONG = 1;
  static final int START = 2;
  static final int FINISH = 3;

  /** When a span is strung: with the openings, by the rest of the short end, or by the long end. */
  private static final int AT_OPENING = 0;

  private static final int BY_SHORT_END = 1;
  private static final int BY_LONG_END = 2;

  private final RouteModel m;
  private final NodeBudget budget;
  private final int[] time; // when each span is strung, see above; the long end counts on
  private final Strung opened;
  private final Strung shortTied;
  private final Strung longTied;
  private final Strung crossed;
  private final Strung done;
  private final KnotChoice[] one = new KnotChoice[2];
  private final KnotChoice[] two = new KnotChoice[4];

  VariantSearch(RouteModel model, NodeBudget budget) {
    this.m = model;
    this.budget = budget;
    time = new int[model.spans];
    opened = new Strung(model);
    shortTied = new Strung(model);
    longTied = new Strung(model);
    crossed = new Strung(model);
    done = new Strung(model);
  }

  void forEach(PassOrder o, Sink sink) {
    int second = setTimes(o);
    int shortLast = last(o.shortPasses());
    int longLast = last(o.longPasses());
    // In one piece the short end may wait with its knot for an anchor that the long end strings. In
    // two it is tied first.
    List<KnotChoice> shorts =
        choices(m.exit(shortLast), shortLast, o.onePiece() ? second : AT_OPENING, false);
    if (shorts.isEmpty()) {
      return;
    }
    List<KnotChoice> longs = choices(m.exit(longLast), longLast, second, false);
    if (longs.isEmpty()) {
      return;
    }
    if (o.onePiece()) {
      onePiece(o, shorts, longs, sink);
      return;
    }
    List<KnotChoice> starts = starts(o, second);
    int crossLast = last(o.crossPasses());
    List<KnotChoice> finishes =
        starts.isEmpty()
            ? List.of()
            : choices(m.exit(crossLast), crossLast, Integer.MAX_VALUE, false);
    if (!finishes.isEmpty()) {
      twoPieces(o, shorts, longs, starts, finishes, sink);
    }
  }

  /** Notes when each span is strung; the last moment of the first piece. */
  private int setTimes(PassOrder o) {
    Arrays.fill(time, AT_OPENING);
    int[] s = o.shortPasses();
    for (int i = o.shortOpening(); i < s.length; i++) {
      time[s[i] >> 1] = BY_SHORT_END;
    }
    int now = BY_LONG_END;
    int[] l = o.longPasses();
    for (int i = o.longOpening(); i < l.length; i++) {
      time[l[i] >> 1] = now++;
    }
    int end = now;
    for (int pass : o.crossPasses()) {
      time[pass >> 1] = ++now;
    }
    return end;
  }

  private List<KnotChoice> starts(PassOrder o, int second) {
    int first = o.crossPasses()[0];
    int entry = m.entry(first);
    List<KnotChoice> starts = choices(entry, first, second, false);
    if (m.rules.startingClamp() && !m.inHeadZone(entry)) {
      int repull = Math.min(RouteSearch.CROSSES_BEFORE_REPULL, o.crossPasses().length);
      starts.addAll(choices(entry, first, time[o.crossPasses()[repull - 1] >> 1], true));
    }
    return starts;
  }

  /**
   * Knots for an end that comes out here, nearest hole first, head-most first among equals, round
   * anchors strung by this time.
   */
  private List<KnotChoice> choices(int exit, int lastPass, int by, boolean clamped) {
    List<KnotChoice> list = new ArrayList<>();
    int first = m.side(exit) == RouteModel.LEFT ? 0 : m.leftHoles;
    int last = (m.side(exit) == RouteModel.LEFT ? m.leftHoles : m.holes) - 1;
    int most = Math.min(m.rules.knotLimit(), last - first);
    for (int d = 1; d <= most; d++) {
      if (exit - d >= first) {
        add(list, exit, exit - d, lastPass >> 1, by, clamped);
      }
      if (exit + d <= last) {
        add(list, exit, exit + d, lastPass >> 1, by, clamped);
      }
    }
    return list;
  }

  private void add(
      List<KnotChoice> list, int exit, int hole, int lastSpan, int by, boolean clamped) {
    if (m.knotPlace(hole) && m.stretchOk(exit, hole)) {
      for (int span : m.through(hole)) {
        if (span != lastSpan && time[span] <= by) {
          list.add(new KnotChoice(hole, span, clamped));
        }
      }
    }
  }

  private void onePiece(PassOrder o, List<KnotChoice> shorts, List<KnotChoice> longs, Sink sink) {
    openings(o);
    int exit = m.exit(last(o.longPasses()));
    for (int i = 0; i < shorts.size(); i++) {
      KnotChoice s = shorts.get(i);
      if (i == 0 || differs(s, shorts.get(i - 1))) {
        restOfLongEnd(o, s);
      }
      one[SHORT] = s;
      for (int j = 0; j < longs.size(); j++) {
        KnotChoice l = longs.get(j);
        budget.visit();
        if (s.hole() != l.hole()) {
          one[LONG] = l;
          done.copyWithLastKnot(shortTied, exit, l.hole());
          sink.variant(o, one, done);
        }
      }
    }
  }

  private void twoPieces(
      PassOrder o,
      List<KnotChoice> shorts,
      List<KnotChoice> longs,
      List<KnotChoice> starts,
      List<KnotChoice> finishes,
      Sink sink) {
    openings(o);
    int longExit = m.exit(last(o.longPasses()));
    int finishExit = m.exit(last(o.crossPasses()));
    for (KnotChoice s : shorts) {
      two[SHORT] = s;
      restOfLongEnd(o, s);
      for (KnotChoice l : longs) {
        two[LONG] = l;
        longTied.copy(shortTied);
        longTied.knot(longExit, l.hole());
        for (KnotChoice b : starts) {
          two[START] = b;
          if (s.hole() == l.hole() || b.hole() == s.hole() || b.hole() == l.hole()) {
            for (int i = 0; i < finishes.size(); i++) {
              budget.visit(); // counted like the others, so that limits mean the same everywhere
            }
            continue;
          }
          crosses(o, b);
          for (KnotChoice f : finishes) {
            budget.visit();
            if (f.hole() != s.hole() && f.hole() != l.hole() && f.hole() != b.hole()) {
              two[FINISH] = f;
              done.copyWithLastKnot(crossed, finishExit, f.hole());
              sink.variant(o, two, done);
            }
          }
        }
      }
    }
  }

  /** Whether two knots of the short end lie in other holes or are tied at other times. */
  private boolean differs(KnotChoice a, KnotChoice b) {
    return a.hole() != b.hole() || tiedAt(a) != tiedAt(b);
  }

  /** At once, or when the long end has strung the anchor. */
  private int tiedAt(KnotChoice s) {
    return Math.max(time[s.anchor()], BY_SHORT_END);
  }

  private void openings(PassOrder o) {
    opened.begin(m.centreLoopMm(o.start()));
    int both = Math.min(o.shortOpening(), o.longOpening());
    for (int i = 0; i < both; i++) {
      opened.pass(o.shortPasses(), i);
      opened.pass(o.longPasses(), i);
    }
    opened.passes(o.shortPasses(), both, o.shortOpening());
    opened.passes(o.longPasses(), both, o.longOpening());
    opened.passes(o.shortPasses(), o.shortOpening(), o.shortPasses().length);
  }

  private void restOfLongEnd(PassOrder o, KnotChoice s) {
    shortTied.copy(opened);
    int[] l = o.longPasses();
    // The long end's first pass after its openings is strung at BY_LONG_END.
    int before = o.longOpening() + tiedAt(s) - BY_SHORT_END;
    shortTied.passes(l, o.longOpening(), before);
    shortTied.knot(m.exit(last(o.shortPasses())), s.hole());
    shortTied.passes(l, before, l.length);
  }

  private void crosses(PassOrder o, KnotChoice b) {
    int[] x = o.crossPasses();
    int before = b.clamped() ? Math.min(RouteSearch.CROSSES_BEFORE_REPULL, x.length) : 0;
    crossed.copy(longTied);
    crossed.passes(x, 0, before);
    crossed.knot(m.entry(x[0]), b.hole());
    crossed.passes(x, before, x.length);
  }

  private static int last(int[] passes) {
    return passes[passes.length - 1];
  }
}
