package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.route.EndName;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RoutePreferences;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.jspecify.annotations.Nullable;

/**
 * Finds the ways on from a half-done job, cheapest first: fewest strings undone, least new string,
 * fewest bridged tails, then the rank of the route.
 *
 * <p>Every route of the bed is held against the state; what the two have in common stays, the rest
 * comes out. Every route is also tried with the crosses, or everything, cut out, for the string
 * that is left may be too short.
 */
public final class WaysOn {

  /** A knot with less tail than is usual; see {@link Lengths#KNOT_TAIL_MM}. */
  private static final double USUAL_KNOT_MM = Lengths.KNOT_TAIL_MM;

  private final Bed before;
  private final HalfDone state;
  private final Bed bed;
  private final Job job;
  private final RouteRequest request;

  private WaysOn(Bed before, HalfDone state, Bed bed, Job job, RouteRequest request) {
    this.before = before;
    this.state = state;
    this.bed = bed;
    this.job = job;
    this.request = request;
  }

  /**
   * The ways on.
   *
   * @param before the bed on which it was strung
   * @param state what is strung, in that bed's names
   * @param bed the bed to go on with: the same, or another one of the same frame where a hole can
   *     no longer be used
   * @param job what is to be done
   * @param most how many ways are wanted, at least 1; when none of these meets all wishes of the
   *     frame's maker, the first that does is added
   * @return the ways, cheapest first; empty when the bed has no route
   */
  public static List<WayOn> find(Bed before, HalfDone state, Bed bed, Job job, int most) {
    if (most < 1) {
      throw new IllegalArgumentException(
          "The number of ways (%s) must be 1 or more.".formatted(most));
    }
    return new WaysOn(before, state, bed, job, job.routeRequest(bed.layout())).ways(most);
  }

  /** A route and what is cut out whatever it keeps. */
  private record Fit(Route route, int rank, Set<Integer> without, Kept kept) {}

  private List<WayOn> ways(int most) {
    List<WayOn> found = new ArrayList<>();
    boolean wishesMet = false;
    for (Fit fit : fits()) {
      boolean meets = RoutePreferences.MAKER.value(fit.route, bed) == 0;
      if (found.size() >= most && wishesMet) {
        break;
      }
      if (found.size() >= most && !meets) {
        continue;
      }
      Optional<WayOn> way = way(fit);
      if (way.isPresent()) {
        found.add(way.get());
        wishesMet |= meets;
      }
    }
    found.sort(CHEAPEST);
    return List.copyOf(found);
  }

  private static final Comparator<WayOn> CHEAPEST =
      Comparator.<WayOn>comparingInt(WayOn::spansUndone)
          .thenComparingDouble(w -> Math.rint(w.newStringMm()))
          .thenComparingInt(w -> w.bridged().size())
          .thenComparingInt(WayOn::wishesMissed);

  private List<Fit> fits() {
    List<Fit> fits = new ArrayList<>();
    int rank = 0;
    for (RankedRoute ranked : RouteSearch.search(bed, request).ranked()) {
      add(ranked.route(), rank++, fits);
      if (bed.symmetric()) {
        add(ranked.route().mirrored(), rank++, fits);
      }
    }
    fits.sort(
        Comparator.<Fit>comparingInt(f -> f.kept.undone())
            .thenComparingInt(f -> f.kept.cutOut().size())
            .thenComparingInt(f -> f.rank));
    return fits;
  }

  /**
   * A route as it is, with the crosses cut out, and with everything cut out, as far as it differs.
   */
  private void add(Route route, int rank, List<Fit> fits) {
    Set<Set<Integer>> seen = new HashSet<>();
    for (Set<Integer> without : List.of(Set.<Integer>of(), Set.of(1), Set.of(0, 1))) {
      Kept kept = kept(route, without);
      if (seen.add(Set.copyOf(kept.cutOut()))) {
        fits.add(new Fit(route, rank, without, kept));
      }
    }
  }

  private Kept kept(Route route, Set<Integer> without) {
    return Kept.of(state.on(bed).withShort(route.shortSide()), route, job.leadLimit(), without);
  }

  private Optional<WayOn> way(Fit fit) {
    WayOn best = null;
    for (Route variant : RouteSearch.knotVariants(bed, request, fit.route)) {
      // The same passes may be read with the other end as the short one.
      Kept kept =
          variant.shortSide() == fit.route.shortSide() ? fit.kept : kept(variant, fit.without);
      if (kept.knotsAgree(variant)) {
        Optional<WayOn> way = way(kept, variant, best);
        if (way.isPresent() && (best == null || CHEAPEST.compare(way.get(), best) < 0)) {
          best = way.get();
          if (best.bridged().isEmpty() && best.findings().isEmpty()) {
            break;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private Optional<WayOn> way(Kept kept, Route variant, @Nullable WayOn best) {
    HalfDone from = state.withShort(variant.shortSide());
    UndoScript undo = new UndoScript(before, job, from, kept);
    Optional<List<Step>> steps = undo.write();
    if (steps.isEmpty()) {
      return Optional.empty();
    }
    HalfDone after = undo.after().on(bed);
    Set<SpanId> bridged = new TreeSet<>();
    List<Finding> findings = new ArrayList<>();
    OptionalDouble rest = OptionalDouble.empty();
    for (StrungEnd end : open(after)) {
      TailNeed need = TailNeed.of(bed, variant, job, end.name(), end.passes().size(), end.tailMm());
      if (!need.enough()) {
        return Optional.empty();
      }
      bridged.addAll(need.bridged());
      if (end.name() == EndName.LONG) {
        rest = need.knotMm();
      }
      if (need.knotMm().orElse(USUAL_KNOT_MM) < USUAL_KNOT_MM) {
        findings.add(shortTail(variant, end.name(), need.knotMm().getAsDouble()));
      }
    }
    if (best != null && bridged.size() > best.bridged().size()) {
      return Optional.empty();
    }
    Optional<BenchPlan> plan = GoOn.plan(bed, variant, job, after, bridged);
    if (plan.isEmpty()) {
      return Optional.empty();
    }
    double fresh = newString(plan.get(), after, rest, findings);
    findings.addAll(plan.get().findings());
    return Optional.of(
        new WayOn(
            before,
            from,
            steps.get(),
            after,
            plan.get(),
            kept.undone(),
            kept.cutOut(),
            fresh,
            bridged,
            (int) RoutePreferences.MAKER.value(variant, bed),
            findings));
  }

  /** Ends that lie in the frame and are not knotted. */
  private static List<StrungEnd> open(HalfDone state) {
    return state.pieces().stream()
        .flatMap(p -> p.ends().stream())
        .filter(e -> e.knot().isEmpty() && !e.passes().isEmpty())
        .toList();
  }

  /** String for pieces that are not begun; the rest of the long end may serve for the crosses. */
  private static double newString(
      BenchPlan plan, HalfDone after, OptionalDouble rest, List<Finding> findings) {
    double mm = 0;
    for (int i = 0; i < plan.cutLengthsMm().size(); i++) {
      boolean begun = i < after.pieces().size() && !after.pieces().get(i).isEmpty();
      double need = plan.cutLengthsMm().get(i);
      if (begun) {
        continue;
      }
      if (i == 1 && rest.orElse(0) - Lengths.KNOT_TAIL_MM >= need) {
        findings.add(
            Finding.of(FindingCode.HALF_DONE)
                .message(
                    "What is left of the long end, about %s, is enough for the crosses."
                        .formatted(Say.mm(rest.getAsDouble() - Lengths.KNOT_TAIL_MM)))
                .fact("left", rest.getAsDouble() - Lengths.KNOT_TAIL_MM, "mm")
                .fix("Cut it off after the knot and use it.")
                .build());
        continue;
      }
      mm += need;
    }
    return mm;
  }

  private static Finding shortTail(Route route, EndName end, double mm) {
    return Finding.of(FindingCode.HALF_DONE)
        .about(route.end(end).orElseThrow().finish().hole())
        .message(
            "About %s are left for the knot of the %s end; usual are %s."
                .formatted(Say.mm(mm), end.word(), Say.mm(USUAL_KNOT_MM)))
        .fact("left", mm, "mm")
        .fact("usual", USUAL_KNOT_MM, "mm")
        .fix("Tie it with pliers or with a scrap of string joined to the tail.")
        .build();
  }
}
