package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.hoopwright.patterns.LayoutReader;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.Sample;
import org.hoopwright.patterns.Samples;
import org.hoopwright.patterns.UnreadableFile;

/** Reads what {@code FILE} names: a file, standard input or a bundled layout. */
final class LayoutInput {

  /** Names standard input. */
  static final String STANDARD_INPUT = "-";

  private static final String SAMPLE = "sample:";

  private LayoutInput() {}

  static ReadResult read(String file, Streams streams) throws UnreadableFile {
    if (file.equals(STANDARD_INPUT)) {
      return LayoutReader.read(file, streams.in());
    }
    if (file.startsWith(SAMPLE)) {
      String name = file.substring(SAMPLE.length());
      if (!sampleNames().contains(name)) {
        throw new UnreadableFile(
            file, "there is no such sample; there are " + String.join(", ", sampleNames()));
      }
      return LayoutReader.read(file, Samples.text(name).getBytes(UTF_8));
    }
    try {
      return LayoutReader.read(Path.of(file));
    } catch (InvalidPathException e) {
      throw new UnreadableFile(file, "it is not a file name");
    }
  }

  static List<String> sampleNames() {
    return Samples.list().stream().map(Sample::name).toList();
  }
}
