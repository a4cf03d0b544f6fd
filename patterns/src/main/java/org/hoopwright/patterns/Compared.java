package org.hoopwright.patterns;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One of two things that are compared.
 *
 * @param file the layout's file, as the caller named it
 * @param name the layout's name
 * @param sha256 the SHA-256 of the file's bytes in hex digits; empty for a layout built in code
 * @param route the rank of the route whose plan is compared, from 1; empty for a layout
 */
public record Compared(String file, String name, Optional<String> sha256, OptionalInt route) {

  /** A layout as it was read. */
  public static Compared of(ReadResult read) {
    return of(read, OptionalInt.empty());
  }

  /** The plan of a route of a layout as it was read, by its rank. */
  public static Compared of(ReadResult read, int route) {
    return of(read, OptionalInt.of(route));
  }

  private static Compared of(ReadResult read, OptionalInt route) {
    return new Compared(
        read.fileName(),
        read.layout().map(l -> l.name()).orElse(""),
        Optional.of(read.sha256()),
        route);
  }

  /** As it is called in texts: the layout's name, its file, the route. */
  String title() {
    return name
        + (file.isEmpty() ? "" : " (" + file + ")")
        + (route.isPresent() ? ", route " + route.getAsInt() : "");
  }
}
