package org.hoopwright;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Layout;
import org.hoopwright.route.Obstacle;
import org.hoopwright.route.RouteResult;

/**
 * Says why a layout has no route: one finding on the whole, and a note at each fact's own place.
 */
final class NoRoute {

  private NoRoute() {}

  static List<Finding> findings(Layout layout, RouteResult routes) {
    List<Obstacle> obstacles = routes.obstacles();
    Finding.Builder whole = Finding.of(FindingCode.NO_ROUTE);
    obstacles.forEach(o -> whole.about(o.about()));
    String pointer =
        obstacles.stream().map(Obstacle::pointer).filter(p -> !p.isEmpty()).findFirst().orElse("");
    List<Finding> findings = new ArrayList<>();
    findings.add(
        whole
            .at(pointer, layout.places())
            .message(message(obstacles))
            .fix(fix(obstacles, routes.lift()))
            .build());
    // One fact alone has its place in the finding above.
    if (obstacles.size() > 1) {
      for (Obstacle o : obstacles) {
        if (!o.pointer().isEmpty()) {
          findings.add(
              Finding.of(FindingCode.ROUTE_OBSTACLE)
                  .at(o.pointer(), layout.places())
                  .about(o.about())
                  .message("This helps to forbid every route: " + o.what())
                  .fix(o.lift())
                  .build());
        }
      }
    }
    return findings;
  }

  private static String message(List<Obstacle> obstacles) {
    if (obstacles.isEmpty()) {
      return "No route exists.";
    }
    if (obstacles.size() == 1) {
      return "No route exists, and this alone forbids every one: (1) " + obstacles.get(0).what();
    }
    StringBuilder what =
        new StringBuilder("No route exists; it takes these together to forbid every one:");
    for (int i = 0; i < obstacles.size(); i++) {
      what.append(" (").append(i + 1).append(") ").append(obstacles.get(i).what());
    }
    return what.toString();
  }

  private static String fix(List<Obstacle> obstacles, List<Obstacle> lift) {
    if (lift.isEmpty()) {
      return String.join(" Or: ", obstacles.stream().map(Obstacle::lift).toList());
    }
    if (lift.size() == 1) {
      return lift.get(0).lift();
    }
    return "It takes all of these: "
        + String.join(" And: ", lift.stream().map(Obstacle::lift).toList());
  }
}
