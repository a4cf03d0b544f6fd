package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import org.hoopwright.patterns.json.Shown;

/**
 * A file that a command writes: afterwards either all of it is there, or what was there before.
 *
 * <p>The text goes into a new file beside it first, which then takes its place in one move. So a
 * full disk or a lost process leaves no half file, and nobody reads one meanwhile.
 */
final class OutputFile {

  private static final int MOST_TRIES = 100;

  private OutputFile() {}

  /** A file that cannot be written; the message is one line with the file and the reason. */
  static final class Unwritable extends IOException {
    private static final long serialVersionUID = 1L;

    Unwritable(String file, String reason) {
      super(Shown.escaped(file) + " cannot be written: " + reason + ".");
    }
  }

  /**
   * Writes a text in UTF-8.
   *
   * @param file its name, as the caller gave it; a symbolic link is followed and stays one
   * @throws Unwritable when it cannot be written; what was there before is still there
   */
  static void write(String file, String text) throws Unwritable {
    byte[] bytes = text.getBytes(UTF_8);
    try {
      Path named = Path.of(file);
      Path path = Files.exists(named) ? named.toRealPath() : named.toAbsolutePath();
      if (Files.isDirectory(path)) {
        throw new Unwritable(file, "it is a folder");
      }
      if (Files.exists(path) && !Files.isRegularFile(path)) {
        Files.write(path, bytes); // a pipe or a device: nothing there could be lost
        return;
      }
      if (Files.exists(path) && !Files.isWritable(path)) {
        throw new Unwritable(file, "it is read-only"); // a move would not ask
      }
      replace(path, bytes);
    } catch (Unwritable e) {
      throw e;
    } catch (InvalidPathException e) {
      throw new Unwritable(file, "it is not a file name");
    } catch (NoSuchFileException e) {
      throw new Unwritable(file, "its folder does not exist");
    } catch (AccessDeniedException e) {
      throw new Unwritable(file, "access is denied");
    } catch (IOException e) {
      // Its message is the system's, in the system's language.
      throw new Unwritable(file, "the file system refuses it, or the disk is full");
    }
  }

  private static void replace(Path path, byte[] bytes) throws IOException {
    Path beside = newBeside(path);
    try {
      try (FileChannel out = FileChannel.open(beside, StandardOpenOption.WRITE)) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
          out.write(buffer);
        }
        out.force(true);
      }
      keepPermissions(path, beside);
      try {
        Files.move(beside, path, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** An empty new file in the same folder; one of the usual permissions, not a private one. */
  private static Path newBeside(Path path) throws IOException {
    for (int i = 1; ; i++) {
      Path beside = path.resolveSibling("." + path.getFileName() + "." + i + ".part");
      try {
        return Files.createFile(beside);
      } catch (FileAlreadyExistsException e) {
        if (i == MOST_TRIES) {
          throw e;
        }
      }
    }
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    if (Files.exists(from)) {
      PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
      PosixFileAttributeView now = Files.getFileAttributeView(to, PosixFileAttributeView.class);
      if (old != null && now != null) {
        now.setPermissions(old.readAttributes().permissions());
      }
    }
  }
}
