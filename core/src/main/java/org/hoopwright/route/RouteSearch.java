package org.hoopwright.route;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.geometry.Side;
import org.jspecify.annotations.Nullable;

/**
 * Finds every route that the rules allow, and ranks them.
 *
 * <p>The rules:
 *
 * <ol>
 *   <li>Every span is strung exactly once, over all pieces.
 *   <li>No hole carries more than its bore; blocked holes carry nothing.
 *   <li>A run joins two different holes of one side, at most the run limit apart, and passes no
 *       forbidden stretch. Only the centre loop joins left and right.
 *   <li>The mains begin with the centre loop at the start end and go in from the axis outwards.
 *       Each end opens with mains 1 … n or 1 … n−1 of its own side; only main n may be strung by
 *       the other end, or after a cross.
 *   <li>Until main n of both sides is in, only the first two and the last two crosses of the order
 *       may be strung, outermost first at each end of the order; then the rest, in order. This
 *       needs 5 crosses and 4 mains a side; below that the openings are 1 … n. The least frame has
 *       2 mains a side and 2 crosses.
 *   <li>A knot is tied in a tie-off hole with a free knot place, 1 to knot-limit places from the
 *       exit on the same side, round a span through that hole that has had its own pull and is not
 *       that end's last. One knot a hole.
 *   <li>One piece: both ends string their opening mains in turn; then the short end strings all
 *       that it ever will, at most two crosses among them, and is tied (or waits for its anchor);
 *       only then does the long end go on. Two pieces: the mains, tied at both ends, then the
 *       crosses; or, once the short end is tied, the long end goes on into crosses and a second
 *       piece, begun when the long end is tied, strings the rest.
 * </ol>
 *
 * <p>Cost: the orders of passes are few (18 for one start end and direction on ordinary frames),
 * each linear in the spans. The search is exact, stateless and deterministic: the same bed and
 * request give the same result on every JVM.
 */
public final class RouteSearch {

  /**
   * String used up by each passage through the frame, in mm: our choice, a usual beam in the
   * string's plane.
   */
  public static final double PASSAGE_MM = 12.0;

  /**
   * How many crosses are strung before a starting clamp on the first one is replaced by a knot
   * (Racquet Sports Industry, "Starting clamp", 2004/03).
   */
  public static final int CROSSES_BEFORE_REPULL = 3;

  private RouteSearch() {}

  /**
   * Finds and ranks all routes of a bed.
   *
   * @param bed the bed
   * @param request what is asked
   */
  public static RouteResult search(Bed bed, RouteRequest request) {
    RouteRanking ranking = new RouteRanking(bed, request.preferences());
    Collector all = new Collector(bed, request, Set.of(), ranking, Wanted.ALL);
    boolean complete = all.run();
    List<Best> classes = new ArrayList<>(all.classes.values());
    classes.sort((a, b) -> ranking.compare(a.candidate, b.candidate));
    List<Candidate> candidates = new ArrayList<>(classes.size());
    classes.forEach(c -> candidates.add(c.candidate));
    List<RankedRoute> ranked = new ArrayList<>(classes.size());
    for (int i = 0; i < classes.size(); i++) {
      ranked.add(new RankedRoute(ranking, candidates, i, classes.get(i).variants));
    }
    RouteResult.Status status =
        !complete
            ? RouteResult.Status.LIMIT_REACHED
            : ranked.isEmpty() ? RouteResult.Status.PROVEN_ABSENT : RouteResult.Status.FOUND;
    boolean absent = status == RouteResult.Status.PROVEN_ABSENT;
    Obstacles obstacles = new Obstacles(bed, request);
    return new RouteResult(
        status,
        ranked,
        all.orders.size(),
        all.budget.nodes(),
        absent ? obstacles.smallestSet() : List.of(),
        absent ? obstacles.leastToLift() : List.of(),
        request);
  }

  /**
   * The best route of a bed, in less time than all of them: orders of passes that stand behind the
   * best so far, whatever their knots, are not knotted.
   *
   * @param bed the bed
   * @param request what is asked
   * @return what {@link #search} has first, or the best of what was seen before a limit was
   *     reached; empty when none was seen
   */
  public static Optional<Route> best(Bed bed, RouteRequest request) {
    RouteRanking ranking = new RouteRanking(bed, request.preferences());
    Collector some = new Collector(bed, request, Set.of(), ranking, Wanted.BEST);
    some.run();
    return some.classes.values().stream().map(c -> c.candidate).min(ranking).map(Candidate::route);
  }

  /**
   * Every way to knot a route's order of passes, each as a route of its own, best first.
   *
   * @param bed the bed the route was found for
   * @param request what was asked
   * @param route a route of that search
   */
  public static List<Route> knotVariants(Bed bed, RouteRequest request, Route route) {
    RouteRanking ranking = new RouteRanking(bed, request.preferences());
    RouteModel model = new RouteModel(bed, new RouteRules(bed.layout(), request, Set.of()));
    NodeBudget budget = new NodeBudget(request.maxNodes(), request.cancelled());
    VariantSearch variants = new VariantSearch(model, budget);
    List<Candidate> found = new ArrayList<>();
    List<List<Pass>> wanted = passes(route);
    try {
      new PassOrderSearch(
              model,
              budget,
              order -> {
                if (order.passes(model).equals(wanted) && allowed(model, order)) {
                  int departures = OrderTraits.departures(model, order);
                  int missed = OrderTraits.wishesMissed(model, order);
                  variants.forEach(
                      order,
                      (o, knots, strung) ->
                          found.add(new Candidate(model, o, knots, strung, departures, missed)));
                }
              })
          .run();
    } catch (NodeBudget.Spent e) {
      // The variants found so far are still variants.
    }
    found.sort(ranking);
    return found.stream().map(Candidate::route).distinct().toList();
  }

  /** What makes the order of a route: left passes, right passes, passes of the second piece. */
  private static List<List<Pass>> passes(Route route) {
    return List.of(
        route.passesFrom(Side.LEFT),
        route.passesFrom(Side.RIGHT),
        route.end(EndName.FINISH).map(StringEnd::passes).orElse(List.of()));
  }

  private static boolean allowed(RouteModel model, PassOrder order) {
    return model.rules.aroundTheWorld() || !OrderTraits.aroundTheWorld(model, order);
  }

  /**
   * Whether any route exists when these facts are set aside; a search that reaches its limit counts
   * as none.
   */
  static boolean anyRoute(Bed bed, RouteRequest request, Set<RouteRules.Fact> setAside) {
    Collector c =
        new Collector(
            bed, request, setAside, new RouteRanking(bed, request.preferences()), Wanted.ANY);
    c.run();
    return !c.classes.isEmpty();
  }

  /** How much is asked of a search. */
  private enum Wanted {
    ALL,
    BEST,
    ANY
  }

  /** The best candidate of a class of pass orders. */
  private static final class Best {
    Candidate candidate;
    int variants;

    Best(Candidate candidate) {
      this.candidate = candidate;
    }
  }

  /** Gathers the best candidate of each class. Confined to one call. */
  private static final class Collector implements VariantSearch.Sink {
    private final RouteModel model;
    private final RouteRanking ranking;
    private final VariantSearch variants;
    private final Wanted wanted;
    private final boolean mirrored;
    final NodeBudget budget;
    final Map<OrderKey, Best> classes = new LinkedHashMap<>();
    final Set<OrderKey> orders = new HashSet<>();

    // The best that stands for a class, as far as its order of passes goes.
    private @Nullable Candidate top;

    // The order of passes at hand: how many variants it has, the best of them, what holds for all.
    private int count;
    private @Nullable Candidate best;
    private int departures;
    private int wishesMissed;

    Collector(
        Bed bed,
        RouteRequest request,
        Set<RouteRules.Fact> setAside,
        RouteRanking ranking,
        Wanted wanted) {
      this.model = new RouteModel(bed, new RouteRules(bed.layout(), request, setAside));
      this.ranking = ranking;
      this.wanted = wanted;
      this.mirrored = bed.symmetric();
      this.budget = new NodeBudget(request.maxNodes(), request.cancelled());
      this.variants = new VariantSearch(model, budget);
    }

    /** Whether the search saw everything. */
    boolean run() {
      if (model.n < 2 || model.crosses < 2) {
        return true;
      }
      try {
        new PassOrderSearch(model, budget, this::order).run();
        return true;
      } catch (NodeBudget.Spent e) {
        return false;
      }
    }

    /**
     * Whether a candidate stands for its class rather than another. Among mirror images the maker's
     * wishes count first, then the short side is the maker's, or left: a hole drilled a little
     * unevenly does not turn the frame round.
     */
    private boolean represents(Candidate a, Candidate b) {
      if (mirrored && a.order.shortSide() != b.order.shortSide()) {
        int wishes = Integer.compare(a.wishesMissed, b.wishesMissed);
        if (wishes != 0) {
          return wishes < 0;
        }
        if (a.order.key().equals(b.order.mirrorKey(model))) {
          return a.order.shortSide() == model.usualShortSide;
        }
      }
      return ranking.compare(a, b) < 0;
    }

    private void order(PassOrder order) {
      if (!allowed(model, order)) {
        return;
      }
      count = 0;
      best = null;
      departures = OrderTraits.departures(model, order);
      wishesMissed = OrderTraits.wishesMissed(model, order);
      Candidate ahead = top;
      if (wanted == Wanted.BEST
          && ahead != null
          && ranking.isBehind(order, departures, wishesMissed, ahead)) {
        return;
      }
      variants.forEach(order, this);
      Candidate found = best;
      if (found == null) {
        return;
      }
      OrderKey key = order.key();
      orders.add(key);
      OrderKey mirror = mirrored ? order.mirrorKey(model) : key;
      OrderKey canonical = key.compareTo(mirror) <= 0 ? key : mirror;
      Best here = classes.get(canonical);
      if (here == null) {
        here = new Best(found);
        classes.put(canonical, here);
      } else if (represents(found, here.candidate)) {
        here.candidate = found;
      }
      if (here.candidate == found && (ahead == null || ranking.compare(found, ahead) < 0)) {
        top = found;
      }
      here.variants = Math.max(here.variants, count);
    }

    @Override
    public void variant(PassOrder order, KnotChoice[] knots, Strung strung) {
      count++;
      Candidate b = best;
      if (b != null && ranking.judgesByMeasures() && !ranking.better(model, knots, strung, b)) {
        return;
      }
      Candidate c = new Candidate(model, order, knots, strung, departures, wishesMissed);
      if (wanted == Wanted.ANY) {
        classes.put(order.key(), new Best(c));
        throw new NodeBudget.Spent(); // nothing more is asked
      }
      if (b == null || ranking.judgesByMeasures() || ranking.compare(c, b) < 0) {
        best = c;
      }
    }
  }
}
