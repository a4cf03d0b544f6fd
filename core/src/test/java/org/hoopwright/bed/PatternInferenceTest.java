package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.BedLayouts;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.HostileLayouts;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.LengthUnit;
import org.junit.jupiter.api.Test;

class PatternInferenceTest {

  private static Layout withoutSkip(Layout layout) {
    return layout.toBuilder()
        .mainsSkip(Optional.empty())
        .crossesSkip(List.of())
        .withoutOffsets()
        .build();
  }

  private static Labels stated(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow().labels();
  }

  private static List<FindingCode> codes(Inference inference) {
    return inference.findings().stream().map(Finding::code).toList();
  }

  @Test
  void theFirstAndLastCrossSettleTheUsualFrame() {
    Layout layout = Willowbank.hundred().build();
    Inference inference = PatternInference.infer(withoutSkip(layout));
    assertThat(inference.status()).isEqualTo(Inference.Status.SURE);
    Reading reading = inference.readings().get(0);
    assertThat(reading.labelling().labels()).isEqualTo(stated(layout));
    assertThat(reading.layout().mainsSkip().orElseThrow())
        .containsExactlyInAnyOrderElementsOf(layout.mainsSkip().orElseThrow());
    assertThat(reading.tieOffCandidates()).isEmpty(); // the layout states its own
    assertThat(codes(inference)).containsExactly(FindingCode.PATTERN_INFERRED);
  }

  @Test
  void holesThatWereOnlyCountedAreReadInSeveralWays() {
    Layout layout = Willowbank.hundred().withoutFirstAndLast().build();
    Inference inference = PatternInference.infer(withoutSkip(layout));
    assertThat(inference.status()).isEqualTo(Inference.Status.UNSURE);
    assertThat(inference.readings().stream().map(r -> r.labelling().labels()))
        .contains(stated(layout))
        .hasSizeGreaterThan(1);
    Finding finding = inference.findings().get(0);
    assertThat(finding.code()).isEqualTo(FindingCode.PATTERN_UNSURE);
    assertThat(finding.message()).contains("(1) the mains leave out 7H, 9H, 7T and 9T");
    assertThat(finding.fix()).startsWith("Look at holes ").contains("crosses.first");
    assertThat(finding.about()).contains("L7H", "R7H");
  }

  @Test
  void likelyTieOffHolesAreMarkedAsCandidates() {
    Layout layout = Willowbank.hundred().tieOff().bore(Map.of()).build();
    Inference inference = PatternInference.infer(withoutSkip(layout));
    assertThat(codes(inference)).contains(FindingCode.TIE_OFF_CANDIDATE);
    Reading reading = inference.readings().get(0);
    assertThat(reading.tieOffCandidates().stream().map(Object::toString))
        .contains("L5H", "L6H", "L8H", "R8T")
        .doesNotContain("L10H", "L7H");
    assertThat(reading.layout().tieOff()).isNotEmpty();
  }

  @Test
  void sharedHolesAreFoundAndMarkedAsCandidates() {
    // 16 x 19 on 34 holes a side: one hole must take two strings.
    Layout layout = Willowbank.hundred().holes(17, 17).withoutFirstAndLast().build();
    Inference inference = PatternInference.infer(withoutSkip(layout));
    assertThat(inference.readings()).isNotEmpty();
    for (Reading reading : inference.readings()) {
      assertThat(reading.sharedCandidates()).hasSize(2);
      assertThat(reading.layout().shared()).hasSize(1);
    }
  }

  @Test
  void aFrameThatNothingFitsIsSaid() {
    Layout layout =
        Willowbank.teaching()
            .tieOff()
            .mainsSkip(Optional.empty())
            .bore(bores("1H", "2H", "3H"))
            .crosses(9)
            .build();
    Inference inference = PatternInference.infer(layout);
    assertThat(inference.status()).isEqualTo(Inference.Status.NONE);
    assertThat(inference.readings()).isEmpty();
    assertThat(codes(inference)).containsExactly(FindingCode.PATTERN_NONE);
  }

  private static Map<HoleRef, Integer> bores(String... names) {
    Map<HoleRef, Integer> bore = new LinkedHashMap<>();
    for (String name : names) {
      bore.put(HoleRef.of(name), 1);
    }
    return bore;
  }

  @Test
  void aLimitIsUnsure() {
    Layout layout = withoutSkip(Willowbank.hundred().build());
    Inference inference = PatternInference.infer(layout, 20);
    assertThat(inference.status()).isEqualTo(Inference.Status.UNSURE);
    assertThat(inference.findings().get(0).message()).contains("ended at its limit");
  }

  /** The reading's own skip rules give the labels that were read. */
  @Property(tries = 25)
  void everyReadingIsACompleteLayout(@ForAll long seed) {
    Layout layout = withoutSkip(LayoutGenerator.any(Draw.from(seed)));
    for (Reading reading : PatternInference.infer(layout, 300_000).readings()) {
      Assignment read = StatedAssignment.assign(reading.layout());
      assertThat(read.bed().map(Bed::labels))
          .as("%s", read.findings())
          .contains(reading.labelling().labels());
    }
  }

  @Property(tries = 20)
  void aMirroredFrameIsReadAsTheMirroredPattern(@ForAll long seed) {
    Layout layout = withoutSkip(LayoutGenerator.any(Draw.from(seed)));
    Inference one = PatternInference.infer(layout, 300_000);
    Inference other = PatternInference.infer(layout.mirrored(), 300_000);
    if (one.search().status() == LabelResult.Status.LIMIT_REACHED
        || other.search().status() == LabelResult.Status.LIMIT_REACHED) {
      return; // what was found so far depends on where the search began
    }
    assertThat(other.status()).isEqualTo(one.status());
    assertThat(other.search().optima().stream().map(l -> l.labels().mirrored()))
        .containsExactlyInAnyOrderElementsOf(
            one.search().optima().stream().map(Labelling::labels).toList());
    assertThat(other.search().gainMm()).isEqualTo(one.search().gainMm());
  }

  @Test
  void anotherUnitIsReadAsTheSamePattern() {
    Layout mm = withoutSkip(Willowbank.hundred().at(Map.of()).build());
    Layout in =
        mm.toBuilder()
            .units(LengthUnit.INCH)
            .frame(685 / 25.4, 262 / 25.4)
            .hoop(new Hoop.Superellipse(330 / 25.4, 248 / 25.4, 2.1))
            .build();
    assertThat(PatternInference.infer(in).readings().get(0).labelling().labels())
        .isEqualTo(PatternInference.infer(mm).readings().get(0).labelling().labels());
  }

  @Property(tries = 60)
  void nothingThrowsHoweverHostileTheLayout(@ForAll long seed) {
    Layout layout = HostileLayouts.of(Draw.from(seed));
    for (Layout one : List.of(layout, withoutSkip(layout))) {
      Inference inference = PatternInference.infer(one, 50_000);
      assertThat(inference.readings().size()).isLessThanOrEqualTo(PatternInference.MOST_READINGS);
      if (!Findings.hasErrors(Checker.layout(one))) {
        assertThat(inference.findings()).as("there is always something to say").isNotEmpty();
      }
    }
  }

  /**
   * Positions that are off by up to a millimetre in each direction still give the pattern, and
   * greater ones give the pattern or are said to be unsure.
   */
  @Property(tries = 20)
  void carelessMeasuringIsRightOrUnsure(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    Layout layout = Willowbank.hundred().build();
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    int jitter = draw.between(0, 4);
    Map<HoleRef, Point> at = new LinkedHashMap<>();
    LabelQuestions.moved(draw, bed.positions(), jitter)
        .forEach((hole, p) -> at.put(HoleRef.of(hole), p));
    Inference inference = PatternInference.infer(withoutSkip(layout).toBuilder().at(at).build());
    boolean right =
        !inference.readings().isEmpty()
            && inference.readings().get(0).labelling().labels().equals(bed.labels());
    assertThat(right || inference.status() != Inference.Status.SURE).isTrue();
    if (jitter <= 1) {
      assertThat(right).isTrue();
    }
  }

  /** The engine and the reading of stated rules choose the same shared holes. */
  @Property(tries = 60)
  void theEngineAgreesWithTheStatedRules(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    Layout layout =
        draw.chance(40) ? BedLayouts.even(draw, 7, true) : BedLayouts.uneven(draw, 7, true);
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    StatedRules rules = new StatedRules(layout, bed.ring(), layout.mainsSkip().orElseThrow());
    List<List<Set<HoleLabel>>> allowed = new ArrayList<>();
    List<Double> pitch = new ArrayList<>();
    for (Side side : Side.values()) {
      List<Set<HoleLabel>> sets = new ArrayList<>();
      List<Double> heights = new ArrayList<>();
      bed.ring()
          .list(side)
          .forEach(
              h -> {
                EnumSet<HoleLabel> set = EnumSet.noneOf(HoleLabel.class);
                if (rules.free(h)) {
                  set.add(HoleLabel.CROSS);
                } else if (rules.carriesMain(h)) {
                  set.add(HoleLabel.MAIN);
                  if (rules.mayShare(h)) {
                    set.add(HoleLabel.BOTH);
                  }
                } else {
                  set.add(HoleLabel.NONE);
                }
                if (rules.free(h) || rules.mayShare(h)) {
                  heights.add(bed.position(h).y());
                }
                sets.add(set);
              });
      allowed.add(sets);
      double reach = heights.get(0) - heights.get(heights.size() - 1);
      pitch.add(Math.max(1, reach / Math.max(1, layout.crossesCount() - 1)));
    }
    boolean alike =
        layout.headHoles().same()
            && layout.throatHoles().same()
            && allowed.get(0).equals(allowed.get(1));
    LabelResult result =
        LabelSearch.search(
            new LabelQuestion(
                layout,
                bed.positions(),
                new EachSide<>(allowed.get(0), allowed.get(1)),
                Set.of(),
                Optional.empty(),
                Optional.of(new EachSide<>(pitch.get(0), pitch.get(1))),
                new LabelWeights(
                    0, ChoiceSide.SKEW_WEIGHT, ChoiceSide.UNEVEN_WEIGHT, 0, 0, 0, 0, 0, 0, 0),
                alike
                    && bed.positions().entrySet().stream()
                        .allMatch(
                            e ->
                                bed.position(e.getKey().mirrored())
                                    .equals(e.getValue().mirrored())),
                0.05, // the two round differently, by less than a micrometre a term
                2_000_000));
    List<Labels> best = new ArrayList<>();
    result.optima().forEach(l -> best.add(l.labels()));
    result.near().forEach(l -> best.add(l.labels()));
    assertThat(best).contains(bed.labels());
  }
}
