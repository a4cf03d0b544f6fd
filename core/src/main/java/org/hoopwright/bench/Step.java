package org.hoopwright.bench;

import java.util.List;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.units.Force;

/** One step at the bench. Each has one plain sentence for the person, {@link #say()}. */
public sealed interface Step {

  /** One plain sentence for the person at the bench. */
  String say();

  /** The word of the step in plan files, such as {@code set-clamp}. */
  String word();

  /**
   * Cut a piece from the reel or pack.
   *
   * @param piece index of the piece, from 0
   * @param lengthMm length, in mm
   * @param say the sentence
   */
  record Cut(int piece, double lengthMm, String say) implements Step {
    @Override
    public String word() {
      return "cut";
    }
  }

  /**
   * Lead an end of string along the frame to a main and through it, with no cross to weave.
   *
   * @param span the span
   * @param from the hole where it enters
   * @param to the hole where it comes out
   * @param piece index of the piece
   * @param end which end
   * @param say the sentence
   */
  record Lace(SpanId span, HoleId from, HoleId to, int piece, EndName end, String say)
      implements Step {
    @Override
    public String word() {
      return "lace";
    }
  }

  /**
   * Lead an end of string along the frame to a span and weave it through those it meets.
   *
   * @param span the span
   * @param from the hole where it enters
   * @param to the hole where it comes out
   * @param piece index of the piece
   * @param end which end
   * @param say the sentence
   */
  record Weave(SpanId span, HoleId from, HoleId to, int piece, EndName end, String say)
      implements Step {
    @Override
    public String word() {
      return "weave";
    }
  }

  /**
   * Slip a main out again after the shared pull.
   *
   * @param span the span
   * @param piece index of the piece
   * @param end which end
   * @param say the sentence
   */
  record Unlace(SpanId span, int piece, EndName end, String say) implements Step {
    @Override
    public String word() {
      return "unlace";
    }
  }

  /**
   * Take every clamp and knot of a piece off by cutting it out of the frame.
   *
   * @param piece index of the piece
   * @param say the sentence
   */
  record CutOut(int piece, String say) implements Step {
    @Override
    public String word() {
      return "cut-out";
    }
  }

  /**
   * Grip one tail or two and pull.
   *
   * @param tails the spans whose tails are gripped, one or two
   * @param at the holes where those tails leave the frame, in the same order
   * @param tension the reference tension, on one tail or on both together
   * @param say the sentence
   */
  record Pull(List<SpanId> tails, List<HoleId> at, Force tension, String say) implements Step {
    /** Copies the lists. */
    public Pull {
      tails = List.copyOf(tails);
      at = List.copyOf(at);
    }

    @Override
    public String word() {
      return "pull";
    }
  }

  /**
   * Let the tensioner go.
   *
   * @param say the sentence
   */
  record Release(String say) implements Step {
    @Override
    public String word() {
      return "release";
    }
  }

  /**
   * Hold a tail by hand so that the string stays straight; it bears no tension.
   *
   * @param span the span whose tail is held
   * @param at the hole where the tail leaves
   * @param say the sentence
   */
  record Hold(SpanId span, HoleId at, String say) implements Step {
    @Override
    public String word() {
      return "hold";
    }
  }

  /**
   * Set a clamp.
   *
   * @param clamp which clamp: {@code machine-1}, {@code machine-2}, {@code starting-1}, …
   * @param span the span it bites; outside, the tail of that span
   * @param near the hole it sits near
   * @param distanceMm along the string: inside from the hole's inner mouth, outside from its outer
   *     mouth, to the near edge of the clamp
   * @param side inside or outside the hoop
   * @param say the sentence
   */
  record SetClamp(
      String clamp, SpanId span, HoleId near, double distanceMm, ClampSide side, String say)
      implements Step {
    @Override
    public String word() {
      return "set-clamp";
    }

    /** Whether one of the two sits outside behind the other, so that they share what they hold. */
    public boolean pairsWith(SetClamp other) {
      return side != other.side && span.equals(other.span) && near.equals(other.near);
    }
  }

  /**
   * Take a clamp off.
   *
   * @param clamp which clamp
   * @param say the sentence
   */
  record FreeClamp(String clamp, String say) implements Step {
    @Override
    public String word() {
      return "free-clamp";
    }
  }

  /**
   * Lead an end to its tie-off hole and knot it; or tie a starting knot.
   *
   * @param hole the tie-off hole
   * @param anchor the span it is tied round
   * @param kind which knot
   * @param piece index of the piece
   * @param end which end
   * @param say the sentence
   */
  record TieKnot(HoleId hole, SpanId anchor, Knot.Kind kind, int piece, EndName end, String say)
      implements Step {
    @Override
    public String word() {
      return "knot";
    }
  }

  /**
   * Trim the tail of a knotted end.
   *
   * @param piece index of the piece
   * @param end which end
   * @param say the sentence
   */
  record Trim(int piece, EndName end, String say) implements Step {
    @Override
    public String word() {
      return "trim";
    }
  }

  /**
   * Look before going on.
   *
   * @param say what to look at
   */
  record Check(String say) implements Step {
    @Override
    public String word() {
      return "check";
    }
  }
}
