import org.jspecify.annotations.NullMarked;

/** Layout and plan files, drawings and the command line. */
@NullMarked
module org.hoopwright.patterns {
  requires transitive org.hoopwright;
  requires tools.jackson.core;
  requires info.picocli;

  exports org.hoopwright.patterns;

  opens org.hoopwright.patterns.cli to
      info.picocli;
}
