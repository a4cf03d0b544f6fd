package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job half done, its state in a file, and the way on. */
class ResumeCommandTest {

  @TempDir private Path folder = Path.of("");
  private String state = "";

  @BeforeEach
  void stateInTheMiddle() throws IOException {
    // The step after which the tensioner has let go of X5, so that everything is at rest.
    String plan = Call.of("plan", "sample:willowbank-100", "--format", "json").out();
    String before = plan.substring(0, plan.indexOf("\"tails\": [\"X6\"]"));
    int release = before.lastIndexOf("\"do\": \"release\"");
    int number = before.lastIndexOf("\"n\": ", release) + 5;
    String step = before.substring(number, before.indexOf(',', number));
    Call made = Call.of("state", "sample:willowbank-100", "--after", step);
    assertThat(made.code()).isEqualTo(ExitCode.DONE);
    state = made.out();
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("job.json"), text);
  }

  @Test
  void goesOnWithoutUndoing() throws IOException {
    Call call = Call.of("resume", "sample:willowbank-100", file(state).toString(), "--most", "2");
    assertThat(call.err()).isEmpty();
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    assertThat(call.out())
        .startsWith("TAKE CARE")
        .contains("wear eye protection", "WAYS ON", "1. Nothing is undone", "X6");
    assertThat(call.out()).doesNotContain("WHAT IS UNDONE");
  }

  @Test
  void takesAMisweaveBack() throws IOException {
    String misweaved = state.replace("\"misweaves\": []", "\"misweaves\": [\"X4\"]");
    Call call = Call.of("resume", "sample:willowbank-100", file(misweaved).toString());
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    assertThat(call.out()).contains("1. 2 strings are undone").contains("Draw X4 out");
  }

  @Test
  void saysWhatIsWrongWithTheState() throws IOException {
    Call typo =
        Call.of(
            "resume", "sample:willowbank-100", file(state.replace("\"X1\"", "\"Y1\"")).toString());
    assertThat(typo.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(typo.out()).contains("job.json:").contains("is not a span");

    Call loose =
        Call.of(
            "resume",
            "sample:willowbank-100",
            file(state.replaceAll("\"clamps\": \\[[^\\]]*\\]", "\"clamps\": []")).toString());
    assertThat(loose.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(loose.err()).contains("nothing holds it");

    assertThat(Call.of("resume", "sample:willowbank-100", "none.json").code())
        .isEqualTo(ExitCode.FILE);
    assertThat(Call.of("state", "sample:willowbank-100", "--after", "9999").code())
        .isEqualTo(ExitCode.WRONG_CALL);
  }
}
