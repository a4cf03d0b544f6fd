package org.hoopwright.patterns.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Stream;
import org.hoopwright.patterns.UnreadableFile;

/** What the words {@code FILE} of a call mean: files, folders and globs. */
final class FileArguments {

  /** The most files of one folder or glob. */
  static final int MAX_FILES = 10_000;

  /** The deepest folder within a folder that is looked into. */
  static final int MAX_DEPTH = 32;

  private FileArguments() {}

  /**
   * The files of one word. A folder stands for every {@code .json} file in it and in its folders; a
   * word with {@code *}, {@code ?}, <code>[</code> or <code>{</code> that names no file is a glob,
   * in which <code>**</code> crosses folders. In the order of their names; links to folders are not
   * followed.
   *
   * @throws UnreadableFile when a folder holds no layout, nothing matches, or there are too many
   */
  static List<String> expand(String word) throws UnreadableFile {
    if (word.equals(LayoutInput.STANDARD_INPUT) || word.startsWith("sample:")) {
      return List.of(word);
    }
    try {
      Path path = Path.of(word);
      if (Files.isDirectory(path)) {
        return walk(word, path, p -> p.toString().endsWith(".json"), "it holds no .json file");
      }
      if (Files.exists(path) || !isGlob(word)) {
        return List.of(word);
      }
      return glob(word);
    } catch (InvalidPathException e) {
      return isGlob(word) ? glob(word) : List.of(word);
    }
  }

  private static boolean isGlob(String word) {
    return word.chars().anyMatch(c -> "*?[{".indexOf(c) >= 0);
  }

  private static List<String> glob(String word) throws UnreadableFile {
    int special = 0;
    while ("*?[{".indexOf(word.charAt(special)) < 0) {
      special++;
    }
    int slash = word.lastIndexOf('/', special);
    String root = slash < 0 ? "" : slash == 0 ? "/" : word.substring(0, slash);
    try {
      PathMatcher matcher = FileSystems.getDefault().getPathMatcher("glob:" + word);
      return walk(word, Path.of(root), matcher, "no file matches");
    } catch (PatternSyntaxException | InvalidPathException e) {
      throw new UnreadableFile(word, "it is neither a file nor a glob");
    }
  }

  private static List<String> walk(String word, Path root, PathMatcher matcher, String none)
      throws UnreadableFile {
    LinkedHashSet<String> found = new LinkedHashSet<>();
    try (Stream<Path> files = Files.walk(root, MAX_DEPTH)) {
      List<Path> all = new ArrayList<>();
      files
          .map(p -> root.toString().isEmpty() ? root.relativize(p) : p)
          .filter(p -> !p.toString().isEmpty() && matcher.matches(p) && Files.isRegularFile(p))
          .limit(MAX_FILES + 1L)
          .forEach(all::add);
      all.stream().map(Path::toString).sorted().forEach(found::add);
    } catch (IOException | UncheckedIOException | SecurityException e) {
      throw new UnreadableFile(word, found.isEmpty() ? none : "a folder in it cannot be read");
    }
    if (found.isEmpty()) {
      throw new UnreadableFile(word, none);
    }
    if (found.size() > MAX_FILES) {
      throw new UnreadableFile(word, "there are more than " + MAX_FILES + " files");
    }
    return List.copyOf(found);
  }
}
