package org.hoopwright.patterns.json;

/** JSON pointers (RFC 6901). */
public final class Pointers {

  private Pointers() {}

  /** The pointer to a member of the value at this pointer. */
  public static String to(String pointer, String name) {
    return pointer + "/" + escape(name);
  }

  /** The pointer to an item of the list at this pointer. */
  public static String to(String pointer, int index) {
    return pointer + "/" + index;
  }

  /** A member's name as it stands in a pointer: {@code ~} and {@code /} escaped. */
  static String escape(String name) {
    return name.indexOf('~') < 0 && name.indexOf('/') < 0
        ? name
        : name.replace("~", "~0").replace("/", "~1");
  }

  /** What {@link #escape} was given. */
  static String unescape(String step) {
    return step.indexOf('~') < 0 ? step : step.replace("~1", "/").replace("~0", "~");
  }

  /** The index that a step into a list names, or -1 when it is none. */
  static int index(String step) {
    if (step.isEmpty() || step.length() > 9 || (step.length() > 1 && step.charAt(0) == '0')) {
      return -1;
    }
    int index = 0;
    for (int i = 0; i < step.length(); i++) {
      char c = step.charAt(i);
      if (c < '0' || c > '9') {
        return -1;
      }
      index = 10 * index + (c - '0');
    }
    return index;
  }
}
