package org.hoopwright;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.DetourSearch;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Job;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Obstacle;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.route.RouteSearch;

/** Ways round blocked holes that can be strung: the bed's detours, tried for routes. */
final class Detours {

  // Enough to see whether any usual frame has a route.
  private static final long ROUTE_NODES = 1_000_000;

  private Detours() {}

  static Detour of(Layout layout, Job job) {
    if (Findings.hasErrors(Checker.layout(layout))) {
      return new Detour.NoPattern();
    }
    DetourSearch.Result result = DetourSearch.search(layout);
    if (result.stated().isEmpty()) {
      return new Detour.NoPattern();
    }
    if (!result.needed() || StatedAssignment.assign(layout).bed().isPresent()) {
      return new Detour.NotNeeded();
    }
    RouteResult nearest = null;
    boolean proven = result.proven();
    int tried = 0;
    for (DetourSearch.Pattern pattern : result.patterns()) {
      RouteRequest request = request(pattern.bed(), job);
      Optional<Route> best = RouteSearch.best(pattern.bed(), request);
      if (best.isPresent()) {
        return found(result.stated().get(), pattern, best.get(), tried);
      }
      RouteResult routes = RouteSearch.search(pattern.bed(), request); // for the reasons
      proven &= routes.status() != RouteResult.Status.LIMIT_REACHED;
      nearest = nearest == null ? routes : nearest;
      tried++;
    }
    String why = nearest == null ? noPattern(layout, result.proven()) : noRoute(nearest, tried);
    return new Detour.None(why, proven && tried < DetourSearch.MOST);
  }

  private static RouteRequest request(Bed bed, Job job) {
    RouteRequest request = job.routeRequest(bed.layout());
    return request.toBuilder().maxNodes(Math.min(ROUTE_NODES, request.maxNodes())).build();
  }

  private static Detour.Found found(
      Bed stated, DetourSearch.Pattern pattern, Route route, int passedOver) {
    Bed bed = pattern.bed();
    List<Detour.Move> moves = new ArrayList<>();
    double skew = 0;
    for (Span now : bed.spans()) {
      Span before = stated.span(now.id());
      skew += skew(now) - skew(before);
      if (!now.from().equals(before.from()) || !now.to().equals(before.to())) {
        moves.add(
            new Detour.Move(
                now.id(), List.of(before.from(), before.to()), List.of(now.from(), now.to())));
      }
    }
    Set<HoleId> shared = new LinkedHashSet<>();
    for (Side side : Side.values()) {
      for (HoleId hole : bed.ring().list(side)) {
        if (bed.spansAt(hole).size() > 1 && stated.spansAt(hole).size() < 2) {
          shared.add(hole);
        }
      }
    }
    return new Detour.Found(
        bed, route, moves, List.copyOf(shared), pattern.doubtful(), skew, passedOver);
  }

  private static double skew(Span span) {
    return span.id().isCross()
        ? Math.abs(span.fromPoint().y() - span.toPoint().y())
        : Math.abs(Math.abs(span.fromPoint().x()) - Math.abs(span.toPoint().x()));
  }

  private static String noRoute(RouteResult nearest, int tried) {
    StringBuilder why =
        new StringBuilder(
            tried == 1
                ? "The one pattern that avoids the hole has no route."
                : "None of the %s nearest patterns has a route.".formatted(tried));
    for (Obstacle o : nearest.obstacles()) {
      why.append(' ').append(o.what());
    }
    return why.toString();
  }

  /** The fewest blocked holes and stated bores that together leave no pattern. */
  private static String noPattern(Layout layout, boolean proven) {
    if (!proven) {
      return "The search for a pattern ended at its limit.";
    }
    Layout least = layout;
    for (HoleRef ref : layout.blocked()) {
      Layout without =
          least.toBuilder()
              .blocked(least.blocked().stream().filter(r -> !r.equals(ref)).toList())
              .build();
      DetourSearch.Result result = DetourSearch.search(without);
      if (result.needed() && result.patterns().isEmpty()) {
        least = without;
      }
    }
    List<HoleRef> narrow = new ArrayList<>();
    for (HoleRef ref : layout.bore().keySet()) {
      if (layout.bore().get(ref) < 2) {
        narrow.add(ref);
      }
    }
    return "With %s blocked, no other hole can take its string%s."
        .formatted(
            words(least.blocked()),
            narrow.isEmpty() ? "" : "; the stated bore of " + words(narrow) + " is too small");
  }

  static String words(List<?> things) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < things.size(); i++) {
      text.append(i == 0 ? "" : i == things.size() - 1 ? " and " : ", ").append(things.get(i));
    }
    return text.toString();
  }

  /** The holes whose loss could not be worked round; on a symmetric bed those of the left side. */
  static List<HoleId> critical(Layout layout, Job job) {
    List<HoleId> found = new ArrayList<>();
    Checker.assign(layout, StatedAssignment::assign)
        .bed()
        .ifPresent(
            bed -> {
              for (Side side : Side.values()) {
                if (side == Side.RIGHT && bed.symmetric()) {
                  break;
                }
                for (HoleId hole : bed.ring().list(side)) {
                  if (!bed.spansAt(hole).isEmpty() && lost(layout, hole, job)) {
                    found.add(hole);
                  }
                }
              }
            });
    return found;
  }

  private static boolean lost(Layout layout, HoleId hole, Job job) {
    List<HoleRef> blocked = new ArrayList<>(layout.blocked());
    blocked.add(HoleRef.of(hole));
    return of(layout.toBuilder().blocked(blocked).build(), job) instanceof Detour.None;
  }

  /** What check says of a layout whose stated pattern needs a blocked hole. */
  static List<Finding> findings(Layout layout) {
    Detour detour = of(layout, Job.standard());
    if (detour instanceof Detour.Found found) {
      return List.of(
          Finding.of(FindingCode.DETOUR)
              .message("There is a way round: " + words(found) + ".")
              .at("/holes/blocked", layout.places())
              .about(found.moves().stream().map(Detour.Move::span).toList())
              .fact("skew", found.skewMm(), "mm")
              .fix(fix(found, layout))
              .build());
    }
    if (detour instanceof Detour.None none) {
      return List.of(
          Finding.of(FindingCode.DETOUR_NONE)
              .message("No way round was found. " + none.why())
              .at("/holes/blocked", layout.places())
              .fix("Have the grommet replaced, or state a hole that can take two strings.")
              .build());
    }
    return List.of();
  }

  /** A detour in words. */
  static String words(Detour.Found found) {
    StringBuilder text = new StringBuilder();
    for (Detour.Move move : found.moves()) {
      List<String> parts = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        if (!move.from().get(i).equals(move.to().get(i))) {
          parts.add(move.from().get(i) + " to " + move.to().get(i));
        }
      }
      text.append(text.length() == 0 ? "" : ", ")
          .append(move.span())
          .append(" moves from ")
          .append(String.join(" and from ", parts));
    }
    if (!found.shared().isEmpty()) {
      text.append("; ")
          .append(words(found.shared()))
          .append(found.shared().size() == 1 ? " takes" : " take")
          .append(" two strings");
    }
    return text.append(String.format(Locale.ROOT, "; %.1f mm of skew are added", found.skewMm()))
        .toString();
  }

  private static String fix(Detour.Found found, Layout stated) {
    Layout l = found.bed().layout();
    StringBuilder fix = new StringBuilder("State mains.skip [");
    fix.append(quoted(l.mainsSkip().orElse(List.of())));
    fix.append("], crosses.skip [").append(quoted(l.crossesSkip()));
    fix.append("], holes.shared [").append(quoted(l.shared())).append("]");
    if (stated.crossesFirst().isPresent() && !stated.crossesFirst().equals(l.crossesFirst())) {
      l.crossesFirst().ifPresent(f -> fix.append(", crosses.first ").append(names(f)));
    }
    if (stated.crossesLast().isPresent() && !stated.crossesLast().equals(l.crossesLast())) {
      l.crossesLast().ifPresent(f -> fix.append(", crosses.last ").append(names(f)));
    }
    fix.append('.');
    if (!found.doubtful().isEmpty()) {
      fix.append(" First look whether ")
          .append(words(found.doubtful()))
          .append(" can take two strings.");
    }
    return fix.toString();
  }

  private static String names(EachSide<HoleId> pair) {
    return "[\"" + pair.left() + "\", \"" + pair.right() + "\"]";
  }

  private static String quoted(List<HoleRef> refs) {
    List<String> names = new ArrayList<>();
    refs.forEach(r -> names.add("\"" + r + "\""));
    return String.join(", ", names);
  }
}
