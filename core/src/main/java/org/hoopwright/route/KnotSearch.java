package org.hoopwright.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/**
 * Enumerates the ways in which the ends of an order of passes can be knotted.
 *
 * <p>A knot is tied in a tie-off hole with a free knot place, 1 to knot-limit places from the exit
 * on the same side, round an anchor: a span through that hole that has had its own pull and is not
 * that end's last. One knot a hole.
 */
final class KnotSearch {

  private final RouteModel m;
  private final NodeBudget budget;

  KnotSearch(RouteModel model, NodeBudget budget) {
    this.m = model;
    this.budget = budget;
  }

  /** Calls back for each way; the order of calls is fixed. */
  void forEach(PassOrder o, Consumer<Knots> found) {
    boolean[] all = new boolean[m.spans];
    Arrays.fill(all, true);
    boolean[] opened =
        strung(
            Arrays.copyOf(o.shortPasses(), o.shortOpening()),
            Arrays.copyOf(o.longPasses(), o.longOpening()));
    boolean[] firstPiece = strung(o.shortPasses(), o.longPasses());

    // In one piece the short end may wait with its knot for an anchor that the long end strings. In
    // two it is tied first.
    int shortLast = last(o.shortPasses());
    int longLast = last(o.longPasses());
    List<KnotChoice> shorts =
        choices(m.exit(shortLast), shortLast >> 1, o.onePiece() ? all : opened, false);
    List<KnotChoice> longs =
        shorts.isEmpty() ? List.of() : choices(m.exit(longLast), longLast >> 1, firstPiece, false);
    if (longs.isEmpty()) {
      return;
    }
    if (o.onePiece()) {
      for (KnotChoice s : shorts) {
        for (KnotChoice l : longs) {
          budget.visit();
          if (s.hole() != l.hole()) {
            found.accept(new Knots(s, l, null, null));
          }
        }
      }
      return;
    }
    List<KnotChoice> starts = starts(o, firstPiece);
    int crossLast = last(o.crossPasses());
    List<KnotChoice> finishes =
        starts.isEmpty() ? List.of() : choices(m.exit(crossLast), crossLast >> 1, all, false);
    for (KnotChoice s : shorts) {
      for (KnotChoice l : longs) {
        for (KnotChoice b : starts) {
          for (KnotChoice f : finishes) {
            budget.visit();
            if (differ(s, l, b, f)) {
              found.accept(new Knots(s, l, b, f));
            }
          }
        }
      }
    }
  }

  private List<KnotChoice> starts(PassOrder o, boolean[] firstPiece) {
    int first = o.crossPasses()[0];
    int entry = m.entry(first);
    List<KnotChoice> starts = new ArrayList<>(choices(entry, first >> 1, firstPiece, false));
    if (m.rules.startingClamp() && !m.inHeadZone(entry)) {
      boolean[] in = firstPiece.clone();
      for (int i = 0;
          i < Math.min(RouteSearch.CROSSES_BEFORE_REPULL, o.crossPasses().length);
          i++) {
        in[o.crossPasses()[i] >> 1] = true;
      }
      starts.addAll(choices(entry, first >> 1, in, true));
    }
    return starts;
  }

  private List<KnotChoice> choices(int exit, int lastSpan, boolean[] anchors, boolean clamped) {
    List<KnotChoice> list = new ArrayList<>();
    for (int hole : m.knotHoles(exit)) {
      for (int span : m.through(hole)) {
        if (span != lastSpan && anchors[span]) {
          list.add(new KnotChoice(hole, span, clamped));
        }
      }
    }
    return list;
  }

  private boolean[] strung(int[] a, int[] b) {
    boolean[] in = new boolean[m.spans];
    for (int pass : a) {
      in[pass >> 1] = true;
    }
    for (int pass : b) {
      in[pass >> 1] = true;
    }
    return in;
  }

  private static int last(int[] passes) {
    return passes[passes.length - 1];
  }

  private static boolean differ(KnotChoice a, KnotChoice b, KnotChoice c, KnotChoice d) {
    return a.hole() != b.hole()
        && a.hole() != c.hole()
        && a.hole() != d.hole()
        && b.hole() != c.hole()
        && b.hole() != d.hole()
        && c.hole() != d.hole();
  }
}
