package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;

/** A hole named under crosses.skip that no cross could take anyway. */
final class CrossesSkipIdle extends Rule {

  CrossesSkipIdle() {
    super(FindingCode.CROSSES_SKIP_IDLE, Stage.BED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Layout layout = facts.layout();
    Ring ring = facts.ring();
    for (int i = 0; i < layout.crossesSkip().size(); i++) {
      HoleRef ref = layout.crossesSkip().get(i);
      boolean idle =
          ref.holes().stream()
              .allMatch(
                  h ->
                      ring.isBlocked(h)
                          || (facts.bed().labels().of(h.side()).get(ring.place(h)).main()
                              && !ring.isShared(h)));
      if (idle) {
        out.accept(
            finding()
                .message(
                    "crosses.skip names %s, which no cross could take: it carries a main or is blocked."
                        .formatted(ref))
                .at("/crosses/skip/" + i, layout.places())
                .about(ref.holes())
                .fix("Leave it out.")
                .patch(PatchStep.remove("/crosses/skip/" + i))
                .build());
      }
    }
  }
}
