package org.hoopwright.patterns;

import java.util.List;
import java.util.function.Supplier;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Place;
import org.hoopwright.patterns.json.TextLines;

/** What must hold of findings whatever a file holds. */
final class FuzzChecks {

  /** Far above what any file within the limits takes, also where other work holds a machine up. */
  private static final long MOST_NANOS = 60_000_000_000L;

  private FuzzChecks() {}

  static void require(boolean holds, Supplier<String> what) {
    if (!holds) {
      throw new AssertionError(what.get());
    }
  }

  /** Whether a place is one of the text's. */
  static boolean isIn(String text, Place place) {
    TextLines lines = new TextLines(text);
    return place.endLine() <= lines.count()
        && lines.start(place.endLine()) + place.endColumn() - 1 <= text.length()
        && place.column() <= lines.line(place.line()).length() + 1;
  }

  /** Every finding has a place in the text and says something that can be shown. */
  static void placed(String text, List<Finding> findings) {
    for (Finding f : findings) {
      require(f.code() != FindingCode.RULE_CRASHED, () -> "a rule crashed: " + f);
      require(f.place().isPresent(), () -> "no place: " + f);
      require(isIn(text, f.place().orElseThrow()), () -> "a place outside the text: " + f);
      require(
          (f.message() + f.fix()).codePoints().noneMatch(Character::isISOControl),
          () -> "a control character: " + f);
    }
  }

  /** Runs something that must end within a bound. */
  static void soon(Runnable work) {
    long start = System.nanoTime();
    work.run();
    long nanos = System.nanoTime() - start;
    require(nanos < MOST_NANOS, () -> "it took " + nanos / 1_000_000 + " ms");
  }
}
