package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/**
 * One rule that only looks. It looks at what is known and reports what it finds; it keeps nothing
 * from one call to the next. Several rules may report findings of one code. A rule that throws does
 * not stop the others: see {@link Checker}.
 */
abstract class Rule {

  /** How far the layout must have come for a rule to say anything. */
  enum Stage {
    /** The layout has been read. */
    LAYOUT,
    /** Every string has its holes. */
    BED,
    /** There is a route. */
    ROUTE;

    /** JSON pointers to what must be known to come so far. */
    List<String> needs() {
      return switch (this) {
        case LAYOUT -> List.of();
        case BED -> Needs.BED;
        case ROUTE -> Needs.ROUTE;
      };
    }

    /** Whether the layout came so far. */
    boolean reached(Facts facts) {
      return switch (this) {
        case LAYOUT -> true;
        case BED -> facts.laid().isPresent();
        case ROUTE -> facts.best().isPresent();
      };
    }
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

  /** JSON pointers to what must be known beside {@link Stage#needs()}; else it stays silent. */
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
