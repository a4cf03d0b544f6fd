package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hoopwright.Hoopwright;
import org.hoopwright.check.RuleBook;
import org.hoopwright.check.RuleText;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The book of rules: complete, and its examples are what they say. */
class RuleBookTest {

  private static List<Finding> found(String text) {
    try {
      ReadResult read = LayoutReader.read("frame.json", text.getBytes(UTF_8));
      List<Finding> all = new ArrayList<>(read.findings());
      read.draft().ifPresent(d -> all.addAll(Hoopwright.check(d).findings()));
      return Findings.sorted(all);
    } catch (UnreadableFile e) {
      throw new AssertionError(text, e);
    }
  }

  @ParameterizedTest
  @EnumSource(FindingCode.class)
  void everyCodeIsExplained(FindingCode code) {
    RuleText text = RuleBook.of(code);
    assertThat(text.explanation()).endsWith(".").doesNotContain("{").hasSizeGreaterThan(20);
    assertThat(code.summary()).endsWith(".").hasSizeLessThan(90);
    assertThat(code.code()).matches("[a-z]+(-[a-z]+)*");
    assertThat(text.silentAfter()).doesNotContain(code);
  }

  @Test
  void everyCodeStandsInTheBookOnce() {
    List<FindingCode> codes =
        RuleBook.groups().stream().flatMap(g -> g.rules().stream()).map(RuleText::code).toList();
    assertThat(codes).containsExactlyInAnyOrder(FindingCode.values());
    Set<String> explanations =
        RuleBook.groups().stream()
            .flatMap(g -> g.rules().stream())
            .map(RuleText::explanation)
            .collect(Collectors.toSet());
    assertThat(explanations).hasSize(codes.size());
  }

  static Stream<RuleText> shown() {
    return RuleBook.groups().stream()
        .flatMap(g -> g.rules().stream())
        .filter(r -> r.example().filter(e -> !e.sample().isEmpty()).isPresent());
  }

  @Test
  void mostRulesOnLayoutsAreShownOnASample() {
    assertThat(shown()).hasSizeGreaterThan(60);
  }

  @ParameterizedTest
  @MethodSource("shown")
  void theWrongExampleIsFoundAndTheRightOneIsNot(RuleText rule) {
    RuleText.Example example = rule.example().orElseThrow();
    String right = Samples.text(example.sample());
    assertThat(right).contains(example.right());
    String wrong = right.replace(example.right(), example.wrong());

    assertThat(found(right)).extracting(Finding::code).doesNotContain(rule.code());
    assertThat(found(wrong)).as(wrong).extracting(Finding::code).contains(rule.code());
    for (Finding f : found(wrong)) {
      if (f.code() == rule.code()) {
        assertThat(f.place()).isPresent();
        assertThat(f.severity()).isEqualTo(rule.code().severity());
        assertThat(f.message()).endsWith(".");
        assertThat(f.fix())
            .satisfiesAnyOf(t -> assertThat(t).isEmpty(), t -> assertThat(t).endsWith("."));
      }
    }
  }
}
