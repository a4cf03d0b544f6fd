package org.hoopwright.check;

import static org.hoopwright.finding.FindingCode.BORE_TOO_SMALL;
import static org.hoopwright.finding.FindingCode.CROSSES_FIRST;
import static org.hoopwright.finding.FindingCode.CROSSES_LAST;
import static org.hoopwright.finding.FindingCode.CROSSES_NO_HOLE;
import static org.hoopwright.finding.FindingCode.DETOUR;
import static org.hoopwright.finding.FindingCode.DETOUR_NONE;
import static org.hoopwright.finding.FindingCode.HOLE_ORDER;
import static org.hoopwright.finding.FindingCode.MAINS_NO_HOLE;
import static org.hoopwright.finding.FindingCode.MAINS_SKIP_MISSING;
import static org.hoopwright.finding.FindingCode.MAINS_START_INFERRED;
import static org.hoopwright.finding.FindingCode.MAIN_HOLE_BLOCKED;
import static org.hoopwright.finding.FindingCode.NO_ROUTE;
import static org.hoopwright.finding.FindingCode.OFFSETS_DIFFER;
import static org.hoopwright.finding.FindingCode.OFFSET_OUTSIDE;
import static org.hoopwright.finding.FindingCode.PATTERN_INFERRED;
import static org.hoopwright.finding.FindingCode.PATTERN_NONE;
import static org.hoopwright.finding.FindingCode.PATTERN_UNSURE;
import static org.hoopwright.finding.FindingCode.SHARED_CANDIDATE;
import static org.hoopwright.finding.FindingCode.SHARED_CHOICE;
import static org.hoopwright.finding.FindingCode.TIE_OFF_CANDIDATE;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Draft;

/**
 * What of a layout must be known for a finding to be sure that work reports by the way: laying
 * strings in holes, or looking for routes. A rule that only looks says it itself ({@link
 * Rule#needs}).
 */
final class Needs {

  private static final List<String> MAINS =
      List.of("/holes/head", "/holes/throat", "/mains/count", "/mains/skip");

  private static final List<String> CROSSES =
      with(
          MAINS,
          "/holes/shared",
          "/holes/blocked",
          "/crosses/count",
          "/crosses/skip",
          "/crosses/first");

  /** What a bed rests on: the choice of shared holes rests on where they are. */
  static final List<String> BED =
      with(
          CROSSES,
          "/units",
          "/hoop",
          "/holes/at",
          "/mains/offsets",
          "/crosses/offsets",
          "/crosses/last");

  /** What routes rest on. */
  static final List<String> ROUTE =
      with(
          BED,
          "/holes/tieOff",
          "/holes/bore",
          "/holes/noRun",
          "/mains/start",
          "/aroundTheWorld",
          "/headZone");

  private static final Map<FindingCode, List<String>> TABLE = new EnumMap<>(FindingCode.class);

  static {
    TABLE.put(MAINS_SKIP_MISSING, List.of("/mains/skip"));
    TABLE.put(MAINS_NO_HOLE, MAINS);
    TABLE.put(MAIN_HOLE_BLOCKED, MAINS);
    TABLE.put(CROSSES_NO_HOLE, CROSSES);
    TABLE.put(CROSSES_FIRST, CROSSES);
    TABLE.put(CROSSES_LAST, BED);
    TABLE.put(SHARED_CHOICE, BED);
    TABLE.put(BORE_TOO_SMALL, with(BED, "/holes/bore", "/holes/tieOff"));
    TABLE.put(HOLE_ORDER, BED);
    TABLE.put(OFFSET_OUTSIDE, BED);
    TABLE.put(OFFSETS_DIFFER, BED);
    TABLE.put(NO_ROUTE, ROUTE);
    // A pattern that is read off the holes, or led round a blocked one, has a route to show for it.
    for (FindingCode worked :
        List.of(
            PATTERN_INFERRED,
            PATTERN_UNSURE,
            PATTERN_NONE,
            SHARED_CANDIDATE,
            TIE_OFF_CANDIDATE,
            MAINS_START_INFERRED,
            DETOUR,
            DETOUR_NONE)) {
      TABLE.put(worked, ROUTE);
    }
  }

  private Needs() {}

  private static List<String> with(List<String> some, String... more) {
    List<String> all = new ArrayList<>(some);
    all.addAll(List.of(more));
    return List.copyOf(all);
  }

  /** The kinds of finding in the table. */
  static Set<FindingCode> codes() {
    return TABLE.keySet();
  }

  /** Pointers to what findings of this kind rest on that work reports. */
  static List<String> of(FindingCode code) {
    return TABLE.getOrDefault(code, List.of());
  }

  /** Whether everything is known that this finding of some work rests on. */
  static boolean met(Draft draft, Finding finding) {
    return of(finding.code()).stream().allMatch(draft::knows);
  }
}
