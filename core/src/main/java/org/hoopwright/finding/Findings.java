package org.hoopwright.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Helpers for lists of findings. */
public final class Findings {

  private static final Comparator<Finding> ORDER =
      Comparator.<Finding, Integer>comparing(
              f -> f.place().map(Place::line).orElse(Integer.MAX_VALUE))
          .thenComparing(f -> f.place().map(Place::column).orElse(Integer.MAX_VALUE))
          .thenComparing(Finding::severity)
          .thenComparing(f -> f.code().code())
          .thenComparing(Finding::message);

  private Findings() {}

  /**
   * The findings by place, then severity, code and message; those without a place last. The result
   * is immutable.
   */
  public static List<Finding> sorted(Collection<Finding> findings) {
    return findings.stream().sorted(ORDER).distinct().toList();
  }

  /** Whether any finding is an error. */
  public static boolean hasErrors(Collection<Finding> findings) {
    return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
  }

  /** How many findings have this severity. */
  public static int count(Collection<Finding> findings, Severity severity) {
    return (int) findings.stream().filter(f -> f.severity() == severity).count();
  }
}
