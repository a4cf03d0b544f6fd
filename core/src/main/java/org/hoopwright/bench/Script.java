package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;
import org.hoopwright.units.Force;

/**
 * A plan being written: its steps so far, which clamp holds which end, and what is laced. Confined
 * to one call of the planner.
 */
final class Script {

  /** No place on a span is free for a clamp that the route needs there. */
  static final class NoPlaceForClamp extends Exception {
    private static final long serialVersionUID = 1L;

    NoPlaceForClamp(String message) {
      super(message, null, false, false);
    }
  }

  /** A machine clamp that holds an end: which, and on which span. */
  private record Holding(String clamp, SpanId span) {}

  final Bed bed;
  final Route route;
  final Job job;
  final List<Step> steps = new ArrayList<>();
  final List<Finding> findings = new ArrayList<>();
  final List<SpanId> laced = new ArrayList<>();
  private final ClampPlacing placing;
  private final KeptOpen keptOpen;
  private final RunsBeside beside;
  private final Map<EndName, Holding> holding = new EnumMap<>(EndName.class);
  private final Map<EndName, Integer> done = new EnumMap<>(EndName.class);
  private final Set<EndName> knotted = new TreeSet<>();
  private final Set<SpanId> bridged = new TreeSet<>();
  String startingClamp = "starting-1";

  Script(Bed bed, Route route, Job job) {
    this.bed = bed;
    this.route = route;
    this.job = job;
    this.placing = new ClampPlacing(bed, job.bench());
    this.keptOpen = new KeptOpen(bed, route);
    this.beside = new RunsBeside(bed, route);
  }

  /** Says that an end has strung its first passes already, and whether it is knotted. */
  void done(EndName end, int passes, boolean knot) {
    done.put(end, passes);
    if (knot) {
      knotted.add(end);
    }
  }

  /** How many passes an end had strung before the plan begins. */
  int done(EndName end) {
    return done.getOrDefault(end, 0);
  }

  /** Whether a moment of the route was done before the plan begins. */
  boolean done(Moment m) {
    return m.what() == Moment.What.PASS ? m.pass() < done(m.end()) : knotted.contains(m.end());
  }

  /** Spans whose tails do not reach the tensioner when they are pulled. */
  void bridge(Set<SpanId> spans) {
    bridged.addAll(spans);
  }

  void add(Step step) {
    steps.add(step);
  }

  int piece(EndName end) {
    return end == EndName.SHORT || end == EndName.LONG ? 0 : 1;
  }

  StringEnd end(EndName name) {
    return route.end(name).orElseThrow();
  }

  Pass pass(EndName end, int index) {
    return end(end).passes().get(index);
  }

  Force reference(SpanId span) {
    return job.tension(span, bed.layout());
  }

  /**
   * Laces or weaves a pass; what must be kept open for later passes is said first, and how it lies
   * beside strings that are there already last.
   */
  void thread(EndName end, int index) {
    Pass pass = pass(end, index);
    keptOpen.before(end, Moment.What.PASS, index).forEach(say -> add(new Step.Check(say)));
    boolean woven =
        bed.crossings(pass.span()).stream()
            .anyMatch(c -> laced.contains(pass.span().isMain() ? c.cross() : c.main()));
    String say = (woven ? Say.weave(bed, pass, laced) : Say.lace(pass)) + beside.pass(pass);
    add(
        woven
            ? new Step.Weave(pass.span(), pass.from(), pass.to(), piece(end), end, say)
            : new Step.Lace(pass.span(), pass.from(), pass.to(), piece(end), end, say));
    laced.add(pass.span());
  }

  /** Pulls the last threaded pass of an end, moves the end's clamp to it and lets go. */
  void pullAndClamp(EndName end, int index, String freshClamp) throws NoPlaceForClamp {
    Pass pass = pass(end, index);
    pull(pass.span(), pass.to(), tension(end, index));
    moveClamp(end, index, freshClamp);
    release();
  }

  /** The reference tension of a pass, with what is added for the last one before a knot. */
  Force tension(EndName end, int index) {
    Force reference = reference(pass(end, index).span());
    boolean last = index + 1 == end(end).passes().size();
    return last ? Force.ofNewtons(reference.newtons() + job.lastPullExtra().newtons()) : reference;
  }

  void pull(SpanId span, HoleId at, Force tension) {
    if (bridged.contains(span)) {
      add(new Step.Check(Say.bridge(span, at)));
    }
    add(new Step.Pull(List.of(span), List.of(at), tension, Say.pull(span, at)));
  }

  void release() {
    add(new Step.Release("Let the tensioner go."));
  }

  /** Moves the end's machine clamp, or a fresh one, to the exit of a pass while the grip holds. */
  void moveClamp(EndName end, int index, String freshClamp) throws NoPlaceForClamp {
    Holding held = holding.get(end);
    String clamp = held == null ? freshClamp : held.clamp();
    if (held != null) {
      add(new Step.FreeClamp(clamp, Say.free(clamp, held.span())));
    }
    Pass pass = pass(end, index);
    List<SpanId> open = wovenMeanwhile(end, index);
    setInside(clamp, pass.span(), pass.to(), open, index + 1 == end(end).passes().size());
    holding.put(end, new Holding(clamp, pass.span()));
  }

  /** Sets a machine clamp inside, clear of the spans that are woven while it is there. */
  void setInside(String clamp, SpanId span, HoleId near, List<SpanId> open, boolean beforeKnot)
      throws NoPlaceForClamp {
    Optional<Double> place = placing.distance(span, near, open);
    if (place.isEmpty()) {
      throw new NoPlaceForClamp(
          "No place on " + span + " near " + near + " is clear of " + open + " for " + clamp + ".");
    }
    double distance = place.get();
    add(
        new Step.SetClamp(
            clamp, span, near, distance, ClampSide.INSIDE, Say.set(clamp, span, near, distance)));
    if (distance > job.bench().clampDistanceMm()) {
      findings.add(away(clamp, span, near, distance, open, beforeKnot));
    }
  }

  /** Whether a clamp on the exit of a pass is in the way of what is woven while it is there. */
  boolean inTheWay(EndName end, int index, double distanceMm) {
    Pass pass = pass(end, index);
    return !placing.clearAt(distanceMm, pass.span(), pass.to(), wovenMeanwhile(end, index));
  }

  private Finding away(
      String clamp,
      SpanId span,
      HoleId near,
      double distance,
      List<SpanId> open,
      boolean beforeKnot) {
    double share = distance / bed.span(span).lengthMm();
    String cost =
        beforeKnot
            ? "when it comes off after the knot, %s loses about %s %% of its tension"
                .formatted(span, Math.round(100 * share))
            : "that slack is taken up by the next pull";
    List<SpanId> met =
        open.stream()
            .filter(
                o ->
                    bed.crossings(span).stream()
                        .anyMatch(c -> c.main().equals(o) || c.cross().equals(o)))
            .toList();
    return Finding.of(FindingCode.CLAMP_AWAY)
        .about(span)
        .about(near)
        .fact("away", distance, "mm")
        .message(
            "%s sits %s from %s on %s, beyond %s; %s."
                .formatted(
                    clamp,
                    Say.mm(distance),
                    near,
                    span,
                    String.join(", ", met.stream().map(SpanId::toString).toList()),
                    cost))
        .fix(
            beforeKnot
                ? "Add a little to that pull if the maker's limit leaves room for it."
                : "Nothing needs doing; mind that the end of the span stays slack until then.")
        .build();
  }

  /** Spans that are threaded while the clamp of this end sits on the exit of this pass. */
  private List<SpanId> wovenMeanwhile(EndName end, int index) {
    List<SpanId> open = new ArrayList<>();
    boolean counting = false;
    for (Moment m : route.order()) {
      boolean own = m.end() == end;
      if (own && m.what() == Moment.What.PASS && m.pass() == index) {
        counting = true;
      } else if (counting && m.what() == Moment.What.PASS && !done(m)) {
        open.add(pass(m.end(), m.pass()).span());
        if (own) {
          return open;
        }
      } else if (counting && own && m.what() == Moment.What.KNOT) {
        return open;
      }
    }
    return open;
  }

  /** Knots an end while its clamp holds, then takes the clamp off. */
  void tie(EndName end) {
    keptOpen.before(end, Moment.What.KNOT, -1).forEach(say -> add(new Step.Check(say)));
    Knot knot = end(end).finish();
    add(
        new Step.TieKnot(
            knot.hole(),
            knot.anchor(),
            knot.kind(),
            piece(end),
            end,
            Say.knot(end, knot) + beside.knot(end, knot.hole())));
    Holding held = holding.remove(end);
    if (held != null) {
      add(new Step.FreeClamp(held.clamp(), Say.free(held.clamp(), held.span())));
    }
  }

  void hold(EndName end, String clamp, SpanId span) {
    holding.put(end, new Holding(clamp, span));
  }

  /** A machine clamp that holds nothing. */
  String freeMachineClamp() {
    for (int i = 1; ; i++) {
      String name = "machine-" + i;
      if (holding.values().stream().noneMatch(h -> h.clamp().equals(name))) {
        return name;
      }
    }
  }
}
