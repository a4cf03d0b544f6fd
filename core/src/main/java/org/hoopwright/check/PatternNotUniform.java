package org.hoopwright.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Game;

/** Measured strings whose spacing in the middle of the bed differs greatly. */
final class PatternNotUniform extends PatternRule {

  PatternNotUniform() {
    super(FindingCode.PATTERN_NOT_UNIFORM);
  }

  @Override
  List<FindingCode> after() {
    return List.of(
        FindingCode.HOLE_OFF_HOOP,
        FindingCode.OFFSETS_DIFFER,
        FindingCode.MAINS_SPACING,
        FindingCode.CROSSES_SPACING,
        FindingCode.MAINS_CENTRE);
  }

  @Override
  Optional<String> source(Game game) {
    return Bodies.uniform(game);
  }

  @Override
  void judge(Facts facts, String what, List<Double> gaps, String source, Consumer<Finding> out) {
    int quarter = gaps.size() / 4;
    List<Double> middle = gaps.subList(quarter, gaps.size() - quarter);
    double least = middle.stream().mapToDouble(g -> g).min().orElse(1);
    double most = middle.stream().mapToDouble(g -> g).max().orElse(1);
    if (most > Threshold.UNIFORM_RATIO.value() * least) {
      out.accept(
          finding()
              .message(
                  "In the middle half of the bed the %s are from %s to %s mm apart, which is not uniform."
                      .formatted(what, Say.mm(least), Say.mm(most)))
              .at("/" + what, facts.layout().places())
              .fact("least", least, "mm")
              .fact("most", most, "mm")
              .fix(
                  "Check what was measured; a frame strung so is not allowed in play under these rules.")
              .source(source)
              .build());
    }
  }
}
