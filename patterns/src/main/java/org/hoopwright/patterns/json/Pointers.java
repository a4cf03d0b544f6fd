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
    return name.replace("~", "~0").replace("/", "~1");
  }
}
