package org.hoopwright.geometry;

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
  private final double q;
  private final double shoulder;
  private final RunningIntegral headArc;
  private final RunningIntegral flankArc;
  private final double area;
  private final double[] samples;
  private final double[] sampleX;
  private final double[] sampleY;
  private final double[] sampleDx;
  private final double[] sampleDy;

  SuperellipseQuarter(double a, double b, double n) {
    this.a = a;
    this.b = b;
    this.n = n;
    this.q = Math.max(1, 1 / n);
    this.shoulder = StrictMath.pow(2, -1 / n);
    this.headArc = new RunningIntegral(v -> hypot(a * leadSlope(v), b * otherSlope(v)));
    this.flankArc = new RunningIntegral(v -> hypot(b * leadSlope(v), a * otherSlope(v)));
    // Green's theorem; both halves sweep the same area, half of this integral each.
    this.area =
        a * b * new RunningIntegral(v -> other(v) * leadSlope(v) - lead(v) * otherSlope(v)).total();
    this.samples = samples();
    this.sampleX = new double[samples.length];
    this.sampleY = new double[samples.length];
    this.sampleDx = new double[samples.length];
    this.sampleDy = new double[samples.length];
    for (int i = 0; i < samples.length; i++) {
      double u = samples[i];
      sampleX[i] = x(u);
      sampleY[i] = y(u);
      sampleDx[i] = dx(u);
      sampleDy[i] = dy(u);
    }
  }

  private static double[] samples() {
    int perHalf = HALVINGS + STEPS;
    double[] samples = new double[2 * perHalf + 1];
    for (int i = 1; i <= perHalf; i++) {
      double v =
          i <= HALVINGS
              ? StrictMath.scalb(1.0 / STEPS, i - 1 - HALVINGS)
              : (double) (i - HALVINGS) / STEPS;
      samples[i] = v;
      samples[2 * perHalf - i] = 2 - v;
    }
    samples[2 * perHalf] = 2;
    return samples;
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
    return StrictMath.pow(1 - 0.5 * StrictMath.pow(v, Math.max(1, n)), 1 / n);
  }

  private double otherSlope(double v) {
    double m = Math.max(1, n); // qn without rounding
    double power = StrictMath.pow(v, m);
    double perV = v > 0 ? power / v : (m == 1 ? 1 : 0);
    double base = 1 - 0.5 * power;
    return -0.5 * q * perV * StrictMath.pow(base, 1 / n) / base;
  }

  double x(double u) {
    return a * (u <= 1 ? lead(u) : other(2 - u));
  }

  double y(double u) {
    return b * (u <= 1 ? other(u) : lead(2 - u));
  }

  private double dx(double u) {
    return a * (u <= 1 ? leadSlope(u) : -otherSlope(2 - u));
  }

  private double dy(double u) {
    return b * (u <= 1 ? otherSlope(u) : -leadSlope(2 - u));
  }

  double area() {
    return area;
  }

  double length() {
    return headArc.total() + flankArc.total();
  }

  /** The arc length from the head to the place u in [0, 2]. */
  double arcTo(double u) {
    return u <= 1 ? headArc.upTo(u) : length() - flankArc.upTo(2 - u);
  }

  /** The place at an arc length in [0, length] from the head. */
  double placeAt(double arc) {
    if (arc <= headArc.total()) {
      return headArc.inverse(arc);
    }
    double rest = length() - arc;
    return rest >= flankArc.total() ? 1 : 2 - flankArc.inverse(Math.max(0, rest));
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
    int last = samples.length - 1;
    for (int i = 0; i <= last; i++) {
      double growth =
          (sampleX[i] - px) / scale * sampleDx[i] + (sampleY[i] - py) / scale * sampleDy[i];
      double candidate = Double.NaN;
      if (i == 0 && growth >= 0) {
        candidate = 0;
      } else if (i > 0 && before < 0 && growth >= 0) {
        candidate = refine(samples[i - 1], samples[i], px, py, scale);
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

  double distance(double u, double px, double py) {
    return StrictMath.hypot(px - x(u), py - y(u));
  }

  /** What far points are divided by, so that products stay finite. */
  private static double scale(double px, double py) {
    return Math.max(1, Math.max(Math.abs(px), Math.abs(py)));
  }

  /** Bisects to the last bit between a place where the distance falls and one where it grows. */
  private double refine(double falling, double growing, double px, double py, double scale) {
    double lo = falling;
    double hi = growing;
    while (true) {
      double middle = 0.5 * (lo + hi);
      if (middle <= lo || middle >= hi || hi - lo <= SHORT) {
        return hi;
      }
      if ((x(middle) - px) / scale * dx(middle) + (y(middle) - py) / scale * dy(middle) < 0) {
        lo = middle;
      } else {
        hi = middle;
      }
    }
  }
}
