package org.hoopwright.geometry;

import com.google.common.base.Suppliers;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/**
 * The quarter of the curve |x/a|^n + |y/b|^n = 1 with x and y not negative, from the head (0, b)
 * over the shoulder to the flank (a, 0).
 *
 * <p>The place on it is a number u from 0 (head) through 1 (shoulder, where x/a = y/b) to 2
 * (flank). Each half is the graph of one coordinate over the other, cut where both are alike, so
 * that no slope is ever infinite: with v = u or 2 − u and q = max(1, 1/n), the leading ratio is
 * 2^(−1/n)·v^q and the other (1 − v^(qn)/2)^(1/n). The usual angle would make the speed infinite at
 * the axes for n &gt; 2.
 */
final class SuperellipseQuarter {

  /** Even steps on each half in the search for the nearest place. */
  private static final int STEPS = 128;

  /** Halvings of the first of these steps towards an axis, where the curve may bend sharply. */
  private static final int HALVINGS = 33;

  /** A place is known well enough when it lies in a stretch as short as this. */
  private static final double SHORT = 1e-18;

  private final double a;
  private final double b;
  private final double n;
  private final double m; // qn, without rounding
  private final double q;
  private final double shoulder;
  // Most questions need none of these, and each costs thousands of powers.
  private final Supplier<RunningIntegral> headArc;
  private final Supplier<RunningIntegral> flankArc;
  private final Supplier<Double> area;
  private final Supplier<List<Place>> samples;

  /** A place u, its point, and how the point moves as u grows. */
  private record Place(double u, double x, double y, double dx, double dy) {}

  SuperellipseQuarter(double a, double b, double n) {
    this.a = a;
    this.b = b;
    this.n = n;
    this.m = Math.max(1, n);
    this.q = Math.max(1, 1 / n);
    this.shoulder = StrictMath.pow(2, -1 / n);
    this.headArc = Suppliers.memoize(() -> arc(a, b));
    this.flankArc = Suppliers.memoize(() -> arc(b, a));
    this.area = Suppliers.memoize(this::integratedArea);
    this.samples = Suppliers.memoize(() -> Arrays.stream(steps()).mapToObj(this::place).toList());
  }

  private RunningIntegral arc(double lead, double other) {
    return new RunningIntegral(v -> hypot(lead * leadSlope(v), other * otherSlope(v)));
  }

  /** By Green's theorem; both halves sweep the same area, half of this integral each. */
  private double integratedArea() {
    return a
        * b
        * new RunningIntegral(v -> other(v) * leadSlope(v) - lead(v) * otherSlope(v)).total();
  }

  private static double[] steps() {
    int perHalf = HALVINGS + STEPS;
    double[] steps = new double[2 * perHalf + 1];
    for (int i = 1; i <= perHalf; i++) {
      double v =
          i <= HALVINGS
              ? StrictMath.scalb(1.0 / STEPS, i - 1 - HALVINGS)
              : (double) (i - HALVINGS) / STEPS;
      steps[i] = v;
      steps[2 * perHalf - i] = 2 - v;
    }
    steps[2 * perHalf] = 2;
    return steps;
  }

  private static double hypot(double x, double y) {
    return Math.sqrt(x * x + y * y); // sizes are bounded: no overflow, and exact enough
  }

  /** The leading ratio: x/a on the head's half, y/b on the flank's half. */
  private double lead(double v) {
    return shoulder * (q == 1 ? v : StrictMath.pow(v, q));
  }

  private double leadSlope(double v) {
    return q == 1 ? shoulder : shoulder * q * StrictMath.pow(v, q - 1);
  }

  /** The other ratio: y/b on the head's half, x/a on the flank's half. */
  private double other(double v) {
    return root(1 - 0.5 * power(v));
  }

  private double otherSlope(double v) {
    double power = power(v);
    return otherSlope(v, power, root(1 - 0.5 * power));
  }

  private double otherSlope(double v, double power, double other) {
    double perV = v > 0 ? power / v : (m == 1 ? 1 : 0);
    return -0.5 * q * perV * other / (1 - 0.5 * power);
  }

  private double power(double v) {
    return m == 2 ? v * v : StrictMath.pow(v, m);
  }

  private double root(double ratio) {
    return n == 2 ? Math.sqrt(ratio) : StrictMath.pow(ratio, 1 / n);
  }

  double x(double u) {
    return place(u).x();
  }

  double y(double u) {
    return place(u).y();
  }

  private Place place(double u) {
    double v = u <= 1 ? u : 2 - u;
    double power = power(v);
    double other = root(1 - 0.5 * power);
    double otherSlope = otherSlope(v, power, other);
    return u <= 1
        ? new Place(u, a * lead(v), b * other, a * leadSlope(v), b * otherSlope)
        : new Place(u, a * other, b * lead(v), -a * otherSlope, -b * leadSlope(v));
  }

  double area() {
    return area.get();
  }

  double length() {
    return headArc.get().total() + flankArc.get().total();
  }

  /** The arc length from the head to the place u in [0, 2]. */
  double arcTo(double u) {
    return u <= 1 ? headArc.get().upTo(u) : length() - flankArc.get().upTo(2 - u);
  }

  /** The place at an arc length in [0, length] from the head. */
  double placeAt(double arc) {
    if (arc <= headArc.get().total()) {
      return headArc.get().inverse(arc);
    }
    double rest = length() - arc;
    return rest >= flankArc.get().total() ? 1 : 2 - flankArc.get().inverse(Math.max(0, rest));
  }

  /**
   * The place u nearest to a point, which may be anywhere; the first one from the head of several
   * equally near ones.
   */
  double nearest(double px, double py) {
    // A fall and rise of the distance that both fit between two samples change it by less than a
    // millionth of a millimetre on a hoop, so only the samples' signs are looked at.
    double scale = scale(px, py);
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    double before = 1;
    List<Place> all = samples.get();
    int last = all.size() - 1;
    for (int i = 0; i <= last; i++) {
      double growth = growth(all.get(i), px, py, scale);
      double candidate = Double.NaN;
      if (i == 0 && growth >= 0) {
        candidate = 0;
      } else if (i > 0 && before < 0 && growth >= 0) {
        candidate = refine(all.get(i - 1).u(), before, all.get(i).u(), growth, px, py, scale);
      } else if (i == last && growth < 0) {
        candidate = 2;
      }
      if (!Double.isNaN(candidate)) {
        double distance = distance(candidate, px, py);
        if (distance < least) {
          least = distance;
          best = candidate;
        }
      }
      before = growth;
    }
    return best;
  }

  /** How half the square of the distance grows with the place, over {@code scale}. */
  private static double growth(Place place, double px, double py, double scale) {
    return (place.x() - px) / scale * place.dx() + (place.y() - py) / scale * place.dy();
  }

  double distance(double u, double px, double py) {
    return StrictMath.hypot(px - x(u), py - y(u));
  }

  /** What far points are divided by, so that products stay finite. */
  private static double scale(double px, double py) {
    return Math.max(1, Math.max(Math.abs(px), Math.abs(py)));
  }

  /**
   * The place between one where the distance falls and one where it grows, by false position with
   * the Illinois rule (M. Dowell, P. Jarratt, BIT 11, 1971; from memory) and a bisection whenever
   * that is slow.
   */
  private double refine(
      double falling,
      double fall,
      double growing,
      double growth,
      double px,
      double py,
      double scale) {
    double lo = falling;
    double hi = growing;
    double low = fall;
    double high = growth;
    int same = 0; // how often the same end has moved; below 0 for the upper one
    while (hi - lo > SHORT) {
      double least = Math.max(Math.ulp(hi), SHORT);
      double guess = Math.abs(same) > 3 ? 0.5 * (lo + hi) : lo + low / (low - high) * (hi - lo);
      // Beside an end that is as good as the place itself, one step shows that it is.
      double next = Math.min(Math.max(guess, lo + least), hi - least);
      if (!(next > lo && next < hi)) {
        return hi;
      }
      double value = growth(place(next), px, py, scale);
      if (value < 0) {
        lo = next;
        low = value;
        high = same > 0 ? 0.5 * high : high;
        same = Math.max(same, 0) + 1;
      } else {
        hi = next;
        high = value;
        low = same < 0 ? 0.5 * low : low;
        same = Math.min(same, 0) - 1;
      }
    }
    return hi;
  }
}
