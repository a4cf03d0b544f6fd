package org.hoopwright.replay;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;

/**
 * What every span carries while a plan is replayed, for one choice of parameters. A span has a main
 * part and, where a clamp sits near one of its holes, a stub between that clamp and the hole.
 * Confined to one estimate.
 */
final class Tensions {

  /** Tensions of one span, in newtons: of its main part on average and at both of its ends. */
  private static final class Cell {
    private double main;
    private double fromEnd;
    private double toEnd;
    private double fromStub;
    private double toStub;

    /** Sets the main part, and its ends in proportion. */
    private void scale(double value) {
      double share = main > 0 ? value / main : 0;
      main = value;
      fromEnd = share > 0 ? fromEnd * share : value;
      toEnd = share > 0 ? toEnd * share : value;
    }

    private void raise(double least) {
      main = Math.max(main, least);
      fromEnd = Math.max(fromEnd, least);
      toEnd = Math.max(toEnd, least);
    }
  }

  private final BenchState state;
  private final Bends bends;
  private final ForceParameters.Corner corner;
  private final Map<SpanId, Cell> cells = new HashMap<>(); // looked up, never gone through
  private double pull; // on each tail that is gripped

  Tensions(BenchState state, Bends bends, ForceParameters.Corner corner) {
    this.state = state;
    this.bends = bends;
    this.corner = corner;
  }

  /** What the main part of a span carries, in newtons. */
  double main(SpanId span) {
    Cell cell = cells.get(span);
    return cell == null ? 0 : cell.main;
  }

  /**
   * Follows a step that the state has just done.
   *
   * @param step the step
   * @param before the grips before the step
   * @param old the clamp of the step's name before the step
   * @param slack what nothing holds after the step
   */
  void follow(Step step, List<Grip> before, Optional<PlacedClamp> old, List<Slack> slack) {
    if (step instanceof Step.Pull s && before.isEmpty() && !state.grips().isEmpty()) {
      pull = corner.tensionerShare() * s.tension().newtons() / state.grips().size();
    } else if (step instanceof Step.SetClamp s && old.isEmpty()) {
      state.clamp(s.clamp()).filter(PlacedClamp::inside).ifPresent(this::split);
    } else if (step instanceof Step.FreeClamp) {
      old.filter(PlacedClamp::inside).ifPresent(this::merge);
      old.filter(c -> !c.inside()).ifPresent(this::handOver);
    } else if (step instanceof Step.Unlace s && !state.isLaced(s.span())) {
      cells.remove(s.span());
    }
    // The tensioner keeps pulling while it grips: what a clamp has shut off, its coming off opens.
    state.grips().forEach(g -> spread(g, pull));
    slacken(slack);
    if (step instanceof Step.Release) {
      before.forEach(this::drawBack);
    }
  }

  private Cell cell(SpanId span) {
    return cells.computeIfAbsent(span, s -> new Cell());
  }

  private Span span(SpanId id) {
    return state.bed().span(id);
  }

  /** What the main part of a span carries at its end towards this hole. */
  private double end(SpanId span, HoleId hole) {
    Cell cell = cell(span);
    return hole.equals(span(span).from()) ? cell.fromEnd : cell.toEnd;
  }

  private void raiseEnd(SpanId span, HoleId hole, double value) {
    Cell cell = cell(span);
    if (hole.equals(span(span).from())) {
      cell.fromEnd = Math.max(cell.fromEnd, value);
    } else {
      cell.toEnd = Math.max(cell.toEnd, value);
    }
  }

  /** What a span carries where it meets this hole. */
  double at(SpanId span, HoleId hole) {
    if (state.clampInside(span, hole).isEmpty()) {
      return end(span, hole);
    }
    Cell cell = cell(span);
    return hole.equals(span(span).from()) ? cell.fromStub : cell.toStub;
  }

  private void setStub(SpanId span, HoleId hole, double value) {
    Cell cell = cell(span);
    if (hole.equals(span(span).from())) {
      cell.fromStub = value;
    } else {
      cell.toStub = value;
    }
  }

  /** A clamp leaves both sides as they are; a second one beside it changes nothing more. */
  private void split(PlacedClamp clamp) {
    boolean alone =
        state.clamps().stream()
            .noneMatch(
                c ->
                    !c.name().equals(clamp.name())
                        && c.inside()
                        && c.span().equals(clamp.span())
                        && c.near().equals(clamp.near()));
    if (alone) {
      setStub(clamp.span(), clamp.near(), end(clamp.span(), clamp.near()));
    }
  }

  /**
   * A clamp behind another comes off: unless the tensioner bears the load, the one inside bears all
   * of it.
   */
  private void handOver(PlacedClamp outside) {
    if (state.grips().isEmpty() && state.clampInside(outside.span(), outside.near()).isPresent()) {
      setStub(outside.span(), outside.near(), 0);
    }
  }

  /** A clamp comes off: the tensioner or the neighbours keep the load, or both sides share it. */
  private void merge(PlacedClamp clamp) {
    SpanId id = clamp.span();
    if (state.clampInside(id, clamp.near()).isPresent()) {
      return;
    }
    Cell cell = cell(id);
    double stub = clamp.near().equals(span(id).from()) ? cell.fromStub : cell.toStub;
    Optional<StringPath> path =
        state.paths().stream()
            .filter(p -> p.line().stream().anyMatch(s -> s.span().equals(id)))
            .findFirst();
    boolean gripped =
        path.isPresent()
            && (state.gripped(path.get().lowEnd()) || state.gripped(path.get().highEnd()));
    if (gripped || stub >= cell.main) {
      cell.raise(stub);
      return;
    }
    double length = Math.max(1.0, span(id).lengthMm());
    double end = Math.max(0.0, Math.min(length, clamp.distanceMm()));
    double run = runToKnot(path, clamp);
    double tied = run > 0 ? Math.max(stub, corner.knotShare() * cell.main) : stub;
    double shared = (cell.main * (length - end) + tied * (end + run)) / (length + run);
    cell.scale(Math.max(stub, shared - corner.drawbackMm() * stiffness(id) / length));
  }

  /**
   * How long the string is from a clamped hole to the knot that takes the load, in mm; 0 when there
   * is none.
   */
  private double runToKnot(Optional<StringPath> path, PlacedClamp clamp) {
    for (var end : path.map(p -> List.of(p.lowEnd(), p.highEnd())).orElse(List.of())) {
      Optional<HoleId> knot = state.knot(end);
      boolean last =
          path.flatMap(p -> p.tail(end))
              .filter(t -> t.span().equals(clamp.span()) && t.at().equals(clamp.near()))
              .isPresent();
      if (last && knot.filter(state.bed().ring()::has).isPresent()) {
        return state.bed().position(clamp.near()).distanceTo(state.bed().position(knot.get()));
      }
    }
    return 0.0;
  }

  /**
   * What a span carries on average of a pull at its one end, when friction takes e^(−x) of it
   * evenly along the way: (1 − e^(−x)) ÷ x.
   */
  private static double mean(double x) {
    return x < 1e-9 ? 1 : -StrictMath.expm1(-x) / x;
  }

  /** What the bends from a span over a run into the next one leave of a pull. */
  private double kept(SpanId span, HoleId out, SpanId next, HoleId in) {
    return ForceParameters.kept(corner.bendFriction(), bends.between(span, out, next, in));
  }

  /**
   * Carries a pull inwards from the grip, less at each crossing and bend, up to the first clamp.
   */
  private void spread(Grip grip, double force) {
    List<StringPath.Stretch> line = state.paths().get(grip.piece()).line();
    int i = 0;
    while (i < line.size() && !line.get(i).span().equals(grip.span())) {
      i++;
    }
    if (i == line.size()) {
      return;
    }
    boolean down = grip.at().equals(line.get(i).high());
    double left = force;
    for (; i >= 0 && i < line.size(); i += down ? -1 : 1) {
      StringPath.Stretch s = line.get(i);
      HoleId outer = down ? s.high() : s.low();
      HoleId inner = down ? s.low() : s.high();
      if (state.clampInside(s.span(), outer).isPresent()) {
        setStub(s.span(), outer, Math.max(at(s.span(), outer), left));
        return;
      }
      double weave = corner.weaveFriction() * bends.woven(s.span(), state);
      Cell cell = cell(s.span());
      cell.main = Math.max(cell.main, left * mean(weave));
      raiseEnd(s.span(), outer, left);
      raiseEnd(s.span(), inner, left * StrictMath.exp(-weave));
      if (state.clampedInside(s.span()) || state.clampOutside(s.span(), inner).isPresent()) {
        return;
      }
      int next = down ? i - 1 : i + 1;
      if (next >= 0 && next < line.size()) {
        StringPath.Stretch n = line.get(next);
        left *= StrictMath.exp(-weave) * kept(s.span(), inner, n.span(), down ? n.high() : n.low());
      }
    }
  }

  private void slacken(List<Slack> slack) {
    for (Slack s : slack) {
      if (s.stub().isPresent()) {
        setStub(s.span(), s.stub().get(), 0);
      } else {
        cell(s.span()).scale(0);
      }
    }
  }

  /** The first clamp inwards of a tail that has been let go takes the load and slips a little. */
  private void drawBack(Grip grip) {
    List<StringPath.Stretch> line = state.paths().get(grip.piece()).line();
    int i = 0;
    while (i < line.size() && !line.get(i).span().equals(grip.span())) {
      i++;
    }
    boolean down = i < line.size() && grip.at().equals(line.get(i).high());
    for (; i >= 0 && i < line.size(); i += down ? -1 : 1) {
      StringPath.Stretch s = line.get(i);
      HoleId outer = down ? s.high() : s.low();
      HoleId inner = down ? s.low() : s.high();
      boolean inside = state.clampInside(s.span(), outer).isPresent();
      boolean outside = state.clampOutside(s.span(), outer).isPresent();
      if (inside && outside) {
        // The one behind keeps some of what the tensioner held; the one inside bears the rest.
        setStub(s.span(), outer, corner.backUpShare() * at(s.span(), outer));
      }
      if (inside || outside) {
        lose(s.span());
        return;
      }
      if (state.clampedInside(s.span()) || state.clampOutside(s.span(), inner).isPresent()) {
        return; // what this clamp holds lies beyond it and was not the tensioner's load
      }
    }
  }

  private void lose(SpanId id) {
    Cell cell = cell(id);
    double loss = corner.drawbackMm() * stiffness(id) / Math.max(1.0, span(id).lengthMm());
    cell.main = Math.max(0.0, cell.main - loss);
    cell.fromEnd = Math.max(0.0, cell.fromEnd - loss);
    cell.toEnd = Math.max(0.0, cell.toEnd - loss);
  }

  private double stiffness(SpanId id) {
    return id.isMain() ? corner.mainsStiffness() : corner.crossesStiffness();
  }

  /**
   * What a clamp bears now: the difference between its two sides, in newtons; negative when the
   * stub pulls more. The sign is kept so that a range of values knows when it holds 0.
   */
  double load(PlacedClamp clamp) {
    if (!state.isLaced(clamp.span())) {
      return 0;
    }
    if (clamp.inside()) {
      return end(clamp.span(), clamp.near()) - at(clamp.span(), clamp.near());
    }
    return Math.max(0.0, at(clamp.span(), clamp.near()) - beyond(clamp));
  }

  /**
   * What a clamp inside and the one outside behind it bear together, in newtons and with its sign;
   * empty when it has none behind it.
   */
  OptionalDouble together(PlacedClamp inside) {
    Optional<PlacedClamp> outside = state.clampOutside(inside.span(), inside.near());
    if (!inside.inside() || outside.isEmpty() || !state.isLaced(inside.span())) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(end(inside.span(), inside.near()) - beyond(outside.get()));
  }

  /** What pulls on the far side of a clamp outside the frame. */
  private double beyond(PlacedClamp clamp) {
    for (Grip g : state.grips()) {
      if (g.span().equals(clamp.span()) && g.at().equals(clamp.near())) {
        return pull;
      }
    }
    for (StringPath path : state.paths()) {
      List<StringPath.Stretch> line = path.line();
      for (int i = 0; i < line.size(); i++) {
        StringPath.Stretch s = line.get(i);
        if (s.span().equals(clamp.span())) {
          boolean low = clamp.near().equals(s.low());
          int next = low ? i - 1 : i + 1;
          if (next < 0 || next >= line.size()) {
            return 0;
          }
          StringPath.Stretch n = line.get(next);
          HoleId in = low ? n.high() : n.low();
          return kept(clamp.span(), clamp.near(), n.span(), in) * at(n.span(), in);
        }
      }
    }
    return 0;
  }

  /** What pulls at the knot of this end, over the bend at the hole where it comes out. */
  double knotLoad(StringPath path, EndName end) {
    Optional<HoleId> knot = state.knot(end);
    Optional<Grip> tail = path.tail(end);
    if (knot.isEmpty() || tail.isEmpty()) {
      return 0;
    }
    double bend = bends.towards(tail.get().span(), tail.get().at(), knot.get());
    return ForceParameters.kept(corner.bendFriction(), bend)
        * at(tail.get().span(), tail.get().at());
  }
}
