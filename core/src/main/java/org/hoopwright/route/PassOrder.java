package org.hoopwright.route;

import java.util.List;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;

/**
 * An order of passes with its time order, before knots are chosen: the opening mains of both ends
 * in turn, then the rest of the short end, then the rest of the long end, then the second piece.
 * Its arrays are shared inside this package and never changed after construction.
 */
final class PassOrder {

  private final End start;
  private final Direction direction;
  private final int shortSide;
  private final int shortOpening;
  private final int longOpening;
  private final int[] shortPasses;
  private final int[] longPasses;
  private final int[] crossPasses;

  PassOrder(
      End start,
      Direction direction,
      int shortSide,
      int shortOpening,
      int longOpening,
      int[] shortPasses,
      int[] longPasses,
      int[] crossPasses) {
    this.start = start;
    this.direction = direction;
    this.shortSide = shortSide;
    this.shortOpening = shortOpening;
    this.longOpening = longOpening;
    this.shortPasses = shortPasses;
    this.longPasses = longPasses;
    this.crossPasses = crossPasses;
  }

  /** The end where the mains start. */
  End start() {
    return start;
  }

  /** The order of the crosses. */
  Direction direction() {
    return direction;
  }

  /** The side that begins the short end, as a number. */
  int shortSide() {
    return shortSide;
  }

  /** How many mains the short end opens with. */
  int shortOpening() {
    return shortOpening;
  }

  /** How many mains the long end opens with. */
  int longOpening() {
    return longOpening;
  }

  /** Passes of the short end. */
  int[] shortPasses() {
    return shortPasses;
  }

  /** Passes of the long end. */
  int[] longPasses() {
    return longPasses;
  }

  /** Passes of the second piece; empty for one piece. */
  int[] crossPasses() {
    return crossPasses;
  }

  boolean onePiece() {
    return crossPasses.length == 0;
  }

  /** Passes of the end that begins on this side. */
  int[] passesFrom(int side) {
    return side == shortSide ? shortPasses : longPasses;
  }

  /** What makes two orders of passes the same, whatever the labels. */
  OrderKey key() {
    return new OrderKey(passesFrom(RouteModel.LEFT), passesFrom(RouteModel.RIGHT), crossPasses);
  }

  /** What {@link #key()} says, as values: left passes, right passes, passes of the second piece. */
  List<List<Pass>> passes(RouteModel model) {
    return List.of(
        model.passes(passesFrom(RouteModel.LEFT)),
        model.passes(passesFrom(RouteModel.RIGHT)),
        model.passes(crossPasses));
  }

  /** The key of the mirror image of this order. */
  OrderKey mirrorKey(RouteModel model) {
    return new OrderKey(
        mirror(model, passesFrom(RouteModel.RIGHT)),
        mirror(model, passesFrom(RouteModel.LEFT)),
        mirror(model, crossPasses));
  }

  private static int[] mirror(RouteModel model, int[] passes) {
    int[] m = new int[passes.length];
    for (int i = 0; i < m.length; i++) {
      m[i] = model.mirror(passes[i]);
    }
    return m;
  }
}
