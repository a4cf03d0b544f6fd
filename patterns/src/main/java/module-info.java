import org.jspecify.annotations.NullMarked;

/** Layout and plan files, drawings and the command line. */
@NullMarked
module org.hoopwright.patterns {
  requires transitive org.hoopwright;
  requires tools.jackson.core;
  requires info.picocli;
  requires java.xml;

  exports org.hoopwright.patterns;
  exports org.hoopwright.patterns.draw;

  opens org.hoopwright.patterns.cli to
      info.picocli;
}
