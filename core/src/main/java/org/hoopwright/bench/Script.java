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

  /**
   * What holds an end.
   *
   * @param span the span that is held
   * @param at the hole near which it is held
   * @param machine the machine clamp inside
   * @param starting the starting clamp outside: behind the machine clamp, or alone
   */
  private record Holding(
      SpanId span, HoleId at, Optional<String> machine, Optional<String> starting) {}

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
  final StartingClamps startingClamps;

  Script(Bed bed, Route route, Job job) {
    this.bed = bed;
    this.route = route;
    this.job = job;
    this.placing = new ClampPlacing(bed, job.bench());
    this.keptOpen = new KeptOpen(bed, route);
    this.beside = new RunsBeside(bed, route);
    this.startingClamps = new StartingClamps(bed, job);
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
    startingClamps.pulled(span);
  }

  void release() {
    add(new Step.Release("Let the tensioner go."));
  }

  /**
   * Moves what holds the end to the exit of a pass while the grip holds: its machine clamp, or a
   * fresh one, with a starting clamp behind it where that is called for; or a starting clamp alone
   * where the end waits for its knot.
   */
  void moveClamp(EndName end, int index, String freshClamp) throws NoPlaceForClamp {
    Holding held = holding.get(end);
    if (held != null) {
      comeOff(held);
    }
    String clamp = held == null ? freshClamp : held.machine().orElse(freshClamp);
    Pass pass = pass(end, index);
    List<SpanId> open = wovenMeanwhile(end, index);
    boolean last = index + 1 == end(end).passes().size();
    StartingClamps.Place place =
        new StartingClamps.Place(
            pass.span(), pass.to(), tension(end, index), firstCrossMeanwhile(end, index));
    if (last && open.stream().anyMatch(SpanId::isCross)) {
      boolean away = placing.distance(pass.span(), pass.to(), open).filter(this::usual).isEmpty();
      Optional<String> third = startingClamps.third(place, away);
      if (third.isPresent()) {
        add(
            new Step.SetClamp(
                third.get(),
                pass.span(),
                pass.to(),
                0,
                ClampSide.OUTSIDE,
                Say.third(third.get(), pass.span(), pass.to())));
        holding.put(end, new Holding(pass.span(), pass.to(), Optional.empty(), third));
        return;
      }
    }
    setInside(clamp, pass.span(), pass.to(), open, last);
    hold(end, clamp, pass.span(), pass.to(), backUp(clamp, place));
  }

  private boolean usual(double distanceMm) {
    return distanceMm <= job.bench().clampDistanceMm();
  }

  /** Sets a starting clamp behind a machine clamp where that is called for. */
  Optional<String> backUp(String machine, StartingClamps.Place place) {
    Optional<String> behind = startingClamps.behind(place);
    behind.ifPresent(
        name ->
            add(
                new Step.SetClamp(
                    name,
                    place.span(),
                    place.at(),
                    0,
                    ClampSide.OUTSIDE,
                    Say.behind(name, place.span(), place.at(), machine))));
    return behind;
  }

  private void comeOff(Holding held) {
    held.starting()
        .ifPresent(
            name -> {
              add(new Step.FreeClamp(name, Say.free(name, held.span())));
              startingClamps.giveBack(name);
            });
    held.machine().ifPresent(name -> add(new Step.FreeClamp(name, Say.free(name, held.span()))));
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
    if (!usual(distance)) {
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
            // The stretch up to the knot is tied with none to half of what the span carries.
            ? "when it comes off after the knot, %s loses about %s to %s %% of its tension"
                .formatted(span, Math.round(50 * share), Math.round(100 * share))
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

  /** Whether the first cross is held by a starting clamp while this end stays on this pass. */
  private boolean firstCrossMeanwhile(EndName end, int index) {
    boolean counting = false;
    for (Moment m : route.order()) {
      boolean own = m.end() == end && m.what() != Moment.What.CLAMP;
      if (own && m.what() == Moment.What.PASS && m.pass() == index) {
        counting = true;
      } else if (counting && m.what() == Moment.What.CLAMP && !done(m)) {
        return true;
      } else if (counting && own) {
        return false;
      }
    }
    return false;
  }

  /**
   * Knots an end while its clamp holds, then takes the clamp off. Where a starting clamp alone
   * holds it, the span is pulled again first, which frees that clamp, and a machine clamp takes it
   * (Racquet Sports Industry, "Starting clamp", 2004/03).
   */
  void tie(EndName end) throws NoPlaceForClamp {
    Holding held = holding.get(end);
    if (held != null && held.machine().isEmpty()) {
      int last = end(end).passes().size() - 1;
      pull(held.span(), held.at(), last < 0 ? reference(held.span()) : tension(end, last));
      comeOff(held);
      String clamp = freeMachineClamp();
      setInside(clamp, held.span(), held.at(), List.of(), true);
      hold(end, clamp, held.span(), held.at(), Optional.empty());
      release();
    }
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
    Holding now = holding.remove(end);
    if (now != null) {
      comeOff(now);
    }
  }

  /** Says that a machine clamp, and perhaps a starting clamp behind it, holds an end. */
  void hold(EndName end, String machine, SpanId span, HoleId at, Optional<String> behind) {
    holding.put(end, new Holding(span, at, Optional.of(machine), behind));
  }

  /** Says that a starting clamp alone holds an end. */
  void holdByStartingClamp(EndName end, String starting, SpanId span, HoleId at) {
    holding.put(end, new Holding(span, at, Optional.empty(), Optional.of(starting)));
  }

  /** A machine clamp that holds nothing. */
  String freeMachineClamp() {
    for (int i = 1; ; i++) {
      String name = "machine-" + i;
      if (holding.values().stream().noneMatch(h -> h.machine().filter(name::equals).isPresent())) {
        return name;
      }
    }
  }
}
