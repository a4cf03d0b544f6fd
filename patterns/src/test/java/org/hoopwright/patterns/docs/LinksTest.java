package org.hoopwright.patterns.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Relative links between documents lead somewhere. */
class LinksTest {

  private static final Pattern LINK = Pattern.compile("\\[[^\\]\\n]+\\]\\(([^)\\s]+)\\)");
  private static final Pattern FENCE = Pattern.compile("(?ms)^\\s*```.*?^\\s*```");
  private static final Pattern HEADING = Pattern.compile("(?m)^#+ +(.+?)\\s*$");

  @Test
  void everyRelativeLinkLeadsSomewhere() {
    List<String> dead = new ArrayList<>();
    int links = 0;
    for (Path document : Repository.documents()) {
      Matcher link = LINK.matcher(FENCE.matcher(Repository.text(document)).replaceAll(""));
      while (link.find()) {
        String target = link.group(1);
        if (target.matches("[a-z]+:.*")) {
          continue;
        }
        links++;
        if (!leadsSomewhere(document, target)) {
          dead.add(Repository.root().relativize(document) + " -> " + target);
        }
      }
    }
    assertThat(dead).isEmpty();
    assertThat(links).as("links seen").isGreaterThan(30);
  }

  @Test
  void everyDocumentCanBeReachedFromTheReadme() {
    Path readme = Repository.root().resolve("README.md");
    Set<Path> seen = new HashSet<>(Set.of(readme));
    List<Path> open = new ArrayList<>(seen);
    while (!open.isEmpty()) {
      Path document = open.remove(open.size() - 1);
      Matcher link = LINK.matcher(FENCE.matcher(Repository.text(document)).replaceAll(""));
      while (link.find()) {
        Path target = document.resolveSibling(link.group(1).replaceAll("#.*", "")).normalize();
        if (target.toString().endsWith(".md") && Files.exists(target) && seen.add(target)) {
          open.add(target);
        }
      }
    }
    assertThat(seen).containsAll(Repository.documents());
  }

  private static boolean leadsSomewhere(Path document, String target) {
    int hash = target.indexOf('#');
    String file = hash < 0 ? target : target.substring(0, hash);
    Path path = file.isEmpty() ? document : document.resolveSibling(file).normalize();
    return path.startsWith(Repository.root())
        && Files.isRegularFile(path)
        && (hash < 0 || anchors(path).contains(target.substring(hash + 1)));
  }

  /** The anchors of a document's headings, as the usual hosts make them. */
  private static Set<String> anchors(Path document) {
    Set<String> anchors = new HashSet<>();
    Matcher heading = HEADING.matcher(FENCE.matcher(Repository.text(document)).replaceAll(""));
    while (heading.find()) {
      anchors.add(
          heading
              .group(1)
              .toLowerCase(Locale.ROOT)
              .replaceAll("[^\\p{L}\\p{N}\\- _]", "")
              .replace(' ', '-'));
    }
    return anchors;
  }
}
