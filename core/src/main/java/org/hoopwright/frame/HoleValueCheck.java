package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/** Checks what a layout states about single holes: bores, coordinates and forbidden stretches. */
final class HoleValueCheck {

  /** The most strings that a hole may be said to take. */
  static final int MAX_BORE = 9;

  /** Greatest coordinate, either sign, in mm. */
  static final double MAX_COORDINATE_MM = 10_000;

  private final Layout layout;
  private final Ring ring;
  private final List<Finding> findings = new ArrayList<>();

  private HoleValueCheck(Layout layout) {
    this.layout = layout;
    this.ring = Ring.of(layout);
  }

  static List<Finding> findings(Layout layout) {
    HoleValueCheck check = new HoleValueCheck(layout);
    layout.bore().forEach(check::boreRange);
    check.boreNeeded();
    layout.at().forEach(check::coordinates);
    for (int i = 0; i < layout.noRun().size(); i++) {
      check.noRun("/holes/noRun/" + i, layout.noRun().get(i));
    }
    return check.findings;
  }

  private void boreRange(HoleRef ref, int bore) {
    if (bore < 1 || bore > MAX_BORE) {
      findings.add(
          Finding.of(FindingCode.NUMBER_RANGE)
              .message("The bore of %s (%s) is not from 1 to %s.".formatted(ref, bore, MAX_BORE))
              .at("/holes/bore/" + ref, layout.places())
              .about(ref.holes())
              .fix(
                  "State how many strings the hole takes; name a hole that takes none under holes.blocked.")
              .build());
    }
  }

  /** A shared hole takes two passes, a tie-off hole its anchor and a knot; blocked ones nothing. */
  private void boreNeeded() {
    Map<String, List<HoleId>> tooSmall = new LinkedHashMap<>();
    for (Side side : Side.values()) {
      for (HoleId hole : ring.list(side)) {
        int bore = ring.bore(hole);
        // A bore below 1 is out of its range, which is said already.
        if ((ring.isShared(hole) || ring.isTieOff(hole)) && bore == 1) {
          tooSmall
              .computeIfAbsent(
                  LayoutPointers.member("/holes/bore", layout.bore().keySet(), hole),
                  p -> new ArrayList<>())
              .add(hole);
        }
      }
    }
    tooSmall.forEach(
        (pointer, holes) -> {
          boolean shared = holes.stream().anyMatch(ring::isShared);
          findings.add(
              Finding.of(FindingCode.BORE_TOO_SMALL)
                  .message(
                      "%s %s %s, which needs a bore of 2, not 1."
                          .formatted(
                              Texts.holes(holes),
                              holes.size() == 1 ? "is" : "are",
                              shared ? "shared" : "for a tie-off"))
                  .at(pointer, layout.places())
                  .about(holes)
                  .fix(
                      shared
                          ? "State a bore of 2 or more, or take the hole out of holes.shared."
                          : "State a bore of 2 or more, or take the hole out of holes.tieOff.")
                  .build());
        });
  }

  private void coordinates(HoleRef ref, Point stated) {
    String pointer = "/holes/at/" + ref;
    boolean inRange = coordinate(ref, pointer + "/0", "x", layout.mm(stated.x()));
    inRange &= coordinate(ref, pointer + "/1", "y", layout.mm(stated.y()));
    int sign = ref.side().orElse(Side.RIGHT).sign();
    if (inRange && stated.x() * sign <= 0) {
      findings.add(
          Finding.of(FindingCode.HOLE_WRONG_SIDE)
              .message(
                  "Hole %s is %s, but its x (%s mm) %s."
                      .formatted(
                          ref.side().isPresent() ? ref : "R" + ref,
                          sign < 0 ? "left of the long axis" : "right of the long axis",
                          Texts.mm(layout.mm(stated.x())),
                          stated.x() == 0 ? "lies on it" : "is on the other side"))
              .at(pointer + "/0", layout.places())
              .about(ref.holes())
              .fix(
                  ref.side().isPresent()
                      ? "Check the sign of x: left is negative, right is positive."
                      : "Give the right hole's coordinates; the left hole is its mirror image.")
              .build());
    }
  }

  private boolean coordinate(HoleRef ref, String pointer, String name, double mm) {
    if (Math.abs(mm) <= MAX_COORDINATE_MM) {
      return true;
    }
    findings.add(
        Finding.of(FindingCode.NUMBER_RANGE)
            .message("The %s of %s is more than 10 m from the origin.".formatted(name, ref))
            .at(pointer, layout.places())
            .about(ref.holes())
            .fix("Check the number and the unit.")
            .build());
    return false;
  }

  private void noRun(String pointer, NoRun no) {
    String why = null;
    if (!no.from().side().equals(no.to().side())) {
      why =
          no.from().side().isPresent() && no.to().side().isPresent()
              ? "are not on one side"
              : "must both have a side or both have none";
    } else if (no.from().equals(no.to())) {
      why = "are one and the same hole";
    }
    if (why != null) {
      findings.add(
          Finding.of(FindingCode.NO_RUN_SIDES)
              .message(
                  "The ends of the forbidden stretch, %s and %s, %s."
                      .formatted(no.from(), no.to(), why))
              .at(pointer, layout.places())
              .about(no.from(), no.to())
              .fix(
                  "Name two different holes of one side, such as L5T and L6T, or 5T and 6T for both sides.")
              .build());
    }
  }
}
