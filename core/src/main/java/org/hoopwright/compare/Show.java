package org.hoopwright.compare;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.replay.Interval;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteNotation;

/** Values as text. */
final class Show {

  private Show() {}

  /** A stated number, to a millionth: what differs less is rounding of units. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value); // a layout may be wrong; that is for its check to say
    }
    BigDecimal decimal = new BigDecimal(value).setScale(6, RoundingMode.HALF_UP);
    return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
  }

  /** A number to so many decimals. */
  static String rounded(double value, int decimals) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  static String point(double x, double y) {
    return "(" + number(x) + ", " + number(y) + ")";
  }

  static String tenths(Point p) {
    return "(" + rounded(p.x(), 1) + ", " + rounded(p.y(), 1) + ")";
  }

  static String newtons(Interval i) {
    return rounded(i.low(), 0) + " to " + rounded(i.high(), 0) + " N";
  }

  static String side(Side side) {
    return side == Side.LEFT ? "left" : "right";
  }

  static String theSide(Side side) {
    return "the " + side(side) + " side";
  }

  static String direction(Direction direction) {
    return direction == Direction.HEAD_TO_THROAT ? "from the head down" : "from the throat up";
  }

  static String end(EndName end) {
    return switch (end) {
      case SHORT -> "the short end";
      case LONG -> "the long end";
      case START -> "the start of the crosses";
      case FINISH -> "the end of the crosses";
    };
  }

  /** Spans in order, crosses with the side where the first of a row goes in. */
  static String passes(List<Pass> passes) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < passes.size(); ) {
      int j = i;
      while (j < passes.size()
          && passes.get(j).span().isCross() == passes.get(i).span().isCross()) {
        j++;
      }
      HoleId entry = passes.get(i).from();
      text.append(i == 0 ? "" : " ").append(RouteNotation.spans(passes.subList(i, j)));
      text.append(passes.get(i).span().isCross() ? " (from the " + side(entry.side()) + ")" : "");
      i = j;
    }
    return text.toString();
  }
}
