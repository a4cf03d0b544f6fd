package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.ClampRating.Verdict;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.material.StringSpec;
import org.hoopwright.units.Force;

/**
 * Which starting clamps are in use, and where one serves besides the start: behind a machine clamp,
 * and as a third clamp that holds an end until its knot. What it had to refuse it says at the end.
 * Confined to one call of the planner.
 *
 * <p>Source of both uses: Racquet Sports Industry, "Starting clamp", 2004/03. That none is set in
 * the head zone is common practice, no source.
 */
final class StartingClamps {

  /**
   * Where a clamp is to hold.
   *
   * @param span the span, just pulled
   * @param at the hole where its tail leaves
   * @param pull what it was pulled at
   * @param firstCross whether a starting clamp must be left for the first cross meanwhile
   */
  record Place(SpanId span, HoleId at, Force pull, boolean firstCross) {}

  private enum Why {
    HEAD_ZONE("there it would sit in the head zone, where strings shear most"),
    NONE_FREE("no starting clamp is free then"),
    LETS_GO("the starting clamps were tested and let a full pull of this string go");

    private final String words;

    Why(String words) {
      this.words = words;
    }
  }

  /** How many holes a finding names before it only counts them. */
  private static final int NAMED = 6;

  private final Bed bed;
  private final Job job;
  private final Set<String> used = new TreeSet<>();
  private final Set<SpanId> pulled = new HashSet<>(); // looked up, never gone through
  private final Map<Why, Set<HoleId>> notBehind = new EnumMap<>(Why.class);
  private final Map<Why, Set<HoleId>> notThird = new EnumMap<>(Why.class);

  StartingClamps(Bed bed, Job job) {
    this.bed = bed;
    this.job = job;
  }

  /** A span has had a pull of its own. */
  void pulled(SpanId span) {
    pulled.add(span);
  }

  /** Takes a free one that the plan cannot do without. */
  String take() {
    for (int i = 1; ; i++) {
      String name = "starting-" + i;
      if (used.add(name)) {
        return name;
      }
    }
  }

  /** Says that this one is in use. */
  void take(String name) {
    used.add(name);
  }

  void giveBack(String name) {
    used.remove(name);
  }

  /** The clamp to set behind the machine clamp at this place; empty when there is to be none. */
  Optional<String> behind(Place place) {
    boolean wanted =
        switch (job.backUp()) {
          case NEVER -> false;
          case ALWAYS -> true;
          case AS_NEEDED -> ratedTooLow(place) || alone(place.span());
        };
    return wanted ? free(place, notBehind) : Optional.empty();
  }

  /**
   * The clamp that alone holds an end until its knot; empty when a machine clamp is to.
   *
   * @param place where the end waits
   * @param away whether a machine clamp would sit away from the frame, or find no place
   */
  Optional<String> third(Place place, boolean away) {
    double pull = place.pull().newtons();
    Verdict verdict = job.bench().startingClampRating(string(place)).verdict(pull, pull);
    boolean wanted =
        switch (job.thirdClamp()) {
          case NEVER -> false;
          case ALWAYS -> true;
          case AS_NEEDED -> away && verdict == Verdict.HOLDS;
        };
    if (!wanted) {
      return Optional.empty();
    }
    if (verdict == Verdict.SLIPS || verdict == Verdict.MAY_SLIP) {
      return refuse(Why.LETS_GO, place, notThird);
    }
    return free(place, notThird);
  }

  private StringSpec string(Place place) {
    return job.string(place.span(), bed.layout());
  }

  /** Whether the machine clamps were tested with this string and not held so much. */
  private boolean ratedTooLow(Place place) {
    ClampRating rating = job.bench().machineClampRating(string(place));
    double pull = place.pull().newtons();
    return !rating.equals(ClampRating.unknown()) && rating.verdict(pull, pull) != Verdict.HOLDS;
  }

  /** Whether a floating clamp would find no tight neighbour. */
  private boolean alone(SpanId span) {
    return job.bench().machineClampKind().needsNeighbour()
        && bed.beside(span).stream().noneMatch(pulled::contains);
  }

  private Optional<String> free(Place place, Map<Why, Set<HoleId>> refused) {
    if (bed.inHeadZone(place.at())) {
      return refuse(Why.HEAD_ZONE, place, refused);
    }
    int left = job.bench().startingClamps() - used.size() - (place.firstCross() ? 1 : 0);
    return left > 0 ? Optional.of(take()) : refuse(Why.NONE_FREE, place, refused);
  }

  private static Optional<String> refuse(Why why, Place place, Map<Why, Set<HoleId>> refused) {
    refused.computeIfAbsent(why, w -> new TreeSet<>()).add(place.at());
    return Optional.empty();
  }

  /** What was called for and could not be had. */
  List<Finding> refusals() {
    List<Finding> findings = new ArrayList<>();
    notBehind.forEach(
        (why, holes) -> findings.add(refusal("backs up the machine clamp", why, holes)));
    notThird.forEach(
        (why, holes) -> findings.add(refusal("holds the end that waits for its knot", why, holes)));
    return findings;
  }

  private static Finding refusal(String does, Why why, Set<HoleId> holes) {
    Finding.Builder finding =
        Finding.of(FindingCode.START_CLAMP_REFUSED)
            .fact("holes", holes.size())
            .message("No starting clamp " + does + " at " + names(holes) + ": " + why.words + ".")
            .fix(
                switch (why) {
                  case NONE_FREE -> "Have another starting clamp at hand, or go without.";
                  case HEAD_ZONE ->
                      "See that the machine clamp holds alone there: clean and test it, or pull less.";
                  case LETS_GO -> "Clean the starting clamps and test them again, or pull less.";
                });
    holes.forEach(finding::about);
    return finding.build();
  }

  private static String names(Set<HoleId> holes) {
    String named =
        holes.stream().limit(NAMED).map(HoleId::toString).collect(Collectors.joining(", "));
    return holes.size() > NAMED ? named + " and " + (holes.size() - NAMED) + " more" : named;
  }
}
