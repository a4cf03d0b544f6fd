package org.hoopwright.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.frame.HoleId;

/** Whether the parts of a route fit together, so that the rules can be asked at all. */
final class RouteFormCheck {

  /** The least frame. */
  private static final int LEAST_MAINS = 2;

  private static final int LEAST_CROSSES = 2;

  private final Bed bed;
  private final Route route;
  private final List<Violation> found = new ArrayList<>();

  private RouteFormCheck(Bed bed, Route route) {
    this.bed = bed;
    this.route = route;
  }

  static List<Violation> check(Bed bed, Route route) {
    RouteFormCheck check = new RouteFormCheck(bed, route);
    if (bed.mainsPerSide() < LEAST_MAINS || bed.crossCount() < LEAST_CROSSES) {
      check.report("The bed is below the least frame, 2 mains a side and 2 crosses.");
    }
    check.pieces();
    if (check.found.isEmpty()) {
      check.moments();
    }
    return List.copyOf(check.found);
  }

  private void report(String what) {
    found.add(new Violation(Violation.Rule.FORM, what));
  }

  private void pieces() {
    List<Piece.Role> roles = route.pieces().stream().map(Piece::role).toList();
    if (!roles.equals(List.of(Piece.Role.WHOLE))
        && !roles.equals(List.of(Piece.Role.MAINS, Piece.Role.CROSSES))) {
      report(
          "The pieces string %s, which is neither all in one nor mains and then crosses."
              .formatted(roles));
      return;
    }
    for (Piece piece : route.pieces()) {
      List<EndName> names = piece.ends().stream().map(StringEnd::name).toList();
      List<EndName> must =
          piece.role() == Piece.Role.CROSSES
              ? List.of(EndName.START, EndName.FINISH)
              : List.of(EndName.SHORT, EndName.LONG);
      if (!names.equals(must)) {
        report("A piece has the ends %s, not %s.".formatted(names, must));
      }
      piece.ends().forEach(this::end);
    }
  }

  private void end(StringEnd end) {
    String name = end.name().word();
    boolean start = end.name() == EndName.START;
    if (end.passes().isEmpty() != start) {
      report("The %s end strings %s spans.".formatted(name, end.passes().size()));
    }
    for (Pass pass : end.passes()) {
      Optional<Span> span = bed.find(pass.span());
      if (span.isEmpty()) {
        report("The bed has no span %s.".formatted(pass.span()));
      } else if (!span.get().uses(pass.from())
          || !span.get().other(pass.from()).equals(pass.to())) {
        report("The pass %s does not lead from hole to hole of its span.".formatted(pass));
      }
    }
    if (end.startingClamp().isPresent() && !start) {
      report("A starting clamp holds the %s end, and it may hold a start only.".formatted(name));
    }
    Knot.Kind kind =
        start && end.startingClamp().isEmpty() ? Knot.Kind.STARTING : Knot.Kind.TIE_OFF;
    if (end.finish().kind() != kind) {
      report(
          "The %s end has a %s, not a %s."
              .formatted(name, end.finish().kind().word(), kind.word()));
    }
    end.startingClamp().ifPresent(this::hole);
    hole(end.finish().hole());
    if (bed.find(end.finish().anchor()).isEmpty()) {
      report("The bed has no span %s to tie a knot round.".formatted(end.finish().anchor()));
    }
  }

  private void hole(HoleId hole) {
    if (!bed.ring().has(hole)) {
      report("The bed has no hole %s.".formatted(hole));
    }
  }

  /** Each pass of each end once and in its order, each knot once, each starting clamp once. */
  private void moments() {
    for (Moment m : route.order()) {
      if (m.piece() < 0
          || m.piece() >= route.pieces().size()
          || route.pieces().get(m.piece()).end(m.end()).isEmpty()) {
        report("The moment %s is about an end that the route does not have.".formatted(m));
        return;
      }
    }
    for (Piece piece : route.pieces()) {
      for (StringEnd end : piece.ends()) {
        List<Integer> passes = new ArrayList<>();
        int knots = 0;
        int clamps = 0;
        for (Moment m : route.order()) {
          if (m.end() == end.name()) {
            switch (m.what()) {
              case PASS -> passes.add(m.pass());
              case KNOT -> knots++;
              case CLAMP -> clamps++;
            }
          }
        }
        List<Integer> must = new ArrayList<>();
        for (int i = 0; i < end.passes().size(); i++) {
          must.add(i);
        }
        int mustClamps = end.startingClamp().isPresent() ? 1 : 0;
        if (!passes.equals(must) || knots != 1 || clamps != mustClamps) {
          report(
              "The time order has the passes %s, %s knots and %s starting clamps of the %s end."
                  .formatted(passes, knots, clamps, end.name().word()));
        }
      }
    }
  }
}
