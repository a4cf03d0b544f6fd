package org.hoopwright.bench;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;

/**
 * A way on from a half-done job: what to undo, and the plan from there.
 *
 * @param bed the bed on which it was strung
 * @param from the state it begins with, in that bed's names, with the short end of the route
 * @param undo the steps that take back what cannot stay, in that bed's names; empty when everything
 *     stays
 * @param after the state after them, in the names of the plan's bed
 * @param goOn the plan from there to the end
 * @param spansUndone how many spans that have had their own pull come out
 * @param piecesCutOut pieces that are cut out whole
 * @param newStringMm how much string is needed beside what lies in the frame, in mm
 * @param bridged spans whose tails do not reach the tensioner and are bridged with a scrap of
 *     string
 * @param wishesMissed how many wishes of the frame's maker the route misses
 * @param findings what is worth knowing, such as a short tail for a knot
 */
public record WayOn(
    Bed bed,
    HalfDone from,
    List<Step> undo,
    HalfDone after,
    BenchPlan goOn,
    int spansUndone,
    Set<Integer> piecesCutOut,
    double newStringMm,
    Set<SpanId> bridged,
    int wishesMissed,
    List<Finding> findings) {

  /** Copies the lists. */
  public WayOn {
    undo = List.copyOf(undo);
    piecesCutOut = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(piecesCutOut));
    bridged = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(bridged));
    findings = List.copyOf(findings);
  }

  /**
   * The spans that come out, whether they have had their own pull or not, in the order in which
   * they were strung at each end.
   */
  public List<SpanId> undone() {
    Set<Set<HoleId>> kept = new HashSet<>();
    after.passes().forEach(p -> kept.add(Set.of(p.from(), p.to())));
    return from.passes().stream()
        .filter(p -> !kept.contains(Set.of(p.from(), p.to())))
        .map(Pass::span)
        .toList();
  }

  /** Ends that are to be strung on or knotted, with a tail that nobody has measured. */
  public List<EndName> unmeasured() {
    return after.pieces().stream()
        .flatMap(p -> p.ends().stream())
        .filter(e -> e.knot().isEmpty() && !e.passes().isEmpty() && e.tailMm().isEmpty())
        .map(StrungEnd::name)
        .toList();
  }

  /** What it costs, in one sentence. */
  public String say() {
    String undone =
        switch (spansUndone) {
          case 0 -> "Nothing is undone";
          case 1 -> "One string is undone";
          default -> spansUndone + " strings are undone";
        };
    String cut =
        piecesCutOut.isEmpty()
            ? ""
            : piecesCutOut.contains(0) ? ", everything is cut out" : ", the crosses are cut out";
    String string =
        newStringMm == 0 ? "" : ", " + Say.mm(Math.ceil(newStringMm)) + " of new string";
    String bridge =
        bridged.isEmpty()
            ? ""
            : ", bridged at " + String.join(", ", bridged.stream().map(SpanId::toString).toList());
    return undone + cut + string + bridge + ".";
  }
}
