package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Start;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Willowbank;

/** Plans for the teaching frame, written by hand: 2 mains a side, 4 crosses. */
final class SmallPlans {

  private static final PlanText THROAT = makeThroatStart();
  private static final PlanText HEAD = makeHeadStart();
  private static final PlanText KNOT = makeStartingKnot();
  private static final PlanText CLAMP = makeStartingClamp();

  private SmallPlans() {}

  static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  /** A route of this notation whose short side is the left one. */
  static Route route(Bed bed, RouteRequest request, Predicate<Route> wanted) {
    return RouteSearch.search(bed, request).ranked().stream()
        .map(RankedRoute::route)
        .flatMap(r -> RouteSearch.knotVariants(bed, request, r).stream())
        .filter(r -> r.shortSide() == Side.LEFT && wanted.test(r))
        .findFirst()
        .orElseThrow();
  }

  /** Just far enough from a hole for a clamp to leave the crossing of this span open. */
  private static double beyond(Bed bed, String span, String hole, String open) {
    SpanId id = SpanId.of(span);
    Crossing c =
        bed.crossings(id).stream()
            .filter(x -> x.cross().equals(SpanId.of(open)))
            .findFirst()
            .orElseThrow();
    double at =
        bed.span(id).from().equals(HoleId.of(hole))
            ? c.fromHeadMm()
            : bed.span(id).lengthMm() - c.fromHeadMm();
    return Math.ceil(at) + 5;
  }

  /** Mains from the throat, one piece, the anchor main is L2. */
  static PlanText throatStart() {
    return THROAT;
  }

  private static PlanText makeThroatStart() {
    Bed bed = bed(Willowbank.teaching().build());
    Route route =
        route(
            bed,
            RouteRequest.builder().pieces(1).mainsStart(End.THROAT).build(),
            r -> RouteNotation.passes(r).equals("short L1-L2 | long R1-R2 X4-X1"));
    Start start =
        new Start(
            StartMethod.ANCHOR_MAIN,
            SpanId.of("L2"),
            Optional.of(HoleId.of("L2T")),
            Optional.empty());
    double d = beyond(bed, "R2", "R2T", "X4");
    return new PlanText(
        bed,
        route,
        Job.standard(),
        start,
        List.of(),
        List.of(
            "check",
            "cut 0",
            "lace short L1",
            "lace short L2",
            "lace long R1",
            "lace long R2",
            "pull L2 L2T R2 R2T",
            "set machine-1 L2 L2H 15",
            "outside starting-1 L2 L2T 12",
            "release",
            "unlace long R2",
            "unlace long R1",
            "pull L1 L1T",
            "set machine-2 L1 L1T 15",
            "release",
            "lace long R1",
            "pull R1 R1H",
            "free machine-2",
            "set machine-2 R1 R1H 15",
            "release",
            "lace long R2",
            "pull R2 R2T",
            "free machine-2",
            "set machine-2 R2 R2T " + d,
            "release",
            "pull L2 L2T",
            "free starting-1",
            "free machine-1",
            "set machine-1 L2 L2T 15",
            "release",
            "knot short",
            "free machine-1",
            "trim short",
            "weave long X4",
            "pull X4 L3T",
            "free machine-2",
            "set machine-2 X4 L3T 15",
            "release",
            "weave long X3",
            "pull X3 R4T",
            "free machine-2",
            "set machine-2 X3 R4T 15",
            "release",
            "weave long X2",
            "pull X2 L4H",
            "free machine-2",
            "set machine-2 X2 L4H 15",
            "release",
            "weave long X1",
            "pull X1 R3H",
            "free machine-2",
            "set machine-2 X1 R3H 15",
            "release",
            "knot long",
            "free machine-2",
            "trim long",
            "check"));
  }

  /** Mains from the head, one piece, the anchor main is L1. */
  static PlanText headStart() {
    return HEAD;
  }

  private static PlanText makeHeadStart() {
    Bed bed = bed(Willowbank.teaching().build());
    Route route =
        route(
            bed,
            RouteRequest.builder().pieces(1).mainsStart(End.HEAD).build(),
            r -> RouteNotation.passes(r).equals("short L1-L2 | long R1-R2 X1-X4"));
    Start start =
        new Start(
            StartMethod.ANCHOR_MAIN,
            SpanId.of("L1"),
            Optional.of(HoleId.of("L1T")),
            Optional.empty());
    double d = beyond(bed, "R2", "R2H", "X1");
    return new PlanText(
        bed,
        route,
        Job.standard(),
        start,
        List.of(),
        List.of(
            "cut 0",
            "lace short L1",
            "lace long R1",
            "pull L1 L1T R1 R1T",
            "set machine-1 L1 L1H 15",
            "outside starting-1 L1 L1T 12",
            "release",
            "unlace long R1",
            "lace long R1",
            "pull R1 R1T",
            "set machine-2 R1 R1T 15",
            "release",
            "lace long R2",
            "pull R2 R2H",
            "free machine-2",
            "set machine-2 R2 R2H " + d,
            "release",
            "pull L1 L1T",
            "free starting-1",
            "free machine-1",
            "set machine-1 L1 L1T 15",
            "release",
            "lace short L2",
            "pull L2 L2H",
            "free machine-1",
            "set machine-1 L2 L2H 15",
            "release",
            "knot short",
            "free machine-1",
            "weave long X1",
            "pull X1 L3H",
            "free machine-2",
            "set machine-2 X1 L3H 15",
            "release",
            "weave long X2",
            "pull X2 R4H",
            "free machine-2",
            "set machine-2 X2 R4H 15",
            "release",
            "weave long X3",
            "pull X3 L4T",
            "free machine-2",
            "set machine-2 X3 L4T 15",
            "release",
            "weave long X4",
            "pull X4 R3T",
            "free machine-2",
            "set machine-2 X4 R3T 15",
            "release",
            "knot long",
            "free machine-2",
            "trim short",
            "trim long"));
  }

  /** Two pieces, crosses from the head with a starting knot. */
  static PlanText startingKnot() {
    return KNOT;
  }

  private static PlanText makeStartingKnot() {
    return twoPieces(true, List.of("knot start", "weave finish X1"), List.of());
  }

  /** Two pieces, crosses from the head with a starting clamp that a knot replaces. */
  static PlanText startingClamp() {
    return CLAMP;
  }

  private static PlanText makeStartingClamp() {
    return twoPieces(
        false,
        List.of("weave finish X1", "outside starting-1 X1 L3H 0"),
        List.of(
            "pull X1 L3H",
            "free starting-1",
            "set machine-2 X1 L3H 15",
            "release",
            "knot start",
            "free machine-2"));
  }

  /**
   * The same on a frame whose head zone reaches to the first cross: the search offers no such
   * start, so the route is that of the other frame.
   */
  static PlanText startingClampInHeadZone() {
    PlanText plan = startingClamp();
    return plan.on(
        bed(
            Willowbank.teaching()
                .tieOff("1H", "2H", "1T", "2T")
                .headZone(Willowbank.both("3H"))
                .build()));
  }

  private static PlanText twoPieces(boolean knot, List<String> first, List<String> afterThird) {
    Bed bed = bed(Willowbank.teaching().tieOff("1H", "2H", "1T", "2T").build());
    Route route =
        route(
            bed,
            RouteRequest.builder().pieces(2).mainsStart(End.HEAD).build(),
            r ->
                RouteNotation.passes(r).equals("short L1-L2 | long R1-R2 | finish X1-X4")
                    && r.pieces().get(1).ends().get(0).startingClamp().isPresent() != knot
                    && r.pieces()
                        .get(1)
                        .ends()
                        .get(1)
                        .passes()
                        .get(0)
                        .from()
                        .equals(HoleId.of("L3H")));
    Start start =
        new Start(
            StartMethod.ANCHOR_MAIN,
            SpanId.of("L1"),
            Optional.of(HoleId.of("L1T")),
            Optional.empty());
    List<String> lines = new java.util.ArrayList<>();
    lines.addAll(
        List.of(
            "cut 0",
            "lace short L1",
            "lace long R1",
            "pull L1 L1T R1 R1T",
            "set machine-1 L1 L1H 15",
            "outside starting-1 L1 L1T 12",
            "release",
            "unlace long R1",
            "lace long R1",
            "pull R1 R1T",
            "set machine-2 R1 R1T 15",
            "release",
            "lace long R2",
            "pull R2 R2H",
            "free machine-2",
            "set machine-2 R2 R2H 15",
            "release",
            "pull L1 L1T",
            "free starting-1",
            "free machine-1",
            "set machine-1 L1 L1T 15",
            "release",
            "lace short L2",
            "pull L2 L2H",
            "free machine-1",
            "set machine-1 L2 L2H 15",
            "release",
            "knot short",
            "free machine-1",
            "knot long",
            "free machine-2",
            "trim short",
            "trim long",
            "cut 1"));
    lines.addAll(first);
    lines.addAll(
        List.of(
            "pull X1 R3H",
            "set machine-1 X1 R3H 15",
            "release",
            "weave finish X2",
            "pull X2 L4H",
            "free machine-1",
            "set machine-1 X2 L4H 15",
            "release",
            "weave finish X3",
            "pull X3 R4T",
            "free machine-1",
            "set machine-1 X3 R4T 15",
            "release"));
    lines.addAll(afterThird);
    lines.addAll(
        List.of(
            "weave finish X4",
            "pull X4 L3T",
            "free machine-1",
            "set machine-1 X4 L3T 15",
            "release",
            "knot finish",
            "free machine-1",
            "trim start",
            "trim finish"));
    return new PlanText(bed, route, Job.standard(), start, List.of(), lines);
  }

  /** Asserts that a plan breaks this rule, with a message that holds these words. */
  static void expect(Invariant invariant, PlanText plan, String... words) {
    List<Breach> breaches = plan.breaches();
    assertThat(breaches)
        .as("a breach of %s with %s", invariant, List.of(words))
        .anyMatch(
            b -> b.invariant() == invariant && Stream.of(words).allMatch(b.message()::contains));
  }
}
