package org.hoopwright.patterns;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.Draft;
import org.hoopwright.patterns.json.JsonTree;

/**
 * Reads layout files, format {@value #FORMAT}: JSON in UTF-8, with {@code //} and {@code /*
 * *}{@code /} comments, one byte order mark allowed.
 *
 * <p>The members, in canonical order; those with * are needed:
 *
 * <pre>{@code
 * $schema                any value: for editors, not read
 * format*                "hoopwright/layout-1"
 * name*                  a text, not blank, without control characters
 * game                   "tennis" "badminton" "squash" "racquetball" "other" (default)
 * units                  "mm" (default) "in": the unit of every length in the file
 * frame                  length* width*: numbers
 * hoop*                  shape* "superellipse": length* width* exponent (2)
 *                        shape* "points": points*, a list of pairs [x, y]
 * holes*                 head* throat*: a whole number, or left* right*
 *                        tieOff shared blocked: lists of hole names
 *                        bore: hole names with whole numbers
 *                        at: hole names with pairs [x, y]
 *                        noRun: a list of pairs of hole names
 * mains*                 count*: a whole number
 *                        start "head" "throat" "either" (default)
 *                        skip: a list of hole names; absent: to be inferred
 *                        offsets: a list of numbers, or head* throat* lists,
 *                            or left* right*, each of them one of these
 *                        shortSide "left" "right" "either" (default)
 * crosses*               count*: a whole number
 *                        skip: a list of hole names
 *                        offsets: a list of numbers, or left* right* lists
 *                        first last: a hole name without side, or a list of two
 *                        direction "head-to-throat" "throat-to-head" "either" (default)
 *                        startSide "left" "right" "either" (default)
 * pieces                 1, 2 or "either" (default)
 * aroundTheWorld         true (default) or false
 * headZone               a hole name without side, or a list of two
 * tension                unit* "N" "lbf" "kgf", min* max*: numbers
 * }</pre>
 *
 * <p>All that is wrong is reported, each finding at its line and column; reading goes on behind a
 * wrong value, and stops only where the text is no longer JSON. Limits: {@link #MAX_BYTES} bytes,
 * {@link JsonTree#MAX_DEPTH} levels, {@link JsonTree#MAX_TOKENS} tokens, {@value
 * Values#MAX_NUMBER_LENGTH} characters in a number, {@value Values#MAX_TEXT_LENGTH} in a text,
 * {@value MemberReader#MAX_NAME_LENGTH} in a member's name. Numbers are read as doubles; one that
 * would be infinite, or zero without being written so, is a finding.
 *
 * <p>Thread-safe; time and memory are linear in the file, whatever it holds.
 */
public final class LayoutReader {

  /** The value of {@code format}. */
  public static final String FORMAT = "hoopwright/layout-1";

  /** The largest file that is read, in bytes. */
  public static final int MAX_BYTES = 4_000_000;

  private LayoutReader() {}

  /**
   * Reads the bytes of a file.
   *
   * @param fileName what the file is called in findings
   * @param bytes all its bytes
   * @throws UnreadableFile when they are too many or not UTF-8
   */
  public static ReadResult read(String fileName, byte[] bytes) throws UnreadableFile {
    if (bytes.length > MAX_BYTES) {
      throw tooBig(fileName);
    }
    String text = FileText.decode(fileName, bytes);
    JsonTree tree = JsonTree.parse(text);
    List<Finding> findings = new ArrayList<>();
    tree.flaw().ifPresent(findings::add);
    Reading reading = new Reading();
    Optional<Draft> draft = tree.root().flatMap(root -> new LayoutBinder(reading).bind(root));
    findings.addAll(reading.findings());
    boolean sound = tree.flaw().isEmpty() && reading.isSound();
    return new ReadResult(fileName, text, bytes, draft, sound, findings);
  }

  /**
   * Reads a file, at most {@link #MAX_BYTES} bytes and one.
   *
   * @param file the file; its findings call it as the path is written
   * @throws UnreadableFile when it cannot be opened or read, is too big or not UTF-8
   */
  public static ReadResult read(Path file) throws UnreadableFile {
    return read(file.toString(), FileText.bytes(file));
  }

  /**
   * Reads a stream, at most {@link #MAX_BYTES} bytes and one. The stream is not closed.
   *
   * @param name what the file is called in findings
   * @param in the stream
   * @throws UnreadableFile when it cannot be read, is too big or not UTF-8
   */
  public static ReadResult read(String name, InputStream in) throws UnreadableFile {
    return read(name, FileText.bytes(name, in));
  }

  private static UnreadableFile tooBig(String name) {
    return new UnreadableFile(name, "it is larger than a layout file may be, 4 MB");
  }
}
