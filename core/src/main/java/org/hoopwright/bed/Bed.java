package org.hoopwright.bed;

import com.google.common.base.Suppliers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Segments;
import org.hoopwright.geometry.Side;

/**
 * Which span runs between which two holes, where that is, and how mains and crosses interlace.
 *
 * <p>Main k of a side (k = 1 next to the axis) runs from the k-th hole that mains use at the head
 * to the k-th they use at the throat; cross j (j = 1 nearest the head) from the j-th hole that
 * crosses use on the left to the j-th on the right, in list order. Which main a cross meets is
 * decided by the order of holes round the hoop, not by coordinates: the two ends of one must
 * strictly separate the two ends of the other, so in a shared hole they do not meet. The weave
 * alternates along every main and every cross, and X1 goes over R1.
 *
 * <p>Lengths and coordinates are millimetres, origin at the middle of the hoop's inside length, x
 * to the right, y to the head. Immutable.
 */
public final class Bed {

  private final Layout layout;
  private final Ring ring;
  private final Labels labels;
  private final Map<HoleId, Point> positions;
  private final EachSide<List<Span>> mains;
  private final List<Span> crosses;
  private final Map<SpanId, Span> spans = new TreeMap<>();
  private final Supplier<Map<SpanId, List<Crossing>>> crossings;
  private final EachSide<HoleId> headZone;
  private final HoopGraph graph;
  private final boolean symmetric;

  private Bed(Layout layout, Ring ring, Labels labels, Map<HoleId, Point> positions) {
    this.layout = layout;
    this.ring = ring;
    this.labels = labels;
    this.positions = Collections.unmodifiableMap(new TreeMap<>(positions));
    mains = new EachSide<>(makeMains(Side.LEFT), makeMains(Side.RIGHT));
    headZone = new EachSide<>(headZoneOf(Side.LEFT), headZoneOf(Side.RIGHT));
    crosses = makeCrosses();
    for (Side side : Side.values()) {
      mains(side).forEach(s -> spans.put(s.id(), s));
    }
    crosses.forEach(s -> spans.put(s.id(), s));
    graph = new HoopGraph(spans.values());
    crossings = Suppliers.memoize(this::findCrossings); // hundreds, and routes need none of them
    symmetric = computeSymmetric();
  }

  /**
   * The bed of these labels.
   *
   * @param positions a point for every hole of the ring, in mm
   * @throws IllegalArgumentException when the labels do not fit the layout: their lists must be as
   *     long as the sides' lists, with as many mains at each end as a side has, and as many crosses
   *     on each side as there are; or when a hole has no position
   */
  public static Bed of(Layout layout, Labels labels, Map<HoleId, Point> positions) {
    Ring ring = Ring.of(layout);
    for (Side side : Side.values()) {
      require(
          labels.of(side).size() == ring.size(side),
          "labels of the " + side,
          labels.of(side).size(),
          ring.size(side));
      long cross = labels.of(side).stream().filter(HoleLabel::cross).count();
      require(
          cross == layout.crossesCount(),
          "cross labels of the " + side,
          cross,
          layout.crossesCount());
      for (End end : End.values()) {
        long main =
            ring.list(side).stream()
                .filter(h -> h.end() == end && labels.of(side).get(ring.place(h)).main())
                .count();
        require(
            main == layout.mainsPerSide(),
            "main labels of the " + side + " at the " + end.word(),
            main,
            layout.mainsPerSide());
      }
      for (HoleId hole : ring.list(side)) {
        if (!positions.containsKey(hole)) {
          throw new IllegalArgumentException(
              "The hole ("
                  + hole
                  + ") must have a position.\nMaybe use HolePositions.of(layout, labels).");
        }
      }
    }
    return new Bed(layout, ring, labels, positions);
  }

  private static void require(boolean ok, String what, long is, long must) {
    if (!ok) {
      throw new IllegalArgumentException(
          "The number of %s (%s) must be %s.".formatted(what, is, must));
    }
  }

  private List<Span> makeMains(Side side) {
    int n = layout.mainsPerSide();
    List<HoleId> head = holes(side, End.HEAD, n);
    List<HoleId> throat = holes(side, End.THROAT, n);
    List<Span> list = new ArrayList<>(n);
    for (int k = 1; k <= n; k++) {
      list.add(span(SpanId.main(side, k), head.get(k - 1), throat.get(k - 1)));
    }
    return List.copyOf(list);
  }

  private HoleId headZoneOf(Side side) {
    List<Span> own = mains.of(side);
    return layout
        .headZone()
        .map(z -> z.of(side))
        .filter(ring::has)
        .orElseGet(() -> own.isEmpty() ? ring.at(side, 0) : own.get(own.size() - 1).from());
  }

  private List<HoleId> holes(Side side, End end, int n) {
    List<HoleId> found = new ArrayList<>(n);
    for (int i = 1; found.size() < n; i++) {
      HoleId hole = new HoleId(side, end, i);
      if (labels.of(side).get(ring.place(hole)).main()) {
        found.add(hole);
      }
    }
    return found;
  }

  private List<Span> makeCrosses() {
    List<HoleId> left = crossHoles(Side.LEFT);
    List<HoleId> right = crossHoles(Side.RIGHT);
    List<Span> list = new ArrayList<>(left.size());
    for (int j = 1; j <= left.size(); j++) {
      list.add(span(SpanId.cross(j), left.get(j - 1), right.get(j - 1)));
    }
    return List.copyOf(list);
  }

  private List<HoleId> crossHoles(Side side) {
    return ring.list(side).stream()
        .filter(h -> labels.of(side).get(ring.place(h)).cross())
        .toList();
  }

  private Span span(SpanId id, HoleId from, HoleId to) {
    return new Span(id, from, to, position(from), position(to));
  }

  private Map<SpanId, List<Crossing>> findCrossings() {
    Map<SpanId, List<Crossing>> found = new TreeMap<>();
    spans.keySet().forEach(id -> found.put(id, new ArrayList<>()));
    for (Span cross : crosses) {
      for (SpanId main : mainsLeftToRight()) {
        if (meets(main, cross.id())) {
          Span m = span(main);
          // Straight spans that separate each other's ends meet; a wrong coordinate may still make
          // them miss, and then the nearest
          // point of the main stands in, so that every meeting has a place.
          double t =
              Math.max(
                  0.0,
                  Math.min(
                      1.0,
                      Segments.lineParameter(
                          m.fromPoint(), m.toPoint(), cross.fromPoint(), cross.toPoint())));
          Point at = Point.interpolate(m.fromPoint(), m.toPoint(), t);
          Crossing c =
              new Crossing(
                  main,
                  cross.id(),
                  at,
                  t * m.lengthMm(),
                  cross.fromPoint().distanceTo(at),
                  crossOver(cross.id(), main));
          found.getOrDefault(main, new ArrayList<>()).add(c);
          found.getOrDefault(cross.id(), new ArrayList<>()).add(c);
        }
      }
    }
    found.replaceAll((id, list) -> List.copyOf(list));
    return Collections.unmodifiableMap(found);
  }

  private boolean computeSymmetric() {
    List<HoleId> left = ring.list(Side.LEFT);
    if (!labels.left().equals(labels.right())
        || !ring.list(Side.RIGHT).equals(left.stream().map(HoleId::mirrored).toList())
        || !headZone(Side.RIGHT).equals(headZone(Side.LEFT).mirrored())) {
      return false;
    }
    for (int i = 0; i < left.size(); i++) {
      HoleId hole = left.get(i);
      HoleId twin = hole.mirrored();
      boolean runs =
          i == 0
              || ring.runAllowed(left.get(i - 1), hole)
                  == ring.runAllowed(left.get(i - 1).mirrored(), twin);
      if (!runs
          || ring.isBlocked(hole) != ring.isBlocked(twin)
          || knotPlace(hole) != knotPlace(twin)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a knot fits into this hole beside the spans that run through it. */
  public boolean knotPlace(HoleId hole) {
    return ring.isTieOff(hole) && spansAt(hole).size() + 1 <= ring.bore(hole);
  }

  /** The layout this bed was made from. */
  public Layout layout() {
    return layout;
  }

  /** The layout's holes in order. */
  public Ring ring() {
    return ring;
  }

  /** What each hole carries. */
  public Labels labels() {
    return labels;
  }

  /** Where each hole is, in mm; in hole order. */
  public Map<HoleId, Point> positions() {
    return positions;
  }

  /**
   * Where this hole is, in mm.
   *
   * @throws IllegalArgumentException when the layout has no such hole
   */
  public Point position(HoleId hole) {
    Point p = positions.get(hole);
    if (p == null) {
      throw new IllegalArgumentException("The hole (" + hole + ") must be one of the layout's.");
    }
    return p;
  }

  /** How many mains a side has. */
  public int mainsPerSide() {
    return layout.mainsPerSide();
  }

  /** How many crosses there are. */
  public int crossCount() {
    return crosses.size();
  }

  /** A side's mains, from the axis outwards. */
  public List<Span> mains(Side side) {
    return mains.of(side);
  }

  /** The crosses, from the head down. */
  public List<Span> crosses() {
    return crosses;
  }

  /** All spans: left mains, right mains, crosses. */
  public List<Span> spans() {
    return List.copyOf(spans.values());
  }

  /**
   * The span of this name.
   *
   * @throws IllegalArgumentException when the bed has no such span
   */
  public Span span(SpanId id) {
    return find(id)
        .orElseThrow(
            () -> new IllegalArgumentException("The span (" + id + ") must be one of the bed's."));
  }

  /** The span of this name, or empty. */
  public Optional<Span> find(SpanId id) {
    return Optional.ofNullable(spans.get(id));
  }

  /** The spans that run through this hole, in their own order; at most two. */
  public List<SpanId> spansAt(HoleId hole) {
    return graph.spansAt(hole);
  }

  /** The spans that run beside this one: one or two mains, or one or two crosses. */
  public List<SpanId> beside(SpanId span) {
    List<SpanId> row = span.isMain() ? mainsLeftToRight() : crosses.stream().map(Span::id).toList();
    int i = row.indexOf(span);
    List<SpanId> beside = new ArrayList<>();
    if (i > 0) {
      beside.add(row.get(i - 1));
    }
    if (i >= 0 && i + 1 < row.size()) {
      beside.add(row.get(i + 1));
    }
    return List.copyOf(beside);
  }

  /** All mains from the left edge of the bed to the right edge. */
  public List<SpanId> mainsLeftToRight() {
    List<SpanId> list = new ArrayList<>();
    for (int k = mainsPerSide(); k >= 1; k--) {
      list.add(SpanId.main(Side.LEFT, k));
    }
    for (int k = 1; k <= mainsPerSide(); k++) {
      list.add(SpanId.main(Side.RIGHT, k));
    }
    return list;
  }

  /**
   * Where this span meets others: along a main from the head down, along a cross from left to
   * right.
   */
  public List<Crossing> crossings(SpanId id) {
    return crossings.get().getOrDefault(id, List.of());
  }

  /**
   * Whether a main and a cross meet: whether the cross's end on the main's side lies between the
   * main's ends.
   *
   * @throws IllegalArgumentException when the bed has no such span
   */
  public boolean meets(SpanId main, SpanId cross) {
    Span m = span(main);
    Span c = span(cross);
    int place = ring.place(main.kind() == SpanId.Kind.LEFT_MAIN ? c.from() : c.to());
    return ring.place(m.from()) < place && place < ring.place(m.to());
  }

  /** Whether the weave takes this cross over this main, if they meet, as seen on the face. */
  public boolean crossOver(SpanId cross, SpanId main) {
    // Columns count from R1 to the right and from L1 (-1) to the left; the sum's parity alternates
    // along mains and along crosses.
    int column = main.kind() == SpanId.Kind.RIGHT_MAIN ? main.number() - 1 : -main.number();
    return Math.floorMod(cross.number() - 1 + column, 2) == 0;
  }

  /** The last hole of the head zone on this side, counted from 1H. */
  public HoleId headZone(Side side) {
    return headZone.of(side);
  }

  /** Whether the hole lies in the head zone: from 1H to {@link #headZone(Side)}, both included. */
  public boolean inHeadZone(HoleId hole) {
    return ring.place(hole) <= ring.place(headZone(hole.side()));
  }

  /**
   * Whether the two halves of the bed are mirror images as far as routes go: the same labels,
   * blocked holes, knot places, forbidden stretches and head zone. Positions do not count: holes
   * that are drilled a little unevenly do not make another pattern.
   */
  public boolean symmetric() {
    return symmetric;
  }
}
