package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.geometry.Outline;
import org.hoopwright.units.Force;

/** Checks the remaining numbers: frame size, pieces and tension. */
final class NumberCheck {

  private NumberCheck() {}

  static List<Finding> findings(Layout layout, HoopOutline hoop) {
    List<Finding> findings = new ArrayList<>();
    layout
        .frame()
        .ifPresent(
            f -> {
              boolean sound = size(layout, "length", f.length(), findings);
              sound &= size(layout, "width", f.width(), findings);
              if (sound) {
                hoop.outline().ifPresent(o -> aroundHoop(layout, f, o, findings));
              }
            });
    layout
        .pieces()
        .ifPresent(
            n -> {
              if (n != 1 && n != 2) {
                findings.add(
                    Finding.of(FindingCode.WRONG_VALUE)
                        .message("The number of pieces (%s) is neither 1 nor 2.".formatted(n))
                        .at("/pieces", layout.places())
                        .fix("State 1 or 2, or \"either\".")
                        .build());
              }
            });
    layout.tension().ifPresent(t -> tension(layout, t, findings));
    return findings;
  }

  private static boolean size(Layout layout, String name, double stated, List<Finding> findings) {
    double mm = layout.mm(stated);
    if (mm > 0 && mm <= HoleValueCheck.MAX_COORDINATE_MM) {
      return true;
    }
    findings.add(
        Finding.of(FindingCode.NUMBER_RANGE)
            .message("The frame's %s (%s) is not above 0 and at most 10 m.".formatted(name, stated))
            .at("/frame/" + name, layout.places())
            .fix("Check the number and the unit.")
            .build());
    return false;
  }

  private static void aroundHoop(
      Layout layout, FrameSize frame, Outline hoop, List<Finding> findings) {
    below(layout, "length", layout.mm(frame.length()), hoop.lengthMm(), findings);
    below(layout, "width", layout.mm(frame.width()), hoop.widthMm(), findings);
  }

  private static void below(
      Layout layout, String name, double frame, double hoop, List<Finding> findings) {
    if (frame < hoop) {
      findings.add(
          Finding.of(FindingCode.FRAME_BELOW_HOOP)
              .message(
                  "The frame's %s (%s mm) is less than the hoop's inside %s (%s mm)."
                      .formatted(name, Texts.mm(frame), name, Texts.mm(hoop)))
              .at("/frame/" + name, layout.places())
              .fix("Check both numbers and the unit.")
              .build());
    }
  }

  private static void tension(Layout layout, TensionRange range, List<Finding> findings) {
    boolean sound = bound(layout, "min", range, range.min(), findings);
    sound &= bound(layout, "max", range, range.max(), findings);
    if (sound && range.min() > range.max()) {
      findings.add(
          Finding.of(FindingCode.TENSION_RANGE)
              .message(
                  "The least tension (%s %s) is above the most (%s %s)."
                      .formatted(
                          range.min(), range.unit().symbol(), range.max(), range.unit().symbol()))
              .at("/tension", layout.places())
              .fix("Exchange the two, or correct them.")
              .patch(
                  List.of(
                      PatchStep.replace("/tension/min", Texts.exact(range.max())),
                      PatchStep.replace("/tension/max", Texts.exact(range.min()))))
              .fact("min", range.min(), range.unit().symbol())
              .fact("max", range.max(), range.unit().symbol())
              .build());
    }
  }

  private static boolean bound(
      Layout layout, String name, TensionRange range, double stated, List<Finding> findings) {
    double newtons = stated * range.unit().newtons();
    if (newtons > 0 && newtons <= Force.MAX_NEWTONS) {
      return true;
    }
    findings.add(
        Finding.of(FindingCode.TENSION_RANGE)
            .message(
                "The tension's %s (%s %s) is not above 0 and at most 10000 N."
                    .formatted(name, stated, range.unit().symbol()))
            .at("/tension/" + name, layout.places())
            .fix("Check the number and the unit.")
            .build());
    return false;
  }
}
