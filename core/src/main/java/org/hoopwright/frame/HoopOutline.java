package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
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
 * @param outline the outline; empty exactly when a finding is an error
 * @param findings {@code hoop-shape} for each flaw of the stated numbers, {@code hoop-off-centre}
 *     when the origin is not at the middle of the inside length
 */
public record HoopOutline(Optional<Outline> outline, List<Finding> findings) {

  /**
   * How far the middle of the inside length may be from the origin, in mm. Our choice: about what a
   * careful person measures with a rule.
   */
  public static final double OFF_CENTRE_MM = 1.0;

  // Far beyond what an outline may have, so that the outline's own check reports it, and small
  // enough that nothing overflows on the way there.
  private static final double BEYOND_MM = 1e6;

  /** Copies the list. */
  public HoopOutline {
    findings = List.copyOf(findings);
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
    List<Finding> findings = new ArrayList<>();
    // Each number on its own beside good ones, so that its finding has its own place.
    add(layout, "/hoop/length", ellipseFlaws(length, 1, 2), findings);
    add(layout, "/hoop/width", ellipseFlaws(1, width, 2), findings);
    add(layout, "/hoop/exponent", ellipseFlaws(1, 1, s.exponent()), findings);
    return findings.isEmpty()
        ? new HoopOutline(Optional.of(Superellipse.of(length, width, s.exponent())), findings)
        : new HoopOutline(Optional.empty(), findings);
  }

  private static List<Flaw> ellipseFlaws(double length, double width, double exponent) {
    return Superellipse.flaws(length, width, exponent);
  }

  private static HoopOutline polygon(Layout layout, List<Point> stated) {
    List<Finding> findings = new ArrayList<>();
    if (stated.size() > PolygonOutline.MAX_POINTS) {
      // Nothing else is worth the time, and the outline's own check says just this.
      add(layout, "/hoop/points", PolygonOutline.flaws(stated), findings);
      return new HoopOutline(Optional.empty(), findings);
    }
    List<Point> points =
        stated.stream().map(p -> new Point(mm(layout, p.x()), mm(layout, p.y()))).toList();
    add(layout, "/hoop/points", PolygonOutline.flaws(points), findings);
    if (!findings.isEmpty()) {
      return new HoopOutline(Optional.empty(), findings);
    }
    PolygonOutline outline = PolygonOutline.of(points);
    if (Math.abs(outline.axisOffsetMm()) > OFF_CENTRE_MM) {
      String far = Texts.mm(Math.abs(outline.axisOffsetMm()));
      String way = outline.axisOffsetMm() > 0 ? "the head" : "the throat";
      findings.add(
          Finding.of(FindingCode.HOOP_OFF_CENTRE)
              .message(
                  "The middle of the hoop's inside length lies %s mm from the origin, towards %s."
                      .formatted(far, way))
              .at("/hoop/points", layout.places())
              .fix(
                  "Move every y by %s mm towards %s, so that y = 0 is half-way between head and throat."
                      .formatted(far, outline.axisOffsetMm() > 0 ? "the throat" : "the head"))
              .build());
    }
    return new HoopOutline(Optional.of(outline), findings);
  }

  private static double mm(Layout layout, double stated) {
    return Math.max(-BEYOND_MM, Math.min(BEYOND_MM, layout.mm(stated)));
  }

  private static void add(Layout layout, String pointer, List<Flaw> flaws, List<Finding> findings) {
    for (Flaw flaw : flaws) {
      String at = flaw.index() < 0 ? pointer : pointer + "/" + flaw.index();
      int cut = flaw.message().indexOf("; ");
      String message = cut < 0 ? flaw.message() : flaw.message().substring(0, cut) + ".";
      String fix = cut < 0 ? "" : Texts.capitalised(flaw.message().substring(cut + 2));
      findings.add(
          Finding.of(FindingCode.HOOP_SHAPE)
              .message(message)
              .at(at, layout.places())
              .fix(fix)
              .build());
    }
  }
}
