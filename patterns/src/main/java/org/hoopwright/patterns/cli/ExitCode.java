package org.hoopwright.patterns.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** The exit codes of every command. */
public final class ExitCode {

  /** Done and clean. */
  public static final int DONE = 0;

  /** Findings at or above the threshold, or no plan exists. */
  public static final int FINDINGS = 1;

  /** The call is wrong. */
  public static final int WRONG_CALL = 2;

  /** A file cannot be read or written. */
  public static final int FILE = 3;

  /** Gave up at a limit. */
  public static final int GAVE_UP = 4;

  /** A fault of this program. */
  public static final int FAULT = 70;

  private ExitCode() {}

  /** What each code means, as help shows it. */
  static Map<String, String> table() {
    Map<String, String> table = new LinkedHashMap<>();
    table.put(Integer.toString(DONE), "done and clean");
    table.put(Integer.toString(FINDINGS), "findings at or above the threshold, or no plan exists");
    table.put(Integer.toString(WRONG_CALL), "the call is wrong");
    table.put(Integer.toString(FILE), "a file cannot be read or written");
    table.put(Integer.toString(GAVE_UP), "gave up at a limit");
    table.put(Integer.toString(FAULT), "a fault of this program");
    return table;
  }
}
