package org.hoopwright.weave;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.SpanId;

/**
 * Which crosses lie over which mains, as seen on the face of a frame that is strung or half strung.
 * Crossings that were not looked at are left open. Immutable.
 */
public final class ObservedWeave {

  private final Bed bed;
  private final Map<SpanId, Map<SpanId, Boolean>> over = new TreeMap<>(); // by cross, then main

  private ObservedWeave(Bed bed) {
    this.bed = bed;
  }

  /**
   * Reads a weave cross by cross: for each cross, from X1 down, one letter for each main that it
   * meets, from left to right as seen on the face.
   *
   * @param bed the bed
   * @param rows a row for each cross: {@code o} where the cross lies over the main, {@code u} where
   *     it lies under, {@code ?} where nobody looked; an empty row for a cross that is not in
   * @throws IllegalArgumentException when there is not a row for each cross, or a row has another
   *     letter or another length than its cross meets mains
   */
  public static ObservedWeave ofRows(Bed bed, List<String> rows) {
    if (rows.size() != bed.crossCount()) {
      throw new IllegalArgumentException(
          "The number of rows (%s) must be that of the crosses, %s.\nMaybe give an empty row for a cross that is not in."
              .formatted(rows.size(), bed.crossCount()));
    }
    ObservedWeave weave = new ObservedWeave(bed);
    for (int j = 1; j <= rows.size(); j++) {
      SpanId cross = SpanId.cross(j);
      String row = rows.get(j - 1);
      List<SpanId> mains = met(bed, cross);
      if (!row.isEmpty() && row.length() != mains.size()) {
        throw new IllegalArgumentException(
            "The row of %s (%s) must have %s letters, one for each main that it meets: %s to %s."
                .formatted(cross, row, mains.size(), mains.get(0), mains.get(mains.size() - 1)));
      }
      Map<SpanId, Boolean> seen = new TreeMap<>();
      for (int i = 0; i < row.length(); i++) {
        switch (row.charAt(i)) {
          case 'o' -> seen.put(mains.get(i), true);
          case 'u' -> seen.put(mains.get(i), false);
          case '?' -> {
            // Nobody looked.
          }
          default ->
              throw new IllegalArgumentException(
                  "The letters of a row (%s at %s) must be o, u or ?.".formatted(row, cross));
        }
      }
      weave.over.put(cross, seen);
    }
    return weave;
  }

  /** The mains that a cross meets, from left to right. */
  static List<SpanId> met(Bed bed, SpanId cross) {
    return bed.crossings(cross).stream().map(Crossing::main).toList();
  }

  /** The bed. */
  public Bed bed() {
    return bed;
  }

  /** Whether this cross was seen over this main; empty when nobody looked or they do not meet. */
  public Optional<Boolean> crossOver(SpanId cross, SpanId main) {
    return Optional.ofNullable(over.getOrDefault(cross, Map.of()).get(main));
  }

  /** The rows that {@link #ofRows} reads. */
  public List<String> rows() {
    List<String> rows = new ArrayList<>();
    for (int j = 1; j <= bed.crossCount(); j++) {
      SpanId cross = SpanId.cross(j);
      StringBuilder row = new StringBuilder();
      if (!over.getOrDefault(cross, Map.of()).isEmpty()) {
        for (SpanId main : met(bed, cross)) {
          row.append(crossOver(cross, main).map(o -> o ? 'o' : 'u').orElse('?'));
        }
      }
      rows.add(row.toString());
    }
    return rows;
  }
}
