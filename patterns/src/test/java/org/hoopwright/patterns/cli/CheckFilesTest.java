package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hoopwright.patterns.Json;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Many files, every format, explanations, colours and mending. */
class CheckFilesTest {

  private static final String GOOD = Samples.text("willowbank-teaching");
  private static final String BAD = GOOD.replace("\"2T\"]", "\"9T\"]");

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  @BeforeEach
  void files() throws IOException {
    Files.createDirectories(folder.resolve("b/deep"));
    Files.writeString(folder.resolve("a.json"), GOOD);
    Files.writeString(folder.resolve("b/bad.json"), BAD);
    Files.writeString(folder.resolve("b/deep/c.json"), GOOD);
    Files.writeString(folder.resolve("b/notes.txt"), "no layout");
  }

  private int run(boolean terminal, String... args) {
    ByteArrayOutputStream o = new ByteArrayOutputStream();
    ByteArrayOutputStream e = new ByteArrayOutputStream();
    int code =
        CommandRunner.run(new Streams(new ByteArrayInputStream(new byte[0]), o, e, terminal), args);
    out = o.toString(UTF_8);
    err = e.toString(UTF_8);
    return code;
  }

  private int check(String... args) {
    String[] words = new String[args.length + 1];
    words[0] = "check";
    System.arraycopy(args, 0, words, 1, args.length);
    return run(false, words);
  }

  @Test
  void aFolderStandsForEveryLayoutInIt() {
    assertThat(check(folder.toString())).isEqualTo(ExitCode.FINDINGS);
    assertThat(out).contains("bad.json:").contains("[unknown-hole]");
    assertThat(err).contains("3 files: 1 error,");
  }

  @Test
  void aGlobCrossesFoldersWithTwoStars() {
    assertThat(check(folder + "/*.json")).isEqualTo(ExitCode.DONE);
    assertThat(err).contains("1 file:");
    assertThat(check(folder + "/**.json")).isEqualTo(ExitCode.FINDINGS);
    assertThat(err).contains("3 files:");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/b/deep/none", "/*.yaml", "/["})
  void whatNamesNoFileIsAFailureInOneLine(String word) {
    assertThat(check(folder + word)).isEqualTo(ExitCode.FILE);
    assertThat(err.lines().filter(l -> l.startsWith("hoopwright check: "))).hasSize(1);
    assertThat(err).doesNotContain("Exception");
  }

  @Test
  void oneUnreadableFileHidesNoFindings() {
    assertThat(check(folder + "/none.json", folder + "/b/bad.json")).isEqualTo(ExitCode.FILE);
    assertThat(out).contains("[unknown-hole]");
  }

  @Test
  void withoutAFileTheCallIsWrong() {
    assertThat(check()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(err).contains("FILE is missing");
  }

  @Test
  void explainsACode() {
    assertThat(check("--explain", "unknown-hole")).isEqualTo(ExitCode.DONE);
    assertThat(out).contains("unknown-hole (error)", "Wrong:", "Right:");
    assertThat(check("--explain", "unknown-whole")).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(err).contains("unknown-whole");
  }

  @Test
  void writesSarifThatACodeScanningPageReads() {
    assertThat(check("--format", "sarif", folder + "/b/bad.json")).isEqualTo(ExitCode.FINDINGS);
    Json log = Json.parse(out);
    assertThat(log.at("version").text()).isEqualTo("2.1.0");
    Json run = log.at("runs", 0);
    Json result = run.at("results", 0);
    assertThat(result.at("ruleId").text()).isEqualTo("unknown-hole");
    assertThat(result.at("level").text()).isEqualTo("error");
    int index = (int) result.at("ruleIndex").number();
    assertThat(run.at("tool", "driver", "rules", index, "id").text()).isEqualTo("unknown-hole");
    Json place = result.at("locations", 0, "physicalLocation");
    assertThat(place.at("artifactLocation", "uri").text()).endsWith("/b/bad.json");
    assertThat(place.at("region", "startLine").number()).isEqualTo(9);
    assertThat(run.at("invocations", 0, "exitCode").number()).isEqualTo(1);
  }

  @Test
  void writesWorkflowCommands() {
    check("--format", "github", folder + "/b/bad.json");
    assertThat(out).startsWith("::error file=").contains(",line=9,", ",title=unknown-hole::");
    assertThat(out.lines()).allMatch(l -> l.startsWith("::"));
  }

  @Test
  void coloursOnATerminalOnlyAndNeverWithoutWords() {
    String file = folder + "/b/bad.json";
    run(false, "check", file);
    String plain = out;
    assertThat(plain).doesNotContain("\u001b");
    run(true, "check", file);
    assertThat(out).contains("\u001b[1;31merror:\u001b[0m ");
    assertThat(out.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain);
    run(true, "check", "--color", "never", file);
    assertThat(out).isEqualTo(plain);
    run(false, "check", "--color", "always", file);
    assertThat(out).contains("\u001b[");
    run(true, "check", "--format", "json", file);
    assertThat(out).doesNotContain("\u001b");
  }

  @Test
  void saysWhichRulesWereNotAsked() {
    check(folder + "/b/bad.json");
    assertThat(err).contains("not asked, because of unknown-hole.");
    check("--format", "json", folder + "/b/bad.json");
    assertThat(Json.parse(out).at("files", 0, "silent", 0, "because", 0).text())
        .isEqualTo("unknown-hole");
  }

  @Test
  void mendsWhatIsMechanicalAndKeepsComments() throws IOException {
    Path file = folder.resolve("a.json");
    String broken =
        GOOD.replace("\"crosses\":", "\"croses\":")
            .replace("[\"1H\", \"1T\", \"2T\"]", "[\"1h\", /* here */ \"1T\", \"2T\", \"1T\"]")
            .replace("\"head\": 4", "\"head\": \"4\"");
    Files.writeString(file, broken);

    assertThat(check("--fix-dry-run", file.toString())).isEqualTo(ExitCode.FINDINGS);
    assertThat(Files.readString(file)).isEqualTo(broken);
    assertThat(err).contains("--- ", "+++ ", "-    \"head\": \"4\",", "+    \"head\": 4,");

    assertThat(check("--fix", file.toString())).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(file))
        .isEqualTo(GOOD.replace("[\"1H\", \"1T\", \"2T\"]", "[\"1H\", /* here */ \"1T\", \"2T\"]"));
    assertThat(err).contains("mended 4.");
    assertThat(check("--fix", file.toString())).isEqualTo(ExitCode.DONE);
    assertThat(err).doesNotContain("mended");
  }

  @Test
  void refusesToTakeACommentAway() throws IOException {
    Path file = folder.resolve("a.json");
    String broken = GOOD.replace("\"2T\"]", "\"2T\", // the inner one\n \"1T\"]");
    Files.writeString(file, broken);

    check("--fix", file.toString());

    assertThat(Files.readString(file)).isEqualTo(broken);
    assertThat(err).contains("not mended, a comment would be lost", "[hole-twice]");
  }

  @Test
  void mendsNeitherStandardInputNorSamples() {
    assertThat(check("--fix", "sample:willowbank-100")).isEqualTo(ExitCode.DONE);
    assertThat(err).doesNotContain("mended 1");
  }
}
