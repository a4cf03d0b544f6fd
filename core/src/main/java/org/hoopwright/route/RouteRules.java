package org.hoopwright.route;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;

/**
 * The rules in force in one search: what the layout and the request forbid, less the facts that are
 * set aside to explain why no route exists.
 */
final class RouteRules {

  /** Longer than any side's list, so that it limits nothing. */
  private static final int UNLIMITED = 2 * HoleId.MAX_NUMBER;

  private final Layout layout;
  private final RouteRequest request;
  private final Set<Fact> setAside;

  RouteRules(Layout layout, RouteRequest request, Set<Fact> setAside) {
    this.layout = layout;
    this.request = request;
    this.setAside = setAside;
  }

  /** Something that the layout or the caller states and that may forbid routes. */
  sealed interface Fact {
    /** A limit or wish of the caller, or a rule of the layout as a whole. */
    enum Single implements Fact {
      RUN_LIMIT,
      KNOT_LIMIT,
      TIE_OFF_HOLES,
      WANTED_PIECES,
      WANTED_DIRECTION,
      WANTED_START,
      OTHER_STRING,
      LAYOUT_START,
      NO_AROUND_THE_WORLD,
      NO_STARTING_CLAMP
    }

    /** A forbidden stretch, by its index in the layout. */
    record Forbidden(int index) implements Fact {}
  }

  private boolean aside(Fact fact) {
    return setAside.contains(fact);
  }

  int runLimit() {
    return aside(Fact.Single.RUN_LIMIT) ? UNLIMITED : request.runLimit();
  }

  int knotLimit() {
    return aside(Fact.Single.KNOT_LIMIT) ? UNLIMITED : request.knotLimit();
  }

  OptionalInt pieces() {
    return aside(Fact.Single.WANTED_PIECES) ? OptionalInt.empty() : request.pieces();
  }

  boolean allows(Direction direction) {
    return aside(Fact.Single.WANTED_DIRECTION)
        || request.direction().isEmpty()
        || request.direction().get() == direction;
  }

  boolean allows(End mainsStart) {
    Optional<End> wanted =
        aside(Fact.Single.WANTED_START) ? Optional.empty() : request.mainsStart();
    Optional<End> stated = aside(Fact.Single.LAYOUT_START) ? Optional.empty() : layout.mainsStart();
    return (wanted.isEmpty() || wanted.get() == mainsStart)
        && (stated.isEmpty() || stated.get() == mainsStart);
  }

  /** Whether a string of the mains may go on into crosses. */
  boolean mainsGoOn() {
    return !request.crossesOfOtherString() || aside(Fact.Single.OTHER_STRING);
  }

  boolean aroundTheWorld() {
    return layout.aroundTheWorld() || aside(Fact.Single.NO_AROUND_THE_WORLD);
  }

  boolean startingClamp() {
    return request.startingClamps() > 0 || aside(Fact.Single.NO_STARTING_CLAMP);
  }

  /** Whether string may lie between two neighbours of a side's list. */
  boolean stretchAllowed(Ring ring, HoleId a, HoleId b) {
    if (ring.runAllowed(a, b)) {
      return true;
    }
    for (int i = 0; i < layout.noRun().size(); i++) {
      if (!aside(new Fact.Forbidden(i)) && covers(ring, i, a, b)) {
        return false;
      }
    }
    return true;
  }

  private boolean covers(Ring ring, int index, HoleId a, HoleId b) {
    Optional<HoleId> from = layout.noRun().get(index).from().on(a.side()).filter(ring::has);
    Optional<HoleId> to = layout.noRun().get(index).to().on(a.side()).filter(ring::has);
    if (from.isEmpty() || to.isEmpty()) {
      return false;
    }
    int low = Math.min(ring.place(from.get()), ring.place(to.get()));
    int high = Math.max(ring.place(from.get()), ring.place(to.get()));
    return low <= Math.min(ring.place(a), ring.place(b))
        && Math.max(ring.place(a), ring.place(b)) <= high;
  }

  /**
   * Whether a knot can be tied in a hole through which this many spans run; it needs one to be tied
   * round.
   */
  boolean knotPlace(Ring ring, HoleId hole, int passes) {
    if (passes == 0) {
      return false;
    }
    if (aside(Fact.Single.TIE_OFF_HOLES)) {
      return true;
    }
    return ring.isTieOff(hole) && passes + 1 <= ring.bore(hole);
  }
}
