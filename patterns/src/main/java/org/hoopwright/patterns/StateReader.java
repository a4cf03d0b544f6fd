package org.hoopwright.patterns;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.patterns.json.JsonTree;

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
    if (bytes.length > LayoutReader.MAX_BYTES) {
      throw new UnreadableFile(fileName, "it is larger than such a file may be, 4 MB");
    }
    String text = FileText.decode(fileName, bytes);
    JsonTree tree = JsonTree.parse(text);
    List<Finding> findings = new ArrayList<>();
    tree.flaw().ifPresent(findings::add);
    Reading reading = new Reading();
    Optional<HalfDone> state = tree.root().flatMap(root -> new StateBinder(reading).bind(root));
    findings.addAll(reading.findings());
    return new StateResult(
        fileName,
        text,
        Findings.hasErrors(findings) ? Optional.empty() : state,
        Findings.sorted(findings));
  }

  /**
   * Reads a file.
   *
   * @param file the file; its findings call it as the path is written
   * @throws UnreadableFile when it cannot be opened or read, is too big or not UTF-8
   */
  public static StateResult read(Path file) throws UnreadableFile {
    String name = file.toString();
    try (InputStream in = Files.newInputStream(file)) {
      return read(name, in.readNBytes(LayoutReader.MAX_BYTES + 1));
    } catch (UnreadableFile e) {
      throw e;
    } catch (NoSuchFileException e) {
      throw new UnreadableFile(name, "there is no such file");
    } catch (IOException | SecurityException e) {
      throw new UnreadableFile(name, "it cannot be opened");
    }
  }
}
