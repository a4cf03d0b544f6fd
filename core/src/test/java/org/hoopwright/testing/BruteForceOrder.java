package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.bed.SpanId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.jspecify.annotations.Nullable;

/** A time order as it is written down, and whether every knot found its anchor strung. */
final class BruteForceOrder {

  private final List<Moment> moments = new ArrayList<>();
  private final Set<SpanId> strung = new HashSet<>();
  private @Nullable Knot waiting;
  private @Nullable Moment waitingMoment;
  private boolean missed;

  void pass(int piece, EndName end, List<Pass> passes, int i, boolean isThere) {
    if (isThere) {
      moments.add(new Moment(piece, end, Moment.What.PASS, i));
      strung.add(passes.get(i).span());
      if (waiting != null && waitingMoment != null && strung.contains(waiting.anchor())) {
        moments.add(waitingMoment);
        waiting = null;
      }
    }
  }

  void clamp() {
    moments.add(new Moment(1, EndName.START, Moment.What.CLAMP, -1));
  }

  /** Ties a knot; one whose anchor is not in yet waits for it, or is missed. */
  void knotOrWait(int piece, EndName end, Knot knot, boolean mayWait) {
    Moment moment = new Moment(piece, end, Moment.What.KNOT, -1);
    if (strung.contains(knot.anchor())) {
      moments.add(moment);
    } else if (mayWait) {
      waiting = knot;
      waitingMoment = moment;
    } else {
      missed = true;
    }
  }

  boolean legal() {
    return !missed && waiting == null;
  }

  List<Moment> moments() {
    return List.copyOf(moments);
  }
}
