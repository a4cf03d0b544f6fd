package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hoopwright.patterns.LayoutReader;
import org.hoopwright.patterns.Samples;
import org.hoopwright.patterns.json.JsonTree;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files that nobody means well with, through the command that reads them: each ends in findings or
 * one clear line and a documented exit code, never in a stack trace.
 */
@Timeout(60)
class HostileFilesTest {

  private static final String GOOD = Samples.text("willowbank-teaching");

  /** Texts up to this many characters are tried in every format. */
  private static final int SMALL = 10_000;

  private static final FindingsFormat[] NONE = {};

  @TempDir private Path folder;

  private static Call check(byte[] input, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        CommandRunner.run(
            new Streams(new ByteArrayInputStream(input), out, err),
            Stream.concat(Stream.of("check"), Arrays.stream(args)).toArray(String[]::new));
    return new Call(code, out.toString(UTF_8), err.toString(UTF_8));
  }

  private static void isClear(Call call) {
    assertThat(call.code())
        .as("%s", call)
        .isIn(ExitCode.DONE, ExitCode.FINDINGS, ExitCode.FILE, ExitCode.GAVE_UP);
    assertThat(call.out() + call.err())
        .doesNotContain("Exception", "\tat ", "jackson", "\0", "\u001b");
  }

  /** A failure in one line; the summary follows it. */
  private static void isRefused(Call call, String why) {
    isClear(call);
    assertThat(call.code()).isEqualTo(ExitCode.FILE);
    assertThat(call.out()).isEmpty();
    assertThat(call.err().lines().toList()).hasSize(2).first().asString().contains(why);
  }

  private static byte[] marked(int... mark) {
    byte[] bytes = new byte[mark.length];
    for (int i = 0; i < mark.length; i++) {
      bytes[i] = (byte) mark[i];
    }
    return bytes;
  }

  private static byte[] join(byte[] first, byte[] second) {
    byte[] all = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, all, first.length, second.length);
    return all;
  }

  static Stream<Arguments> wrongEncodings() {
    Charset utf32be = Charset.forName("UTF-32BE");
    Charset utf32le = Charset.forName("UTF-32LE");
    String wide = "UTF-16 or UTF-32";
    return Stream.of(
        Arguments.of("UTF-16BE", GOOD.getBytes(UTF_16BE), wide),
        Arguments.of("UTF-16LE", GOOD.getBytes(UTF_16LE), wide),
        Arguments.of("UTF-16BE marked", join(marked(0xFE, 0xFF), GOOD.getBytes(UTF_16BE)), wide),
        Arguments.of("UTF-16LE marked", join(marked(0xFF, 0xFE), GOOD.getBytes(UTF_16LE)), wide),
        Arguments.of("UTF-32BE", GOOD.getBytes(utf32be), wide),
        Arguments.of("UTF-32LE", GOOD.getBytes(utf32le), wide),
        Arguments.of(
            "UTF-32BE marked", join(marked(0, 0, 0xFE, 0xFF), GOOD.getBytes(utf32be)), wide),
        Arguments.of(
            "UTF-32LE marked", join(marked(0xFF, 0xFE, 0, 0), GOOD.getBytes(utf32le)), wide),
        Arguments.of(
            "Latin-1",
            GOOD.replace("board", "br\u00e9").getBytes(ISO_8859_1),
            "(0xe9) is not UTF-8"),
        Arguments.of("zeros", new byte[1000], wide),
        Arguments.of("a lone continuation", marked('{', 0x80, '}'), "byte 2 (0x80) is not UTF-8"),
        Arguments.of("an overlong slash", marked('"', 0xC0, 0xAF, '"'), "byte 2 (0xc0)"),
        Arguments.of("half a surrogate pair", marked('"', 0xED, 0xA0, 0x80, '"'), "byte 2 (0xed)"),
        Arguments.of("beyond Unicode", marked('"', 0xF5, 0x80, 0x80, 0x80, '"'), "byte 2 (0xf5)"),
        Arguments.of("cut in a character", marked('"', 0xE2, 0x82), "byte 2 (0xe2)"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrongEncodings")
  void whatIsNotUtf8IsRefused(String what, byte[] bytes, String why) {
    isRefused(check(bytes, "-"), why);
  }

  @Test
  void aByteOrderMarkOfUtf8IsPassedOver() {
    byte[] marked = join(marked(0xEF, 0xBB, 0xBF), GOOD.getBytes(UTF_8));

    assertThat(check(marked, "-")).isEqualTo(check(GOOD.getBytes(UTF_8), "-"));
  }

  /** Cut off after every byte, also within a character. */
  @Test
  void aFileCutOffAnywhereIsToldAsThat() {
    String text =
        """
        {"format":"hoopwright/layout-1","name":"W\u00efllow \ud83c\udfbe",
        "hoop":{"shape":"superellipse","length":120,"width":100},
        "holes":{"head":4,"throat":4,"tieOff":["1H","1T","2T"]},// knots
        "mains":{"count":4,"start":"throat","skip":[]},"crosses":{"count":4}}""";
    byte[] bytes = text.getBytes(UTF_8);
    int end = bytes.length;
    for (int length = 0; length < end; length++) {
      Call call = check(Arrays.copyOf(bytes, length), "-");
      isClear(call);
      assertThat(call.code()).as("after %s bytes", length).isNotEqualTo(ExitCode.DONE);
      if (call.code() == ExitCode.FINDINGS) {
        assertThat(call.out()).containsAnyOf("[json-syntax]", "[json-empty]");
      }
    }
    assertThat(check(Arrays.copyOf(bytes, end), "-").code()).isEqualTo(ExitCode.DONE);
  }

  private static String entries(int count, String entry) {
    return IntStream.range(0, count).mapToObj(i -> entry).collect(Collectors.joining(","));
  }

  static Stream<Arguments> oddTexts() {
    return Stream.of(
        Arguments.of("deep lists", "[".repeat(100_000), "1:33: error: Objects and lists stand"),
        Arguments.of("deep objects", "{\"a\":".repeat(100_000), "more than 32 deep"),
        Arguments.of(
            "a huge number",
            GOOD.replace("\"head\": 4", "\"head\": 1e999999999"),
            "[number-range]"),
        Arguments.of(
            "400 digits",
            GOOD.replace("\"head\": 4", "\"head\": " + "7".repeat(400)),
            "[json-limit]"),
        Arguments.of("NaN", GOOD.replace("\"head\": 4", "\"head\": NaN"), "[json-syntax]"),
        Arguments.of(
            "infinity", GOOD.replace("\"head\": 4", "\"head\": -Infinity"), "[json-syntax]"),
        Arguments.of(
            "a member twice",
            GOOD.replace("\"head\": 4", "\"head\": 4, \"head\": 4"),
            "[duplicate-member]"),
        Arguments.of(
            "a million holes",
            GOOD.replace("\"head\": 4", "\"head\": 1000000"),
            "(1000000) is not from 1 to 500"),
        Arguments.of(
            "a million entries",
            GOOD.replace("[\"1H\",", "[" + entries(1_000_000, "1") + ","),
            "More than 2000 entries"),
        Arguments.of(
            "as many names",
            GOOD.replace("[\"1H\",", "[" + entries(190_000, "\"1H\"") + ","),
            "More than 2000 entries"),
        Arguments.of("a NUL", GOOD.replace("board", "bo\0ard"), "U+0000"),
        Arguments.of("an escape to the terminal", GOOD.replace("board", "\u001b[2J"), "U+001B"),
        Arguments.of("nothing", "", "The file holds nothing."),
        Arguments.of("line ends", "\r\n".repeat(1_900_000), "The file holds nothing."),
        Arguments.of("a comment not ended", "/*" + "*".repeat(3_900_000), "[json-syntax]"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("oddTexts")
  void everyOddTextEndsInFindings(String what, String text, String found) {
    Call call = check(text.getBytes(UTF_8), "-");
    isClear(call);
    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).contains(found);
    for (FindingsFormat format : text.length() < SMALL ? FindingsFormat.values() : NONE) {
      Call other = check(text.getBytes(UTF_8), "--format", format.name(), "-");
      isClear(other);
      assertThat(other.code()).isEqualTo(ExitCode.FINDINGS);
    }
  }

  @Test
  void limitsAreWhatTheDocumentsSay() throws IOException {
    String doc =
        Files.readString(Path.of("../docs/layout-format.md"), UTF_8).replaceAll("\\s+", " ");
    assertThat(LayoutReader.MAX_BYTES).isEqualTo(4_000_000);
    assertThat(JsonTree.MAX_DEPTH).isEqualTo(32);
    assertThat(JsonTree.MAX_TOKENS).isEqualTo(200_000);
    assertThat(JsonTree.MAX_ENTRIES).isEqualTo(2_000);
    assertThat(doc)
        .contains(
            "| a file | 4 000 000 bytes |",
            "| objects and lists in each other | 32 |",
            "| names, values and brackets | 200 000 |",
            "| entries of a list, members of an object | 2 000 |",
            "| a number | 64 characters |",
            "| a text | 10 000 characters |",
            "| a member's name | 200 characters |");
  }

  /** Blanks without end, as a pipe may give them: no more is read than may be. */
  private static final class Blanks extends InputStream {
    long read;

    @Override
    public int read() {
      read++;
      return ' ';
    }

    @Override
    public int read(byte[] bytes, int from, int length) {
      Arrays.fill(bytes, from, from + length, (byte) ' ');
      read += length;
      return length;
    }
  }

  @Test
  void ofEndlessInputNoMoreIsReadThanMayBe() {
    Blanks blanks = new Blanks();
    ByteArrayOutputStream err = new ByteArrayOutputStream();

    int code =
        CommandRunner.run(new Streams(blanks, OutputStream.nullOutputStream(), err), "check", "-");

    assertThat(code).isEqualTo(ExitCode.FILE);
    assertThat(err.toString(UTF_8)).startsWith("hoopwright check: - cannot be read: it is larger");
    assertThat(blanks.read).isEqualTo(LayoutReader.MAX_BYTES + 1L);
  }

  private static void fill(Path file, byte[] piece, long bytes) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      for (long written = 0; written < bytes; written += piece.length) {
        out.write(piece);
      }
    }
  }

  /** With a heap smaller than the file. */
  @Test
  void aHundredMegabytesOfBlanksAreRefusedWithLittleMemory() throws Exception {
    Path blanks = folder.resolve("blanks.json");
    byte[] piece = new byte[1 << 20];
    Arrays.fill(piece, (byte) ' ');
    fill(blanks, piece, 100_000_000);

    isRefused(
        ChildJvm.run(folder, blanks, ChildJvm.command(64, "check", blanks.toString())),
        "it is larger than a layout file may be, 4 MB");
    isRefused(
        ChildJvm.run(folder, blanks, ChildJvm.command(64, "check", "-")),
        "it is larger than a layout file may be, 4 MB");
  }

  /** The memory that the documents name is enough. */
  @Test
  void aFileAtItsLimitsTakesSixtyFourMegabytes() throws Exception {
    String text =
        GOOD.replace("[\"1H\",", "[" + entries(190_000, "\"1h\"") + ",")
            .replace("Willowbank", "W".repeat(2_000_000));
    Path file = Files.writeString(folder.resolve("limits.json"), text);

    Call call = ChildJvm.run(folder, file, ChildJvm.command(64, "check", file.toString()));

    isClear(call);
    assertThat(call.code()).as(call.err()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).contains("[json-limit]");
  }

  /** Everything that may be wrong is wrong, 2000 times. */
  private static String worst() {
    String names =
        IntStream.range(0, JsonTree.MAX_ENTRIES)
            .mapToObj(
                i ->
                    "\""
                        + (i < 1000 ? "L" : "R")
                        + (i % 500 + 1)
                        + (i % 1000 < 500 ? "H\"" : "T\""))
            .collect(Collectors.joining(","));
    String list = "[" + names + "]";
    String numbers = "[" + entries(JsonTree.MAX_ENTRIES, "-1") + "]";
    String ends = "{\"head\":" + numbers + ",\"throat\":" + numbers + "}";
    String sides = "{\"left\":" + ends + ",\"right\":" + ends + "}";
    return """
        {"format":"hoopwright/layout-1","name":"Willowbank board",
        "hoop":{"shape":"superellipse","length":120,"width":100},
        "holes":{"head":4,"throat":4,"tieOff":%s,"shared":%s,"blocked":%s,
        "at":{%s},"bore":{%s},"noRun":[%s]},
        "mains":{"count":4,"skip":[%s],"offsets":%s},
        "crosses":{"count":4,"skip":[%s],"offsets":{"left":%s,"right":%s}}}
        """
        .formatted(
            list,
            list,
            list,
            names.replace(",", ":[1e5,1e5],") + ":[1e5,1e5]",
            names.replace(",", ":90,") + ":90",
            entries(JsonTree.MAX_ENTRIES, "[\"99T\",\"99T\"]"),
            entries(JsonTree.MAX_ENTRIES, "\"99T\""),
            sides,
            entries(JsonTree.MAX_ENTRIES, "\"99T\""),
            numbers,
            numbers);
  }

  @Test
  void theMostFindingsTakeTwoHundredAndFiftySixMegabytes() throws Exception {
    Path file = Files.writeString(folder.resolve("worst.json"), worst());

    Call call =
        ChildJvm.run(
            folder, file, ChildJvm.command(256, "check", "--format", "sarif", file.toString()));

    isClear(call);
    assertThat(call.code()).as(call.err()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out().length()).isGreaterThan(20_000_000);
  }

  @Test
  void tooLittleMemoryIsALimitAndNoFault() throws Exception {
    Path file = Files.writeString(folder.resolve("worst.json"), worst());

    Call call = ChildJvm.run(folder, file, ChildJvm.command(24, "check", file.toString()));

    assertThat(call)
        .isEqualTo(
            new Call(
                ExitCode.GAVE_UP,
                "",
                "hoopwright: there is not enough memory for this call; name fewer files, or give"
                    + " Java more with -Xmx.\n"));
  }

  /** A reader that goes away, as {@code head} does, after the first bytes. */
  @Test
  void aBrokenPipeIsNoFailure() throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("many.json"),
            GOOD.replace("[\"1H\",", "[" + entries(1_900, "\"1h\"") + ","));
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(ChildJvm.command(256, "check", file.toString()))
            .redirectError(err.toFile())
            .start();
    try (InputStream out = process.getInputStream()) {
      assertThat(out.readNBytes(10)).hasSize(10);
    }
    assertThat(process.waitFor(50, TimeUnit.SECONDS)).isTrue();

    assertThat(process.exitValue()).isEqualTo(ExitCode.FINDINGS);
    assertThat(Files.readString(err, UTF_8))
        .startsWith(file + ": ")
        .doesNotContain("Exception", "\tat ", "cannot be written");
  }

  @Test
  void aFolderNamedAsAFileHoldsNoLayout() {
    isRefused(check(new byte[0], folder.toString()), "it holds no .json file");
  }

  @Test
  void aFolderWhoseNameEndsInJsonIsNoLayout() throws IOException {
    Files.createDirectories(folder.resolve("frames/inner.json"));
    Files.writeString(folder.resolve("frames/a.json"), GOOD);

    Call call = check(new byte[0], folder.resolve("frames").toString());

    isClear(call);
    assertThat(call.err()).contains("1 file: 0 errors");
  }

  @Test
  void aFileThatMayNotBeReadIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("secret.json"), GOOD);
    Assumptions.assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    Assumptions.assumeFalse(Files.isReadable(file), "the super-user reads everything");

    isRefused(check(new byte[0], file.toString()), "access is denied");
  }

  @Test
  void linksThatGoInCirclesAreNotFollowed() throws IOException {
    Files.createDirectories(folder.resolve("frames"));
    Files.writeString(folder.resolve("frames/a.json"), GOOD);
    Files.createSymbolicLink(folder.resolve("frames/up"), folder);
    Files.createSymbolicLink(folder.resolve("frames/self.json"), Path.of("self.json"));
    assertThat(Files.exists(folder.resolve("frames/self.json"), LinkOption.NOFOLLOW_LINKS))
        .isTrue();

    Call all = check(new byte[0], folder.toString());
    isClear(all);
    assertThat(all.err()).contains("1 file: 0 errors");
    isRefused(check(new byte[0], folder.resolve("frames/self.json").toString()), "cannot be");
  }

  /** A file that is there when the folder is looked through, and gone when it is read. */
  @Test
  void aFileThatVanishesIsToldAndTheOthersAreChecked() throws IOException {
    Path gone = folder.resolve("gone.json");
    Files.writeString(folder.resolve("a.json"), GOOD);

    Call call = check(new byte[0], gone.toString(), folder.toString());

    isClear(call);
    assertThat(call.code()).isEqualTo(ExitCode.FILE);
    assertThat(call.err())
        .contains("gone.json cannot be read: there is no such file.", "1 file: 0");
    // A link whose file has gone is the same; in a folder it is no file at all.
    Files.createSymbolicLink(gone, folder.resolve("nowhere"));
    isRefused(check(new byte[0], gone.toString()), "there is no such file");
    assertThat(check(new byte[0], folder.toString()).code()).isEqualTo(ExitCode.DONE);
  }

  /**
   * A pipe with a name, of which nobody writes the other end, must not be waited for in a folder.
   */
  @Test
  void aPipeInAFolderIsPassedBy() throws Exception {
    Files.writeString(folder.resolve("a.json"), GOOD);
    Path pipe = folder.resolve("pipe.json");
    Process make;
    try {
      make = new ProcessBuilder("mkfifo", pipe.toString()).start();
    } catch (IOException e) {
      Assumptions.abort("there is no mkfifo here");
      return;
    }
    Assumptions.assumeTrue(make.waitFor() == 0);

    Call call = check(new byte[0], folder.toString());

    isClear(call);
    assertThat(call.err()).contains("1 file: 0 errors");
  }

  @Test
  void aPipeNamedAsAFileIsReadLikeStandardInput() throws Exception {
    Path pipe = folder.resolve("pipe.json");
    Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/sh")));
    List<String> command = ChildJvm.command(64, "check", pipe.toString());
    String script = "mkfifo \"$0\" && { printf '[]' > \"$0\" & \"$@\"; }";
    command.addAll(0, List.of("/bin/sh", "-c", script, pipe.toString()));

    Call call = ChildJvm.run(folder, Path.of("/dev/null"), command);

    assertThat(call.code()).as(call.err()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).contains("A layout must be an object, not a list.");
  }

  @Test
  void manyThingsToMendTakeLittleTime() throws IOException {
    String text = GOOD.replace("[\"1H\",", "[" + entries(250, "\"1h\"") + ",");
    Path file = Files.writeString(folder.resolve("a.json"), text);

    Call call = check(new byte[0], "--fix-dry-run", file.toString());

    isClear(call);
    assertThat(call.err()).contains("+++ ");
    assertThat(Files.readString(file)).isEqualTo(text);
  }
}
