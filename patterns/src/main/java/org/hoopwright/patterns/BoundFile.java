package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonTree;

/**
 * A file of one of the smaller formats: JSON in UTF-8 with comments, all or nothing.
 *
 * @param text its text; places of findings count in it
 * @param value what it says; empty when any finding is an error
 * @param findings what is wrong with it, by place
 */
record BoundFile<T>(String text, Optional<T> value, List<Finding> findings) {

  /** Reads the bytes of a file with what makes a value of its outermost JSON value. */
  static <T> BoundFile<T> read(
      String fileName, byte[] bytes, BiFunction<Reading, JsonNode, Optional<T>> binder)
      throws UnreadableFile {
    if (bytes.length > LayoutReader.MAX_BYTES) {
      throw new UnreadableFile(fileName, "it is larger than such a file may be, 4 MB");
    }
    String text = FileText.decode(fileName, bytes);
    JsonTree tree = JsonTree.parse(text);
    List<Finding> findings = new ArrayList<>();
    tree.flaw().ifPresent(findings::add);
    Reading reading = new Reading();
    Optional<T> value = tree.root().flatMap(root -> binder.apply(reading, root));
    findings.addAll(reading.findings());
    return new BoundFile<>(
        text, Findings.hasErrors(findings) ? Optional.empty() : value, Findings.sorted(findings));
  }
}
