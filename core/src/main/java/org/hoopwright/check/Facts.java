package org.hoopwright.check;

import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Outline;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteResult;

/**
 * What is known when the rules are asked.
 *
 * @param draft the layout as far as it is known
 * @param ring its holes
 * @param outline its hoop, if that is one
 * @param laid its bed, if every string has its holes
 * @param routes the routes, if they were looked for
 */
record Facts(
    Draft draft,
    Ring ring,
    Optional<Outline> outline,
    Optional<Bed> laid,
    Optional<RouteResult> routes) {

  static Facts of(Draft draft, Optional<Bed> bed, Optional<RouteResult> routes) {
    Layout layout = draft.layout();
    return new Facts(draft, Ring.of(layout), HoopOutline.of(layout).outline(), bed, routes);
  }

  Layout layout() {
    return draft.layout();
  }

  /** The bed; only rules that need one may ask. */
  Bed bed() {
    return laid.orElseThrow();
  }

  /** The best route; only rules that need one may ask. */
  Route route() {
    return routes.orElseThrow().ranked().get(0).route();
  }
}
