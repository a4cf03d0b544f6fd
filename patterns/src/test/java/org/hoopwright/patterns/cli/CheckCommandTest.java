package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hoopwright.patterns.Json;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

  @TempDir Path folder;

  private static final String GOOD = Samples.text("willowbank-100");

  /** A hole named twice is a warning. */
  private static final String WARNED = GOOD.replace("\"12T\"]", "\"12T\", \"12T\"]");

  private static final String WRONG = GOOD.replace("\"tennis\"", "\"tenis\"");

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void cleanFilesSayNothing() throws IOException {
    Call call = Call.of("check", file("a.json", GOOD), "sample:willowbank-97");

    assertThat(call).isEqualTo(new Call(0, "", "2 files: 0 errors, 0 warnings, 0 notes.\n"));
  }

  @Test
  void errorsPointIntoTheFile() throws IOException {
    String file = file("a.json", WRONG);
    Call call = Call.of("check", file);

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).startsWith(file + ":7:11: error: ").contains("[wrong-value]", "^");
    assertThat(call.err()).endsWith("1 file: 1 error, 0 warnings, 0 notes.\n");
  }

  @Test
  void thresholdDecidesTheExitCode() throws IOException {
    String warned = file("a.json", WARNED);
    String wrong = file("b.json", WRONG);

    assertThat(Call.of("check", warned).code()).isZero();
    assertThat(Call.of("check", warned, "--fail-on", "error").code()).isZero();
    assertThat(Call.of("check", warned, "--fail-on", "warning").code())
        .isEqualTo(ExitCode.FINDINGS);
    assertThat(Call.of("check", warned, wrong, "--fail-on=never").code()).isZero();
    assertThat(Call.of("check", warned, wrong).code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(Call.of("check", warned, "--fail-on", "notes").code())
        .isEqualTo(ExitCode.WRONG_CALL);
  }

  @Test
  void notesPassEveryThreshold() {
    // A free hole left over among the blocked ones is a note.
    String text = GOOD.replace("\"blocked\": []", "\"blocked\": [\"18H\"]").replace("19,", "18,");
    Call call = Call.withInput(text, "check", "--fail-on", "warning", "-");

    assertThat(call.out()).contains("note: ");
  }

  @Test
  void jsonHoldsEveryFile() throws IOException {
    Call call = Call.of("check", "--format", "json", file("a.json", GOOD), file("b.json", WRONG));
    Json json = Json.parse(call.out());

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.err()).isEmpty();
    assertThat(json.at("format").text()).isEqualTo("hoopwright/findings-1");
    assertThat(json.at("files").items()).hasSize(2);
    assertThat(json.at("files", 0, "findings").items()).isEmpty();
    assertThat(json.at("files", 1, "findings", 0, "code").text()).isEqualTo("wrong-value");
    assertThat(json.at("counts", "error").number()).isEqualTo(1);
  }

  @Test
  void htmlMarksFindingsOnADrawingOfEachFile() throws IOException {
    Call call = Call.of("check", "--format=html", file("a.json", GOOD), file("b.json", WRONG));

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.err()).isEmpty();
    assertThat(call.out())
        .startsWith("<!DOCTYPE html>")
        .contains("a.json</h2><p>Nothing was found.</p><svg", "line 7, column 11", "[wrong-value]")
        .endsWith("</html>\n");
  }

  @Test
  void unreadableFilesDoNotHideOthers() throws IOException {
    String wrong = file("b.json", WRONG);
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Call call = Call.of("check", folder.resolve("none.json").toString(), empty.toString(), wrong);

    assertThat(call.code()).isEqualTo(ExitCode.FILE);
    assertThat(call.out()).contains(wrong + ":7:11: error: ");
    assertThat(call.err())
        .contains("there is no such file", "it holds no .json file", "1 file: 1 error");
  }

  @Test
  void malformedJsonIsAFindingNotAReadingFailure() {
    Call call = Call.withInput("{ \"format\": ", "check", "-");

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).startsWith("-:1:").contains("[json-syntax]");
  }

  @Test
  void standardInputIsReadOnce() {
    Call call = Call.withInput(GOOD, "check", "-", "-");

    assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(call.err()).contains("only once");
  }

  @Test
  void aFileIsNeeded() {
    assertThat(Call.of("check").code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("check", "sample:nope").code()).isEqualTo(ExitCode.FILE);
    assertThat(Call.of("check", "a\u0000b").code()).isEqualTo(ExitCode.FILE);
  }

  @Test
  void alsoSaysWhetherThereIsARoute() {
    String text =
        GOOD.replace("\"tieOff\": [\"5H\", \"6T\", \"8T\", \"12T\"]", "\"tieOff\": []")
            .replace("\"bore\": { \"L8T\": 3 },", "");
    Call call = Call.withInput(text, "check", "-");

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).contains("[no-route]");
  }

  /** Words without options take a shorter way, which must not differ. */
  @Test
  void optionsAtTheirDefaultsChangeNothing() throws IOException {
    String wrong = file("a.json", WRONG);
    file("b.json", WARNED);
    for (String word :
        new String[] {
          wrong, folder.toString(), folder + "/*.json", "no-such.json", "sample:none", "", "-", "+x"
        }) {
      assertThat(Call.withInput(GOOD, "check", word, wrong))
          .as(word)
          .isEqualTo(Call.withInput(GOOD, "check", "--format=text", word, wrong));
    }
    assertThat(Call.of("check", "-", "-").code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("check").code()).isEqualTo(ExitCode.WRONG_CALL);
  }
}
