package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hoopwright.frame.Layout;
import org.hoopwright.material.Material;
import org.hoopwright.route.Piece;

/**
 * What a plan needs of a string, against what there is of it.
 *
 * <p>Lengths of string are estimates. The most is what the plan says to cut. The least is what is
 * left of that when the string stretches as much as its kind does, and when what reaches to the
 * tensioner at the last pull serves as the knot's tail after it; nothing is rounded up.
 *
 * @param pieces the indices of the pieces that are cut from this string, in order
 * @param leastMm what the pieces need at the least, in mm
 * @param mostMm what the plan says to cut for them, in mm; not less than the least
 * @param atHandMm what there is, in mm
 */
public record StringNeed(List<Integer> pieces, double leastMm, double mostMm, double atHandMm) {

  /** Copies the list. */
  public StringNeed {
    pieces = List.copyOf(pieces);
  }

  /** Whether the string at hand is enough. */
  public enum Verdict {
    /** As much as the plan says to cut. */
    ENOUGH("enough"),
    /** Less than the plan says to cut, but it may do. */
    TIGHT("tight"),
    /** Less than the least. */
    SHORT("short");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    /** The word used in plans. */
    public String word() {
      return word;
    }
  }

  /** The verdict. */
  public Verdict verdict() {
    if (atHandMm >= mostMm) {
      return Verdict.ENOUGH;
    }
    return atHandMm >= leastMm ? Verdict.TIGHT : Verdict.SHORT;
  }

  /** How many such jobs it is enough for, in whole. */
  public int jobs() {
    return (int) Math.floor(atHandMm / mostMm);
  }

  /**
   * What a plan needs of each string that its job has at hand: all pieces together of one length;
   * each piece of its own when there are two lengths or two different strings. Empty when the job
   * does not say what is at hand.
   */
  public static List<StringNeed> of(BenchPlan plan) {
    return plan.job().stringAtHand().map(s -> of(plan, s)).orElse(List.of());
  }

  private static List<StringNeed> of(BenchPlan plan, StringAtHand at) {
    int count = plan.route().pieces().size();
    if (count == 1 || !(at.isPack() || plan.job().hybrid(plan.bed().layout()))) {
      return List.of(of(plan, IntStream.range(0, count).boxed().toList(), at.mainsMm()));
    }
    List<StringNeed> needs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean crosses = plan.route().pieces().get(i).role() == Piece.Role.CROSSES;
      double mm = crosses ? at.crossesMm().orElse(at.mainsMm()) : at.mainsMm();
      needs.add(of(plan, List.of(i), mm));
    }
    return List.copyOf(needs);
  }

  private static StringNeed of(BenchPlan plan, List<Integer> pieces, double atHandMm) {
    double least = 0;
    double most = 0;
    for (int piece : pieces) {
      most += plan.cutLengthsMm().get(piece);
    }
    for (EndLength end : plan.lengths()) {
      if (pieces.contains(end.piece())) {
        least += leastMm(end, material(plan, end.piece()));
      }
    }
    return new StringNeed(pieces, Math.min(least, most), most, atHandMm);
  }

  private static double leastMm(EndLength end, Material material) {
    double stretch = end.stretchMm() * material.maxStretch() / material.minStretch();
    return end.spansMm()
        + end.runsMm()
        + end.frameMm()
        + stretch
        + Math.max(end.knotMm(), end.reachMm());
  }

  private static Material material(BenchPlan plan, int piece) {
    Layout layout = plan.bed().layout();
    return (plan.route().pieces().get(piece).role() == Piece.Role.CROSSES
            ? plan.job().crossesString(layout)
            : plan.job().mainsString(layout))
        .material();
  }
}
