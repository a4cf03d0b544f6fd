package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;

/**
 * String that nothing holds on one side, so that it is slack. The same for every choice of
 * parameters, so it is found once a step.
 *
 * @param span the span
 * @param stub the hole whose stub it is; empty for the span's main part
 */
record Slack(SpanId span, Optional<HoleId> stub) {

  /** Everything that is slack now. */
  static List<Slack> of(BenchState state) {
    List<Slack> all = new ArrayList<>();
    for (StringPath path : state.paths()) {
      Holding holding = new Holding(state, path);
      List<StringPath.Stretch> line = path.line();
      for (int i = 0; i < line.size(); i++) {
        StringPath.Stretch s = line.get(i);
        if (holding.slackSide(i).isPresent()) {
          all.add(new Slack(s.span(), Optional.empty()));
        }
        if (!holding.lowOut(i)) {
          all.add(new Slack(s.span(), Optional.of(s.low())));
        }
        if (!holding.highOut(i)) {
          all.add(new Slack(s.span(), Optional.of(s.high())));
        }
      }
    }
    return all;
  }
}
