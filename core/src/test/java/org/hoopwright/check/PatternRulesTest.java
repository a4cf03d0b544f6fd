package org.hoopwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

class PatternRulesTest {

  private static final String TENNIS = "ITF Rules of Tennis, Appendix II \"The Racket\"";
  private static final String BADMINTON = "BWF Laws of Badminton, Law 4";
  private static final String SQUASH =
      "WSF Rules of Squash, Appendix 9 \"Dimensions of a squash racket\"";

  private static final List<Double> MAINS =
      List.of(5.0, 15.2, 25.5, 35.9, 46.5, 57.2, 68.0, 79.0, 90.0);
  private static final List<Double> CROSSES =
      List.of(
          34.5, 47.5, 62.0, 75.3, 88.7, 102.0, 115.3, 128.7, 142.0, 155.3, 168.7, 182.0, 195.3,
          208.7, 222.0, 235.3, 248.7, 262.0, 276.5, 289.5);

  private static Layout layout(Game game, List<Double> mains, List<Double> crosses) {
    return Willowbank.ninetyFive()
        .game(game)
        .mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(mains)))
        .crossesOffsets(EachSide.both(new StringOffsets.Crosses(crosses)))
        .build();
  }

  private static Set<String> sources(Layout layout, FindingCode code) {
    Set<String> sources = new TreeSet<>();
    for (Finding f : Checker.bed(layout, StatedAssignment::assign).findings()) {
      if (f.code() == code) {
        sources.add(f.source().orElseThrow());
      }
    }
    return sources;
  }

  // Tennis and, in one of two copies seen, badminton ask that the pattern be not less dense in the
  // centre (ITF Rules of Tennis, Appendix II; BWF Laws of Badminton, Law 4). Squash does not (WSF
  // Rules of Squash, Appendix 9), nor does racquetball (USA Racquetball Official Rules, Rule 2.4).
  @Test
  void aThinCentreIsAgainstTheRulesOfGamesThatSaySo() {
    Map<Game, Set<String>> wanted =
        Map.of(
            Game.TENNIS, Set.of(TENNIS),
            Game.BADMINTON, Set.of(BADMINTON),
            Game.SQUASH, Set.of(),
            Game.RACQUETBALL, Set.of(),
            Game.OTHER, Set.of());
    List<Double> thinMains = List.of(6.5, 18.5, 30.0, 40.5, 50.5, 60.0, 69.3, 79.0, 90.0);
    for (Game game : Game.values()) {
      Layout thin = layout(game, thinMains, CROSSES);
      assertThat(sources(thin, FindingCode.PATTERN_THIN_CENTRE))
          .as("%s", game)
          .isEqualTo(wanted.get(game));
      Layout even = layout(game, MAINS, CROSSES);
      assertThat(sources(even, FindingCode.PATTERN_THIN_CENTRE)).isEmpty();
    }
  }

  // All three ask for a pattern that is generally uniform (the same places).
  @Test
  void anUnevenPatternIsAgainstTheRulesOfGamesThatSaySo() {
    Map<Game, Set<String>> wanted =
        Map.of(
            Game.TENNIS, Set.of(TENNIS),
            Game.BADMINTON, Set.of(BADMINTON),
            Game.SQUASH, Set.of(SQUASH),
            Game.RACQUETBALL, Set.of(),
            Game.OTHER, Set.of());
    List<Double> unevenCrosses = new ArrayList<>(CROSSES);
    Collections.replaceAll(unevenCrosses, 115.3, 113.0);
    Collections.replaceAll(unevenCrosses, 128.7, 122.0);
    Collections.replaceAll(unevenCrosses, 142.0, 139.0);
    Collections.replaceAll(unevenCrosses, 155.3, 156.0);
    for (Game game : Game.values()) {
      Layout uneven = layout(game, MAINS, unevenCrosses);
      assertThat(sources(uneven, FindingCode.PATTERN_NOT_UNIFORM))
          .as("%s", game)
          .isEqualTo(wanted.get(game));
      Layout even = layout(game, MAINS, CROSSES);
      assertThat(sources(even, FindingCode.PATTERN_NOT_UNIFORM)).isEmpty();
    }
  }
}
