package org.hoopwright.bed;

import java.util.List;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;

/**
 * One way to read a pattern off the holes.
 *
 * @param labelling what each hole carries, and what that costs
 * @param layout the layout with the skip rules, first and last cross and shared holes of this
 *     reading, and with {@code tieOffCandidates} as tie-off holes where it stated none
 * @param sharedCandidates holes that take two strings in this reading though the layout did not say
 *     that they can: their bore must be looked at
 * @param tieOffCandidates holes that are likely to be tie-off holes; their bore must be looked at.
 *     Empty when the layout stated tie-off holes
 */
public record Reading(
    Labelling labelling,
    Layout layout,
    List<HoleId> sharedCandidates,
    List<HoleId> tieOffCandidates) {

  /** Copies the lists. */
  public Reading {
    sharedCandidates = List.copyOf(sharedCandidates);
    tieOffCandidates = List.copyOf(tieOffCandidates);
  }
}
