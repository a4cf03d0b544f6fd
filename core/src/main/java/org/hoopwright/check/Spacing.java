package org.hoopwright.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.hoopwright.bed.Span;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;

/** Distances between neighbouring strings, in mm, measured on the axes of the hoop. */
final class Spacing {

  private Spacing() {}

  /** Where a main crosses the middle of the hoop's length. */
  static double xAtMiddle(Span main) {
    Point a = main.fromPoint();
    Point b = main.toPoint();
    double t = a.y() == b.y() ? 0.5 : Math.max(0, Math.min(1, a.y() / (a.y() - b.y())));
    return a.x() + t * (b.x() - a.x());
  }

  /** Where a cross crosses the long axis. */
  static double yAtMiddle(Span cross) {
    Point a = cross.fromPoint();
    Point b = cross.toPoint();
    double t = a.x() == b.x() ? 0.5 : Math.max(0, Math.min(1, a.x() / (a.x() - b.x())));
    return a.y() + t * (b.y() - a.y());
  }

  /**
   * Whether the places of these strings were measured: by offsets, or by coordinates of all their
   * holes. What the arc law gives is good for the order of the work, not for judging a pattern.
   */
  static boolean measured(Layout layout, List<Span> spans) {
    boolean offsets =
        spans.get(0).id().isCross()
            ? layout.crossesOffsets().isPresent()
            : layout.mainsOffsets().isPresent();
    Set<HoleId> stated = new HashSet<>();
    layout.at().keySet().forEach(ref -> stated.addAll(ref.holes()));
    return offsets
        || spans.stream().allMatch(s -> stated.contains(s.from()) && stated.contains(s.to()));
  }

  /** From each string to the next, along what is measured. */
  static List<Double> gaps(List<Span> spans, ToDoubleFunction<Span> at) {
    List<Double> gaps = new ArrayList<>();
    for (int i = 1; i < spans.size(); i++) {
      gaps.add(at.applyAsDouble(spans.get(i)) - at.applyAsDouble(spans.get(i - 1)));
    }
    return gaps;
  }

  /** The mean of the gaps before and after one. */
  static double beside(List<Double> gaps, int i) {
    double sum = 0;
    int n = 0;
    if (i > 0) {
      sum += gaps.get(i - 1);
      n++;
    }
    if (i + 1 < gaps.size()) {
      sum += gaps.get(i + 1);
      n++;
    }
    return n == 0 ? gaps.get(i) : sum / n;
  }

  /** The gaps that are so many times wider, or narrower, than those beside them. */
  static List<Integer> odd(List<Double> gaps, double ratio) {
    List<Integer> odd = new ArrayList<>();
    for (int i = 0; i < gaps.size(); i++) {
      double beside = beside(gaps, i);
      if (gaps.get(i) > ratio * beside || gaps.get(i) < beside / ratio) {
        odd.add(i);
      }
    }
    return odd;
  }

  /** The mean; 0 of nothing. */
  static double mean(List<Double> values) {
    return values.stream().mapToDouble(v -> v).average().orElse(0);
  }

  /** The middle value; 0 of nothing. */
  static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    return sorted.isEmpty() ? 0 : sorted.get(sorted.size() / 2);
  }
}
