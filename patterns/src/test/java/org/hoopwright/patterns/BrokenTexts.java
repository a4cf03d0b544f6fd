package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;

/**
 * Broken layout files: short texts, and what must be found in each, as {@code line:column code}.
 */
final class BrokenTexts {

  /** The least layout; each broken one changes something of it. */
  static final String LEAST =
      """
      {
        "format": "hoopwright/layout-1",
        "name": "Willowbank board",
        "hoop": { "shape": "superellipse", "length": 120, "width": 100 },
        "holes": { "head": 4, "throat": 4 },
        "mains": { "count": 4, "skip": [] },
        "crosses": { "count": 4 }
      }
      """;

  /**
   * A broken text.
   *
   * @param what what is wrong, in words
   * @param text the file's text
   * @param expected all that must be found, as {@code line:column code}, in order
   */
  record Broken(String what, String text, List<String> expected) {
    @Override
    public String toString() {
      return what;
    }
  }

  private static final List<Broken> ALL = new ArrayList<>();

  private BrokenTexts() {}

  static List<Broken> all() {
    return List.copyOf(ALL);
  }

  private static void text(String what, String text, String... expected) {
    ALL.add(new Broken(what, text, List.of(expected)));
  }

  private static void change(String what, String from, String to, String... expected) {
    if (!LEAST.contains(from)) {
      throw new IllegalArgumentException("The least layout does not hold " + from);
    }
    text(what, LEAST.replace(from, to), expected);
  }

  static {
    // Not JSON.
    text("nothing", "", "1:1 json-empty");
    text("blanks", " \n\t\n", "1:1 json-empty");
    text("a comment only", "// to do\n", "1:1 json-empty");
    text("cut off in an object", "{\"format\": \"hoopwright/layout-1\"", "1:33 json-syntax");
    text("cut off in a list", "[1,\n 2", "1:1 wrong-type", "2:3 json-syntax");
    text("cut off in a text", "{\n  \"name", "2:3 json-syntax");
    text("cut off after a colon", "{\"name\":", "1:9 json-syntax");
    text("a NUL in a comment", LEAST + "// a\0b", "9:5 json-syntax");
    text("an escape in a comment", "/* \n \u001b[2J */ {}", "2:2 json-syntax");
    text("a comment not closed", "{ /* ", "1:3 json-syntax");
    change(
        "a trailing comma in an object", "\"throat\": 4 }", "\"throat\": 4, }", "5:36 json-syntax");
    change("a trailing comma in a list", "[]", "[\"1H\",]", "6:39 json-syntax");
    change("a comma only", "[]", "[,]", "6:35 json-syntax");
    change("two commas", "\"head\": 4,", "\"head\": 4,,", "5:24 json-syntax");
    change("no comma", "\"head\": 4,", "\"head\": 4", "5:24 json-syntax");
    change("a semicolon", "\"head\": 4,", "\"head\": 4;", "5:23 json-syntax");
    change("no colon", "\"name\":", "\"name\"", "3:10 json-syntax");
    change("an equals sign", "\"name\":", "\"name\" =", "3:10 json-syntax");
    change("no value", "\"head\": 4", "\"head\": ", "5:22 json-syntax");
    change("no quotes round a name", "\"name\":", "name:", "3:3 json-syntax");
    change("no quotes round a text", "\"Willowbank board\"", "Willowbank", "3:11 json-syntax");
    change("single quotes", "\"Willowbank board\"", "'Willowbank'", "3:11 json-syntax");
    change("typographic quotes", "\"Willowbank board\"", "\u201cWillow\u201d", "3:11 json-syntax");
    change("a comment of another kind", "\"name\"", "# name\n\"name\"", "3:3 json-syntax");
    change("round brackets", "[]", "()", "6:34 json-syntax");
    change("the wrong bracket", "[]", "[}", "6:35 json-syntax");
    change("a bracket too many", "\"throat\": 4 }", "\"throat\": 4 }}", "5:39 json-syntax");
    change("an escape that is none", "board", "\\x41", "3:23 json-syntax");
    change("an escape too short", "board", "\\u12", "3:23 json-syntax");
    change("a line end in a text", "board", "\n", "3:11 json-syntax");
    change("a tab in a text", " board", "\tboard", "3:22 json-syntax");
    change("a NUL in a text", " board", "\0board", "3:22 json-syntax");
    change("a plus sign", "\"count\": 4,", "\"count\": +4,", "6:23 json-syntax");
    change("no digit before the point", "100", ".5", "4:62 json-syntax");
    change("no digit after the point", "100", "5.", "4:62 json-syntax");
    change("a needless zero", "100", "0100", "4:62 json-syntax");
    change("hexadecimal", "100", "0x64", "4:62 json-syntax");
    change("a unit", "100", "100mm", "4:62 json-syntax");
    change("two points", "100", "1.0.0", "4:62 json-syntax");
    change("not a number", "100", "NaN", "4:62 json-syntax");
    change("minus infinity", "100", "-Infinity", "4:62 json-syntax");
    change("a capital letter", "100", "True", "4:62 json-syntax");
    change("a second mark of byte order", "{\n  \"f", "\uFEFF\uFEFF{\n  \"f", "1:1 json-syntax");
    change("a hard blank", "\"head\"", "\u00a0\"head\"", "5:14 json-syntax");
    text("text after the end", LEAST + "{}", "9:1 json-syntax");
    text(
        "a wrong value before the flaw",
        LEAST.replace("\"head\": 4", "\"head\": \"4\"").replace("[]", "[,]"),
        "5:22 wrong-type",
        "6:35 json-syntax");

    // Too much.
    text("too deep", "[".repeat(33), "1:1 wrong-type", "1:33 json-limit");
    change("a number too long", "100", "1" + "0".repeat(64), "4:62 json-limit");
    change("a text too long", "board", "b".repeat(10_000), "3:11 json-limit");
    change(
        "a name too long",
        "\"head\"",
        "\"" + "h".repeat(201) + "\": 1, \"head\"",
        "5:14 json-limit");

    // JSON, but no layout.
    text("null", "null", "1:1 wrong-type");
    text("a list", "[]", "1:1 wrong-type");
    text("a text", " \"layout\"", "1:2 wrong-type");
    text("a number", "\n17", "2:1 wrong-type");
    text(
        "an empty object",
        "\n {}",
        "2:2 missing-member",
        "2:2 missing-member",
        "2:2 missing-member",
        "2:2 missing-member",
        "2:2 missing-member",
        "2:2 missing-member");
    change("another version", "layout-1", "layout-2", "2:13 format-version");
    change("another format", "layout-1", "plan-1", "2:13 format-version");
    change("a format of another kind", "\"hoopwright/layout-1\"", "1", "2:13 wrong-type");
    change("no format", "\"format\": \"hoopwright/layout-1\",", "", "1:1 missing-member");
    change("a member twice", "\"head\": 4,", "\"head\": 4, \"head\": 5,", "5:25 duplicate-member");
    change("a member misspelt", "\"skip\"", "\"skpi\"", "6:26 unknown-member");
    change("a member elsewhere", "\"name\"", "\"noRun\": [], \"name\"", "3:3 unknown-member");
    change("a member unheard of", "\"name\"", "\"colour\": 1, \"name\"", "3:3 unknown-member");
    change("a member missing", "\"head\": 4, ", "", "5:12 missing-member");
    change(
        "hole counts for one side",
        "\"head\": 4",
        "\"head\": {\"left\": 4}",
        "5:22 missing-member");
    change("null for a value", "100", "null", "4:62 wrong-type");
    change("null in a list", "[]", "[null]", "6:35 wrong-type");
    change("a number in quotes", "100", "\"100\"", "4:62 wrong-type");
    change("infinity in quotes", "100", "\"Infinity\"", "4:62 wrong-type");
    change("a number for a text", "\"Willowbank board\"", "12", "3:11 wrong-type");
    change("true for a text", "\"Willowbank board\"", "true", "3:11 wrong-type");
    change("half a main", "\"count\": 4,", "\"count\": 4.5,", "6:23 wrong-type");
    change("a text for a list", "[]", "\"1H\"", "6:34 wrong-type");
    change("a list for an object", "{ \"count\": 4 }", "[4]", "7:14 wrong-type");
    change("a word in capitals", "superellipse", "Superellipse", "4:22 wrong-value");
    change("another word", "superellipse", "egg", "4:22 wrong-value");
    change("points in an ellipse", "100 }", "100, \"points\": [] }", "4:67 unknown-member");
    change(
        "no points",
        "superellipse",
        "points",
        "4:11 missing-member",
        "4:32 unknown-member",
        "4:47 unknown-member");
    change("infinite", "100", "1e309", "4:62 number-range");
    change("infinite by far", "100", "1e99999999999", "4:62 number-range");
    change("too near zero", "100", "1e-400", "4:62 number-range");
    change("too many to count", "\"count\": 4,", "\"count\": 1e10,", "6:23 number-range");
    change("an empty name", "Willowbank board", " ", "3:11 wrong-value");
    change("an escaped NUL", "board", "\\u0000", "3:11 wrong-value");
    change("an escaped line end", "board", "\\n", "3:11 wrong-value");
    change("half a character", "board", "\\ud800", "3:11 wrong-value");
    change("letters from right to left", "board", "\u202Eboard", "3:11 suspect-text");
    change("a blank of no width", "board", "bo\\u200bard", "3:11 suspect-text");
    change("small letters", "[]", "[\"1h\"]", "6:35 bad-hole-name");
    change("a hole with no number", "[]", "[\"H\"]", "6:35 bad-hole-name");
    change("hole nought", "[]", "[\"0H\"]", "6:35 bad-hole-name");
    change("two bad names", "[]", "[\"x\",\n\"y\"]", "6:35 bad-hole-name", "7:1 bad-hole-name");
    change(
        "a bad name in a table",
        "4 },\n  \"m",
        "4, \"bore\": {\"H7\": 2} },\n  \"m",
        "5:47 bad-hole-name");
    change(
        "one coordinate", "4 },\n  \"m", "4, \"at\": {\"1H\": [2]} },\n  \"m", "5:51 wrong-type");
    change(
        "a stretch of one hole",
        "4 },\n  \"m",
        "4, \"noRun\": [[\"1H\"]] },\n  \"m",
        "5:48 wrong-type");
    change("one side's first hole", "4 }\n}", "4, \"first\": \"L3H\" }\n}", "7:37 wrong-value");
    change("three pieces", "\"name\"", "\"pieces\": 3, \"name\"", "3:13 wrong-value");
    change("pieces in words", "\"name\"", "\"pieces\": \"one\", \"name\"", "3:13 wrong-value");
    change("true pieces", "\"name\"", "\"pieces\": true, \"name\"", "3:13 wrong-type");
    change(
        "a tension without unit",
        "\"name\"",
        "\"tension\": {\"min\": 1, \"max\": 2}, \"name\"",
        "3:14 missing-member");
    change(
        "one side of offsets",
        "\"skip\": []",
        "\"skip\": [], \"offsets\": {\"left\": [1, 2]}",
        "6:49 missing-member");
    change(
        "one end of offsets",
        "\"skip\": []",
        "\"skip\": [], \"offsets\": {\"head\": [1, 2]}",
        "6:49 missing-member");
    change(
        "an offset in words",
        "\"skip\": []",
        "\"skip\": [], \"offsets\": [1, \"two\"]",
        "6:53 wrong-type");
    text(
        "several at once",
        LEAST.replace("\"name\"", "\"nmae\"").replace("100", "\"100\"").replace("[]", "[\"1h\"]"),
        "3:3 unknown-member",
        "4:62 wrong-type",
        "6:35 bad-hole-name");
  }
}
