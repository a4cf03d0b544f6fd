package org.hoopwright.finding;

/**
 * One step of a mechanical fix, as JSON Patch has it (RFC 6902).
 *
 * @param op what is done
 * @param path JSON pointer to what it is done to
 * @param from for {@code move} the pointer of what is moved, else empty
 * @param value for {@code replace} the new value as JSON text, else empty
 */
public record PatchStep(Op op, String path, String from, String value) {

  /** What a step does. */
  public enum Op {
    /** Takes a value out. */
    REMOVE("remove"),
    /** Puts another value in its place. */
    REPLACE("replace"),
    /** Gives a member another name in the same object. */
    MOVE("move");

    private final String word;

    Op(String word) {
      this.word = word;
    }

    /** The word of JSON Patch. */
    public String word() {
      return word;
    }
  }

  /** Takes the value at this pointer out. */
  public static PatchStep remove(String path) {
    return new PatchStep(Op.REMOVE, path, "", "");
  }

  /** Puts another value, written as JSON, in the place of the one at this pointer. */
  public static PatchStep replace(String path, String json) {
    return new PatchStep(Op.REPLACE, path, "", json);
  }

  /** Moves the value at one pointer to another. */
  public static PatchStep move(String from, String path) {
    return new PatchStep(Op.MOVE, path, from, "");
  }
}
