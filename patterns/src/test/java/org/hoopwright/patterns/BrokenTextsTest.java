package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.testing.Draw;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are wrong, by mistake or on purpose. */
class BrokenTextsTest {
  private static final List<String> PIECES =
      List.of(
          "",
          "\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          "\\",
          "/",
          "//",
          "/*",
          "*/",
          "0",
          "-",
          ".",
          "e9",
          "1e999",
          "null",
          "true",
          "x",
          " ",
          "\n",
          "\r",
          "\t",
          "\0",
          "\u001b[2J",
          "\uFEFF",
          "\u202e",
          "\uD83C\uDFBE",
          "\u00e9",
          "L7H",
          "\"name\": 1,",
          "\\u0000",
          "'",
          "#");

  private static ReadResult read(String text) {
    try {
      return LayoutReader.read("frame.json", text.getBytes(UTF_8));
    } catch (UnreadableFile e) {
      throw new AssertionError(text, e);
    }
  }

  static Stream<BrokenTexts.Broken> broken() {
    return BrokenTexts.all().stream();
  }

  @ParameterizedTest
  @MethodSource("broken")
  void findsWhatIsWrongAndWhere(BrokenTexts.Broken broken) {
    List<Finding> findings = read(broken.text()).findings();

    assertThat(findings)
        .extracting(
            f ->
                f.place().orElseThrow().line()
                    + ":"
                    + f.place().orElseThrow().column()
                    + " "
                    + f.code().code())
        .isEqualTo(broken.expected());
    assertThat(findings)
        .allSatisfy(
            f -> {
              assertThat(f.message()).endsWith(".").doesNotContainIgnoringCase("jackson");
              assertThat(f.fix()).endsWith(".");
            });
  }

  @Test
  void everyCodeOfTheFormatIsInTheTable() {
    assertThat(
            broken()
                .flatMap(b -> b.expected().stream())
                .map(e -> e.substring(e.indexOf(' ') + 1))
                .collect(Collectors.toSet()))
        .containsExactlyInAnyOrderElementsOf(
            EnumSet.range(FindingCode.JSON_SYNTAX, FindingCode.SUSPECT_TEXT).stream()
                .map(FindingCode::code)
                .toList());
  }

  /** A sample with one random place changed. */
  private static String changed(Draw draw) {
    String text = Samples.text(draw.oneOf(Samples.list()).name());
    int at = draw.between(0, text.length());
    int cut = Math.min(text.length(), at + draw.oneOf(List.of(0, 0, 1, 1, 2, 9, 100_000)));
    String put = draw.chance(15) ? text.substring(draw.between(0, at), at) : draw.oneOf(PIECES);
    return text.substring(0, at) + put + text.substring(cut);
  }

  @Property(tries = 3000)
  void oneChangedPlaceEndsInFindingsOrALayout(@ForAll long seed) {
    String text = changed(Draw.from(seed));
    if (text.indexOf('\0') >= 0 && text.indexOf('\0') < 2) {
      return; // it looks like UTF-16 and is refused
    }

    ReadResult result = read(text);

    assertThat(result.layout().isPresent()).isNotEqualTo(Findings.hasErrors(result.findings()));
    assertThat(result.findings())
        .allSatisfy(
            f -> {
              assertThat(f.place()).isPresent();
              assertThat(f.message()).isNotEqualTo("The text is not JSON.");
              assertThat(f.message() + f.fix()).matches("[^\\p{Cntrl}\\u202e\\uFEFF]+");
            });
  }

  private static String many(int count, String piece) {
    return IntStream.range(0, count)
        .mapToObj(i -> piece.replace("#", "" + i))
        .collect(Collectors.joining(","));
  }

  static Stream<String> large() {
    String least = BrokenTexts.LEAST;
    return Stream.of(
        "[".repeat(100_000),
        "{\"a\":".repeat(100_000),
        "1".repeat(1_000_000),
        "{\"x\": 1e2000000000}",
        "{\"" + "k".repeat(60_000) + "\": 1}",
        least.replace("board", "\\u0041".repeat(600_000)),
        "[" + many(190_000, "1") + "]",
        "{" + many(60_000, "\"skpi#\": 1") + "}",
        "{" + many(60_000, "\"name\": 1") + "}",
        "/*".repeat(1_900_000),
        "//\n".repeat(1_000_000),
        "\"" + "\\".repeat(3_000_001),
        least.replace("[]", "[" + many(60_000, "\"R#R\"") + "]"),
        least.replace(
            "\"throat\": 4", "\"throat\": 4, \"bore\": {" + many(60_000, "\"#\": 1") + "}"));
  }

  /** Too much of anything is told soon: something quadratic would take minutes. */
  @ParameterizedTest
  @MethodSource("large")
  @Timeout(60)
  void takesLittleTimeForLargeTexts(String text) {
    assertThat(read(text).findings()).isNotEmpty();
  }

  private static List<String> all() {
    return broken()
        .flatMap(b -> read(b.text()).findings().stream())
        .map(f -> f + " " + f.fix())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
  void saysTheSameInEveryLocale(String tag) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      List<String> expected = all();
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(all()).isEqualTo(expected);
    } finally {
      Locale.setDefault(before);
    }
  }
}
