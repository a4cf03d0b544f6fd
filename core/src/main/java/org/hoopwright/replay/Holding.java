package org.hoopwright.replay;

import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;

/**
 * What holds a piece of string at this moment. A span is held on one side when the string, followed
 * that way from its main part, meets a holder: a clamp, a knot, or the tensioner's grip.
 *
 * <p>A clamp inside a span bites both ways. The stretch between it and the hole it sits near is not
 * the span's main part: it may be slack. A clamp outside a hole leans on the frame there, so it
 * holds the span that comes out of that hole, and nothing that comes along the run.
 */
final class Holding {

  private final BenchState state;
  private final List<StringPath.Stretch> line;
  private final boolean[] lowOut; // a holder is met on leaving the stretch by its low hole
  private final boolean[] highOut;

  Holding(BenchState state, StringPath path) {
    this.state = state;
    line = path.line();
    int n = line.size();
    lowOut = new boolean[n];
    highOut = new boolean[n];
    boolean beyond = terminal(path.lowEnd());
    for (int i = 0; i < n; i++) {
      StringPath.Stretch s = line.get(i);
      lowOut[i] = beyond || state.clampOutside(s.span(), s.low()).isPresent();
      beyond = lowOut[i] || state.clampedInside(s.span());
    }
    beyond = terminal(path.highEnd());
    for (int i = n - 1; i >= 0; i--) {
      StringPath.Stretch s = line.get(i);
      highOut[i] = beyond || state.clampOutside(s.span(), s.high()).isPresent();
      beyond = highOut[i] || state.clampedInside(s.span());
    }
  }

  private boolean terminal(EndName end) {
    return state.knotted(end) || state.gripped(end);
  }

  /** Whether a holder is met when the string is followed out of this stretch by its low hole. */
  boolean lowOut(int i) {
    return lowOut[i];
  }

  /** Whether a holder is met when the string is followed out of this stretch by its high hole. */
  boolean highOut(int i) {
    return highOut[i];
  }

  /** The hole of this stretch on whose side nothing holds its main part; empty when it is held. */
  Optional<HoleId> slackSide(int i) {
    StringPath.Stretch s = line.get(i);
    if (!lowOut[i] && state.clampInside(s.span(), s.low()).isEmpty()) {
      return Optional.of(s.low());
    }
    if (!highOut[i] && state.clampInside(s.span(), s.high()).isEmpty()) {
      return Optional.of(s.high());
    }
    return Optional.empty();
  }

  /** The place of this span along the string; -1 when it is not on it. */
  int indexOf(SpanId span) {
    for (int i = 0; i < line.size(); i++) {
      if (line.get(i).span().equals(span)) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Why a grip does not pull the span next to it, in words; empty when it does.
   *
   * @param grip a grip that the state holds
   */
  Optional<String> obstacle(Grip grip) {
    int i = indexOf(grip.span());
    if (i < 0) {
      return Optional.of(grip.span() + " is not laced.");
    }
    StringPath.Stretch s = line.get(i);
    Optional<PlacedClamp> between = state.clampInside(grip.span(), grip.at());
    if (between.isPresent()) {
      return Optional.of(
          "The clamp %s near %s keeps the pull from %s."
              .formatted(between.get().name(), grip.at(), grip.span()));
    }
    boolean fromHigh = grip.at().equals(s.high());
    boolean held = state.clampedInside(grip.span()) || (fromHigh ? lowOut[i] : highOut[i]);
    return held
        ? Optional.empty()
        : Optional.of(
            "Nothing holds the string behind %s when its tail is pulled at %s."
                .formatted(grip.span(), grip.at()));
  }
}
