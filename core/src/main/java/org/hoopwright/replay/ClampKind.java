package org.hoopwright.replay;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hoopwright.bench.Bench;

/** The two kinds of clamp, told apart by their names: {@code machine-1}, {@code starting-1}. */
enum ClampKind {
  MACHINE("machine"),
  STARTING("starting");

  private static final Pattern NAME = Pattern.compile("(machine|starting)-([1-9][0-9]{0,2})");

  private final String word;

  ClampKind(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** How many a bench has. */
  int count(Bench bench) {
    return this == MACHINE ? bench.machineClamps() : bench.startingClamps();
  }

  /** The kind of the clamp of this name; empty when it is no clamp's name. */
  static Optional<ClampKind> of(String name) {
    Matcher m = NAME.matcher(name);
    return !m.matches()
        ? Optional.empty()
        : Optional.of(m.group(1).equals(MACHINE.word) ? MACHINE : STARTING);
  }

  /** The number in a clamp's name; 0 when it is no clamp's name. */
  static int number(String name) {
    Matcher m = NAME.matcher(name);
    return m.matches() ? Integer.parseInt(m.group(2)) : 0;
  }
}
