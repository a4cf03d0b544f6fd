package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.geometry.Flaw;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.PolygonOutline;
import org.hoopwright.geometry.Superellipse;

/**
 * The inside line of a layout's hoop in millimetres, or why there is none.
 *
 * <p>This is the one place where a stated {@link Hoop} becomes an {@link Outline}.
 *
 * @param outline the outline; empty exactly when there is a misfit
 * @param misfits what keeps the stated numbers from being an outline
 */
public record HoopOutline(Optional<Outline> outline, List<Misfit> misfits) {

  /**
   * A stated number that makes no outline.
   *
   * @param pointer JSON pointer to it
   * @param flaw what is wrong with it
   * @param values the numbers it is about by name: a length, width or coordinate in mm, an exponent
   *     or a number of points
   */
  public record Misfit(String pointer, Flaw flaw, Map<String, Double> values) {
    /** Copies the map. */
    public Misfit {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
  }

  // Far beyond what an outline may have, so that the outline's own check reports it, and small
  // enough that nothing overflows on the way there.
  private static final double BEYOND_MM = 1e6;

  /** Copies the list. */
  public HoopOutline {
    misfits = List.copyOf(misfits);
  }

  /** The outline of this layout's hoop; never throws. */
  public static HoopOutline of(Layout layout) {
    if (layout.hoop() instanceof Hoop.Superellipse s) {
      return superellipse(layout, s);
    }
    return polygon(layout, ((Hoop.Points) layout.hoop()).points());
  }

  private static HoopOutline superellipse(Layout layout, Hoop.Superellipse s) {
    double length = layout.mm(s.length());
    double width = layout.mm(s.width());
    List<Misfit> misfits = new ArrayList<>();
    // Each number on its own beside good ones, so that its misfit has its own place.
    add("length", length, Superellipse.flaws(length, 1, 2), misfits);
    add("width", width, Superellipse.flaws(1, width, 2), misfits);
    add("exponent", s.exponent(), Superellipse.flaws(1, 1, s.exponent()), misfits);
    return misfits.isEmpty()
        ? new HoopOutline(Optional.of(Superellipse.of(length, width, s.exponent())), misfits)
        : new HoopOutline(Optional.empty(), misfits);
  }

  private static void add(String name, double value, List<Flaw> flaws, List<Misfit> misfits) {
    flaws.forEach(f -> misfits.add(new Misfit("/hoop/" + name, f, Map.of(name, value))));
  }

  private static HoopOutline polygon(Layout layout, List<Point> stated) {
    // Beyond the most points nothing else is worth the time, and the outline's own check says so.
    List<Point> points =
        stated.size() > PolygonOutline.MAX_POINTS
            ? stated
            : stated.stream().map(p -> new Point(mm(layout, p.x()), mm(layout, p.y()))).toList();
    List<Misfit> misfits = new ArrayList<>();
    for (Flaw flaw : PolygonOutline.flaws(points)) {
      String pointer = "/hoop/points" + (flaw.index() < 0 ? "" : "/" + flaw.index());
      misfits.add(new Misfit(pointer, flaw, values(points, flaw)));
    }
    return misfits.isEmpty()
        ? new HoopOutline(Optional.of(PolygonOutline.of(points)), misfits)
        : new HoopOutline(Optional.empty(), misfits);
  }

  private static Map<String, Double> values(List<Point> points, Flaw flaw) {
    if (flaw.index() < 0) {
      return Map.of("points", (double) points.size());
    }
    Map<String, Double> values = new LinkedHashMap<>();
    values.put("x", points.get(flaw.index()).x());
    values.put("y", points.get(flaw.index()).y());
    return values;
  }

  private static double mm(Layout layout, double stated) {
    return Math.max(-BEYOND_MM, Math.min(BEYOND_MM, layout.mm(stated)));
  }
}
