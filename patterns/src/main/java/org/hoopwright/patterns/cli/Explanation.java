package org.hoopwright.patterns.cli;

import java.util.Arrays;
import java.util.Optional;
import org.hoopwright.check.RuleBook;
import org.hoopwright.check.RuleText;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.patterns.json.Shown;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** What the book says of one code, for a person. */
final class Explanation {

  private Explanation() {}

  /**
   * The text.
   *
   * @throws ParameterException when there is no such code
   */
  static String of(CommandLine line, String code) {
    Optional<FindingCode> found =
        Arrays.stream(FindingCode.values()).filter(c -> c.code().equals(code)).findFirst();
    if (found.isEmpty()) {
      throw new ParameterException(
          line,
          "--explain: there is no code \"%s\"; every finding ends with its code in brackets."
              .formatted(Shown.cut(code)));
    }
    RuleText rule = RuleBook.of(found.get());
    StringBuilder text = new StringBuilder();
    text.append(code).append(" (").append(found.get().severity().word()).append(")\n");
    text.append(found.get().summary()).append("\n\n").append(rule.explanation()).append('\n');
    rule.example()
        .ifPresent(
            e -> {
              String before = e.kind() == RuleText.Example.Kind.CALL ? "hoopwright " : "";
              block(text, "Wrong", before + e.wrong());
              block(text, "Right", before + e.right());
            });
    if (!rule.silentAfter().isEmpty()) {
      text.append("\nNot looked for beside: ");
      text.append(String.join(", ", rule.silentAfter().stream().map(FindingCode::code).toList()));
      text.append(".\n");
    }
    return text.toString();
  }

  private static void block(StringBuilder text, String title, String example) {
    text.append('\n').append(title).append(":\n");
    String shown = example.isBlank() ? "(left out)" : example.strip();
    shown.lines().forEach(l -> text.append("    ").append(l.strip()).append('\n'));
  }
}
