package org.hoopwright;

import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.route.RouteResult;

/** What came of asking for a plan. */
public sealed interface Outcome {

  /** The findings that belong to this outcome, by place. */
  List<Finding> findings();

  /** The plan, when there is one. */
  default Optional<Plan> plan() {
    return this instanceof Planned p ? Optional.of(p.best()) : Optional.empty();
  }

  /**
   * There is a plan.
   *
   * @param best the plan of the best route
   * @param routes all routes, ranked
   */
  record Planned(Plan best, RouteResult routes) implements Outcome {
    @Override
    public List<Finding> findings() {
      return best.findings();
    }
  }

  /**
   * The layout has errors; nothing was planned.
   *
   * @param findings all findings, at least one an error
   */
  record BadLayout(List<Finding> findings) implements Outcome {
    /** Copies the list. */
    public BadLayout {
      findings = List.copyOf(findings);
    }
  }

  /**
   * The layout is sound, but no route exists.
   *
   * @param findings what was found, one of them a {@code no-route} that tells why
   * @param routes how the search ended, with the smallest set of facts that forbid every route
   */
  record NoRoute(List<Finding> findings, RouteResult routes) implements Outcome {
    /** Copies the list. */
    public NoRoute {
      findings = List.copyOf(findings);
    }
  }

  /**
   * The search stopped at its limit or was cancelled.
   *
   * @param findings what was found about the layout
   * @param routes what the search had found so far; ranked among itself, but better routes may
   *     exist
   */
  record GaveUp(List<Finding> findings, RouteResult routes) implements Outcome {
    /** Copies the list. */
    public GaveUp {
      findings = List.copyOf(findings);
    }
  }
}
