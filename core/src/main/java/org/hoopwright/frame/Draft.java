package org.hoopwright.frame;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hoopwright.finding.Finding;

/**
 * A layout of which parts may not be known, because its file could not be read there.
 *
 * <p>What is lost is named by JSON pointers (RFC 6901). In its place the layout holds nothing, or
 * some value where it must have one, so never plan from the layout of a draft that is not {@link
 * #isWhole() whole}: it is there to be checked, as far as the known parts go. Immutable.
 */
public final class Draft {

  private final Layout layout;
  private final NavigableSet<String> lost;
  private final Map<String, String> moved;

  private Draft(Layout layout, Set<String> lost, Map<String, String> moved) {
    this.layout = layout;
    this.lost = Collections.unmodifiableNavigableSet(new TreeSet<>(lost));
    this.moved = Collections.unmodifiableMap(new TreeMap<>(moved));
  }

  /** A layout of which everything is known. */
  public static Draft whole(Layout layout) {
    return new Draft(layout, Set.of(), Map.of());
  }

  /**
   * A layout of which not everything is known.
   *
   * @param layout what is known, with something in place of what it cannot be without
   * @param lost pointers to what is not known; what stands under them is not known either
   * @param moved for entries of lists that stand behind a lost one: their pointer in the layout,
   *     and their pointer in the file
   */
  public static Draft of(Layout layout, Set<String> lost, Map<String, String> moved) {
    return new Draft(layout, lost, moved);
  }

  /** The layout; see above for what stands in place of what is lost. */
  public Layout layout() {
    return layout;
  }

  /** Pointers to what is not known, in the order of their letters. */
  public Set<String> lost() {
    return lost;
  }

  /** Whether nothing is lost. */
  public boolean isWhole() {
    return lost.isEmpty();
  }

  /**
   * Whether the value at this pointer is known, with everything in it: nothing is lost at it, above
   * it or under it.
   */
  public boolean knows(String pointer) {
    if (lost.isEmpty()) {
      return true;
    }
    String p = pointer;
    while (true) {
      if (lost.contains(p)) {
        return false;
      }
      if (p.isEmpty()) {
        break;
      }
      p = p.substring(0, p.lastIndexOf('/'));
    }
    String under = lost.ceiling(pointer + "/");
    return under == null || !under.startsWith(pointer + "/");
  }

  /** The finding with the pointer that its value has in the file. */
  public Finding inFile(Finding finding) {
    if (moved.isEmpty()) {
      return finding;
    }
    String p = finding.pointer();
    while (!p.isEmpty()) {
      String origin = moved.get(p);
      if (origin != null) {
        return finding.withPointer(origin + finding.pointer().substring(p.length()));
      }
      p = p.substring(0, Math.max(0, p.lastIndexOf('/')));
    }
    return finding;
  }
}
