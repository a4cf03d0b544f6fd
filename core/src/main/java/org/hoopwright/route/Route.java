package org.hoopwright.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.jspecify.annotations.Nullable;

/**
 * A way to string a bed: for each end of each piece the spans in order, the knots, and the time
 * order in which it is all done.
 *
 * <p>Two routes are equal when the passes of the end that begins with L1, those of the end that
 * begins with R1, those of the crosses' piece, and the knots agree; which end is called short is a
 * label and does not count. Immutable.
 */
public final class Route {

  private final End mainsStart;
  private final Direction direction;
  private final Side shortSide;
  private final List<Piece> pieces;
  private final int shortOpening;
  private final int longOpening;
  private final List<Moment> order;
  private final Set<Family> families;
  private final RouteMeasures measures;

  Route(
      End mainsStart,
      Direction direction,
      Side shortSide,
      List<Piece> pieces,
      int shortOpening,
      int longOpening,
      List<Moment> order,
      Set<Family> families,
      RouteMeasures measures) {
    this.mainsStart = mainsStart;
    this.direction = direction;
    this.shortSide = shortSide;
    this.pieces = List.copyOf(pieces);
    this.shortOpening = shortOpening;
    this.longOpening = longOpening;
    this.order = List.copyOf(order);
    this.families = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(families));
    this.measures = measures;
  }

  /** The end of the hoop where the mains start, with the centre loop. */
  public End mainsStart() {
    return mainsStart;
  }

  /** The order in which the crosses go in. */
  public Direction direction() {
    return direction;
  }

  /** The side whose main 1 begins the short end. */
  public Side shortSide() {
    return shortSide;
  }

  /** One or two pieces; the one with the mains first. */
  public List<Piece> pieces() {
    return pieces;
  }

  /** The end of this name, or empty when the route has no such piece. */
  public Optional<StringEnd> end(EndName name) {
    return pieces.stream().flatMap(p -> p.end(name).stream()).findFirst();
  }

  /**
   * How many mains this end opens with: n or n − 1 of its own side; 0 for the ends of a crosses'
   * piece. The opening mains of both ends are strung in turn, a side at a time, before anything
   * else.
   */
  public int opening(EndName name) {
    return switch (name) {
      case SHORT -> shortOpening;
      case LONG -> longOpening;
      case START, FINISH -> 0;
    };
  }

  /**
   * Everything that is done, in time order; the turns of the opening mains may be taken otherwise.
   */
  public List<Moment> order() {
    return order;
  }

  /** The families it belongs to; none when it is plain. */
  public Set<Family> families() {
    return families;
  }

  /** What the ranking looks at. */
  public RouteMeasures measures() {
    return measures;
  }

  /**
   * The same seen in a mirror: left and right change places. On a symmetric bed it is a route of
   * that bed too.
   */
  public Route mirrored() {
    return new Route(
        mainsStart,
        direction,
        shortSide.other(),
        pieces.stream().map(Route::mirrored).toList(),
        shortOpening,
        longOpening,
        order,
        families,
        new RouteMeasures(
            measures.departures(),
            measures.covered(),
            measures.doubled(),
            measures.knots(),
            measures.longestRun(),
            measures.stringMm(),
            measures.coveredHoles().stream()
                .map(c -> new CoveredHole(c.hole().mirrored(), c.span().mirrored(), c.by()))
                .toList()));
  }

  private static Piece mirrored(Piece piece) {
    return new Piece(
        piece.role(),
        piece.ends().stream()
            .map(
                e ->
                    new StringEnd(
                        e.name(),
                        e.passes().stream()
                            .map(
                                p ->
                                    new Pass(
                                        p.span().mirrored(),
                                        p.from().mirrored(),
                                        p.to().mirrored()))
                            .toList(),
                        e.startingClamp().map(HoleId::mirrored),
                        new Knot(
                            e.finish().kind(),
                            e.finish().hole().mirrored(),
                            e.finish().anchor().mirrored())))
            .toList());
  }

  /** Passes of the end that begins on this side; in a piece with mains. */
  List<Pass> passesFrom(Side side) {
    return end(side == shortSide ? EndName.SHORT : EndName.LONG)
        .map(StringEnd::passes)
        .orElse(List.of());
  }

  private List<Object> identity() {
    List<Object> id = new ArrayList<>();
    id.add(passesFrom(Side.LEFT));
    id.add(passesFrom(Side.RIGHT));
    id.add(knotFrom(Side.LEFT));
    id.add(knotFrom(Side.RIGHT));
    for (EndName name : List.of(EndName.START, EndName.FINISH)) {
      end(name)
          .ifPresent(
              e -> {
                id.add(e.passes());
                id.add(e.startingClamp());
                id.add(e.finish());
              });
    }
    return id;
  }

  private Object knotFrom(Side side) {
    return end(side == shortSide ? EndName.SHORT : EndName.LONG)
        .<Object>map(StringEnd::finish)
        .orElse("none");
  }

  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Route r && identity().equals(r.identity());
  }

  @Override
  public int hashCode() {
    return identity().hashCode();
  }

  /** The route in one line, see {@link RouteNotation}. */
  @Override
  public String toString() {
    return RouteNotation.of(this);
  }
}
