package org.hoopwright.check;

import static org.hoopwright.finding.FindingCode.BORE_TOO_SMALL;
import static org.hoopwright.finding.FindingCode.CROSSES_FIRST;
import static org.hoopwright.finding.FindingCode.CROSSES_HOLES_LEFT;
import static org.hoopwright.finding.FindingCode.CROSSES_LAST;
import static org.hoopwright.finding.FindingCode.CROSSES_NO_HOLE;
import static org.hoopwright.finding.FindingCode.CROSS_HOLE_BLOCKED;
import static org.hoopwright.finding.FindingCode.DETOUR;
import static org.hoopwright.finding.FindingCode.DETOUR_NONE;
import static org.hoopwright.finding.FindingCode.FRAME_BELOW_HOOP;
import static org.hoopwright.finding.FindingCode.HOLE_OFF_HOOP;
import static org.hoopwright.finding.FindingCode.HOLE_ORDER;
import static org.hoopwright.finding.FindingCode.HOLE_WRONG_SIDE;
import static org.hoopwright.finding.FindingCode.HOOP_OFF_CENTRE;
import static org.hoopwright.finding.FindingCode.HOOP_SHAPE;
import static org.hoopwright.finding.FindingCode.MAINS_NO_HOLE;
import static org.hoopwright.finding.FindingCode.MAINS_SKIP_MISSING;
import static org.hoopwright.finding.FindingCode.MAINS_START_INFERRED;
import static org.hoopwright.finding.FindingCode.MAIN_HOLE_BLOCKED;
import static org.hoopwright.finding.FindingCode.NO_ROUTE;
import static org.hoopwright.finding.FindingCode.OFFSETS_COUNT;
import static org.hoopwright.finding.FindingCode.OFFSETS_DIFFER;
import static org.hoopwright.finding.FindingCode.OFFSETS_ORDER;
import static org.hoopwright.finding.FindingCode.OFFSETS_WITHOUT_SKIP;
import static org.hoopwright.finding.FindingCode.OFFSET_OUTSIDE;
import static org.hoopwright.finding.FindingCode.PATTERN_INFERRED;
import static org.hoopwright.finding.FindingCode.PATTERN_NONE;
import static org.hoopwright.finding.FindingCode.PATTERN_UNSURE;
import static org.hoopwright.finding.FindingCode.RULE_SIZE;
import static org.hoopwright.finding.FindingCode.SHARED_CANDIDATE;
import static org.hoopwright.finding.FindingCode.SHARED_CHOICE;
import static org.hoopwright.finding.FindingCode.SHARED_UNUSED;
import static org.hoopwright.finding.FindingCode.SPAN_ALONE;
import static org.hoopwright.finding.FindingCode.TIE_OFF_CANDIDATE;
import static org.hoopwright.finding.FindingCode.UNKNOWN_HOLE;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Draft;

/**
 * What of a layout must be known for a finding of each kind to be sure. A kind that is not in the
 * table rests on the value that it points to and on nothing else.
 */
final class Needs {

  private static final List<String> COUNTED = List.of("/holes/head", "/holes/throat");

  private static final List<String> MAINS = with(COUNTED, "/mains/count", "/mains/skip");

  private static final List<String> CROSSES =
      with(
          MAINS,
          "/holes/shared",
          "/holes/blocked",
          "/crosses/count",
          "/crosses/skip",
          "/crosses/first");

  /** What the choice of shared holes rests on too. */
  private static final List<String> BED =
      with(
          CROSSES,
          "/units",
          "/hoop",
          "/holes/at",
          "/mains/offsets",
          "/crosses/offsets",
          "/crosses/last");

  private static final List<String> ROUTE =
      with(
          BED,
          "/holes/tieOff",
          "/holes/bore",
          "/holes/noRun",
          "/mains/start",
          "/aroundTheWorld",
          "/headZone");

  private static final List<String> SIZES = List.of("/units", "/hoop");

  private static final Map<FindingCode, List<String>> TABLE = new EnumMap<>(FindingCode.class);

  static {
    TABLE.put(UNKNOWN_HOLE, COUNTED);
    TABLE.put(HOLE_ORDER, BED);
    TABLE.put(HOLE_OFF_HOOP, BED); // looked for once there is a bed
    TABLE.put(BORE_TOO_SMALL, with(BED, "/holes/bore", "/holes/tieOff"));
    TABLE.put(HOLE_WRONG_SIDE, List.of("/units"));
    TABLE.put(OFFSETS_ORDER, List.of("/units"));
    TABLE.put(HOOP_SHAPE, SIZES);
    TABLE.put(HOOP_OFF_CENTRE, SIZES);
    TABLE.put(FRAME_BELOW_HOOP, with(SIZES, "/frame"));
    TABLE.put(RULE_SIZE, with(SIZES, "/frame", "/game"));
    TABLE.put(MAINS_SKIP_MISSING, List.of("/mains/skip"));
    TABLE.put(OFFSETS_WITHOUT_SKIP, List.of("/mains/skip"));
    TABLE.put(MAINS_NO_HOLE, MAINS);
    TABLE.put(MAIN_HOLE_BLOCKED, MAINS);
    TABLE.put(OFFSETS_COUNT, List.of("/mains/count", "/crosses/count"));
    TABLE.put(OFFSET_OUTSIDE, BED);
    TABLE.put(OFFSETS_DIFFER, BED);
    TABLE.put(CROSSES_NO_HOLE, CROSSES);
    TABLE.put(CROSSES_HOLES_LEFT, CROSSES);
    TABLE.put(CROSSES_FIRST, CROSSES);
    TABLE.put(CROSSES_LAST, BED);
    TABLE.put(CROSS_HOLE_BLOCKED, CROSSES);
    TABLE.put(SHARED_CHOICE, BED);
    TABLE.put(SHARED_UNUSED, BED);
    TABLE.put(SPAN_ALONE, BED);
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

  /** Pointers to what findings of this kind rest on. */
  static List<String> of(FindingCode code) {
    return TABLE.getOrDefault(code, List.of());
  }

  /** Whether everything is known that a finding of this kind rests on. */
  static boolean met(Draft draft, FindingCode code) {
    return of(code).stream().allMatch(draft::knows);
  }

  /** Whether everything is known that this finding rests on. */
  static boolean met(Draft draft, Finding finding) {
    return met(draft, finding.code())
        && listKnown(draft, finding, "/mains/offsets")
        && listKnown(draft, finding, "/crosses/offsets")
        && (finding.code() != FindingCode.NUMBER_RANGE || rangeKnown(draft, finding.pointer()));
  }

  /** A number is in its range or not by itself, and a length by its unit. */
  private static boolean rangeKnown(Draft draft, String pointer) {
    boolean count = pointer.startsWith("/holes/bore") || pointer.endsWith("/count");
    boolean holes = pointer.startsWith("/holes/head") || pointer.startsWith("/holes/throat");
    return draft.knows(pointer) && (count || holes || draft.knows("/units"));
  }

  /** Of numbers in a row the later ones mean something else when one of them is lost. */
  private static boolean listKnown(Draft draft, Finding finding, String list) {
    return !finding.pointer().startsWith(list) || draft.knows(list);
  }
}
