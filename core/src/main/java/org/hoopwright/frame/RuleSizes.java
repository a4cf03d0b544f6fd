package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.PolygonOutline;
import org.hoopwright.geometry.Side;

/**
 * Compares frame and hoop with the limits of the game's governing body, in SI units, which take
 * precedence where a rule prints inches too. The inside of the hoop stands for the hitting surface
 * or strung area.
 */
final class RuleSizes {

  static final String TENNIS = "ITF Rules of Tennis, Appendix II \"The Racket\"";
  static final String BADMINTON = "BWF Laws of Badminton, Law 4";
  static final String SQUASH = "WSF Rules of Squash, Appendix 9 \"Dimensions of a squash racket\"";
  static final String RACQUETBALL = "USA Racquetball Official Rules, Rule 2.4";

  // Far below any measurement, far above what a conversion from inches rounds.
  private static final double ROUNDING_MM = 1e-6;

  private static final double SQUARE_MM_OF_SQUARE_CM = 100.0;

  private final Layout layout;
  private final String source;
  private final List<Finding> findings = new ArrayList<>();

  private RuleSizes(Layout layout, String source) {
    this.layout = layout;
    this.source = source;
  }

  static List<Finding> findings(Layout layout, HoopOutline hoop) {
    return switch (layout.game()) {
      case TENNIS -> tennis(new RuleSizes(layout, TENNIS), hoop.outline());
      case BADMINTON -> badminton(new RuleSizes(layout, BADMINTON), hoop.outline());
      case SQUASH -> squash(new RuleSizes(layout, SQUASH), hoop.outline());
      case RACQUETBALL -> new RuleSizes(layout, RACQUETBALL).frame(558.8, Double.MAX_VALUE);
      case OTHER -> List.of();
    };
  }

  private static List<Finding> tennis(RuleSizes rules, Optional<Outline> hoop) {
    rules.frame(737, 317);
    hoop.ifPresent(
        o -> {
          rules.hoop("length", o.lengthMm(), 394, "hitting surface");
          rules.hoop("width", o.widthMm(), 292, "hitting surface");
        });
    return rules.findings;
  }

  private static List<Finding> badminton(RuleSizes rules, Optional<Outline> hoop) {
    rules.frame(680, 230);
    hoop.ifPresent(
        o -> {
          // Strings may go on into what would be the throat: at most 35 mm wide, 330 mm in all. An
          // oval has no such part, however narrow its last millimetre.
          boolean extension =
              o instanceof PolygonOutline p
                  && p.lengthMm() > 280
                  && widthBelowHead(p, 280) <= 35 + ROUNDING_MM;
          rules.hoop("length", o.lengthMm(), extension ? 330 : 280, "stringed area");
          rules.hoop("width", o.widthMm(), 220, "stringed area");
        });
    return rules.findings;
  }

  /** The greatest width of the part farther than this below the inside of the head. */
  private static double widthBelowHead(PolygonOutline o, double distance) {
    double y = o.headAxisPoint().y() - distance;
    double width = 0;
    for (Side side : Side.values()) {
      double reach = o.atY(side, y).map(p -> Math.abs(p.x())).orElse(0.0);
      for (Point p : o.points()) { // it may widen again farther down
        if (p.y() < y) {
          reach = Math.max(reach, p.x() * side.sign());
        }
      }
      width += reach;
    }
    return width;
  }

  private static List<Finding> squash(RuleSizes rules, Optional<Outline> hoop) {
    rules.frame(686, 215);
    hoop.ifPresent(
        o -> {
          rules.hoop("length", o.lengthMm(), 390, "strings");
          double area = o.areaMm2() / SQUARE_MM_OF_SQUARE_CM;
          if (area > 500 + ROUNDING_MM) {
            rules.add("/hoop", "The strung area", area, 500, "cm²");
          }
        });
    return rules.findings;
  }

  private List<Finding> frame(double length, double width) {
    layout
        .frame()
        .ifPresent(
            f -> {
              limit("/frame/length", "The frame's length", layout.mm(f.length()), length);
              limit("/frame/width", "The frame's width", layout.mm(f.width()), width);
            });
    return findings;
  }

  private void hoop(String name, double value, double limit, String what) {
    String pointer = layout.hoop() instanceof Hoop.Points ? "/hoop/points" : "/hoop/" + name;
    limit(pointer, "The %s of the %s".formatted(name, what), value, limit);
  }

  private void limit(String pointer, String what, double mm, double limit) {
    // A size that is no size at all is reported as such, not against a rule.
    if (mm > limit + ROUNDING_MM && mm <= HoleValueCheck.MAX_COORDINATE_MM) {
      add(pointer, what, mm, limit, "mm");
    }
  }

  private void add(String pointer, String what, double value, double limit, String unit) {
    findings.add(
        Finding.of(FindingCode.RULE_SIZE)
            .message(
                "%s (%s %s) is above %s %s, the limit of the %s rules."
                    .formatted(
                        what,
                        Texts.number(value),
                        unit,
                        Texts.number(limit),
                        unit,
                        layout.game().word()))
            .at(pointer, layout.places())
            .fix(
                "Check the number; a frame beyond the limit is not allowed in play under these rules.")
            .source(source)
            .fact("value", value, unit)
            .fact("limit", limit, unit)
            .build());
  }
}
