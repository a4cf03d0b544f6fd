package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.hoopwright.testing.Draw;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandRunnerTest {

  @Test
  void tellsItsVersion() {
    Call call = Call.of("--version");

    assertThat(call.code()).isZero();
    assertThat(call.out()).matches("hoopwright \\d+\\.\\d+\\.\\d+\\S*\\R");
    assertThat(call.err()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "check", "plan", "draw", "sheet", "new", "samples"})
  void helpsWithEveryCommandAndListsTheExitCodes(String command) {
    Call call = command.isEmpty() ? Call.of("--help") : Call.of(command, "--help");

    assertThat(call.code()).isZero();
    assertThat(call.err()).isEmpty();
    assertThat(call.out())
        .startsWith(("Usage: hoopwright " + command).strip())
        .contains("Exit codes:", "  0    done and clean", "  70   a fault of this program");
    assertThat(call.out().lines()).allMatch(l -> l.length() <= 100);
    assertThat(call.out()).doesNotContain("\u001b");
  }

  @Test
  void callWithoutWordsIsWrong() {
    Call call = Call.of();

    assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(call.out()).isEmpty();
    assertThat(call.err()).contains("a command is missing", "Usage: hoopwright");
  }

  @Property
  void unknownWordIsAWrongCall(
      @ForAll @AlphaChars @StringLength(min = 1, max = 12) String word, @ForAll long seed) {
    Call call = Call.of("-".repeat(Draw.from(seed).between(3, 5)) + word);

    assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(call.out()).isEmpty();
    assertThat(call.err()).contains(word).doesNotContain("\tat ");
  }

  @Test
  void wordsThatWouldPaintTheTerminalAreEscaped() {
    for (String word : new String[] {"\u001b[2J", "\u202e", "a\u0007"}) {
      for (Call call :
          new Call[] {
            Call.of(word),
            Call.of("--x" + word),
            Call.of("check", word),
            Call.of("samples", word),
            Call.of("plan", "sample:willowbank-100", "--tension", word)
          }) {
        assertThat(call.code()).isIn(ExitCode.WRONG_CALL, ExitCode.FILE);
        assertThat(call.err()).doesNotContain("\u001b", "\u202e", "\u0007");
      }
    }
  }

  @Test
  void readsNoWordsFromFiles() {
    assertThat(Call.of("@pom.xml").code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("check", "@pom.xml").code()).isEqualTo(ExitCode.FILE);
  }

  @Test
  void faultsOfOursAreOneLineWithoutStackTrace() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() {
            throw new IllegalStateException("made for this test\nsecond line");
          }

          @Override
          public int read(byte[] bytes, int from, int length) {
            return read();
          }
        };
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();

    int code = CommandRunner.run(new Streams(broken, out, err), "check", "-");

    assertThat(code).isEqualTo(ExitCode.FAULT);
    assertThat(out.toString(UTF_8)).isEmpty();
    assertThat(err.toString(UTF_8))
        .isEqualTo(
            "hoopwright: this is a fault of the program, please report it:"
                + " IllegalStateException made for this test\n");
  }

  @Test
  void readerThatHasGoneIsNoFailure() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = CommandRunner.run(streams(failing("Broken pipe"), err), "samples");

    assertThat(code).isZero();
    assertThat(err.toString(UTF_8)).isEmpty();
  }

  @Test
  void fullDiskIsAFileThatCannotBeWritten() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = CommandRunner.run(streams(failing("No space left on device"), err), "samples");

    assertThat(code).isEqualTo(ExitCode.FILE);
    assertThat(err.toString(UTF_8)).isEqualTo("hoopwright: standard output cannot be written.\n");
  }

  private static Streams streams(OutputStream out, OutputStream err) {
    return new Streams(new ByteArrayInputStream(new byte[0]), out, err);
  }

  private static OutputStream failing(String message) {
    return new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException(message);
      }
    };
  }

  @Test
  void startsWithALayoutThatChecksCleanAndPlans() {
    Call fresh = Call.of("new");

    assertThat(fresh.code()).isZero();
    assertThat(fresh.err()).isEmpty();
    assertThat(fresh.out()).startsWith("// ").contains("\"format\": \"hoopwright/layout-1\"");
    assertThat(Call.withInput(fresh.out(), "check", "--fail-on", "warning", "-"))
        .isEqualTo(new Call(0, "", "1 file: 0 errors, 0 warnings, 0 notes.\n"));
    Call plan = Call.withInput(fresh.out(), "plan", "-");
    assertThat(plan.code()).isZero();
    assertThat(plan.out()).contains("STRINGING PLAN: My frame");
  }

  @Test
  void listsSamplesAndPrintsEachOfThem() {
    Call list = Call.of("samples");

    assertThat(list.code()).isZero();
    assertThat(list.out().lines()).hasSizeGreaterThanOrEqualTo(9);
    for (String line : list.out().lines().toList()) {
      String name = line.substring(0, line.indexOf(' '));
      Call text = Call.of("samples", name);
      assertThat(text.code()).isZero();
      assertThat(Call.withInput(text.out(), "check", "-").code()).isZero();
    }
  }

  @Test
  void knowsWhichSamplesThereAre() {
    Call call = Call.of("samples", "nope");

    assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(call.err()).contains("\"nope\"", "willowbank-100");
  }
}
