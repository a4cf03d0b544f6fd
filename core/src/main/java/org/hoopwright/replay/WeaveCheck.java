package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** I9: the weave. A cross that meets nothing yet may be called laced or woven. */
final class WeaveCheck implements StepCheck {

  private final Bed bed;

  WeaveCheck(Bed bed) {
    this.bed = bed;
  }

  @Override
  public void before(BenchState state, Step step, Breaches breaches) {
    if (step instanceof Step.Lace s && bed.find(s.span()).isPresent()) {
      breaches.addIf(
          meetsLaced(state, s.span()),
          Invariant.I9_WEAVE,
          "%s meets strings that are in, so it is woven and not laced.".formatted(s.span()));
    } else if (step instanceof Step.Weave s && bed.find(s.span()).isPresent()) {
      breaches.addIf(
          s.span().isMain() && !meetsLaced(state, s.span()),
          Invariant.I9_WEAVE,
          "%s meets no cross that is in, so it is laced and not woven.".formatted(s.span()));
    }
  }

  private boolean meetsLaced(BenchState state, SpanId id) {
    Span span = bed.span(id);
    return bed.spans().stream()
        .anyMatch(
            s ->
                s.id().isCross() != id.isCross()
                    && state.isLaced(s.id())
                    && separate(bed.ring(), span, s));
  }

  @Override
  public void end(BenchState state, Breaches breaches) {
    List<Crossing> all = new ArrayList<>();
    bed.crosses().forEach(c -> all.addAll(bed.crossings(c.id())));
    faults(bed.ring(), bed.spans(), all).forEach(f -> breaches.add(Invariant.I9_WEAVE, f));
    for (Span main : bed.spans()) {
      if (main.id().isMain()) {
        Set<SpanId> own = new TreeSet<>();
        bed.crossings(main.id()).forEach(c -> own.add(c.cross()));
        Set<SpanId> those = new TreeSet<>();
        all.stream().filter(c -> c.main().equals(main.id())).forEach(c -> those.add(c.cross()));
        breaches.addIf(
            !own.equals(those),
            Invariant.I9_WEAVE,
            "%s is said to meet %s, but %s are said to meet it.".formatted(main.id(), own, those));
      }
    }
  }

  /**
   * What is wrong with a weave: a cross meets exactly the mains whose two ends its own two ends
   * separate round the hoop, over and under alternate along every cross and every main, and X1 goes
   * over R1.
   */
  static List<String> faults(Ring ring, List<Span> spans, List<Crossing> crossings) {
    List<String> faults = new ArrayList<>();
    List<Span> mains = spans.stream().filter(s -> s.id().isMain()).sorted(ACROSS).toList();
    List<Span> crosses = spans.stream().filter(s -> s.id().isCross()).toList();
    for (Span cross : crosses) {
      List<Crossing> met = new ArrayList<>();
      for (Span main : mains) {
        List<Crossing> both =
            crossings.stream()
                .filter(c -> c.cross().equals(cross.id()) && c.main().equals(main.id()))
                .toList();
        int expected = separate(ring, main, cross) ? 1 : 0;
        if (both.size() != expected) {
          faults.add(
              "%s meets %s %s times, but by the order of the holes it is %s."
                  .formatted(cross.id(), main.id(), both.size(), expected));
        }
        met.addAll(both);
      }
      alternates(cross.id(), met, faults);
    }
    for (Span main : mains) {
      alternates(
          main.id(),
          crossings.stream()
              .filter(c -> c.main().equals(main.id()))
              .sorted(Comparator.comparing(Crossing::cross))
              .toList(),
          faults);
    }
    crossings.stream()
        .filter(c -> c.cross().equals(SpanId.cross(1)))
        .filter(c -> c.main().equals(SpanId.main(Side.RIGHT, 1)) && !c.crossOver())
        .forEach(c -> faults.add("X1 goes under R1, but it goes over it."));
    return faults;
  }

  /** Mains from the left edge of the bed to the right edge. */
  private static final Comparator<Span> ACROSS =
      Comparator.comparingInt(s -> s.id().side().map(Side::sign).orElse(0) * s.id().number());

  private static void alternates(SpanId along, List<Crossing> met, List<String> faults) {
    for (int i = 1; i < met.size(); i++) {
      Crossing a = met.get(i - 1);
      Crossing b = met.get(i);
      if (a.crossOver() == b.crossOver()) {
        faults.add(
            "Along %s the weave does not alternate from %s to %s."
                .formatted(
                    along,
                    along.isCross() ? a.main() : a.cross(),
                    along.isCross() ? b.main() : b.cross()));
      }
    }
  }

  /** Whether the two ends of one span strictly separate those of the other round the hoop. */
  private static boolean separate(Ring ring, Span a, Span b) {
    int a1 = round(ring, a.from());
    int a2 = round(ring, a.to());
    int b1 = round(ring, b.from());
    int b2 = round(ring, b.to());
    int low = Math.min(a1, a2);
    int high = Math.max(a1, a2);
    if (b1 == low || b1 == high || b2 == low || b2 == high) {
      return false;
    }
    return (low < b1 && b1 < high) != (low < b2 && b2 < high);
  }

  /** The hole's place round the hoop: down the left side, then up the right one. */
  private static int round(Ring ring, HoleId hole) {
    return hole.side() == Side.LEFT
        ? ring.place(hole)
        : ring.size(Side.LEFT) + ring.size(Side.RIGHT) - 1 - ring.place(hole);
  }
}
