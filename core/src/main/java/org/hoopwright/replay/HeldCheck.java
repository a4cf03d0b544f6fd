package org.hoopwright.replay;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;

/** I1: what has been pulled stays held. */
final class HeldCheck implements StepCheck {

  private final Set<SpanId> slack = new TreeSet<>(); // so that each loss is said once
  private final Set<SpanId> givenUp; // spans that a job is taken back over

  HeldCheck() {
    this(Set.of());
  }

  /** Lets these spans go slack and be slipped out: they are undone on purpose. */
  HeldCheck(Set<SpanId> givenUp) {
    this.givenUp = givenUp;
  }

  /** What is not held before the first step. */
  void begin(BenchState state, Breaches breaches) {
    held(state, breaches);
  }

  @Override
  public void after(BenchState state, Step step, Breaches breaches) {
    held(state, breaches);
  }

  private void held(BenchState state, Breaches breaches) {
    for (StringPath path : state.paths()) {
      Holding holding = new Holding(state, path);
      List<StringPath.Stretch> line = path.line();
      for (int i = 0; i < line.size(); i++) {
        SpanId span = line.get(i).span();
        boolean own = state.pulled().contains(span);
        if (givenUp.contains(span) || (!own && !state.guarded().contains(span))) {
          continue;
        }
        Optional<HoleId> side = holding.slackSide(i);
        if (side.isEmpty()) {
          slack.remove(span);
        } else if (slack.add(span)) {
          breaches.add(
              Invariant.I1_HELD,
              "%s %s, but nothing holds it towards %s."
                  .formatted(
                      span,
                      own
                          ? "has had its own pull"
                          : "carries a starting clamp and waits for its own pull",
                      side.get()));
        }
      }
    }
  }

  @Override
  public void before(BenchState state, Step step, Breaches breaches) {
    if (step instanceof Step.CutOut s) {
      cutOut(state, s.piece(), breaches);
      return;
    }
    if (!(step instanceof Step.Unlace s)) {
      return;
    }
    Optional<StringPath> path = state.path(s.piece(), s.end());
    if (path.isEmpty() || !BenchState.outermost(path.get(), s.end(), s.span())) {
      breaches.add(
          Invariant.I3_FREE_TAIL,
          "%s cannot be slipped out, because it is not the last span that the %s end of piece %s has laced."
              .formatted(s.span(), s.end().word(), s.piece()));
      return;
    }
    breaches.addIf(
        state.pulled().contains(s.span()) && !givenUp.contains(s.span()),
        Invariant.I1_HELD,
        "%s is slipped out after its own pull.".formatted(s.span()));
    breaches.addIf(
        state.guarded().contains(s.span()),
        Invariant.I1_HELD,
        "%s is slipped out while it waits for its own pull.".formatted(s.span()));
    breaches.addIf(
        state.gripped(s.end()),
        Invariant.I3_FREE_TAIL,
        "%s cannot be slipped out while the tensioner grips its tail.".formatted(s.span()));
    breaches.addIf(
        state.clamps().stream().anyMatch(c -> c.span().equals(s.span())),
        Invariant.I2_CLAMPS,
        "%s is slipped out while a clamp is on it.".formatted(s.span()));
  }

  /** Only when a job is taken back is a piece cut out, and never one that another hangs on. */
  private void cutOut(BenchState state, int piece, Breaches breaches) {
    if (piece < 0 || piece >= state.paths().size()) {
      breaches.add(Invariant.I1_HELD, "There is no piece %s to cut out.".formatted(piece));
      return;
    }
    Set<SpanId> gone = new TreeSet<>();
    state.paths().get(piece).line().forEach(s -> gone.add(s.span()));
    breaches.addIf(
        !givenUp.containsAll(gone),
        Invariant.I1_HELD,
        "Piece %s is cut out, but its spans are to stay.".formatted(piece));
    for (StringPath other : state.paths()) {
      if (other.piece() == piece) {
        continue;
      }
      for (EndName end : List.of(other.lowEnd(), other.highEnd())) {
        state
            .anchor(end)
            .filter(gone::contains)
            .ifPresent(
                a ->
                    breaches.add(
                        Invariant.I7_KNOT,
                        "%s is cut out while the %s end is tied round it."
                            .formatted(a, end.word())));
      }
    }
  }
}
