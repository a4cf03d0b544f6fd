package org.hoopwright.route;

import java.util.List;
import java.util.Optional;

/**
 * A moment of a route together with what it is about.
 *
 * @param moment the moment
 * @param end the end that does it
 * @param pass the pass, for a moment that is one
 */
record RouteEvent(Moment moment, StringEnd end, Optional<Pass> pass) {

  /** The moments of a route whose parts fit together, in time order. */
  static List<RouteEvent> of(Route route) {
    return route.order().stream()
        .map(
            m -> {
              StringEnd end = route.pieces().get(m.piece()).end(m.end()).orElseThrow();
              return new RouteEvent(
                  m,
                  end,
                  m.what() == Moment.What.PASS
                      ? Optional.of(end.passes().get(m.pass()))
                      : Optional.empty());
            })
        .toList();
  }

  boolean isKnot() {
    return moment.what() == Moment.What.KNOT;
  }

  boolean isKnotOf(EndName name) {
    return isKnot() && end.name() == name;
  }

  boolean isPassOf(EndName name) {
    return pass.isPresent() && end.name() == name;
  }

  /** Whether it is one of the mains that its end opens with. */
  boolean isOpening(Route route) {
    return pass.isPresent() && moment.pass() < route.opening(end.name());
  }
}
