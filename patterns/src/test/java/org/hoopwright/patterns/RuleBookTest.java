package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hoopwright.Hoopwright;
import org.hoopwright.check.RuleBook;
import org.hoopwright.check.RuleText;
import org.hoopwright.check.RuleText.Example.Kind;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.patterns.cli.CommandRunner;
import org.hoopwright.patterns.cli.Streams;
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

  private static Stream<RuleText> shown(Kind kind) {
    return RuleBook.groups().stream()
        .flatMap(g -> g.rules().stream())
        .filter(r -> r.example().filter(e -> e.kind() == kind).isPresent());
  }

  static Stream<RuleText> shown() {
    return shown(Kind.LAYOUT);
  }

  static Stream<RuleText> called() {
    return shown(Kind.CALL);
  }

  /** The findings of which no few words of a layout or a call give an example that can be tried. */
  private static final Map<FindingCode, String> NOT_TRIED =
      Map.ofEntries(
          Map.entry(FindingCode.JSON_EMPTY, "the example is an empty file"),
          Map.entry(FindingCode.MAINS_SKIP_MISSING, "only callers who lay strings themselves"),
          Map.entry(FindingCode.PATTERN_NONE, "it takes several changes of a bundled layout"),
          Map.entry(FindingCode.MAINS_START_INFERRED, "it takes several changes"),
          Map.entry(FindingCode.OFFSETS_DIFFER, "it takes two measures that fit each other"),
          Map.entry(FindingCode.CROSS_HOLE_BLOCKED, "it takes a cross less too"),
          Map.entry(FindingCode.HOLES_GAP, "it takes holes that are not there"),
          Map.entry(FindingCode.ROUTE_UNKNOWN, "it takes a search beyond its limit"),
          Map.entry(FindingCode.ROUTE_HARD, "no bundled layout comes near"),
          Map.entry(FindingCode.ROUTE_DOUBLED, "no bundled layout comes near"),
          Map.entry(FindingCode.HALF_DONE, "it takes the file of a half-done job"),
          Map.entry(FindingCode.RULE_CRASHED, "a fault of ours"));

  @Test
  void everyOtherFindingHasAnExampleThatIsTried() {
    Set<FindingCode> tried =
        Stream.concat(shown(), called()).map(RuleText::code).collect(Collectors.toSet());
    assertThat(tried).doesNotContainAnyElementsOf(NOT_TRIED.keySet());
    assertThat(EnumSet.allOf(FindingCode.class))
        .allMatch(c -> tried.contains(c) || NOT_TRIED.containsKey(c));
  }

  private static String said(String call) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int code =
        CommandRunner.run(new Streams(InputStream.nullInputStream(), out, out), call.split(" "));
    assertThat(code).as(call).isZero();
    return out.toString(UTF_8);
  }

  @ParameterizedTest
  @MethodSource("called")
  void theWrongCallGivesTheFindingAndTheRightOneDoesNot(RuleText rule) {
    RuleText.Example example = rule.example().orElseThrow();
    String code = "[" + rule.code().code() + "]";

    assertThat(said(example.wrong())).as(example.wrong()).contains(code);
    assertThat(said(example.right())).as(example.right()).doesNotContain(code);
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
