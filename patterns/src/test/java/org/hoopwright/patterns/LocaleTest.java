package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.hoopwright.patterns.cli.CommandRunner;
import org.hoopwright.patterns.cli.Streams;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written does not depend on the locale of the machine. */
class LocaleTest {

  private static String run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Streams streams = new Streams(InputStream.nullInputStream(), out, err);
    int code = CommandRunner.run(streams, args);
    return code + "\n" + out.toString(UTF_8) + err.toString(UTF_8);
  }

  private static List<String> everything(Path broken) {
    return List.of(
        run("plan", "sample:willowbank-100"),
        run("plan", "--format", "json", "sample:willowbank-95"),
        run("plan", "--all", "--limit", "3", "sample:willowbank-teaching"),
        run("check", broken.toString(), "sample:willowbank-98-uneven"),
        run("check", "--format", "json", broken.toString()),
        run("plan", "--run-limit", "99", "sample:willowbank-teaching"),
        run("plan", "--tension", "5000lbf", "sample:willowbank-teaching"),
        LayoutWriter.write(Samples.layout("willowbank-110")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "de-CH", "sv-SE"})
  void writesTheSameBytesInEveryLocale(String tag) throws IOException {
    Path broken = Files.createTempFile("frame", ".json");
    Files.writeString(
        broken,
        Samples.text("willowbank-100")
            .replace("\"count\": 16", "\"count\": 1234")
            .replace("\"length\": 685", "\"length\": 12345.5")
            .replace("\"7T\"]", "\"I7H\", \"77T\"]"));
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      List<String> expected = everything(broken);
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(everything(broken)).isEqualTo(expected);
    } finally {
      Locale.setDefault(before);
      Files.delete(broken);
    }
  }
}
