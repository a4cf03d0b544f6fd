package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code --bench FILE} and {@code --string NAME}. */
class BenchFileCommandTest {

  private static final String FRAME = "sample:willowbank-100";
  private static final String BENCH = "sample:willowbank-bench";

  @TempDir private Path folder;

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("bench.json"), text).toString();
  }

  @Test
  void aPlanRestsOnTheBenchFile() {
    Call plan = Call.of("plan", FRAME, "--bench", BENCH, "--string", "set 18");
    assertThat(plan.code()).isEqualTo(ExitCode.DONE);
    // The clamps held 40 lbf of this string, and the frame asks for 55: they are backed up.
    assertThat(plan.out())
        .contains("gauge 18")
        .contains("backs")
        .contains("[start-clamp-refused]")
        .contains("12192 mm");
    Call thick = Call.of("plan", FRAME, "--bench", BENCH, "--string", "reel 16");
    assertThat(thick.out()).contains("gauge 16").doesNotContain("[start-clamp-refused]");
    Call hybrid = Call.of("plan", FRAME, "--bench", BENCH, "--string", "hybrid");
    assertThat(hybrid.out()).contains("polyester").contains("multifilament");
  }

  @Test
  void optionsOnTheLineWin() {
    Call plan =
        Call.of(
            "plan",
            FRAME,
            "--bench",
            BENCH,
            "--string",
            "set 18",
            "--clamp-test",
            "18/nylon/60lbf/held",
            "--start-clamps",
            "0",
            "--at-hand",
            "13m",
            "--format",
            "json");
    assertThat(plan.code()).isEqualTo(ExitCode.DONE);
    assertThat(plan.out())
        .contains("\"startingClamps\": 0")
        .contains("\"stringAtHand\": 13000.0")
        .contains("\"reach\": 210.0")
        .contains("\"doubled-clamp\"")
        .doesNotContain("start-clamp-refused");
    Call gauge = Call.of("plan", FRAME, "--bench", BENCH, "--string", "set 18", "--gauge", "17");
    assertThat(gauge.out()).contains("gauge 17").doesNotContain("gauge 18");
  }

  @Test
  void otherCommandsTakeItToo() {
    for (String command : new String[] {"state", "draw"}) {
      Call call =
          command.equals("state")
              ? Call.of(command, FRAME, "--after", "20", "--bench", BENCH)
              : Call.of(command, FRAME, "--bench", BENCH);
      assertThat(call.err()).as(command).doesNotContain("Unknown option");
    }
    Call sheet =
        Call.of("sheet", FRAME, "--bench", BENCH, "-o", folder.resolve("a.html").toString());
    assertThat(sheet.code()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void whatIsWrongIsSaid() throws IOException {
    Call wrong =
        Call.of(
            "plan",
            FRAME,
            "--bench",
            file("{\"format\": \"hoopwright/bench-1\", \"name\": \"a\",\n  \"reach\": -1}"));
    assertThat(wrong.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(wrong.out()).contains("bench.json:2:12: error:").contains("[number-range]");
    assertThat(wrong.err()).contains("nothing is planned with it");
    Call missing = Call.of("plan", FRAME, "--bench", folder.resolve("none.json").toString());
    assertThat(missing.code()).isEqualTo(ExitCode.FILE);
    assertThat(missing.err()).contains("there is no such file");
    Call name = Call.of("plan", FRAME, "--bench", BENCH, "--string", "blue");
    assertThat(name.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(name.err()).contains("reel 16, set 18, hybrid");
    Call alone = Call.of("plan", FRAME, "--string", "blue");
    assertThat(alone.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(alone.err()).contains("--string goes with --bench FILE only");
    Call one = Call.of("plan", FRAME, "--bench", BENCH, "--string", "hybrid", "--pieces", "1");
    assertThat(one.code()).isEqualTo(ExitCode.WRONG_CALL);
  }

  @Test
  void theTableOfForcesSaysWhatBothClampsHold() {
    Call plan = Call.of("plan", FRAME, "--bench", BENCH, "--string", "set 18", "--forces");
    assertThat(plan.code()).isEqualTo(ExitCode.DONE);
    // 40 lbf were held by a machine clamp, 35 lbf by a starting clamp: together 75.
    assertThat(plan.out())
        .containsPattern("starting 1 .* with machine [12]: holds: tested up to 75");
    // At the head no starting clamp may be set: there the machine clamp is on its own.
    assertThat(plan.out()).containsPattern("machine 1 .* not tested so far: has held 40");
    Call json =
        Call.of(
            "plan", FRAME, "--bench", BENCH, "--string", "set 18", "--forces", "--format", "json");
    assertThat(json.out()).contains("\"together\": { \"machine-2\": [");
  }

  @Test
  void samplesPrintsIt() {
    assertThat(Call.of("samples", "willowbank-bench").out()).isEqualTo(Samples.bench());
  }
}
