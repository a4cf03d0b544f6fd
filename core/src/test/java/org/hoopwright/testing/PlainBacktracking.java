package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.testing.BruteForceRoutes.Found;
import org.hoopwright.testing.PlainKnots.Tie;
import org.jspecify.annotations.Nullable;

/**
 * The best route by plain backtracking on objects, as a baseline to compare speed with and as one
 * more judge: pass by pass in time order, and knot by knot, each rule asked as soon as it can be,
 * everything undone on the way back. Sets, maps and lists of spans and holes; no numbers for them,
 * no bit masks, nothing remembered from one branch to the next.
 *
 * <p>Not thread-safe.
 */
public final class PlainBacktracking {

  /** How a route's cost is found. */
  public enum Measuring {
    /** When a route is complete, by stringing an empty frame with it. */
    AT_THE_END,
    /** Pass by pass, undone on the way back. */
    ON_THE_WAY,
    /**
     * Pass by pass, and a branch is left as soon as what it has cost stands behind the best route.
     */
    BOUNDED
  }

  private static final int EARLY = 2;
  private static final int REPULL = 3;

  private final Bed bed;
  private final RouteRequest request;
  private final Measuring measuring;
  private final Comparator<Found> ties;
  private final Map<HoleId, List<Span>> spansAt = new HashMap<>();
  private final PlainKnots knots;
  private final PlainFrame frame;

  private Openings openings;
  private final List<Pass> shortPasses = new ArrayList<>();
  private final List<Pass> longPasses = new ArrayList<>();
  private final List<Pass> crossPasses = new ArrayList<>();
  private final List<Tie> tied = new ArrayList<>();
  private final Set<HoleId> knotHoles = new HashSet<>();
  private final List<PlainFrame.Move> moves = new ArrayList<>();
  private final List<PlainFrame.Memo> memos = new ArrayList<>();
  private final Set<SpanId> strung = new HashSet<>();
  private @Nullable Tie waiting;
  private int front;
  private int back;
  private int departures;

  private @Nullable List<Long> bestCost;
  private @Nullable Found best;

  private PlainBacktracking(Bed bed, RouteRequest request, Measuring measuring, Openings first) {
    this.bed = bed;
    this.request = request;
    this.measuring = measuring;
    this.ties = new RouteTies(bed).comparator();
    this.openings = first;
    for (Span span : bed.spans()) {
      for (HoleId hole : List.of(span.from(), span.to())) {
        spansAt.computeIfAbsent(hole, h -> new ArrayList<>()).add(span);
      }
    }
    knots = new PlainKnots(bed, request, spansAt);
    frame = new PlainFrame(bed);
  }

  /**
   * The best route by the standard preferences; empty when there is none.
   *
   * @param bed the bed
   * @param request what is asked; its preferences are not looked at
   * @param measuring how the cost is found, which changes nothing but the speed
   */
  public static Optional<Found> best(Bed bed, RouteRequest request, Measuring measuring) {
    List<Openings> all = Openings.all(bed, request);
    if (all.isEmpty()) {
      return Optional.empty();
    }
    PlainBacktracking search = new PlainBacktracking(bed, request, measuring, all.get(0));
    for (Openings openings : all) {
      if (openings.represents()) {
        search.open(openings);
      }
    }
    return Optional.ofNullable(search.best);
  }

  private void open(Openings from) {
    openings = from;
    frame.begin(from.start);
    shortPasses.clear();
    longPasses.clear();
    moves.clear();
    memos.clear();
    strung.clear();
    departures = 0;
    for (int i = 0; i < Math.max(from.shortOpening, from.longOpening); i++) {
      if (i < from.shortOpening) {
        string(from.shortOpens.get(i), shortPasses);
      }
      if (i < from.longOpening) {
        string(from.longOpens.get(i), longPasses);
      }
    }
    shortEnd();
  }

  private void string(Pass pass, List<Pass> end) {
    HoleId exit = end.isEmpty() ? null : end.get(end.size() - 1).to();
    play(new PlainFrame.Move(exit, pass.from(), pass));
    end.add(pass);
    strung.add(pass.span());
  }

  private void unstring(List<Pass> end) {
    strung.remove(end.remove(end.size() - 1).span());
    undo();
  }

  private void play(PlainFrame.Move move) {
    moves.add(move);
    if (measuring != Measuring.AT_THE_END) {
      memos.add(frame.play(move));
    }
  }

  private void undo() {
    moves.remove(moves.size() - 1);
    if (measuring != Measuring.AT_THE_END) {
      frame.undo(memos.remove(memos.size() - 1));
    }
  }

  private boolean mainsIn() {
    int n = bed.mainsPerSide();
    return strung.contains(SpanId.main(Side.LEFT, n))
        && strung.contains(SpanId.main(Side.RIGHT, n));
  }

  private int index(SpanId cross) {
    return openings.direction == Direction.HEAD_TO_THROAT
        ? cross.number() - 1
        : bed.crossCount() - cross.number();
  }

  private boolean behind() {
    List<Long> b = bestCost;
    return measuring == Measuring.BOUNDED && b != null && compare(cost(), b) > 0;
  }

  private void shortEnd() {
    if (behind()) {
      return;
    }
    for (Tie tie : ties(shortPasses.get(shortPasses.size() - 1), false)) {
      // The short end may wait for an anchor that the long end strings; that is one piece.
      if (strung.contains(tie.knot().anchor())) {
        tie(tie, shortPasses.get(shortPasses.size() - 1).to(), this::longEnd);
      } else {
        waiting = tie;
        longEnd();
        waiting = null;
      }
    }
    extend(shortPasses, this::shortEnd);
  }

  private void longEnd() {
    if (behind()) {
      return;
    }
    HoleId exit = longPasses.get(longPasses.size() - 1).to();
    if (mainsIn() && waiting == null) {
      boolean all = front + back == bed.crossCount();
      if (all && request.pieces().orElse(1) == 1 && !request.crossesOfOtherString()) {
        for (Tie tie : ties(longPasses.get(longPasses.size() - 1), false)) {
          if (strung.contains(tie.knot().anchor())) {
            tie(tie, exit, this::keep);
          }
        }
      }
      boolean shortMains = shortPasses.size() == openings.shortOpening;
      if (!all && shortMains && request.pieces().orElse(2) == 2) {
        for (Tie tie : ties(longPasses.get(longPasses.size() - 1), false)) {
          // In two pieces the short end is tied before the long end goes on.
          if (strung.contains(tie.knot().anchor())
              && anchoredByOpenings(tied.get(0).knot().anchor())) {
            tie(tie, exit, this::secondPiece);
          }
        }
      }
    }
    extend(longPasses, this::longEnd);
  }

  private boolean anchoredByOpenings(SpanId anchor) {
    return anchor.isMain()
        && anchor.number()
            <= (anchor.side().orElseThrow() == openings.shortSide
                ? openings.shortOpening
                : openings.longOpening);
  }

  private void secondPiece() {
    SpanId first =
        SpanId.cross(
            openings.direction == Direction.HEAD_TO_THROAT ? front + 1 : bed.crossCount() - front);
    Span span = bed.span(first);
    for (HoleId entry : List.of(span.from(), span.to())) {
      Pass pass = new Pass(first, entry, span.other(entry));
      Pass towardsStart = new Pass(first, pass.to(), entry);
      if (request.startingClamps() > 0 && !bed.inHeadZone(entry)) {
        for (Tie tie : ties(towardsStart, true)) {
          waiting = tie;
          firstCross(pass);
          waiting = null;
        }
      }
      for (Tie tie : ties(towardsStart, false)) {
        if (strung.contains(tie.knot().anchor())) {
          Knot knot = new Knot(Knot.Kind.STARTING, tie.knot().hole(), tie.knot().anchor());
          tie(new Tie(knot, false), entry, () -> firstCross(pass));
        }
      }
    }
  }

  private void firstCross(Pass pass) {
    if (!behind()) {
      go(pass, crossPasses, this::crosses);
    }
  }

  private void crosses() {
    if (behind()) {
      return;
    }
    Tie tie = waiting;
    boolean done = front + back == bed.crossCount();
    if (tie != null && (crossPasses.size() == REPULL || done)) {
      if (strung.contains(tie.knot().anchor())) {
        waiting = null;
        tie(tie, crossPasses.get(0).from(), this::crosses);
        waiting = tie;
      }
      return;
    }
    if (done) {
      Pass last = crossPasses.get(crossPasses.size() - 1);
      for (Tie finish : ties(last, false)) {
        tie(finish, last.to(), this::keep);
      }
      return;
    }
    extend(crossPasses, this::crosses);
  }

  /** Tries every span that an end can go to next. */
  private void extend(List<Pass> end, Runnable then) {
    HoleId exit = end.get(end.size() - 1).to();
    List<HoleId> list = bed.ring().list(exit.side());
    int place = bed.ring().place(exit);
    int first = Math.max(0, place - request.runLimit());
    int last = Math.min(list.size() - 1, place + request.runLimit());
    for (HoleId entry : list.subList(first, last + 1)) {
      for (Span span : spansAt.getOrDefault(entry, List.of())) {
        if (!strung.contains(span.id())
            && mayCome(span.id(), end)
            && bed.ring().runAllowed(exit, entry)) {
          go(new Pass(span.id(), entry, span.other(entry)), end, then);
        }
      }
    }
  }

  private boolean mayCome(SpanId span, List<Pass> end) {
    if (span.isMain()) {
      return front + back > 0; // before the first cross it would be an opening main
    }
    int index = index(span);
    boolean next = index == front;
    boolean early =
        (next && front < EARLY) || (back < EARLY && index == bed.crossCount() - 1 - back);
    if (mainsIn() ? !next : !early) {
      return false;
    }
    if (request.crossesOfOtherString() && !sameList(end, crossPasses)) {
      return false;
    }
    return !sameList(end, shortPasses)
        || ((index < EARLY || index >= bed.crossCount() - EARLY)
            && shortPasses.stream().filter(p -> p.span().isCross()).count() < EARLY);
  }

  @SuppressWarnings("ReferenceEquality") // which of the three lists it is, not what it holds
  private static boolean sameList(List<Pass> a, List<Pass> b) {
    return a == b;
  }

  private void go(Pass pass, List<Pass> end, Runnable then) {
    boolean cross = pass.span().isCross();
    boolean fromFront = cross && index(pass.span()) == front;
    int before = departures;
    // An early cross, a main after a cross; each cross of the short end counts once more.
    departures += cross ? (mainsIn() ? 0 : 1) : 1;
    departures += cross && sameList(end, shortPasses) ? 1 : 0;
    front += fromFront ? 1 : 0;
    back += cross && !fromFront ? 1 : 0;
    string(pass, end);
    Tie tie = waiting;
    if (tie != null && tied.isEmpty() && tie.knot().anchor().equals(pass.span())) {
      waiting = null;
      tie(tie, shortPasses.get(shortPasses.size() - 1).to(), then);
      waiting = tie;
    } else {
      then.run();
    }
    unstring(end);
    front -= fromFront ? 1 : 0;
    back -= cross && !fromFront ? 1 : 0;
    departures = before;
  }

  /** Where an end that comes out of this pass can be tied, whatever is strung. */
  private List<Tie> ties(Pass last, boolean clamped) {
    List<Tie> free = new ArrayList<>();
    for (Tie tie : knots.near(last, clamped)) {
      HoleId hole = tie.knot().hole();
      if (!knotHoles.contains(hole) && (waiting == null || !waiting.knot().hole().equals(hole))) {
        free.add(tie);
      }
    }
    return free;
  }

  private void tie(Tie tie, HoleId exit, Runnable then) {
    if (!knotHoles.add(tie.knot().hole())) {
      return;
    }
    play(new PlainFrame.Move(exit, tie.knot().hole(), null));
    tied.add(tie);
    then.run();
    tied.remove(tied.size() - 1);
    undo();
    knotHoles.remove(tie.knot().hole());
  }

  /** What is sure by now of each preference; a finished route's cost when all is tied. */
  private List<Long> cost() {
    boolean two = !crossPasses.isEmpty();
    return List.of(
        PlainWishes.missed(openings, shortPasses, longPasses, crossPasses, tied.size()),
        openings.direction == Direction.HEAD_TO_THROAT ? 0L : 1L,
        (long) departures,
        (long) frame.covered(),
        (long) frame.doubled(),
        two ? 4L : 2L,
        (long) frame.longestRun(),
        frame.stringMm());
  }

  private static int compare(List<Long> a, List<Long> b) {
    for (int i = 0; i < a.size(); i++) {
      int c = a.get(i).compareTo(b.get(i));
      if (c != 0) {
        return c;
      }
    }
    return 0;
  }

  private void keep() {
    if (Openings.startSideDecides(bed.layout())
        && bed.symmetric()
        && !PlainWishes.startSideMet(openings, shortPasses, longPasses, crossPasses)) {
      return; // its mirror image is meant
    }
    if (measuring == Measuring.AT_THE_END) {
      frame.begin(openings.start);
      moves.forEach(frame::play);
    }
    List<Long> own = cost();
    List<Long> b = bestCost;
    int c = b == null ? -1 : compare(own, b);
    if (c > 0) {
      return;
    }
    boolean clamped = tied.size() > 2 && tied.get(2).clamped();
    Found route =
        new Found(
            openings.start,
            openings.direction,
            openings.shortSide,
            openings.shortOpening,
            openings.longOpening,
            List.copyOf(shortPasses),
            List.copyOf(longPasses),
            List.copyOf(crossPasses),
            tied.stream().map(Tie::knot).toList(),
            clamped ? Optional.of(crossPasses.get(0).from()) : Optional.empty(),
            List.of());
    Found other = best;
    if (c < 0 || other == null || ties.compare(route, other) < 0) {
      best = route;
      bestCost = own;
    }
  }
}
