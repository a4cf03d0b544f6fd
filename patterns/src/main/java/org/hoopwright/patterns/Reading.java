package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.finding.Place;
import org.hoopwright.finding.Places;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.Found;

/** What one reading of a file gathers. Not thread-safe; made anew for each file. */
final class Reading {

  private final List<Finding> findings = new ArrayList<>();
  private final Set<String> tables = new HashSet<>();
  private final Set<String> lost = new TreeSet<>();
  private final Map<String, String> moved = new TreeMap<>();
  private boolean sound = true;

  /** Adds a finding. */
  void add(FindingCode code, String pointer, Place place, String message, String fix) {
    add(code, pointer, place, message, fix, List.of());
  }

  /** Adds a finding whose fix may be mechanical. */
  void add(
      FindingCode code,
      String pointer,
      Place place,
      String message,
      String fix,
      List<PatchStep> patch) {
    findings.add(
        Finding.of(code).message(message).at(pointer, place).fix(fix).patch(patch).build());
  }

  /** Notes that what stands at a pointer, and under it, is not known. */
  void lose(String pointer) {
    lost.add(pointer);
  }

  /**
   * Notes that the value at a pointer stands at another one of the layout, because entries before
   * it are lost.
   */
  void move(String inLayout, String inFile) {
    moved.put(inLayout, inFile);
  }

  /** The layout with what is known of its file. */
  Draft draft(Layout layout) {
    return Draft.of(layout, lost, moved);
  }

  /** Notes that findings about a member of the object at this pointer are about its name too. */
  void table(String pointer) {
    tables.add(pointer);
  }

  /** Says that what is left of the layout no longer means what its file meant. */
  void unsound() {
    sound = false;
  }

  boolean isSound() {
    return sound;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** Where everything stands in the file of this root. */
  Places places(JsonNode root) {
    Map<String, String> inFile = Map.copyOf(moved);
    Set<String> named = Set.copyOf(tables);
    return Places.of(
        pointer -> {
          String own = inFile.getOrDefault(pointer, pointer);
          return root.find(own).map(found -> place(found, own, named));
        });
  }

  private static Place place(Found found, String pointer, Set<String> tables) {
    boolean named =
        found.member().isPresent()
            && tables.contains(pointer.substring(0, pointer.lastIndexOf('/')));
    return named ? found.member().get().whole() : found.value().place();
  }
}
