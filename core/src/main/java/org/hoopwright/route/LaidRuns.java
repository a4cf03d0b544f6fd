package org.hoopwright.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/**
 * How the runs of a route are laid along the frame's outside, so that none crosses another: which
 * half of the frame each takes, and how strings lie in the holes that take more than one.
 *
 * <p>The model. A side's outside is a strip with its holes in a row. A run keeps to one half of it
 * from hole to hole; two runs of different halves that share a stretch lie <em>beside</em> each
 * other, two of the same half lie one <em>upon</em> the other, the later above. Two runs side by
 * side is what the groove of a frame takes (our choice). In a hole, strings lie in an order from
 * the face to the back. Two runs cross when one is nearer the face at one place and the other at
 * another: on a stretch where they lie beside each other, or in a hole at which both end.
 *
 * <p>No crossing is ever needed. Put all runs of a side into one order from the face to the back
 * and lay each along by that order everywhere, in holes too: then no two of them ever change
 * places. What may be needed is that a run lies upon another, where three share a stretch. Of all
 * choices of halves this one has the fewest pairs of runs one upon the other, and of these one with
 * the fewest against the habit: runs between mains on the face side first, then runs between
 * crosses on the back side. That keeps a main in the same half of neighbouring shared holes (Tennis
 * Industry, "Use Care When Sharing", 2016/09); which half is our choice.
 *
 * <p>Immutable. Pure and deterministic; the mirror image of a route is laid as its mirror image.
 */
public final class LaidRuns {

  /**
   * A run with what it meets.
   *
   * @param run the run
   * @param half the half of the frame's outside that it takes
   * @param beside the earlier runs that it lies beside on a stretch, in time order
   * @param upon the earlier runs that it lies upon on a stretch, in time order
   */
  public record Laid(Run run, Half half, List<Run> beside, List<Run> upon) {
    /** Copies the lists. */
    public Laid {
      beside = List.copyOf(beside);
      upon = List.copyOf(upon);
    }

    /** Whether it shares a stretch with an earlier run. */
    public boolean doubled() {
      return !beside.isEmpty() || !upon.isEmpty();
    }
  }

  /**
   * A string in a hole that takes more than one.
   *
   * @param span the span that runs through the hole; empty for the tail of a knot
   * @param run the run that it goes on in outside
   */
  public record InHole(Optional<SpanId> span, Run run) {

    /** The span, or the name of the end whose tail it is. */
    public String name() {
      return span.map(SpanId::toString).orElse(run.end().word());
    }
  }

  private final List<Laid> runs;
  private final Map<HoleId, List<InHole>> holes;
  private final int stacked;

  private LaidRuns(List<Laid> runs, Map<HoleId, List<InHole>> holes) {
    this.runs = List.copyOf(runs);
    this.holes = java.util.Collections.unmodifiableMap(holes);
    this.stacked = runs.stream().mapToInt(l -> l.upon().size()).sum();
  }

  /**
   * Lays the runs of a route.
   *
   * @param bed the bed that the route strings
   */
  public static LaidRuns of(Bed bed, Route route) {
    List<Run> runs = Run.of(route);
    Map<Run, Half> halves = new LinkedHashMap<>();
    Map<Side, List<Run>> bySide = new EnumMap<>(Side.class);
    for (Run run : runs) {
      if (run.isCentreLoop()) {
        halves.put(run, Half.FACE);
      } else {
        bySide.computeIfAbsent(run.side(), s -> new ArrayList<>()).add(run);
      }
    }
    bySide.values().forEach(side -> halves.putAll(HalfChoice.of(bed.ring(), side)));
    return new LaidRuns(laid(bed.ring(), runs, halves), holes(runs, halves));
  }

  private static List<Laid> laid(Ring ring, List<Run> runs, Map<Run, Half> halves) {
    List<Laid> laid = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Run run = runs.get(i);
      Half half = half(halves, run);
      List<Run> beside = new ArrayList<>();
      List<Run> upon = new ArrayList<>();
      for (Run earlier : runs.subList(0, i)) {
        if (shareStretch(ring, run, earlier)) {
          (half(halves, earlier) == half ? upon : beside).add(earlier);
        }
      }
      laid.add(new Laid(run, half, beside, upon));
    }
    return laid;
  }

  /** Holes with more than one string, in the order of the holes; strings from face to back. */
  private static Map<HoleId, List<InHole>> holes(List<Run> runs, Map<Run, Half> halves) {
    // One order of all runs, so that no two of them ever change places.
    List<Run> faceToBack = new ArrayList<>(runs);
    faceToBack.sort(Comparator.comparingInt(run -> depth(run, half(halves, run)))); // stable
    Map<HoleId, List<InHole>> holes = new TreeMap<>();
    for (Run run : faceToBack) {
      in(holes, run.from()).add(new InHole(run.after(), run));
      in(holes, run.to()).add(new InHole(run.before(), run));
    }
    holes.values().removeIf(strings -> strings.size() < 2);
    holes.replaceAll((hole, strings) -> List.copyOf(strings));
    return holes;
  }

  /** Runs of mains lie outermost in their half, so that a main keeps to it beside any cross. */
  private static int depth(Run run, Half half) {
    int inwards = HalfChoice.habit(run).map(habit -> habit == Half.FACE ? 0 : 2).orElse(1);
    return half == Half.FACE ? inwards : 5 - inwards;
  }

  private static List<InHole> in(Map<HoleId, List<InHole>> holes, HoleId hole) {
    return holes.computeIfAbsent(hole, h -> new ArrayList<>());
  }

  private static Half half(Map<Run, Half> halves, Run run) {
    return java.util.Objects.requireNonNull(halves.get(run));
  }

  /** Whether two runs lie on a stretch of the frame between two neighbouring holes together. */
  static boolean shareStretch(Ring ring, Run a, Run b) {
    return !a.isCentreLoop()
        && !b.isCentreLoop()
        && a.side() == b.side()
        && Math.max(HalfChoice.low(ring, a), HalfChoice.low(ring, b))
            < Math.min(HalfChoice.high(ring, a), HalfChoice.high(ring, b));
  }

  /** Every run in the time order in which they are laid, the centre loop first. */
  public List<Laid> runs() {
    return runs;
  }

  /** The runs that share a stretch with another, in the time order in which they are laid. */
  public List<Laid> meeting() {
    Set<Run> beneath = new HashSet<>();
    runs.forEach(
        l -> {
          beneath.addAll(l.beside());
          beneath.addAll(l.upon());
        });
    return runs.stream().filter(l -> l.doubled() || beneath.contains(l.run())).toList();
  }

  /** The run that leads from the span before to this one; empty for the first span of an end. */
  public Optional<Laid> to(SpanId span) {
    return runs.stream()
        .filter(l -> l.run().before().equals(Optional.of(span)))
        .filter(l -> l.run().after().isPresent() && !l.run().isCentreLoop())
        .findFirst();
  }

  /** The run that joins an end to its knot. */
  public Laid toKnot(EndName end) {
    return runs.stream()
        .filter(l -> l.run().end() == end)
        .filter(l -> l.run().after().isEmpty() || l.run().before().isEmpty())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("There is no " + end.word() + " end."));
  }

  /**
   * The holes that take more than one string once all is done, each with its strings in order from
   * the face to the back. Not modifiable, in the order of the holes.
   */
  public Map<HoleId, List<InHole>> holes() {
    return holes;
  }

  /** How many pairs of runs lie one upon the other; the fewest that any choice of halves has. */
  public int stacked() {
    return stacked;
  }
}
