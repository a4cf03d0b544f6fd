package org.hoopwright.patterns.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.hoopwright.check.RuleBook;
import org.hoopwright.check.RuleText;
import org.hoopwright.check.Threshold;
import org.hoopwright.check.Usual;
import org.hoopwright.frame.Game;
import org.junit.jupiter.api.Test;

/** The page of findings is that of the book of rules. */
class FindingsPageTest {

  private static final Path PAGE = Repository.root().resolve("docs/findings.md");

  @Test
  void pageIsUpToDate() throws IOException {
    String wanted = page();
    String committed = Files.exists(PAGE) ? Repository.text(PAGE) : "";
    if (!committed.equals(wanted) && Boolean.getBoolean("hoopwright.rewrite")) {
      Files.writeString(PAGE, wanted, UTF_8);
    }
    // A run that rewrites fails too, so that nobody commits a page without a look at it.
    assertThat(committed)
        .as(
            "docs/findings.md is stale. Run this test with -Dhoopwright.rewrite=true to write it"
                + " anew, look at what changed, and run the tests again.")
        .isEqualTo(wanted);
  }

  private static String page() {
    StringBuilder page =
        new StringBuilder(
            """
            # Findings

            Every code that a check or a plan can report. Made from `RuleBook` by a test; do not edit it
            by hand. `hoopwright check --explain CODE` shows the same.

            An *error* breaks the format, contradicts itself, or cannot be strung as it says; nothing
            is planned from it. A *warning* is unusual, or likely not what was meant; a plan carries it
            along. A *note* is worth knowing. Each finding says what is wrong with its values, where it
            stands, and what to do: see [plan-format.md](plan-format.md#findings-hoopwrightfindings-1).

            A rule whose ground is missing stays silent: where a part of the file could not be read, and
            where another rule found that ground wrong. The report names it as not looked for.

            """);
    for (RuleBook.Group group : RuleBook.groups()) {
      page.append("## ").append(group.title()).append("\n\n");
      for (RuleText rule : group.rules()) {
        rule(page, rule);
      }
    }
    thresholds(page);
    return page.toString();
  }

  private static void rule(StringBuilder page, RuleText rule) {
    page.append("### `%s`\n\n".formatted(rule.code().code()));
    page.append(
        "*%s.* %s %s\n\n"
            .formatted(rule.code().severity().word(), rule.code().summary(), rule.explanation()));
    rule.example()
        .ifPresent(
            e -> {
              boolean call = e.kind() == RuleText.Example.Kind.CALL;
              String in = e.sample().isEmpty() ? "" : ", in `sample:" + e.sample() + "`";
              block(page, "Wrong" + in, e.wrong(), call);
              block(page, "Right", e.right(), call);
            });
    if (!rule.silentAfter().isEmpty()) {
      page.append("Not looked for beside ")
          .append(
              rule.silentAfter().stream()
                  .map(c -> "`" + c.code() + "`")
                  .collect(Collectors.joining(", ")))
          .append(".\n\n");
    }
  }

  private static void block(StringBuilder page, String title, String text, boolean call) {
    if (call) {
      page.append(title).append(":\n\n```sh\nhoopwright ").append(text).append("\n```\n\n");
      return;
    }
    String shown = text.strip();
    if (shown.length() > 200) {
      shown = shown.substring(0, 60) + "\u2026";
    }
    page.append(title).append(":\n\n```jsonc\n");
    page.append(shown.isEmpty() ? "// left out" : shown).append("\n```\n\n");
  }

  private static void thresholds(StringBuilder page) {
    page.append("## Thresholds\n\n| name | value | from |\n|---|---|---|\n");
    for (Threshold t : Threshold.values()) {
      page.append(
          "| `%s` | %s | %s |\n".formatted(t, (t.value() + " " + t.unit()).strip(), t.why()));
    }
    page.append(
        """

        ## What is usual

        Beyond these a number is more likely mistaken than meant. Our choice, wide round the published
        patterns and tensions of [sources.md](sources.md).

        | game | mains | crosses | hoop length, mm | hoop width, mm | tension, N |
        |---|---|---|---|---|---|
        """);
    for (Game game : Game.values()) {
      Usual.of(game)
          .ifPresent(
              u ->
                  page.append(
                      "| %s | %s | %s | %s | %s | %s |\n"
                          .formatted(
                              game.word(),
                              range(u.mains()),
                              range(u.crosses()),
                              range(u.hoopLength()),
                              range(u.hoopWidth()),
                              range(u.tension()))));
    }
  }

  private static String range(Usual.Range range) {
    return Math.round(range.least()) + " to " + Math.round(range.most());
  }
}
