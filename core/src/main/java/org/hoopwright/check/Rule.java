package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/**
 * One rule. It looks at what is known and reports what it finds; it keeps nothing from one call to
 * the next. A rule that throws does not stop the others: see {@link Checker}.
 */
abstract class Rule {

  /** How far the layout must have come for a rule to say anything. */
  enum Stage {
    /** The layout has been read. */
    LAYOUT,
    /** Every string has its holes. */
    BED,
    /** There is a route. */
    ROUTE
  }

  private final FindingCode code;
  private final Stage stage;

  Rule(FindingCode code, Stage stage) {
    this.code = code;
    this.stage = stage;
  }

  /** What it finds. */
  final FindingCode code() {
    return code;
  }

  final Stage stage() {
    return stage;
  }

  /** JSON pointers to what must be known; a rule that needs a bed needs all that a bed needs. */
  List<String> needs() {
    return List.of();
  }

  /** Findings that make this rule's own meaningless: when there is one of them it stays silent. */
  List<FindingCode> after() {
    return List.of();
  }

  /** Reports what it finds. */
  abstract void look(Facts facts, Consumer<Finding> out);

  /** Starts a finding of this rule. */
  final Finding.Builder finding() {
    return Finding.of(code);
  }
}
