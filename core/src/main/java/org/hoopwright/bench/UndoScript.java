package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.units.Force;

/**
 * Writes the steps that take a half-done job back to what is kept of it. A span comes out as it
 * went in, backwards: its tail is pulled again, which takes the load off its clamp; the clamp goes
 * to the span before; the tensioner lets go, and the span is slipped out. So everything else stays
 * held. Confined to one call.
 */
final class UndoScript {

  private final Bed bed;
  private final Job job;
  private final HalfDone state;
  private final Kept kept;
  private final List<Step> steps = new ArrayList<>();
  private final Map<EndName, List<Pass>> passes = new LinkedHashMap<>();
  private final List<ClampOn> clamps;

  /**
   * @param bed the bed on which it was strung
   * @param job the job
   * @param state the state, in that bed's names
   * @param kept what stays
   */
  UndoScript(Bed bed, Job job, HalfDone state, Kept kept) {
    this.bed = bed;
    this.job = job;
    this.state = state;
    this.kept = kept;
    this.clamps = new ArrayList<>(state.clamps());
  }

  /** The steps; call {@link #after()} afterwards. Empty when an end has no clamp to work with. */
  Optional<List<Step>> write() {
    for (int i = 0; i < state.pieces().size(); i++) {
      for (StrungEnd end : state.pieces().get(i).ends()) {
        passes.put(end.name(), new ArrayList<>(end.passes()));
      }
    }
    for (int i = state.pieces().size() - 1; i >= 0; i--) {
      if (kept.cutOut().contains(i)) {
        cutOut(i);
      }
    }
    for (EndName end : passes.keySet()) {
      slipOutWhatIsSlack(end);
    }
    if (!comeOut(EndName.FINISH, 0) || !afterTheOpenings() || !openings()) {
      return Optional.empty();
    }
    freeStaleClamps();
    return Optional.of(List.copyOf(steps));
  }

  private void cutOut(int piece) {
    for (StrungEnd end : state.pieces().get(piece).ends()) {
      clamps.removeIf(c -> end.passes().stream().anyMatch(p -> p.span().equals(c.span())));
      own(end.name()).clear();
    }
    steps.add(
        new Step.CutOut(
            piece,
            "Cut the "
                + (piece == 0 ? "mains" : "crosses")
                + " out from the middle outwards, a string to the left and a string to the right in turn, and take their clamps off (common practice, no source)."));
  }

  private void slipOutWhatIsSlack(EndName end) {
    List<Pass> own = own(end);
    while (!own.isEmpty() && !state.pulled().contains(own.get(own.size() - 1).span())) {
      SpanId span = own.remove(own.size() - 1).span();
      free(c -> c.span().equals(span));
      slip(span, end);
    }
  }

  private void slip(SpanId span, EndName end) {
    steps.add(
        new Step.Unlace(span, piece(end), end, "Draw " + span + " out; it is strung anew later."));
  }

  private boolean afterTheOpenings() {
    int mains = bed.mainsPerSide();
    return comeOut(EndName.LONG, mains) && comeOut(EndName.SHORT, mains);
  }

  /** Mains come out in turn, so that neither side gets far ahead. */
  private boolean openings() {
    while (true) {
      boolean more = false;
      boolean leftFirst = pulledMains(Side.LEFT) >= pulledMains(Side.RIGHT);
      for (Side side :
          leftFirst ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.RIGHT, Side.LEFT)) {
        EndName end = endOf(side);
        if (own(end).size() > kept.keep(end)) {
          if (!comeOut(end, own(end).size() - 1)) {
            return false;
          }
          more = true;
          break;
        }
      }
      if (!more) {
        return true;
      }
    }
  }

  private EndName endOf(Side side) {
    return own(EndName.SHORT).stream()
            .findFirst()
            .flatMap(p -> p.span().side())
            .filter(side::equals)
            .isPresent()
        ? EndName.SHORT
        : EndName.LONG;
  }

  private long pulledMains(Side side) {
    return passes.values().stream()
        .flatMap(List::stream)
        .filter(p -> p.span().side().filter(side::equals).isPresent())
        .count();
  }

  /** Takes passes out down to so many, or to what is kept when that is more. */
  private boolean comeOut(EndName end, int down) {
    List<Pass> own = own(end);
    int least = Math.max(down, kept.keep(end));
    while (own.size() > least) {
      Pass last = own.remove(own.size() - 1);
      if (own.isEmpty()) {
        return false;
      }
      Pass before = own.get(own.size() - 1);
      Optional<ClampOn> clamp = clampOf(last, ClampSide.INSIDE);
      Optional<ClampOn> outside = clampOf(last, ClampSide.OUTSIDE);
      Optional<Double> place =
          new ClampPlacing(bed, job.bench()).distance(before.span(), before.to(), List.of());
      if ((clamp.isEmpty() && outside.isEmpty()) || place.isEmpty()) {
        return false;
      }
      String name = clamp.map(ClampOn::clamp).orElseGet(this::freeMachineClamp);
      Force tension = job.tension(last.span(), bed.layout());
      steps.add(
          new Step.Pull(
              List.of(last.span()),
              List.of(last.to()),
              tension,
              "Pull the tail of "
                  + last.span()
                  + " at "
                  + last.to()
                  + " again: it takes the load off its clamp."));
      free(c -> outside.filter(c::equals).isPresent() || clamp.filter(c::equals).isPresent());
      set(new ClampOn(name, before.span(), before.to(), place.get(), ClampSide.INSIDE));
      steps.add(new Step.Release("Let the tensioner go slowly: " + last.span() + " goes slack."));
      slip(last.span(), end);
    }
    return true;
  }

  private void set(ClampOn clamp) {
    steps.add(
        new Step.SetClamp(
            clamp.clamp(),
            clamp.span(),
            clamp.near(),
            clamp.distanceMm(),
            clamp.side(),
            Say.set(clamp.clamp(), clamp.span(), clamp.near(), clamp.distanceMm())));
    clamps.add(clamp);
  }

  private String freeMachineClamp() {
    for (int i = 1; ; i++) {
      String name = "machine-" + i;
      if (clamps.stream().noneMatch(c -> c.clamp().equals(name))) {
        return name;
      }
    }
  }

  private Optional<ClampOn> clampOf(Pass pass, ClampSide side) {
    return clamps.stream()
        .filter(c -> c.side() == side && c.span().equals(pass.span()) && c.near().equals(pass.to()))
        .findFirst();
  }

  private void freeStaleClamps() {
    List<ClampOn> needed = new ArrayList<>();
    for (StrungPiece piece : state.pieces()) {
      for (StrungEnd end : piece.ends()) {
        List<Pass> own = own(end.name());
        if (end.knot().isEmpty() && !own.isEmpty()) {
          Pass last = own.get(own.size() - 1);
          clampOf(last, ClampSide.INSIDE).ifPresent(needed::add);
          clampOf(last, ClampSide.OUTSIDE).ifPresent(needed::add);
        }
        List<Pass> crosses = own(EndName.FINISH);
        if (end.name() == EndName.START && end.knot().isEmpty() && !crosses.isEmpty()) {
          Pass first = crosses.get(0);
          Pass back = new Pass(first.span(), first.to(), first.from());
          clampOf(back, ClampSide.OUTSIDE).ifPresent(needed::add);
        }
      }
    }
    free(c -> !needed.contains(c));
  }

  private void free(java.util.function.Predicate<ClampOn> which) {
    for (ClampOn c : List.copyOf(clamps)) {
      if (which.test(c)) {
        steps.add(new Step.FreeClamp(c.clamp(), Say.free(c.clamp(), c.span())));
        clamps.remove(c);
      }
    }
  }

  /** The state that the steps leave, in the names of the bed it was strung on. */
  HalfDone after() {
    List<StrungPiece> pieces = new ArrayList<>();
    TreeSet<SpanId> pulled = new TreeSet<>();
    for (int i = 0; i < state.pieces().size(); i++) {
      if (kept.cutOut().contains(i)) {
        if (i == 0) {
          pieces.add(HalfDone.emptyPiece(0));
        }
        continue;
      }
      List<StrungEnd> ends = new ArrayList<>();
      for (StrungEnd end : state.pieces().get(i).ends()) {
        int keep = own(end.name()).size();
        OptionalDouble tail =
            end.tailMm().isPresent()
                ? OptionalDouble.of(
                    end.tailMm().getAsDouble() + TailNeed.freed(bed, job, end, keep))
                : end.tailMm();
        ends.add(end.keep(keep, tail));
        own(end.name()).forEach(p -> pulled.add(p.span()));
      }
      StrungPiece piece = new StrungPiece(ends, false);
      if (i == 0 || !piece.isEmpty()) {
        pieces.add(piece);
      }
    }
    return new HalfDone(pieces, pulled, clamps, List.of());
  }

  private List<Pass> own(EndName end) {
    return passes.computeIfAbsent(end, e -> new ArrayList<>());
  }

  private static int piece(EndName end) {
    return end == EndName.SHORT || end == EndName.LONG ? 0 : 1;
  }
}
