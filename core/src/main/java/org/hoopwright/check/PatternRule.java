package org.hoopwright.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Game;

/** A rule of a game's governing body on how the strings are spaced; measured strings only. */
abstract class PatternRule extends Rule {

  PatternRule(FindingCode code) {
    super(code, Stage.BED);
  }

  @Override
  final List<String> needs() {
    return List.of("/game");
  }

  @Override
  final void look(Facts facts, Consumer<Finding> out) {
    Optional<String> source = source(facts.layout().game());
    if (source.isEmpty()) {
      return;
    }
    List<Span> mains = facts.bed().mainsLeftToRight().stream().map(facts.bed()::span).toList();
    if (Spacing.measured(facts.layout(), mains)) {
      judge(facts, "mains", Spacing.gaps(mains, Spacing::xAtMiddle), source.get(), out);
    }
    List<Span> crosses = facts.bed().crosses();
    if (Spacing.measured(facts.layout(), crosses)) {
      judge(facts, "crosses", Spacing.gaps(crosses, s -> -Spacing.yAtMiddle(s)), source.get(), out);
    }
  }

  /** Where the game's rules ask for it; empty when they do not. */
  abstract Optional<String> source(Game game);

  /**
   * Judges strings of one kind.
   *
   * @param what mains or crosses, as the member of the file is called
   * @param gaps from each string to the next, in mm
   * @param source where the rule is published
   */
  abstract void judge(
      Facts facts, String what, List<Double> gaps, String source, Consumer<Finding> out);
}
