package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** A main or a cross that meets no other string. */
final class SpanAlone extends Rule {

  SpanAlone() {
    super(FindingCode.SPAN_ALONE, Stage.BED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Span span : facts.bed().spans()) {
      boolean cross = span.id().isCross();
      if (isAlone(facts.bed(), span.id())) {
        out.accept(
            finding()
                .message(
                    "%s %s, from %s to %s, meets no %s."
                        .formatted(
                            cross ? "Cross" : "Main",
                            span.id(),
                            span.from(),
                            span.to(),
                            cross ? "main" : "cross"))
                .at(cross ? "/crosses" : "/mains", facts.layout().places())
                .about(span.id())
                .fix("Check mains.skip and crosses.skip: the string would not be held by a weave.")
                .build());
      }
    }
  }

  private static boolean isAlone(Bed bed, SpanId span) {
    return span.isCross()
        ? bed.mainsLeftToRight().stream().noneMatch(main -> bed.meets(main, span))
        : bed.crosses().stream().noneMatch(cross -> bed.meets(span, cross.id()));
  }
}
