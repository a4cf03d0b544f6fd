package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** The engine and a constraint solver find the same least cost. */
class ChocoLabelsTest {

  private static long ours(LabelQuestion question) {
    LabelResult result = LabelSearch.search(question);
    assertThat(result.status()).isNotEqualTo(LabelResult.Status.LIMIT_REACHED);
    return result.optima().isEmpty() ? -1 : result.optima().get(0).cost().totalUm();
  }

  @Property(tries = 25)
  void onSmallFrames(@ForAll long seed) {
    LabelQuestion question = LabelQuestions.small(Draw.from(seed), 8, /* same= */ true);
    assertThat(ours(question)).isEqualTo(ChocoLabels.least(question));
  }

  /** The usual frame, each hole once. */
  @Test
  void onTheUsualFrame() {
    LabelQuestion question = LabelQuestions.usual(Willowbank.hundred().build(), Draw.from(1), 0);
    assertThat(ours(question)).isEqualTo(ChocoLabels.least(question));
  }

  /** Full-size frames with holes measured badly and up to two shared or unused holes a quadrant. */
  @Property(tries = 3)
  void onFullSizeFrames(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    LabelQuestion question =
        LabelQuestions.usual(Willowbank.hundred().build(), draw, draw.between(0, 2));
    assertThat(ours(question)).isEqualTo(ChocoLabels.least(question));
  }
}
