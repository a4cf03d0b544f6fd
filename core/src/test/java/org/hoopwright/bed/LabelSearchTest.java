package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

class LabelSearchTest {

  private static void compareWithBruteForce(LabelQuestion question) {
    LabelResult result = LabelSearch.search(question);
    NavigableMap<Long, List<Labels>> all = BruteForceLabels.all(question);
    if (all.isEmpty()) {
      assertThat(result.status()).isEqualTo(LabelResult.Status.PROVEN_ABSENT);
      assertThat(result.optima()).isEmpty();
      return;
    }
    assertThat(result.status()).isEqualTo(LabelResult.Status.PROVEN);
    long best = all.firstKey();
    assertThat(result.optima()).allMatch(l -> l.cost().totalUm() == best);
    assertThat(labels(result.optima())).hasSameElementsAs(all.get(best));
    assertThat(result.optima()).hasSameSizeAs(all.get(best));
    Long second = all.higherKey(best);
    assertThat(result.runnerUp().map(r -> r.cost().totalUm()))
        .isEqualTo(Optional.ofNullable(second));
    if (second != null) {
      assertThat(all.get(second)).contains(result.runnerUp().orElseThrow().labels());
    }
    List<Labels> near = new ArrayList<>();
    all.subMap(best, false, best + Math.round(1000 * question.windowMm()), true)
        .values()
        .forEach(near::addAll);
    assertThat(labels(result.near())).containsExactlyInAnyOrderElementsOf(near);
  }

  private static List<Labels> labels(List<Labelling> labellings) {
    return labellings.stream().map(Labelling::labels).toList();
  }

  @Property(tries = 300)
  void sidesWithTheSameLabelsAreLikeBruteForce(@ForAll long seed) {
    compareWithBruteForce(LabelQuestions.small(Draw.from(seed), 8, /* same= */ true));
  }

  @Property(tries = 200)
  void freeSidesAreLikeBruteForce(@ForAll long seed) {
    compareWithBruteForce(LabelQuestions.small(Draw.from(seed), 8, /* same= */ false));
  }

  @Property(tries = 100)
  void oneSideFixedIsLikeBruteForce(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    LabelQuestion q = LabelQuestions.small(draw, 8, /* same= */ false);
    List<Labels> any = new ArrayList<>();
    BruteForceLabels.all(q).values().forEach(any::addAll);
    if (any.isEmpty()) {
      return;
    }
    List<Set<HoleLabel>> fixed = new ArrayList<>();
    draw.oneOf(any).left().forEach(l -> fixed.add(Set.of(l)));
    compareWithBruteForce(with(q, new EachSide<>(fixed, q.allowed().right()), q.positions()));
  }

  private static LabelQuestion with(
      LabelQuestion q, EachSide<List<Set<HoleLabel>>> allowed, Map<HoleId, Point> positions) {
    return new LabelQuestion(
        q.layout(),
        positions,
        allowed,
        q.doubtful(),
        q.stated(),
        q.crossPitchMm(),
        q.weights(),
        q.sameLabels(),
        q.windowMm(),
        q.maxNodes());
  }

  /** Every way to allow each label or not, on the smallest frames. */
  @Test
  void allFramesOfFiveHolesASideAreLikeBruteForce() {
    for (int head = 2; head <= 3; head++) {
      for (int crosses = 2; crosses <= 4; crosses++) {
        Layout layout =
            Willowbank.teaching()
                .holes(head, 5 - head)
                .mainsSkip(Optional.empty())
                .crosses(crosses)
                .build();
        Map<HoleId, Point> points = HolePositions.of(layout).points();
        // Each of five holes has one of the sets below: 4 to the power of 5 frames.
        List<Set<HoleLabel>> sets =
            List.of(
                Set.of(HoleLabel.MAIN, HoleLabel.CROSS),
                Set.of(HoleLabel.values()),
                Set.of(HoleLabel.MAIN, HoleLabel.BOTH),
                Set.of(HoleLabel.NONE, HoleLabel.CROSS, HoleLabel.BOTH));
        for (int code = 0; code < 1024; code++) {
          List<Set<HoleLabel>> side = new ArrayList<>();
          for (int p = 0; p < 5; p++) {
            side.add(sets.get((code >> (2 * p)) & 3));
          }
          compareWithBruteForce(
              new LabelQuestion(
                  layout,
                  points,
                  EachSide.both(side),
                  Set.of(),
                  Optional.empty(),
                  Optional.empty(),
                  LabelWeights.INFER,
                  /* sameLabels= */ true,
                  1,
                  LabelQuestion.DEFAULT_MAX_NODES));
        }
      }
    }
  }

  @Property(tries = 100)
  void aMirroredFrameHasTheMirroredAnswer(@ForAll long seed) {
    LabelQuestion q = LabelQuestions.small(Draw.from(seed), 8, /* same= */ false);
    Map<HoleId, Point> mirrored = new TreeMap<>();
    q.positions().forEach((h, p) -> mirrored.put(h.mirrored(), p.mirrored()));
    Set<HoleId> doubtful = new LinkedHashSet<>();
    q.doubtful().forEach(h -> doubtful.add(h.mirrored()));
    LabelResult other =
        LabelSearch.search(
            new LabelQuestion(
                q.layout().mirrored(),
                mirrored,
                q.allowed().swapped(),
                doubtful,
                q.stated().map(Labels::mirrored),
                q.crossPitchMm().map(EachSide::swapped),
                q.weights(),
                q.sameLabels(),
                q.windowMm(),
                q.maxNodes()));
    LabelResult result = LabelSearch.search(q);
    assertThat(other.status()).isEqualTo(result.status());
    assertThat(labels(other.optima()).stream().map(Labels::mirrored))
        .containsExactlyInAnyOrderElementsOf(labels(result.optima()));
    assertThat(other.gainMm()).isEqualTo(result.gainMm());
  }

  @Property(tries = 50)
  void theSameQuestionHasTheSameAnswer(@ForAll long seed) {
    assertThat(LabelSearch.search(LabelQuestions.small(Draw.from(seed), 8, false)))
        .isEqualTo(LabelSearch.search(LabelQuestions.small(Draw.from(seed), 8, false)));
  }

  @Test
  void theCostIsSplitByTerm() {
    Layout layout = Willowbank.teaching().mainsSkip(Optional.empty()).build();
    LabelResult result = LabelSearch.search(open(layout, LabelQuestion.DEFAULT_MAX_NODES));
    LabelCost cost = result.optima().get(0).cost();
    assertThat(cost.totalUm())
        .isEqualTo(
            cost.mainSkewUm()
                + cost.crossSkewUm()
                + cost.unevennessUm()
                + cost.borderUm()
                + cost.emptyUm()
                + cost.sharedUm()
                + cost.changedUm());
    assertThat(cost.mainSkewUm()).isZero(); // the frame is the same at head and throat
    assertThat(cost.crossSkewUm()).isZero();
    assertThat(cost.totalMm()).isEqualTo(cost.totalUm() / 1000.0);
  }

  private static LabelQuestion open(Layout layout, long nodes) {
    OpenLabels labels = new OpenLabels(layout);
    return new LabelQuestion(
        layout,
        HolePositions.of(layout).points(),
        labels.allowed(),
        labels.doubtful(),
        Optional.empty(),
        Optional.empty(),
        LabelWeights.INFER,
        labels.alike(),
        0,
        nodes);
  }

  @Test
  void aLimitIsSaid() {
    Layout layout = Willowbank.hundred().mainsSkip(Optional.empty()).build();
    assertThat(LabelSearch.search(open(layout, 50)).status())
        .isEqualTo(LabelResult.Status.LIMIT_REACHED);
    assertThat(LabelSearch.search(open(layout, LabelQuestion.DEFAULT_MAX_NODES)).status())
        .isEqualTo(LabelResult.Status.PROVEN);
  }

  @Test
  void aQuestionThatDoesNotFitIsRefused() {
    Layout layout = Willowbank.teaching().mainsSkip(Optional.empty()).build();
    LabelQuestion q = open(layout, 10);
    assertThatThrownBy(() -> with(q, q.allowed(), Map.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("L1H");
    assertThatThrownBy(() -> with(q, EachSide.both(List.of()), q.positions()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("(0) must be that of its holes (8)");
    assertThatThrownBy(() -> open(layout, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nodes (0)");
    assertThatThrownBy(() -> new LabelWeights(-1, 0, 0, 0, 0, 0, 0, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("mainSkew (-1.0)");
  }

  @Test
  void hugeFramesEndAtTheLimitInsteadOfTheMemory() {
    Layout layout =
        Willowbank.teaching()
            .holes(500, 500)
            .mains(300)
            .crosses(500)
            .mainsSkip(Optional.empty())
            .build();
    LabelResult result = LabelSearch.search(open(layout, LabelQuestion.DEFAULT_MAX_NODES));
    assertThat(result.status()).isEqualTo(LabelResult.Status.LIMIT_REACHED);
    assertThat(layout.headHoles().of(Side.LEFT)).isEqualTo(500);
  }
}
