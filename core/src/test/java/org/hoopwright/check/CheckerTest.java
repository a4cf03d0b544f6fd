package org.hoopwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.Layout;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.HostileLayouts;
import org.hoopwright.testing.LayoutGenerator;
import org.junit.jupiter.api.Test;

class CheckerTest {

  private static final Layout BOARD = LayoutGenerator.layout(Draw.from(7), 4, 8, Set.of());

  private static CheckReport check(Draft draft, Rule... rules) {
    return Checker.check(draft, StatedAssignment::assign, List.of(rules));
  }

  /** A rule made up for a test. */
  private static Rule rule(
      FindingCode code, List<FindingCode> after, List<String> needs, Consumer<Facts> look) {
    return new Rule(code, Rule.Stage.LAYOUT) {
      @Override
      List<FindingCode> after() {
        return after;
      }

      @Override
      List<String> needs() {
        return needs;
      }

      @Override
      void look(Facts facts, Consumer<Finding> out) {
        look.accept(facts);
        out.accept(finding().build());
      }
    };
  }

  private static Rule fine(FindingCode code, FindingCode... after) {
    return rule(code, List.of(after), List.of(), f -> {});
  }

  @Test
  void aRuleThatCrashesIsOurFaultAndTheOthersGoOn() {
    Rule crashing =
        rule(
            FindingCode.HOLES_GAP,
            List.of(),
            List.of(),
            f -> {
              throw new IllegalStateException("on purpose");
            });

    List<Finding> findings =
        check(Draft.whole(BOARD), crashing, fine(FindingCode.HOOP_UNEVEN)).findings();

    assertThat(findings)
        .extracting(Finding::code)
        .containsExactlyInAnyOrder(FindingCode.RULE_CRASHED, FindingCode.HOOP_UNEVEN);
    assertThat(findings)
        .filteredOn(f -> f.code() == FindingCode.RULE_CRASHED)
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .contains("fault of Hoopwright", "holes-gap", "IllegalStateException"));
  }

  @Test
  void aRuleStaysSilentBesideOneThatItRestsOnAndTheReportSaysSo() {
    CheckReport report =
        check(
            Draft.whole(BOARD),
            fine(FindingCode.HOOP_UNEVEN),
            fine(FindingCode.HOLES_GAP, FindingCode.HOOP_UNEVEN),
            fine(FindingCode.HOLES_UNEVEN, FindingCode.HOLES_GAP));

    assertThat(report.findings())
        .extracting(Finding::code)
        .containsExactly(FindingCode.HOOP_UNEVEN);
    assertThat(report.silent())
        .containsExactly(
            new Silence(FindingCode.HOLES_GAP, List.of("hoop-uneven")),
            new Silence(FindingCode.HOLES_UNEVEN, List.of("hoop-uneven")));
  }

  @Test
  void aRuleStaysSilentWhereItsGroundIsLost() {
    Draft draft = Draft.of(BOARD, Set.of("/game"), Map.of());
    CheckReport report =
        check(draft, rule(FindingCode.HOOP_UNUSUAL, List.of(), List.of("/game"), f -> {}));

    assertThat(report.findings()).isEmpty();
    assertThat(report.silent()).contains(new Silence(FindingCode.HOOP_UNUSUAL, List.of("/game")));
  }

  @Test
  void whereAnErrorLeavesNoBedTheRulesOnBedsSayWhichErrorItWas() {
    Layout layout = BOARD.toBuilder().mains(40).build();
    CheckReport report = Checker.check(Draft.whole(layout), StatedAssignment::assign, Rules.all());

    assertThat(report.silent())
        .anySatisfy(
            s -> {
              assertThat(s.rule()).isEqualTo(FindingCode.CROSSES_SKEWED);
              assertThat(s.because()).containsExactly("mains-no-hole");
            });
  }

  @Test
  void rulesAreAskedAfterThoseTheyRestOn() {
    List<Rule> before = new ArrayList<>();
    for (Rule rule : Rules.all()) {
      for (FindingCode code : rule.after()) {
        assertThat(before).as("%s after %s", rule.code(), code).containsAll(Rules.of(code));
      }
      assertThat(before)
          .as("stages in their order")
          .allMatch(r -> r.stage().compareTo(rule.stage()) <= 0);
      before.add(rule);
    }
  }

  @Property(tries = 500)
  void noRuleCrashesHoweverHostileTheLayout(@ForAll long seed) {
    Layout layout = HostileLayouts.of(Draw.from(seed));
    CheckReport report = Checker.check(Draft.whole(layout), StatedAssignment::assign, Rules.all());
    assertThat(report.findings())
        .extracting(Finding::code)
        .doesNotContain(FindingCode.RULE_CRASHED);
  }

  // A number that no frame has may be too great to be a fact.
  private static final Set<FindingCode> BEYOND_MEASURE =
      Set.of(
          FindingCode.NUMBER_RANGE,
          FindingCode.TENSION_RANGE,
          FindingCode.HOOP_SHAPE,
          FindingCode.OFFSET_OUTSIDE);

  /** Every number of a message is there for programs too. */
  @Property(tries = 500)
  void whatAMessageCountsOrMeasuresIsAFact(@ForAll long seed) {
    Layout layout = HostileLayouts.of(Draw.from(seed));
    for (Finding f : Checker.bed(layout, StatedAssignment::assign).findings()) {
      String numbers = f.message().replaceAll("\\b([LRX]\\d+[HT]?|\\d+[HT])\\b", "");
      if (numbers.matches(".*\\d.*") && !BEYOND_MEASURE.contains(f.code())) {
        assertThat(f.facts()).as("%s", f).isNotEmpty();
      }
      assertThat(f.facts())
          .as("%s", f)
          .allMatch(fact -> fact.whole() || Math.abs(fact.value()) < 1e9);
    }
  }

  @Property(tries = 200)
  void mirroredLayoutsHaveTheSameKindsOfFindings(@ForAll long seed) {
    Layout layout = LayoutGenerator.any(Draw.from(seed));
    Layout mirrored = layout.mirrored();
    assertThat(kinds(mirrored)).containsExactlyInAnyOrderElementsOf(kinds(layout));
  }

  private static List<FindingCode> kinds(Layout layout) {
    return Checker.bed(layout, StatedAssignment::assign).findings().stream()
        .map(Finding::code)
        .filter(c -> c != FindingCode.SHARED_CHOICE)
        .toList();
  }

  @Test
  void thresholdsSayWhereTheyComeFrom() {
    assertThat(Threshold.values()).allSatisfy(t -> assertThat(t.why()).hasSizeGreaterThan(20));
  }
}
