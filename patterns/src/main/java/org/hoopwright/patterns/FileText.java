package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The bytes of a file as text. */
final class FileText {

  private static final char REPLACEMENT = '\uFFFD';

  private FileText() {}

  /**
   * The bytes of a file, one more than a file may have at most.
   *
   * @throws UnreadableFile when it cannot be opened or read
   */
  static byte[] bytes(Path file) throws UnreadableFile {
    String name = file.toString();
    if (Files.isDirectory(file)) {
      throw new UnreadableFile(name, "it is a folder");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return bytes(name, in);
    } catch (UnreadableFile e) {
      throw e;
    } catch (NoSuchFileException e) {
      throw new UnreadableFile(name, "there is no such file");
    } catch (AccessDeniedException e) {
      throw new UnreadableFile(name, "access is denied");
    } catch (IOException | SecurityException e) {
      throw new UnreadableFile(name, "it cannot be opened");
    }
  }

  /**
   * The bytes of a stream, likewise.
   *
   * @throws UnreadableFile when it cannot be read
   */
  static byte[] bytes(String name, InputStream in) throws UnreadableFile {
    try {
      return in.readNBytes(LayoutReader.MAX_BYTES + 1);
    } catch (IOException e) {
      throw new UnreadableFile(name, "reading it failed");
    }
  }

  /** The text, without byte order mark. */
  static String decode(String fileName, byte[] bytes) throws UnreadableFile {
    if (looksWide(bytes)) {
      throw new UnreadableFile(fileName, "it is not UTF-8 but UTF-16 or UTF-32; save it as UTF-8");
    }
    String quick = new String(bytes, UTF_8);
    if (quick.indexOf(REPLACEMENT) < 0) { // what is not UTF-8 would have been replaced
      return withoutMark(quick);
    }
    CharsetDecoder decoder =
        UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, /* endOfInput= */ true);
    if (result.isError()) {
      throw new UnreadableFile(
          fileName,
          "byte %s (0x%s) is not UTF-8; save it as UTF-8"
              .formatted(in.position() + 1, HexFormat.of().toHexDigits(bytes[in.position()])));
    }
    decoder.flush(out);
    return withoutMark(out.flip().toString());
  }

  private static String withoutMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /**
   * UTF-16 and UTF-32 show by their byte order mark, or by zeros where JSON has its first letters.
   */
  private static boolean looksWide(byte[] b) {
    if (b.length < 2) {
      return false;
    }
    int mark = (b[0] & 0xFF) << 8 | (b[1] & 0xFF);
    return mark == 0xFEFF || mark == 0xFFFE || b[0] == 0 || b[1] == 0;
  }

  /** SHA-256 in small hexadecimal digits. */
  static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256.", e);
    }
  }
}
