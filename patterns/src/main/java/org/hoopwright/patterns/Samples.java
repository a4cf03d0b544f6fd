package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.hoopwright.finding.HoopwrightFault;
import org.hoopwright.frame.Layout;

/**
 * The layouts that come with the library: invented frames of the Willowbank workshop, with
 * plausible numbers, each there for a reason that the first line of its text states.
 *
 * <p>Every sample is a layout file without errors, has a bed and at least one route.
 */
public final class Samples {

  private static final String INDEX = "index.txt";

  private Samples() {}

  /** All samples, in the order of their index. The list is unmodifiable. */
  public static List<Sample> list() {
    return resource(INDEX)
        .lines()
        .map(name -> new Sample(name, reason(resource(name + ".json"))))
        .toList();
  }

  /**
   * The text of a sample, just as it would stand in a file, comments included.
   *
   * @param name one of the names in {@link #list()}
   * @throws IllegalArgumentException when there is no sample of this name
   */
  public static String text(String name) {
    List<String> names = resource(INDEX).lines().toList();
    if (!names.contains(name)) {
      throw new IllegalArgumentException(
          "There is no sample named \"%s\".\nMaybe one of these is meant: %s."
              .formatted(name, String.join(", ", names)));
    }
    return resource(name + ".json");
  }

  /**
   * A sample, read.
   *
   * @param name one of the names in {@link #list()}
   * @throws IllegalArgumentException when there is no sample of this name
   */
  public static Layout layout(String name) {
    try {
      ReadResult result = LayoutReader.read("sample:" + name, text(name).getBytes(UTF_8));
      return result
          .layout()
          .orElseThrow(
              () ->
                  new HoopwrightFault(
                      "The sample " + name + " has errors: " + result.findings() + "."));
    } catch (UnreadableFile e) {
      throw new HoopwrightFault("The sample " + name + " is unreadable: " + e.reason() + ".");
    }
  }

  /** The name of the bundled bench file. */
  public static final String BENCH = "willowbank-bench";

  /**
   * The text of a bundled bench file: the invented bench of the Willowbank workshop, comments
   * included.
   */
  public static String bench() {
    return resource("benches", BENCH + ".json");
  }

  /** What the first line, a comment, says. */
  private static String reason(String text) {
    String first = text.lines().findFirst().orElse("");
    return first.startsWith("//") ? first.substring(2).strip() : "";
  }

  private static String resource(String file) {
    return resource("samples", file);
  }

  private static String resource(String folder, String name) {
    String file = folder + "/" + name;
    try (InputStream in = Samples.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new HoopwrightFault("This copy of the library lacks its file " + file + ".");
      }
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException e) {
      throw new HoopwrightFault("The library's own file " + file + " cannot be read.");
    }
  }
}
