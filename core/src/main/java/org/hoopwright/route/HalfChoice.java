package org.hoopwright.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Ring;
import org.jspecify.annotations.Nullable;

/**
 * Chooses a half of the frame's outside for each run of one side: fewest pairs one upon the other,
 * then fewest runs of mains against their habit, then fewest of crosses, by dynamic programming
 * along the side.
 *
 * <p>Along the side only the halves of the runs under way matter. Of these there is at most one
 * between neighbouring mains and one between neighbouring crosses; the others lead to knots, outer
 * mains and early crosses, so that they are few and two to their number is small.
 */
final class HalfChoice {

  // One number that compares as the three counts do; no side has a million runs.
  private static final long STACKED = 1L << 40;
  private static final long MAINS_AGAINST_HABIT = 1L << 20;
  private static final long CROSSES_AGAINST_HABIT = 1;

  /** A choice for the runs so far: what it costs, and how it came about. */
  private record Choice(long cost, Half half, @Nullable Choice earlier) {
    static final Choice NOTHING_LAID = new Choice(0, Half.FACE, null);

    boolean betterThan(@Nullable Choice other) {
      return other == null || cost < other.cost;
    }
  }

  private HalfChoice() {}

  /** The halves of these runs of one side, given in time order. */
  static Map<Run, Half> of(Ring ring, List<Run> runs) {
    List<Run> along = new ArrayList<>(runs);
    along.sort(Comparator.comparingInt(run -> low(ring, run))); // stable: the earlier first
    List<Run> underWay = new ArrayList<>();
    // By the halves of the runs under way, one bit each; set for the back.
    Map<Long, Choice> choices = new LinkedHashMap<>();
    choices.put(0L, Choice.NOTHING_LAID);
    for (Run run : along) {
      choices = passed(ring, run, underWay, choices);
      Map<Long, Choice> next = new LinkedHashMap<>();
      for (Map.Entry<Long, Choice> entry : choices.entrySet()) {
        for (Half half : Half.values()) {
          long bits = entry.getKey();
          int same = half == Half.BACK ? Long.bitCount(bits) : zeros(bits, underWay.size());
          Choice c = entry.getValue();
          Choice longer = new Choice(c.cost + same * STACKED + againstHabit(run, half), half, c);
          keep(next, half == Half.BACK ? bits | 1L << underWay.size() : bits, longer);
        }
      }
      underWay.add(run);
      choices = next;
    }
    return read(along, choices);
  }

  private static int zeros(long bits, int of) {
    return of - Long.bitCount(bits);
  }

  /** Forgets the halves of the runs that have ended where this one begins. */
  private static Map<Long, Choice> passed(
      Ring ring, Run run, List<Run> underWay, Map<Long, Choice> choices) {
    List<Integer> stay = new ArrayList<>();
    for (int i = 0; i < underWay.size(); i++) {
      if (high(ring, underWay.get(i)) > low(ring, run)) {
        stay.add(i);
      }
    }
    if (stay.size() == underWay.size()) {
      return choices;
    }
    Map<Long, Choice> fewer = new LinkedHashMap<>();
    for (Map.Entry<Long, Choice> entry : choices.entrySet()) {
      long bits = 0;
      for (int i = 0; i < stay.size(); i++) {
        bits |= (entry.getKey() >> stay.get(i) & 1) << i;
      }
      keep(fewer, bits, entry.getValue());
    }
    List<Run> staying = stay.stream().map(underWay::get).toList();
    underWay.clear();
    underWay.addAll(staying);
    return fewer;
  }

  private static void keep(Map<Long, Choice> choices, long bits, Choice choice) {
    if (choice.betterThan(choices.get(bits))) {
      choices.put(bits, choice);
    }
  }

  private static Map<Run, Half> read(List<Run> along, Map<Long, Choice> choices) {
    Choice best = null;
    for (Choice choice : choices.values()) {
      if (choice.betterThan(best)) {
        best = choice;
      }
    }
    Map<Run, Half> halves = new HashMap<>();
    for (int i = along.size() - 1; i >= 0 && best != null; i--) {
      halves.put(along.get(i), best.half);
      best = best.earlier;
    }
    return halves;
  }

  private static long againstHabit(Run run, Half half) {
    Optional<Half> habit = habit(run);
    return habit.isEmpty() || habit.get() == half
        ? 0
        : half == Half.BACK ? MAINS_AGAINST_HABIT : CROSSES_AGAINST_HABIT;
  }

  /**
   * The half that a run takes where it is free: the face between mains, the back between crosses;
   * none between a main and a cross. Which is which is our choice; that it is always the same one
   * keeps runs parallel.
   */
  static Optional<Half> habit(Run run) {
    boolean main = joins(run, SpanId::isMain);
    boolean cross = joins(run, SpanId::isCross);
    return main && cross ? Optional.empty() : Optional.of(main ? Half.FACE : Half.BACK);
  }

  private static boolean joins(Run run, Predicate<SpanId> kind) {
    return run.after().filter(kind).isPresent() || run.before().filter(kind).isPresent();
  }

  /** The place of a run's end nearer the head. */
  static int low(Ring ring, Run run) {
    return Math.min(ring.place(run.from()), ring.place(run.to()));
  }

  /** The place of a run's end nearer the throat. */
  static int high(Ring ring, Run run) {
    return Math.max(ring.place(run.from()), ring.place(run.to()));
  }
}
