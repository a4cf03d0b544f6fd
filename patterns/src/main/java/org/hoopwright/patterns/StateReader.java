package org.hoopwright.patterns;

import java.nio.file.Path;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.patterns.json.JsonNode;

/**
 * Reads files of half-done jobs, format {@value #FORMAT}: JSON in UTF-8 with comments, as layout
 * files are. All that is wrong is reported, each at its line and column.
 *
 * <p>Whether the state can be that of a frame is said by {@link
 * org.hoopwright.replay.Replay#check(org.hoopwright.bed.Bed, HalfDone)}. Thread-safe; time and
 * memory are linear in the file.
 */
public final class StateReader {

  /** The value of {@code format}. */
  public static final String FORMAT = "hoopwright/bench-state-1";

  private StateReader() {}

  /**
   * Reads the bytes of a file.
   *
   * @param fileName what the file is called in findings
   * @param bytes all its bytes
   * @throws UnreadableFile when they are too many or not UTF-8
   */
  public static StateResult read(String fileName, byte[] bytes) throws UnreadableFile {
    BoundFile<HalfDone> file =
        BoundFile.read(
            fileName, bytes, (Reading r, JsonNode root) -> new StateBinder(r).bind(root));
    return new StateResult(fileName, file.text(), file.value(), file.findings());
  }

  /**
   * Reads a file.
   *
   * @param file the file; its findings call it as the path is written
   * @throws UnreadableFile when it cannot be opened or read, is too big or not UTF-8
   */
  public static StateResult read(Path file) throws UnreadableFile {
    return read(file.toString(), FileText.bytes(file));
  }
}
