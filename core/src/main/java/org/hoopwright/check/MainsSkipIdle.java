package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;

/** A hole named under mains.skip that the mains would not reach anyway. */
final class MainsSkipIdle extends Rule {

  MainsSkipIdle() {
    super(FindingCode.MAINS_SKIP_IDLE, Stage.BED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Layout layout = facts.layout();
    List<HoleRef> skip = layout.mainsSkip().orElse(List.of());
    for (int i = 0; i < skip.size(); i++) {
      boolean idle =
          skip.get(i).holes().stream()
              .allMatch(
                  h -> {
                    List<Span> mains = facts.bed().mains(h.side());
                    Span last = mains.get(mains.size() - 1);
                    HoleId outermost = h.end() == End.HEAD ? last.from() : last.to();
                    return h.number() > outermost.number();
                  });
      if (idle) {
        out.accept(
            finding()
                .message(
                    "mains.skip names %s, which lies beyond the outermost main."
                        .formatted(skip.get(i)))
                .at("/mains/skip/" + i, layout.places())
                .about(skip.get(i).holes())
                .fix("Leave it out, or check the count of mains.")
                .patch(PatchStep.remove("/mains/skip/" + i))
                .build());
      }
    }
  }
}
