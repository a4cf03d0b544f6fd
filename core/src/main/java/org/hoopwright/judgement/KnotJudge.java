package org.hoopwright.judgement;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Layout;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Piece;
import org.hoopwright.route.StringEnd;

/** Looks for knots whose anchor is the weaker string of a hybrid. */
final class KnotJudge {

  private KnotJudge() {}

  static List<Finding> of(BenchPlan plan) {
    Layout layout = plan.bed().layout();
    StringSpec mains = plan.job().mainsString(layout);
    StringSpec crosses = plan.job().crossesString(layout);
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : plan.route().pieces()) {
      StringSpec tied = piece.role() == Piece.Role.CROSSES ? crosses : mains;
      for (StringEnd end : piece.ends()) {
        Knot knot = end.finish();
        StringSpec anchor = knot.anchor().isMain() ? mains : crosses;
        if (weaker(anchor, tied)) {
          findings.add(finding(knot, tied, anchor));
        }
      }
    }
    return findings;
  }

  /** Gut bears no other string's knot, and a clearly thinner string is cut by a thicker one. */
  private static boolean weaker(StringSpec anchor, StringSpec tied) {
    boolean gut =
        anchor.material() == Material.NATURAL_GUT && tied.material() != Material.NATURAL_GUT;
    return gut || anchor.gauge().maxMm() < tied.gauge().minMm();
  }

  private static Finding finding(Knot knot, StringSpec tied, StringSpec anchor) {
    boolean gut = anchor.material() == Material.NATURAL_GUT;
    Finding.Builder finding =
        Finding.of(FindingCode.ANCHOR_WEAKER)
            .about(knot.hole())
            .about(knot.anchor())
            .message(
                "The knot at "
                    + knot.hole()
                    + " ties "
                    + words(tied)
                    + " round "
                    + knot.anchor()
                    + ", which is "
                    + words(anchor)
                    + ", the weaker string.")
            .fix("Tie it where its anchor is a string of its own kind, and draw the knot gently.");
    return gut
        ? finding.source("String-tester blog, elongation, knot and tensile posts, to 2024").build()
        : finding.build();
  }

  private static String words(StringSpec string) {
    return string.material().word().replace('-', ' ') + " " + string.gauge().word();
  }
}
