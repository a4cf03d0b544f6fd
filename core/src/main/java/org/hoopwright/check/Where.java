package org.hoopwright.check;

import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.geometry.Side;

/** JSON pointers to what places a hole or a string: what was measured, else the counts or rules. */
final class Where {

  private Where() {}

  /** What places a hole. */
  static String position(Facts facts, HoleId hole) {
    String at = LayoutPointers.member("/holes/at", facts.layout().at().keySet(), hole);
    if (!at.equals("/holes/at")) {
      return at;
    }
    return facts
        .laid()
        .map(bed -> bed.spansAt(hole))
        .filter(spans -> !spans.isEmpty())
        .map(spans -> string(facts, facts.bed().span(spans.get(0)), hole.end()))
        .filter(pointer -> pointer.contains("offsets"))
        .orElse("/holes/" + hole.end().word());
  }

  /** What places a main. */
  static String main(Facts facts, Span main) {
    return string(facts, main, End.HEAD);
  }

  /** What places a cross. */
  static String cross(Facts facts, Span cross) {
    return string(facts, cross, End.HEAD);
  }

  private static String string(Facts facts, Span span, End end) {
    Layout layout = facts.layout();
    SpanId id = span.id();
    if (id.isCross()) {
      return layout.crossesOffsets().isPresent()
          ? LayoutPointers.crossOffset(layout, Side.LEFT, id.number() - 1)
          : "/crosses";
    }
    Side side = id.side().orElseThrow();
    return layout.mainsOffsets().isPresent()
        ? LayoutPointers.mainOffset(layout, side, end, id.number() - 1)
        : "/mains";
  }
}
