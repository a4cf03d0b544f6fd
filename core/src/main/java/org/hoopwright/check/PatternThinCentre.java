package org.hoopwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Game;

/** Measured strings that lie less densely in the centre than elsewhere. */
final class PatternThinCentre extends PatternRule {

  PatternThinCentre() {
    super(FindingCode.PATTERN_THIN_CENTRE);
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOLE_OFF_HOOP, FindingCode.OFFSETS_DIFFER);
  }

  @Override
  Optional<String> source(Game game) {
    return Bodies.denseCentre(game);
  }

  @Override
  void judge(Facts facts, String what, List<Double> gaps, String source, Consumer<Finding> out) {
    if (gaps.size() < 6) {
      return; // no centre to speak of
    }
    int third = gaps.size() / 3;
    double centre = Spacing.mean(gaps.subList(third, gaps.size() - third));
    List<Double> rest = new ArrayList<>(gaps.subList(0, third));
    rest.addAll(gaps.subList(gaps.size() - third, gaps.size()));
    double elsewhere = Spacing.mean(rest);
    if (centre > Threshold.CENTRE_RATIO.value() * elsewhere) {
      out.accept(
          finding()
              .message(
                  "The %s are %s mm apart in the middle third and %s mm elsewhere, so they are less dense in the centre."
                      .formatted(what, Say.mm(centre), Say.mm(elsewhere)))
              .at("/" + what, facts.layout().places())
              .fact("centre", centre, "mm")
              .fact("elsewhere", elsewhere, "mm")
              .fix(
                  "Check what was measured; a frame strung so is not allowed in play under these rules.")
              .source(source)
              .build());
    }
  }
}
