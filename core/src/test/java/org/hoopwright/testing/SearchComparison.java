package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.route.StringEnd;
import org.hoopwright.testing.BruteForceRoutes.Found;
import org.hoopwright.testing.PlainBacktracking.Measuring;

/**
 * Compares a search for routes with a constraint solver, the set of orders and the best route, and
 * with plain backtracking, the best route.
 */
public final class SearchComparison {

  /**
   * What came out.
   *
   * @param orders how many orders of passes the solver has that can be knotted
   * @param differences each difference in words; none when both agree
   */
  public record Outcome(int orders, List<String> differences) {}

  private final Bed bed;
  private final RouteRequest request;
  private final RouteResult result;
  private final List<String> differences = new ArrayList<>();

  private SearchComparison(Bed bed, RouteRequest request) {
    this.bed = bed;
    this.request = request;
    this.result = RouteSearch.search(bed, request);
  }

  /**
   * Compares the orders of passes, and of the best routes the cost and, ties broken, the route.
   *
   * @param bed the bed
   * @param request what is asked; its preferences must be the standard ones
   */
  public static Outcome compare(Bed bed, RouteRequest request) {
    SearchComparison comparison = new SearchComparison(bed, request);
    int orders = comparison.orders();
    comparison.best();
    return new Outcome(orders, List.copyOf(comparison.differences));
  }

  private int orders() {
    Set<List<List<Pass>>> expected = new HashSet<>();
    for (Found order : ChocoRoutes.orders(bed, request)) {
      if (!expected.contains(order.passes())
          && BruteForceRoutes.canBeKnotted(bed, request, order)) {
        expected.add(order.passes());
      }
    }
    Set<List<List<Pass>>> own = new HashSet<>();
    for (RankedRoute ranked : result.ranked()) {
      List<List<Pass>> order = order(ranked.route());
      own.add(order);
      if (bed.symmetric()) {
        own.add(List.of(mirrored(order.get(1)), mirrored(order.get(0)), mirrored(order.get(2))));
      }
    }
    differ("number of orders", result.orders(), expected.size());
    expected.stream()
        .filter(o -> !own.contains(o))
        .forEach(o -> differences.add("The search misses the order " + o + "."));
    own.stream()
        .filter(o -> !expected.contains(o))
        .forEach(o -> differences.add("The solver does not have the order " + o + "."));
    return expected.size();
  }

  private void best() {
    Optional<ChocoRoutes.Best> best = ChocoRoutes.best(bed, request);
    differ("whether there is a route", result.best().isPresent(), best.isPresent());
    if (best.isEmpty() || result.best().isEmpty()) {
      return;
    }
    Route own = result.best().get();
    differ(
        "cost of the best",
        request.preferences().stream().map(p -> p.value(own, bed)).toList(),
        best.get().cost());
    same("the solver", own, Collections.min(best.get().routes(), new RouteTies(bed).comparator()));
    PlainBacktracking.best(bed, request, Measuring.BOUNDED)
        .ifPresentOrElse(
            found -> same("plain backtracking", own, found),
            () -> differences.add("Plain backtracking has no route."));
  }

  private void same(String judge, Route own, Found first) {
    differ(judge + ": start of the best", own.mainsStart(), first.start());
    differ(judge + ": direction of the best", own.direction(), first.direction());
    differ(judge + ": short side of the best", own.shortSide(), first.shortSide());
    differ(judge + ": order of the best", order(own), first.passes());
    differ(
        judge + ": knots of the best",
        own.pieces().stream().flatMap(p -> p.ends().stream()).map(StringEnd::finish).toList(),
        first.knots());
    differ(
        judge + ": starting clamp of the best",
        own.end(EndName.START).flatMap(StringEnd::startingClamp),
        first.startingClamp());
  }

  private void differ(String what, Object searched, Object judged) {
    if (!searched.equals(judged)) {
      differences.add("%s: the search has %s and not %s.".formatted(what, searched, judged));
    }
  }

  private static List<List<Pass>> order(Route route) {
    List<Pass> s = passes(route, EndName.SHORT);
    List<Pass> l = passes(route, EndName.LONG);
    boolean left = route.shortSide() == Side.LEFT;
    return List.of(left ? s : l, left ? l : s, passes(route, EndName.FINISH));
  }

  private static List<Pass> passes(Route route, EndName end) {
    return route.end(end).map(StringEnd::passes).orElse(List.of());
  }

  private static List<Pass> mirrored(List<Pass> passes) {
    return passes.stream()
        .map(p -> new Pass(p.span().mirrored(), p.from().mirrored(), p.to().mirrored()))
        .toList();
  }
}
