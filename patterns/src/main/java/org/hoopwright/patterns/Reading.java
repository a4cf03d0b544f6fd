package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Place;
import org.hoopwright.finding.Places;

/** What one reading of a file gathers. Not thread-safe; made anew for each file. */
final class Reading {

  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Place> places = new HashMap<>();
  private boolean sound = true;

  /** Adds a finding. */
  void add(FindingCode code, String pointer, Place place, String message, String fix) {
    findings.add(Finding.of(code).message(message).at(pointer, place).fix(fix).build());
  }

  /** Notes where the value at a pointer stands; the first stands. */
  void place(String pointer, Place place) {
    places.putIfAbsent(pointer, place);
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

  Places places() {
    return Places.of(places);
  }
}
