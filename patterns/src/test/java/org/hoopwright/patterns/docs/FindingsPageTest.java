package org.hoopwright.patterns.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hoopwright.finding.FindingCode;
import org.junit.jupiter.api.Test;

/** The page of finding codes is that of the table in code. */
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

            Every code that a check or a plan can report. Made from `FindingCode` by a test; do not
            edit it by hand.

            An *error* breaks the format, contradicts itself, or cannot be strung as it says; nothing
            is planned from it. A *warning* is unusual, or likely not what was meant; a plan carries it
            along. A *note* is worth knowing. Each finding says what is wrong with its values, where it
            stands, and what to do: see [plan-format.md](plan-format.md#findings-hoopwrightfindings-1).

            | code | severity | says |
            |---|---|---|
            """);
    for (FindingCode code : FindingCode.values()) {
      page.append(
          "| `%s` | %s | %s |\n"
              .formatted(code.code(), code.severity().word(), code.summary().replace("|", "\\|")));
    }
    return page.toString();
  }
}
