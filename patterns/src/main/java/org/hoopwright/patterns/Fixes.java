package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hoopwright.finding.Finding;

/**
 * Mends what can be mended mechanically in the text of a layout file.
 *
 * @param before the text as it was
 * @param after the text with every fix that could be carried out
 * @param done the findings that were mended, in the order of the work
 * @param refused findings whose fix would have taken a comment away, so that a person must do it
 */
public record Fixes(String before, String after, List<Finding> done, List<Finding> refused) {

  /** No file needs more: after so many fixes it is left as it is then. */
  private static final int MOST = 200;

  /** Copies the lists. */
  public Fixes {
    done = List.copyOf(done);
    refused = List.copyOf(refused);
  }

  /** Whether anything was mended. */
  public boolean changed() {
    return !before.equals(after);
  }

  /**
   * Mends a text, one finding after the other; after each the text is checked anew, so that a fix
   * never works on what another one changed.
   *
   * @param name what the file is called in findings
   * @param text the file's text
   * @param check everything found about a file
   * @throws UnreadableFile when the text is too big
   */
  public static Fixes of(String name, String text, Function<ReadResult, List<Finding>> check)
      throws UnreadableFile {
    String now = text;
    List<Finding> done = new ArrayList<>();
    Set<Finding> refused = new LinkedHashSet<>();
    while (done.size() < MOST) {
      List<Finding> open =
          check.apply(LayoutReader.read(name, now.getBytes(UTF_8))).stream()
              .filter(f -> !f.patch().isEmpty())
              .toList();
      refused.retainAll(open);
      Optional<String> next = Optional.empty();
      for (Finding finding : open) {
        if (!refused.contains(finding)) {
          next = TextFix.apply(now, finding);
          if (next.isPresent()) {
            done.add(finding);
            break;
          }
          refused.add(finding);
        }
      }
      if (next.isEmpty()) {
        break;
      }
      now = next.get();
    }
    return new Fixes(text, now, done, List.copyOf(refused));
  }

  /**
   * What changed, as a unified diff without context: for each stretch of lines that differ a line
   * {@code @@ -FROM,COUNT +FROM,COUNT @@}, then the old lines and the new ones.
   */
  public String diff(String name) {
    if (!changed()) {
      return "";
    }
    return "--- " + name + "\n+++ " + name + "\n" + LineDiff.of(before, after);
  }
}
