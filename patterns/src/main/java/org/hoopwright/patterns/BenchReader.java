package org.hoopwright.patterns;

import java.nio.file.Path;
import org.hoopwright.patterns.json.JsonNode;

/**
 * Reads bench files, format {@value #FORMAT}: JSON in UTF-8 with comments, as layout files are. All
 * that is wrong is reported, each at its line and column. Thread-safe; time and memory are linear
 * in the file.
 */
public final class BenchReader {

  /** The value of {@code format}. */
  public static final String FORMAT = "hoopwright/bench-1";

  private BenchReader() {}

  /**
   * Reads the bytes of a file.
   *
   * @param fileName what the file is called in findings
   * @param bytes all its bytes
   * @throws UnreadableFile when they are too many or not UTF-8
   */
  public static BenchResult read(String fileName, byte[] bytes) throws UnreadableFile {
    BoundFile<Workbench> file =
        BoundFile.read(
            fileName, bytes, (Reading r, JsonNode root) -> new BenchBinder(r).bind(root));
    return new BenchResult(fileName, file.text(), file.value(), file.findings());
  }

  /**
   * Reads a file.
   *
   * @param file the file; its findings call it as the path is written
   * @throws UnreadableFile when it cannot be opened or read, is too big or not UTF-8
   */
  public static BenchResult read(Path file) throws UnreadableFile {
    return read(file.toString(), FileText.bytes(file));
  }
}
