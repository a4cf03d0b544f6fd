package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFileTest {

  private static final String SMALL = "sample:willowbank-teaching";

  @TempDir Path folder;

  private Stream<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList().stream();
    }
  }

  @Test
  void replacesWhatWasThereAndLeavesNothingBeside() throws IOException {
    Path file = folder.resolve("a.svg");
    Files.writeString(file, "old and much longer than what comes");
    Files.createFile(folder.resolve(".a.svg.1.part")); // left by a call that was ended
    OutputFile.write(file.toString(), "new");

    assertThat(file).hasContent("new");
    assertThat(names()).containsExactlyInAnyOrder("a.svg", ".a.svg.1.part");
  }

  @Test
  void keepsPermissionsAndFollowsLinks() throws IOException {
    Assumptions.assumeTrue(
        FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
    Path file = folder.resolve("a.svg");
    Files.writeString(file, "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
    Path link = Files.createSymbolicLink(folder.resolve("link.svg"), file);
    OutputFile.write(link.toString(), "new");

    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(file).hasContent("new");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw-r--");
  }

  @Test
  void whatCannotBeWrittenIsToldAndNothingIsLost() throws IOException {
    Path notAFolder = Files.writeString(folder.resolve("file"), "kept");
    for (String[] c :
        new String[][] {
          {folder.toString(), "it is a folder"},
          {folder.resolve("none/a.svg").toString(), "its folder does not exist"},
          {notAFolder.resolve("a.svg").toString(), "cannot be written"},
          {"a\u0000b", "it is not a file name"},
        }) {
      Call call = Call.of("draw", SMALL, "--stage=layout", "-o", c[0]);
      assertThat(call.code()).isEqualTo(ExitCode.FILE);
      assertThat(call.out()).isEmpty();
      assertThat(call.err()).startsWith("hoopwright draw: ").contains(c[1]);
      assertThat(call.err().lines()).hasSize(1);
    }
    assertThat(notAFolder).hasContent("kept");
    assertThat(names()).containsExactly("file");
  }

  @Test
  void theLayoutIsNeverOverwritten() throws IOException {
    String text = Samples.text("willowbank-teaching");
    Path layout = Files.writeString(folder.resolve("frame.json"), text);
    Path same = folder.resolve(".").resolve("frame.json");
    for (String command : new String[] {"draw", "sheet"}) {
      Call call = Call.of(command, layout.toString(), "-o", same.toString());
      assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
      assertThat(call.err()).contains("must not be the layout file itself");
    }
    assertThat(layout).hasContent(text);
  }

  @Test
  void writesToADeviceAsItIs() throws IOException {
    Path device = Path.of("/dev/null");
    Assumptions.assumeTrue(Files.exists(device));
    OutputFile.write(device.toString(), "gone");
    assertThat(Files.isRegularFile(device)).isFalse();
  }

  @Test
  void aReadOnlyFileStays() throws IOException {
    Path file = Files.writeString(folder.resolve("a.svg"), "old");
    Assumptions.assumeTrue(file.toFile().setReadOnly());
    Assumptions.assumeFalse(Files.isWritable(file), "the super-user may write everything");
    assertThatThrownBy(() -> OutputFile.write(file.toString(), "new"))
        .hasMessageContaining("it is read-only");
    assertThat(file).hasContent("old");
  }
}
