package org.hoopwright.check;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.HoopwrightFault;

/** Every finding that there is, explained; the one place where rules are described. */
public final class RuleBook {

  /**
   * Rules that belong together.
   *
   * @param title what they are about
   * @param rules in the order of the book
   */
  public record Group(String title, List<RuleText> rules) {
    /** Copies the list. */
    public Group {
      rules = List.copyOf(rules);
    }
  }

  private static final List<Group> GROUPS =
      List.of(
          FileTexts.GROUP,
          HoleTexts.GROUP,
          HoopTexts.GROUP,
          MainTexts.GROUP,
          CrossTexts.GROUP,
          KnotTexts.GROUP,
          StartTexts.GROUP,
          PlanTexts.GROUP,
          TensionTexts.GROUP,
          BodyTexts.GROUP,
          FaultTexts.GROUP);

  private static final Map<FindingCode, RuleText> BY_CODE = new EnumMap<>(FindingCode.class);

  static {
    GROUPS.forEach(g -> g.rules().forEach(r -> BY_CODE.put(r.code(), r)));
  }

  private RuleBook() {}

  /** All groups. */
  public static List<Group> groups() {
    return GROUPS;
  }

  /** What the book says of a code; it has an entry for each. */
  public static RuleText of(FindingCode code) {
    RuleText text = BY_CODE.get(code);
    if (text == null) {
      throw new HoopwrightFault("The rule " + code.code() + " is not in the book.");
    }
    return text;
  }
}
