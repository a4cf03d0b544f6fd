package org.hoopwright.check;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hoopwright.finding.FindingCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Who reports what: every code has a rule that only looks, or stands here with its work. */
class RuleTableTest {

  private static final Path MAIN = Path.of("src/main/java/org/hoopwright");
  private static final Path PATTERNS = Path.of("../patterns/src/main/java/org/hoopwright/patterns");

  /** Codes that work reports by the way, a rule or not, with the class that does. */
  private static final Map<String, List<FindingCode>> WORK =
      Map.ofEntries(
          Map.entry(
              "patterns json/JsonTree", List.of(FindingCode.JSON_SYNTAX, FindingCode.JSON_EMPTY)),
          Map.entry(
              "patterns MemberReader",
              List.of(
                  FindingCode.JSON_LIMIT,
                  FindingCode.DUPLICATE_MEMBER,
                  FindingCode.UNKNOWN_MEMBER,
                  FindingCode.MISSING_MEMBER)),
          Map.entry(
              "patterns Values",
              List.of(FindingCode.WRONG_TYPE, FindingCode.WRONG_VALUE, FindingCode.NUMBER_RANGE)),
          Map.entry("patterns HoleValues", List.of(FindingCode.BAD_HOLE_NAME)),
          Map.entry(
              "patterns LayoutBinder",
              List.of(FindingCode.FORMAT_VERSION, FindingCode.SUSPECT_TEXT)),
          Map.entry(
              "bed/StatedAssignment",
              List.of(
                  FindingCode.MAINS_SKIP_MISSING,
                  FindingCode.MAINS_NO_HOLE,
                  FindingCode.MAIN_HOLE_BLOCKED)),
          Map.entry(
              "bed/StatedCrosses",
              List.of(
                  FindingCode.CROSSES_NO_HOLE,
                  FindingCode.CROSSES_FIRST,
                  FindingCode.CROSSES_LAST)),
          Map.entry("bed/SharedReport", List.of(FindingCode.SHARED_CHOICE)),
          Map.entry("bed/Capacity", List.of(FindingCode.BORE_TOO_SMALL)),
          Map.entry(
              "bed/Placing",
              List.of(
                  FindingCode.HOLE_ORDER, FindingCode.OFFSET_OUTSIDE, FindingCode.OFFSETS_DIFFER)),
          Map.entry(
              "bed/InferenceReport",
              List.of(
                  FindingCode.PATTERN_INFERRED,
                  FindingCode.PATTERN_UNSURE,
                  FindingCode.PATTERN_NONE,
                  FindingCode.SHARED_CANDIDATE,
                  FindingCode.TIE_OFF_CANDIDATE)),
          Map.entry("InferredLayout", List.of(FindingCode.MAINS_START_INFERRED)),
          Map.entry("Detours", List.of(FindingCode.DETOUR, FindingCode.DETOUR_NONE)),
          Map.entry("NoRoute", List.of(FindingCode.NO_ROUTE, FindingCode.ROUTE_OBSTACLE)),
          Map.entry(
              "Hoopwright",
              List.of(
                  FindingCode.ROUTE_UNKNOWN,
                  FindingCode.MAKER_DEPARTURE,
                  FindingCode.TENSION_ABOVE_MAX,
                  FindingCode.TENSION_BELOW_MIN)),
          Map.entry("StringFindings", List.of(FindingCode.STRING_SHORT, FindingCode.STRING_TIGHT)),
          Map.entry("bench/WaysOn", List.of(FindingCode.HALF_DONE)),
          Map.entry("bench/Script", List.of(FindingCode.CLAMP_AWAY)),
          Map.entry("bench/StartingClamps", List.of(FindingCode.START_CLAMP_REFUSED)),
          Map.entry(
              "bench/StartScript",
              List.of(FindingCode.START_CLAMP_HEAD_ZONE, FindingCode.START_CLAMP_SLIPS)),
          Map.entry(
              "judgement/ClampJudge",
              List.of(
                  FindingCode.CLAMP_MAY_SLIP,
                  FindingCode.CLAMP_UNTESTED,
                  FindingCode.CLAMP_NOT_CLEANED)),
          Map.entry("judgement/NeighbourJudge", List.of(FindingCode.CLAMP_ALONE)),
          Map.entry("judgement/BiteJudge", List.of(FindingCode.MARK_ON_BEND)),
          Map.entry("judgement/KnotJudge", List.of(FindingCode.ANCHOR_WEAKER)),
          Map.entry("check/Checker", List.of(FindingCode.RULE_CRASHED)));

  /** What lays strings in holes or looks for routes, so that a lost part may mislead it. */
  private static final Set<String> RESTS_ON_THE_LAYOUT =
      Set.of(
          "bed/StatedAssignment",
          "bed/StatedCrosses",
          "bed/SharedReport",
          "bed/Capacity",
          "bed/Placing",
          "bed/InferenceReport",
          "InferredLayout",
          "Detours",
          "NoRoute");

  private static Map<FindingCode, Set<String>> byCode() {
    Map<FindingCode, Set<String>> table = new EnumMap<>(FindingCode.class);
    WORK.forEach(
        (where, codes) ->
            codes.forEach(c -> table.computeIfAbsent(c, x -> new TreeSet<>()).add(where)));
    return table;
  }

  @ParameterizedTest
  @EnumSource(FindingCode.class)
  void everyCodeHasARuleOrAWork(FindingCode code) {
    assertThat(!Rules.of(code).isEmpty() || byCode().containsKey(code))
        .as("%s is reported by a rule of Rules, or listed here with the class that does", code)
        .isTrue();
  }

  static Stream<String> works() {
    return WORK.keySet().stream().sorted();
  }

  @ParameterizedTest
  @MethodSource("works")
  void theWorkReportsWhatItIsListedFor(String where) throws IOException {
    boolean patterns = where.startsWith("patterns ");
    Path file = (patterns ? PATTERNS : MAIN).resolve(where.replace("patterns ", "") + ".java");
    String text = Files.readString(file, UTF_8);
    for (FindingCode code : WORK.getOrDefault(where, List.of())) {
      assertThat(text).as(where).contains("FindingCode." + code.name());
    }
  }

  /** A finding is built by its rule or its work and by nothing else. */
  @Test
  void nothingElseInCoreBuildsFindings() throws IOException {
    List<String> others = new ArrayList<>();
    try (Stream<Path> files = Files.walk(MAIN)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String name = MAIN.relativize(file).toString().replace('\\', '/').replace(".java", "");
        String text = Files.readString(file, UTF_8);
        if (text.contains("Finding.of(") && !WORK.containsKey(name)) {
          others.add(name);
        }
      }
    }
    assertThat(others).containsExactly("check/Rule"); // for the rules
  }

  @Test
  void whatRestsOnTheLayoutSaysOnWhat() {
    Set<FindingCode> rests = EnumSet.noneOf(FindingCode.class);
    RESTS_ON_THE_LAYOUT.forEach(w -> rests.addAll(WORK.getOrDefault(w, List.of())));
    rests.remove(FindingCode.ROUTE_OBSTACLE); // stands beside no-route only
    assertThat(Needs.codes()).containsExactlyInAnyOrderElementsOf(rests);
  }

  @Test
  void thereAreSixtyRuleClasses() {
    assertThat(Rules.all().stream().map(Object::getClass).distinct().count())
        .isGreaterThanOrEqualTo(60);
    assertThat(Rules.all()).doesNotHaveDuplicates();
  }

  /** A rule's needs are pointers that a draft can know; its own stage's needs are not repeated. */
  @Test
  void needsArePointersAndSaidOnce() {
    for (Rule rule : Rules.all()) {
      assertThat(rule.needs())
          .as("%s", rule.code())
          .allMatch(p -> p.matches("(/[a-zA-Z]+)+"))
          .doesNotHaveDuplicates()
          .noneMatch(rule.stage().needs()::contains);
      assertThat(rule.after()).as("%s", rule.code()).doesNotContain(rule.code());
    }
  }
}
