package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;

import org.hoopwright.frame.Layout;
import org.hoopwright.testing.Draw;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The search against a constraint solver, on frames too large for brute force. */
class ChocoLabelsTest {

  // The solver may look this far above the search's optimum for something cheaper.
  private static final int ROOM_UM = 2_000;

  @ParameterizedTest(name = "{0}+{1} holes, {2} x {3}, shared {4}, seed {5}")
  @CsvSource({
    "11, 10,  8, 13, '',       1",
    "12, 11, 10, 13, '',       2",
    "12, 12, 10, 12, '',       3", // two holes of a side stay empty
    "11, 11, 10, 14, 6H 6T,    4", // two are shared
    "13, 12, 10, 14, 6H 6T,    5",
    "15, 14, 14, 15, '',       6",
    "18, 17, 16, 19, '',       0",
  })
  void optimaAreEqual(int head, int throat, int mains, int crosses, String shared, long seed) {
    Layout layout =
        FullFrames.layout(
            head, throat, mains, crosses, shared.isEmpty() ? new String[0] : shared.split(" "));
    LabelQuestion question =
        FullFrames.question(
            layout,
            LabelQuestions.moved(
                Draw.from(seed), HolePositions.of(layout).points(), seed == 0 ? 0 : 1));
    LabelResult result = LabelSearch.search(question);
    assertThat(result.status()).isEqualTo(LabelResult.Status.PROVEN);
    long cost = result.optima().get(0).cost().totalUm();
    assertThat(new ChocoLabels(question, Math.toIntExact(cost + ROOM_UM)).least()).isEqualTo(cost);
  }
}
