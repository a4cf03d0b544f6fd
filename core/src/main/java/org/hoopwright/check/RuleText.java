package org.hoopwright.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hoopwright.finding.FindingCode;

/**
 * What the book says of one rule.
 *
 * @param code its code, which has severity and summary
 * @param explanation what is meant, why it matters, and where a threshold comes from
 * @param example wrong and right; empty where no few words of a file show it
 */
public record RuleText(FindingCode code, String explanation, Optional<Example> example) {

  private static final Pattern THRESHOLD = Pattern.compile("\\{([A-Z_]+)}");

  /**
   * An example.
   *
   * @param kind how it is told
   * @param sample the bundled layout in which it stands; empty when it is not of a layout
   * @param right right; for a layout a stretch of its text, for a call its words
   * @param wrong wrong; for a layout what stands there instead, for a call its words
   */
  public record Example(Kind kind, String sample, String right, String wrong) {

    /** How an example is told. */
    public enum Kind {
      /** By a stretch of a bundled layout. */
      LAYOUT,
      /** By what is asked for: the words of a command, without the program's name. */
      CALL,
      /** In words, where no few words of a file or a call show it. */
      WORDS
    }
  }

  static RuleText of(FindingCode code) {
    return new RuleText(code, "", Optional.empty());
  }

  /** With an explanation; names of thresholds in braces stand for their values. */
  RuleText says(String text) {
    Matcher m = THRESHOLD.matcher(text);
    String filled =
        m.replaceAll(r -> Matcher.quoteReplacement(shown(Threshold.valueOf(r.group(1)))));
    return new RuleText(code, filled, example);
  }

  private static String shown(Threshold t) {
    return t.unit().isEmpty() ? Say.number(t.value()) : Say.number(t.value()) + " " + t.unit();
  }

  RuleText example(String sample, String right, String wrong) {
    return with(new Example(Example.Kind.LAYOUT, sample, right, wrong));
  }

  RuleText call(String right, String wrong) {
    return with(new Example(Example.Kind.CALL, "", right, wrong));
  }

  RuleText inWords(String right, String wrong) {
    return with(new Example(Example.Kind.WORDS, "", right, wrong));
  }

  private RuleText with(Example shown) {
    return new RuleText(code, explanation, Optional.of(shown));
  }

  /**
   * Findings beside which it is not looked for, in the order of their codes; where several rules
   * look for it, those of each.
   */
  public List<FindingCode> silentAfter() {
    return Rules.of(code).stream().flatMap(r -> r.after().stream()).sorted().distinct().toList();
  }

  /**
   * Pointers to what of a layout must be known for it, in the order of their letters; where several
   * rules look for it, what each needs.
   */
  public Set<String> needs() {
    Set<String> needs = new TreeSet<>(Needs.of(code));
    for (Rule rule : Rules.of(code)) {
      needs.addAll(rule.stage().needs());
      needs.addAll(rule.needs());
    }
    return needs;
  }
}
