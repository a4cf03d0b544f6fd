package org.hoopwright.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteResult;

/** Orders of passes that two beds allow, held against each other by the names of the spans. */
final class PassOrders {

  private PassOrders() {}

  static Facts count(RouteResult result) {
    Facts facts = new Facts();
    String many =
        switch (result.status()) {
          case FOUND ->
              result.orders() == 1 ? "1 order of passes" : result.orders() + " orders of passes";
          case PROVEN_ABSENT -> "no order of passes";
          case LIMIT_REACHED -> result.orders() + " orders of passes or more";
        };
    facts.add(Topic.ROUTES, "routes", many, "the rules allow", many);
    return facts;
  }

  static List<Difference> onlyInOne(
      Bed first, RouteResult ofFirst, Bed second, RouteResult ofSecond) {
    List<Difference> found = new ArrayList<>();
    Set<String> a = keys(first, ofFirst);
    Set<String> b = keys(second, ofSecond);
    if (seenAll(ofSecond)) {
      missing(first, ofFirst, b, true, found);
    }
    if (seenAll(ofFirst)) {
      missing(second, ofSecond, a, false, found);
    }
    return found;
  }

  private static boolean seenAll(RouteResult result) {
    return result.status() != RouteResult.Status.LIMIT_REACHED;
  }

  private static Set<String> keys(Bed bed, RouteResult result) {
    Set<String> keys = new LinkedHashSet<>();
    result.ranked().forEach(r -> images(bed, r.route()).forEach(i -> keys.add(key(i))));
    return keys;
  }

  /** The route, and on a symmetric bed its mirror image. */
  private static List<Route> images(Bed bed, Route route) {
    return bed.symmetric() ? List.of(route, route.mirrored()) : List.of(route);
  }

  /** What makes an order of passes, whichever end is called short. */
  private static String key(Route route) {
    List<String> ends =
        new ArrayList<>(List.of(route.mainsStart().word(), route.direction().word()));
    for (Side side : Side.values()) {
      EndName end = side == route.shortSide() ? EndName.SHORT : EndName.LONG;
      ends.add(route.end(end).map(e -> Show.passes(e.passes())).orElse(""));
    }
    ends.add(route.end(EndName.FINISH).map(e -> Show.passes(e.passes())).orElse(""));
    return String.join(" | ", ends);
  }

  private static void missing(
      Bed bed, RouteResult result, Set<String> other, boolean inFirst, List<Difference> found) {
    for (int i = 0; i < result.ranked().size(); i++) {
      List<Route> gone =
          images(bed, result.ranked().get(i).route()).stream()
              .filter(image -> !other.contains(key(image)))
              .toList();
      if (gone.isEmpty()) {
        continue;
      }
      String order = order(gone.get(0)) + (gone.size() == 2 ? "; or its mirror image" : "");
      String rank = "rank " + (i + 1);
      found.add(
          new Difference(
              Topic.ROUTES_ORDER,
              order,
              inFirst ? Optional.of(rank) : Optional.empty(),
              inFirst ? Optional.empty() : Optional.of(rank),
              "Only the %s allows (%s): %s.".formatted(inFirst ? "first" : "second", rank, order)));
    }
  }

  private static String order(Route route) {
    List<String> parts = new ArrayList<>();
    for (EndName end : List.of(EndName.SHORT, EndName.LONG, EndName.FINISH)) {
      route.end(end).ifPresent(e -> parts.add(end.word() + " " + Show.passes(e.passes())));
    }
    return String.join(" | ", parts) + ", mains from the " + route.mainsStart().word();
  }
}
