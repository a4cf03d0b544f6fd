package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.LayoutReader;
import org.hoopwright.patterns.Samples;
import org.hoopwright.patterns.UnreadableFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InferAndDetourCommandTest {

  @TempDir Path folder;

  private static final String GOOD = Samples.text("willowbank-100");
  private static final String NO_SKIP =
      GOOD.replace("\"skip\": [\"7H\", \"9H\", \"7T\", \"9T\"], ", "");
  private static final String BARE = NO_SKIP.replace("\"first\": \"7H\", \"last\": \"7T\", ", "");

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("a.json"), text).toString();
  }

  private static Layout read(String text) {
    try {
      return LayoutReader.read("out", text.getBytes(UTF_8)).layout().orElseThrow();
    } catch (UnreadableFile e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void inferWritesTheCompleteLayout() throws Exception {
    Call call = Call.of("infer", file(NO_SKIP));

    assertThat(call.code()).isZero();
    assertThat(call.out()).startsWith("// The skip rules were read off the holes");
    assertThat(read(call.out())).isEqualTo(read(GOOD));
    assertThat(call.err()).contains("[pattern-inferred]", "[mains-start-inferred]");
  }

  @Test
  void inferListsReadingsWhereItIsUnsure() throws Exception {
    String file = file(BARE);
    Call call = Call.of("infer", file);

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).contains("[pattern-unsure]", "(1) ", "(2) ", "fix: Look at holes");
    Call second = Call.of("infer", file, "--reading", "2");
    assertThat(second.code()).isZero();
    assertThat(read(second.out()).mainsSkip()).isPresent();
    assertThat(read(second.out())).isNotEqualTo(read(Call.of("infer", file, "--reading=1").out()));
    assertThat(Call.of("infer", file, "--reading", "9").code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("infer", file, "--reading", "0").code()).isEqualTo(ExitCode.WRONG_CALL);
  }

  @Test
  void inferLeavesStatedRulesAlone() {
    Call call = Call.of("infer", "sample:willowbank-100");

    assertThat(call.code()).isZero();
    assertThat(call.err()).contains("states mains.skip");
    assertThat(read(call.out())).isEqualTo(read(GOOD));
  }

  @Test
  void inferMarksCandidates() throws Exception {
    String text = NO_SKIP.replace("\"tieOff\": [\"5H\", \"6T\", \"8T\", \"12T\"],", "");
    Call call = Call.of("infer", file(text));

    assertThat(call.code()).isZero();
    assertThat(call.out()).contains("// holes.tieOff holds candidates: look at the bore");
    assertThat(call.err()).contains("[tie-off-candidate]");
    assertThat(read(call.out()).tieOff()).isNotEmpty();
  }

  @Test
  void planInfersAndSaysSo() throws Exception {
    Call call = Call.of("plan", file(NO_SKIP));

    assertThat(call.code()).isZero();
    assertThat(call.out()).contains("Read off the holes: the mains leave out 7H, 9H, 7T and 9T");
  }

  @Test
  void planStopsWhereTheHolesDoNotSettleThePattern() throws Exception {
    Call call = Call.of("plan", file(BARE));

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).contains("[pattern-unsure]", "(2) the mains leave out 8H and 8T");
  }

  @Test
  void aBrokenFileHasItsFindings() throws Exception {
    String file = file(NO_SKIP.replace("\"tennis\"", "\"tenis\""));

    assertThat(Call.of("infer", file).code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(Call.of("infer", file).out()).contains("[wrong-value]");
    assertThat(Call.of("detour", file).code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(Call.of("infer", "none.json").code()).isEqualTo(ExitCode.FILE);
    assertThat(Call.of("detour", "none.json").code()).isEqualTo(ExitCode.FILE);
  }

  @Test
  void detourWritesTheLayoutOfTheWayRound() {
    Call call = Call.of("detour", "sample:willowbank-100", "--block", "L8H");

    assertThat(call.code()).isZero();
    assertThat(call.err()).startsWith("L7 moves from L8H to L7H; L7H takes two strings");
    assertThat(call.out()).contains("\"shared\": [\"L7H\"]", "\"blocked\": [\"L8H\"]");
    Call plan = Call.withInput(call.out(), "plan", "-");
    assertThat(plan.code()).isZero();
  }

  @Test
  void detourSaysWhyThereIsNone() {
    Call call = Call.of("detour", "sample:willowbank-100", "--block", "L3T");

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).isEmpty();
    assertThat(call.err()).contains("no way round was found", "No run may pass from 5T to 6T");
  }

  @Test
  void detourSaysWhenNoneIsNeeded() {
    Call call = Call.of("detour", "sample:willowbank-100");

    assertThat(call.code()).isZero();
    assertThat(call.err()).contains("does not need the blocked holes");
    assertThat(Call.of("detour", "sample:willowbank-100", "--block", "X1").code())
        .isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("detour", "sample:willowbank-100", "--block", "99H").code())
        .isEqualTo(ExitCode.WRONG_CALL);
  }

  @Test
  void criticalHolesAreListedOneALine() {
    Call call = Call.of("detour", "sample:willowbank-teaching", "--critical");

    assertThat(call.code()).isZero();
    assertThat(call.out()).isEmpty();
    assertThat(call.err()).contains("Every hole can be worked round if it fails.");
  }
}
