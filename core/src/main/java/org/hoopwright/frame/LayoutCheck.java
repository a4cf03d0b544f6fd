package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;

/**
 * What is wrong with a layout itself, before any string is laid: its counts, the holes it names,
 * its measurements, its numbers, and its size against the rules of its game.
 *
 * <p>Whether strings fit in the holes is the assignment's question; whether positions follow the
 * order of the holes is that of {@code HolePositions} in {@code org.hoopwright.bed}.
 */
public final class LayoutCheck {

  private LayoutCheck() {}

  /**
   * All findings, in the order of {@link Findings#sorted}. Never throws.
   *
   * @return an unmodifiable list; empty when all is well
   */
  public static List<Finding> check(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    HoopOutline hoop = HoopOutline.of(layout);
    findings.addAll(CountCheck.findings(layout));
    findings.addAll(hoop.findings());
    findings.addAll(HoleListCheck.findings(layout));
    findings.addAll(HoleValueCheck.findings(layout));
    findings.addAll(OffsetCheck.findings(layout));
    findings.addAll(NumberCheck.findings(layout, hoop));
    findings.addAll(RuleSizes.findings(layout, hoop));
    return Findings.sorted(findings);
  }

  /**
   * Whether the counts of holes, mains and crosses are such as a bed can have: 1 to 500 holes at
   * each end of each side, an even number of mains from 4, crosses from 2. If not, {@link #check}
   * says why.
   */
  public static boolean countsSound(Layout layout) {
    return CountCheck.findings(layout).isEmpty();
  }
}
