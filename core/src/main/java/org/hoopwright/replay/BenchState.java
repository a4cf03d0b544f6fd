package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampOn;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.StrungEnd;
import org.hoopwright.bench.StrungPiece;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;

/**
 * The frame and everything on it while a plan is replayed. A step that cannot be done changes
 * nothing; what is wrong with it is said by the checks. Confined to one replay.
 */
final class BenchState {

  private final Bed bed;
  private final List<StringPath> paths = new ArrayList<>();
  private final Set<Integer> cut = new TreeSet<>();
  private final Set<SpanId> laced = new TreeSet<>();
  private final Set<SpanId> pulled = new TreeSet<>();
  private final Set<SpanId> guarded = new TreeSet<>();
  private final Map<String, PlacedClamp> clamps = new TreeMap<>();
  private final Map<EndName, HoleId> knots = new EnumMap<>(EndName.class);
  private final Map<EndName, SpanId> anchors = new EnumMap<>(EndName.class);
  private final Set<EndName> trimmed = new TreeSet<>();
  private List<Grip> grips = List.of();
  private boolean busy;

  BenchState(BenchPlan plan) {
    bed = plan.bed();
    List<Piece> pieces = plan.route().pieces();
    for (int i = 0; i < pieces.size(); i++) {
      paths.add(new StringPath(i, pieces.get(i).role()));
    }
  }

  /**
   * The frame as somebody has left it.
   *
   * @param plan what goes on from there
   * @param from what is strung; its second piece may be more than the plan's route has
   */
  BenchState(BenchPlan plan, HalfDone from) {
    this(plan);
    load(from);
  }

  /** The frame as somebody has left it. */
  BenchState(Bed bed, HalfDone from) {
    this.bed = bed;
    paths.add(new StringPath(0, Piece.Role.MAINS));
    load(from);
  }

  private void load(HalfDone from) {
    for (int i = paths.size(); i < from.pieces().size(); i++) {
      paths.add(new StringPath(i, Piece.Role.CROSSES));
    }
    for (int i = 0; i < from.pieces().size(); i++) {
      StrungPiece piece = from.pieces().get(i);
      if (!piece.isEmpty()) {
        cut.add(i);
      }
      for (StrungEnd end : piece.ends()) {
        for (Pass pass : end.passes()) {
          paths.get(i).lace(end.name(), pass);
          laced.add(pass.span());
        }
        end.knot()
            .ifPresent(
                k -> {
                  knots.put(end.name(), k.hole());
                  anchors.put(end.name(), k.anchor());
                });
      }
    }
    pulled.addAll(from.pulled());
    for (ClampOn c : from.clamps()) {
      clamps.put(
          c.clamp(), new PlacedClamp(c.clamp(), c.span(), c.near(), c.distanceMm(), c.side()));
    }
  }

  Bed bed() {
    return bed;
  }

  /** The span round which this end is knotted; empty while it is not. */
  Optional<SpanId> anchor(EndName end) {
    return Optional.ofNullable(anchors.get(end));
  }

  List<StringPath> paths() {
    return paths;
  }

  /** The piece of this index if it has this end. */
  Optional<StringPath> path(int piece, EndName end) {
    return piece >= 0 && piece < paths.size() && paths.get(piece).has(end)
        ? Optional.of(paths.get(piece))
        : Optional.empty();
  }

  /** The free tail that comes out of this span at this hole. */
  Optional<Grip> tail(SpanId span, HoleId at) {
    for (StringPath path : paths) {
      for (EndName end : List.of(path.lowEnd(), path.highEnd())) {
        Optional<Grip> tail = path.tail(end);
        if (tail.isPresent()
            && !knotted(end)
            && tail.get().span().equals(span)
            && tail.get().at().equals(at)) {
          return tail;
        }
      }
    }
    return Optional.empty();
  }

  boolean isCut(int piece) {
    return cut.contains(piece);
  }

  boolean isLaced(SpanId span) {
    return laced.contains(span);
  }

  /** Spans that have had a pull of their own. */
  Set<SpanId> pulled() {
    return pulled;
  }

  /** Mains that a starting clamp guards before their own pull. */
  Set<SpanId> guarded() {
    return guarded;
  }

  /** All clamps that are on, by name. */
  List<PlacedClamp> clamps() {
    return List.copyOf(clamps.values());
  }

  Optional<PlacedClamp> clamp(String name) {
    return Optional.ofNullable(clamps.get(name));
  }

  boolean clampedInside(SpanId span) {
    for (PlacedClamp c : clamps.values()) {
      if (c.inside() && c.span().equals(span)) {
        return true;
      }
    }
    return false;
  }

  /** A clamp inside this span near this hole. */
  Optional<PlacedClamp> clampInside(SpanId span, HoleId near) {
    return clamp(span, near, ClampSide.INSIDE);
  }

  /** A clamp outside this hole on the string of this span. */
  Optional<PlacedClamp> clampOutside(SpanId span, HoleId near) {
    return clamp(span, near, ClampSide.OUTSIDE);
  }

  private Optional<PlacedClamp> clamp(SpanId span, HoleId near, ClampSide side) {
    for (PlacedClamp c : clamps.values()) {
      if (c.side() == side && c.span().equals(span) && c.near().equals(near)) {
        return Optional.of(c);
      }
    }
    return Optional.empty();
  }

  boolean knotted(EndName end) {
    return knots.containsKey(end);
  }

  /** The hole where this end is knotted; empty while it is not. */
  Optional<HoleId> knot(EndName end) {
    return Optional.ofNullable(knots.get(end));
  }

  boolean hasKnot(HoleId hole) {
    return knots.containsValue(hole);
  }

  boolean isTrimmed(EndName end) {
    return trimmed.contains(end);
  }

  boolean gripped(EndName end) {
    return grips.stream().anyMatch(g -> g.end() == end);
  }

  /** The tails in the tensioner's grip. */
  List<Grip> grips() {
    return grips;
  }

  /** Whether the tensioner has been set pulling and not let go. */
  boolean busy() {
    return busy;
  }

  /** Whether this end could be led through this span now. */
  boolean canLace(SpanId span, HoleId from, HoleId to, int piece, EndName end) {
    return path(piece, end).isPresent()
        && joins(span, from, to)
        && !isLaced(span)
        && !knotted(end)
        && !gripped(end);
  }

  /** Whether the bed has this span and it runs between these two holes. */
  boolean joins(SpanId span, HoleId from, HoleId to) {
    return bed.find(span).filter(s -> s.uses(from) && s.other(from).equals(to)).isPresent();
  }

  /** Does a step, as far as it can be done. */
  void apply(Step step) {
    if (step instanceof Step.Cut s) {
      cut.add(s.piece());
    } else if (step instanceof Step.Lace s) {
      lace(s.span(), s.from(), s.to(), s.piece(), s.end());
    } else if (step instanceof Step.Weave s) {
      lace(s.span(), s.from(), s.to(), s.piece(), s.end());
    } else if (step instanceof Step.Unlace s) {
      unlace(s);
    } else if (step instanceof Step.CutOut s) {
      cutOut(s.piece());
    } else if (step instanceof Step.Pull s) {
      pull(s);
    } else if (step instanceof Step.Release) {
      grips = List.of();
      busy = false;
    } else if (step instanceof Step.SetClamp s) {
      set(s);
    } else if (step instanceof Step.FreeClamp s) {
      clamps.remove(s.clamp());
    } else if (step instanceof Step.TieKnot s) {
      if (path(s.piece(), s.end()).isPresent() && !knotted(s.end())) {
        knots.put(s.end(), s.hole());
        anchors.put(s.end(), s.anchor());
      }
    } else if (step instanceof Step.Trim s) {
      trimmed.add(s.end());
    }
    // A hand keeps a string straight and a look changes nothing.
  }

  private void lace(SpanId span, HoleId from, HoleId to, int piece, EndName end) {
    if (canLace(span, from, to, piece, end)) {
      path(piece, end).ifPresent(p -> p.lace(end, new Pass(span, from, to)));
      laced.add(span);
    }
  }

  private void unlace(Step.Unlace s) {
    Optional<StringPath> path = path(s.piece(), s.end());
    if (path.isPresent() && outermost(path.get(), s.end(), s.span()) && !gripped(s.end())) {
      path.get().unlaceLast(s.end());
      laced.remove(s.span());
      pulled.remove(s.span());
      guarded.remove(s.span());
    }
  }

  private void cutOut(int piece) {
    if (piece < 0 || piece >= paths.size()) {
      return;
    }
    StringPath path = paths.get(piece);
    for (EndName end : List.of(path.lowEnd(), path.highEnd())) {
      while (!path.passes(end).isEmpty()) {
        SpanId span = path.passes(end).get(path.passes(end).size() - 1).span();
        clamps.values().removeIf(c -> c.span().equals(span));
        path.unlaceLast(end);
        laced.remove(span);
        pulled.remove(span);
        guarded.remove(span);
      }
      knots.remove(end);
      anchors.remove(end);
      trimmed.remove(end);
    }
    cut.remove(piece);
  }

  /** Whether this span is the last that this end has laced. */
  static boolean outermost(StringPath path, EndName end, SpanId span) {
    List<Pass> own = path.passes(end);
    return !own.isEmpty() && own.get(own.size() - 1).span().equals(span);
  }

  private void pull(Step.Pull s) {
    if (!busy) {
      grips = PullReading.of(this, s).grips();
      if (grips.size() == 1) {
        Grip grip = grips.get(0);
        if (obstacle(grip).isEmpty()) {
          pulled.add(grip.span());
        }
      }
    }
    busy = true;
  }

  /** Why this grip does not pull the span next to it; empty when it does. */
  Optional<String> obstacle(Grip grip) {
    return new Holding(this, paths.get(grip.piece())).obstacle(grip);
  }

  private void set(Step.SetClamp s) {
    boolean known = bed.find(s.span()).filter(span -> span.uses(s.near())).isPresent();
    if (!known || clamps.containsKey(s.clamp())) {
      return;
    }
    clamps.put(s.clamp(), new PlacedClamp(s.clamp(), s.span(), s.near(), s.distanceMm(), s.side()));
    if (s.side() == ClampSide.OUTSIDE && s.span().isMain() && !pulled.contains(s.span())) {
      guarded.add(s.span());
    }
  }
}
