package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** What labels cost under a question: each term as it is written down, without any search. */
final class LabelCosts {

  private final LabelQuestion question;
  private final Ring ring;
  private final EachSide<SideMeasure> measures;

  LabelCosts(LabelQuestion question) {
    this.question = question;
    ring = Ring.of(question.layout());
    measures = new EachSide<>(measure(Side.LEFT), measure(Side.RIGHT));
  }

  private SideMeasure measure(Side side) {
    return new SideMeasure(
        ring,
        side,
        question.layout().mainsPerSide(),
        question.positions(),
        question.allowed().of(side),
        question.crossPitchMm().map(p -> p.of(side)).orElse(0.0),
        question.weights());
  }

  Ring ring() {
    return ring;
  }

  /** 0 for the left, 1 for the right. */
  static Side side(int index) {
    return index == 0 ? Side.LEFT : Side.RIGHT;
  }

  SideMeasure measure(int side) {
    return side == 0 ? measures.left() : measures.right();
  }

  /** Whether a hole may carry a string. */
  static boolean usable(Set<HoleLabel> labels) {
    return labels.size() > (labels.contains(HoleLabel.NONE) ? 1 : 0);
  }

  /** Cost of a hole that carries no string though it could. */
  long empty(Side side, int place) {
    return usable(question.allowed().of(side).get(place)) ? um(question.weights().empty()) : 0;
  }

  /** Cost of two strings in a hole. */
  long shared(Side side, int place) {
    boolean doubtful = question.doubtful().contains(ring.at(side, place));
    return um(question.weights().shared() + (doubtful ? question.weights().doubtful() : 0));
  }

  /** Cost of another label than the stated one. */
  long changed(Side side, int place, HoleLabel label) {
    return question.stated().isPresent() && question.stated().get().of(side).get(place) != label
        ? um(question.weights().changed())
        : 0;
  }

  private static long um(double mm) {
    return Math.round(mm * 1000);
  }

  /** The cost of these labels, term by term. */
  LabelCost of(Labels labels) {
    long[] sum = new long[7];
    List<List<Integer>> crosses = new ArrayList<>();
    for (Side side : Side.values()) {
      SideMeasure measure = measures.of(side);
      List<Integer> head = new ArrayList<>();
      List<Integer> throat = new ArrayList<>();
      List<Integer> cross = new ArrayList<>();
      for (int p = 0; p < measure.size; p++) {
        HoleLabel label = labels.of(side).get(p);
        sum[4] += label == HoleLabel.NONE ? empty(side, p) : 0;
        sum[5] += label == HoleLabel.BOTH ? shared(side, p) : 0;
        sum[6] += changed(side, p, label);
        if (label.main()) {
          if (p < measure.head) {
            head.add(p);
          } else {
            throat.add(0, p);
          }
        }
        if (label.cross()) {
          cross.add(p);
        }
      }
      for (int k = 0; k < head.size(); k++) {
        sum[0] += measure.mainSkew(head.get(k), throat.get(k));
      }
      for (List<Integer> end : List.of(head, throat)) {
        sum[2] += measure.axisGap(end.get(0));
        for (int k = 1; k < end.size(); k++) {
          sum[2] += measure.mainGap(end.get(k - 1), end.get(k));
        }
        sum[3] += measure.mainBorder(end.get(end.size() - 1));
      }
      for (int j = 1; j < cross.size(); j++) {
        sum[2] += measure.crossGap(cross.get(j - 1), cross.get(j));
      }
      sum[3] += measure.firstBorder(cross.get(0));
      sum[3] += measure.lastBorder(cross.get(cross.size() - 1));
      crosses.add(cross);
    }
    for (int j = 0; j < crosses.get(0).size(); j++) {
      sum[1] +=
          measures.left().crossSkew(crosses.get(0).get(j), measures.right(), crosses.get(1).get(j));
    }
    return new LabelCost(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5], sum[6]);
  }
}
