package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import org.hoopwright.bed.Bed;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.testing.BruteForceRoutes.Found;

/**
 * Routes found by a constraint solver, under the same rules and the usual ranking. It shares no
 * code with the search that it judges: one model for each start end, direction, short side and pair
 * of openings, solved for the lexicographic minimum of the cost by branch and bound.
 */
public final class ChocoRoutes {

  /**
   * The best that there is.
   *
   * @param cost the values of the usual preferences, most important first
   * @param routes every route of this cost, in no useful order, without time order
   */
  public record Best(List<Long> cost, List<Found> routes) {}

  private ChocoRoutes() {}

  /** Whether there is any route, knots and all. */
  public static boolean anyRoute(Bed bed, RouteRequest request) {
    for (Openings openings : Openings.all(bed, request)) {
      Model model = new Model();
      ChocoSequence sequence =
          new ChocoSequence(model, new ChocoReading(openings), Optional.empty());
      model.getSolver().setSearch(Search.inputOrderLBSearch(sequence.code));
      while (model.getSolver().solve()) {
        if (BruteForceRoutes.canBeKnotted(bed, request, sequence.found(List.of(), false))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Every order of passes in every reading, without knots. */
  public static List<Found> orders(Bed bed, RouteRequest request) {
    List<Found> found = new ArrayList<>();
    for (Openings openings : Openings.all(bed, request)) {
      Model model = new Model();
      ChocoSequence sequence =
          new ChocoSequence(model, new ChocoReading(openings), Optional.empty());
      model.getSolver().setSearch(Search.inputOrderLBSearch(sequence.code));
      while (model.getSolver().solve()) {
        found.add(sequence.found(List.of(), false));
      }
    }
    return found;
  }

  /** The least cost and the readings that reach it. */
  private record Least(List<Integer> cost, List<Openings> readings) {

    List<Long> values() {
      return cost.stream().map(Integer::longValue).toList();
    }
  }

  /**
   * The routes of least cost, knots and all; empty when there is no route. Of mirror images on a
   * symmetric bed only the one counts that the maker asks for, else the one with the short side the
   * maker's, or left.
   */
  public static Optional<Best> best(Bed bed, RouteRequest request) {
    return least(bed, request)
        .map(
            least ->
                new Best(
                    least.values(),
                    least.readings.stream().flatMap(r -> atCost(r, least.cost).stream()).toList()));
  }

  /** What {@link #best} costs, without its routes. */
  public static Optional<List<Long>> leastCost(Bed bed, RouteRequest request) {
    return least(bed, request).map(Least::values);
  }

  /** Solves one reading after the other, each under the best cost so far. */
  private static Optional<Least> least(Bed bed, RouteRequest request) {
    Least least = null;
    for (Openings openings : Openings.all(bed, request)) {
      if (openings.represents()) {
        List<Integer> own = least(openings, least == null ? List.of() : least.cost).orElse(null);
        if (own != null) {
          List<Openings> readings = new ArrayList<>();
          if (least != null && least.cost.equals(own)) {
            readings.addAll(least.readings);
          }
          readings.add(openings);
          least = new Least(own, readings);
        }
      }
    }
    return Optional.ofNullable(least);
  }

  /** The least cost of a reading that has a route of at most this cost; no bound when empty. */
  private static Optional<List<Integer>> least(Openings openings, List<Integer> bound) {
    ChocoCost model = new ChocoCost(openings);
    if (!bound.isEmpty()) {
      IntVar[] most = bound.stream().map(model.model()::intVar).toArray(IntVar[]::new);
      model.model().lexLessEq(model.cost, most).post();
    }
    return Optional.ofNullable(model.solver().findLexOptimalSolution(model.cost, false))
        .map(best -> Arrays.stream(model.cost).map(best::getIntVal).toList());
  }

  private static List<Found> atCost(Openings openings, List<Integer> cost) {
    ChocoCost model = new ChocoCost(openings);
    for (int i = 0; i < cost.size(); i++) {
      model.model().arithm(model.cost[i], "=", cost.get(i)).post();
    }
    List<Found> found = new ArrayList<>();
    Solver solver = model.solver();
    while (solver.solve()) {
      found.add(model.found());
    }
    return found;
  }
}
