package org.hoopwright.route;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.NoRun;
import org.hoopwright.route.RouteRules.Fact;

/**
 * Explains why a bed has no route: a smallest set of facts that together forbid every one, and what
 * to lift so that one appears. Both are found by setting facts aside one after the other and
 * keeping what makes a difference.
 */
final class Obstacles {

  private final Bed bed;
  private final RouteRequest request;
  private final List<Fact> facts;

  Obstacles(Bed bed, RouteRequest request) {
    this.bed = bed;
    this.request = request;
    this.facts = facts(bed.layout(), request);
  }

  /**
   * Facts that together forbid every route, whatever else there is, in the sense that dropping any
   * one of them from the set lets a route appear.
   */
  List<Obstacle> smallestSet() {
    Set<Fact> aside = new HashSet<>(facts);
    if (!anyRoute(aside)) {
      return List.of(
          new Obstacle(
              "A bed of %s mains a side and %s crosses is below the least frame, 2 mains a side and 2 crosses."
                  .formatted(bed.mainsPerSide(), bed.crossCount()),
              "",
              List.of(),
              "Check the counts of mains and crosses."));
    }
    aside.clear();
    for (Fact fact : facts) {
      aside.add(fact);
      if (anyRoute(aside)) {
        aside.remove(fact); // this fact is needed to forbid every route
      }
    }
    return named(fact -> !aside.contains(fact));
  }

  /**
   * Facts to lift together so that a route appears, none of them for nothing. The facts of the
   * smallest set need not do: there may be other reasons beside it.
   */
  List<Obstacle> leastToLift() {
    Set<Fact> aside = new HashSet<>(facts);
    if (!anyRoute(aside)) {
      return List.of();
    }
    for (Fact fact : facts) {
      aside.remove(fact);
      if (!anyRoute(aside)) {
        aside.add(fact); // nothing goes while this fact stands
      }
    }
    return named(aside::contains);
  }

  private boolean anyRoute(Set<Fact> aside) {
    return RouteSearch.anyRoute(bed, request, aside);
  }

  private List<Obstacle> named(Predicate<Fact> which) {
    return facts.stream().filter(which).map(f -> obstacle(f, bed.layout(), request)).toList();
  }

  /**
   * Everything that may forbid a route here, what is easiest to change last, so that it is named
   * when there is a choice.
   */
  private static List<Fact> facts(Layout layout, RouteRequest request) {
    List<Fact> facts = new ArrayList<>();
    for (int i = 0; i < layout.noRun().size(); i++) {
      facts.add(new Fact.Forbidden(i));
    }
    if (!layout.aroundTheWorld()) {
      facts.add(Fact.Single.NO_AROUND_THE_WORLD);
    }
    if (layout.mainsStart().isPresent()) {
      facts.add(Fact.Single.LAYOUT_START);
    }
    facts.add(Fact.Single.RUN_LIMIT);
    facts.add(Fact.Single.TIE_OFF_HOLES);
    facts.add(Fact.Single.KNOT_LIMIT);
    if (request.startingClamps() == 0) {
      facts.add(Fact.Single.NO_STARTING_CLAMP);
    }
    if (request.crossesOfOtherString()) {
      facts.add(Fact.Single.OTHER_STRING);
    }
    if (request.mainsStart().isPresent()) {
      facts.add(Fact.Single.WANTED_START);
    }
    if (request.direction().isPresent()) {
      facts.add(Fact.Single.WANTED_DIRECTION);
    }
    if (request.pieces().isPresent()) {
      facts.add(Fact.Single.WANTED_PIECES);
    }
    return facts;
  }

  private static Obstacle obstacle(Fact fact, Layout layout, RouteRequest request) {
    if (fact instanceof Fact.Forbidden f) {
      NoRun stretch = layout.noRun().get(f.index());
      return new Obstacle(
          "No run may pass from " + stretch.from() + " to " + stretch.to() + ".",
          "/holes/noRun/" + f.index(),
          List.of(stretch.from().toString(), stretch.to().toString()),
          "Check on the frame whether a string really may not lie there.");
    }
    return switch ((Fact.Single) fact) {
      case RUN_LIMIT ->
          new Obstacle(
              "A run is at most " + request.runLimit() + " places long.",
              "",
              List.of(),
              "Allow a longer run with the run limit, if the frame's outside leaves room for it.");
      case KNOT_LIMIT ->
          new Obstacle(
              "A knot is at most " + request.knotLimit() + " places from the exit.",
              "",
              List.of(),
              "Allow a farther knot with the knot limit.");
      case TIE_OFF_HOLES ->
          new Obstacle(
              layout.tieOff().isEmpty()
                  ? "The layout names no tie-off hole."
                  : "Knots can be tied only in the tie-off holes " + joined(layout) + ".",
              "/holes/tieOff",
              layout.tieOff().stream().map(Object::toString).toList(),
              "Look for further holes wide enough for a knot near the exits, and name them in holes.tieOff.");
      case WANTED_PIECES ->
          new Obstacle(
              "Only routes of " + request.pieces().orElse(0) + " piece(s) are wanted.",
              "",
              List.of(),
              "Allow one and two pieces.");
      case WANTED_DIRECTION ->
          new Obstacle(
              "Only crosses " + request.direction().map(d -> d.word()).orElse("") + " are wanted.",
              "",
              List.of(),
              "Allow both directions.");
      case OTHER_STRING ->
          new Obstacle(
              "The crosses are of another string than the mains.",
              "",
              List.of(),
              "String mains and crosses alike.");
      case WANTED_START ->
          new Obstacle(
              "Only mains that start at the "
                  + request.mainsStart().map(e -> e.word()).orElse("")
                  + " are wanted.",
              "",
              List.of(),
              "Allow the mains to start at either end.");
      case LAYOUT_START ->
          new Obstacle(
              "The mains start at the " + layout.mainsStart().map(e -> e.word()).orElse("") + ".",
              "/mains/start",
              List.of(),
              "Check whether the frame's maker allows the mains to start at the other end.");
      case NO_AROUND_THE_WORLD ->
          new Obstacle(
              "The frame's maker forbids around-the-world.",
              "/aroundTheWorld",
              List.of(),
              "Check the maker's instructions.");
      case NO_STARTING_CLAMP ->
          new Obstacle(
              "The bench has no starting clamp to begin the crosses with.",
              "",
              List.of(),
              "Use a starting clamp, if there is one.");
    };
  }

  private static String joined(Layout layout) {
    return String.join(", ", layout.tieOff().stream().map(Object::toString).toList());
  }
}
