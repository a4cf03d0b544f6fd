package org.hoopwright.route;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hoopwright.bed.SpanId;

/**
 * Routes in one line of text: {@code short L1-L7 | long R1-R8 X19 L8 X1-X18 | knots L5H on L5, R6T
 * on R6}.
 *
 * <p>Spans of one kind with numbers that follow each other, up or down, are drawn together.
 */
public final class RouteNotation {

  private RouteNotation() {}

  /** The whole route with its knots. */
  public static String of(Route route) {
    String knots =
        route.pieces().stream()
            .flatMap(p -> p.ends().stream())
            .map(e -> e.finish().toString())
            .collect(Collectors.joining(", "));
    return passes(route) + " | knots " + knots;
  }

  /** The passes alone. */
  public static String passes(Route route) {
    List<String> parts = new ArrayList<>();
    for (Piece piece : route.pieces()) {
      for (StringEnd end : piece.ends()) {
        if (!end.passes().isEmpty()) {
          parts.add(end.name().word() + " " + spans(end.passes()));
        }
      }
    }
    return String.join(" | ", parts);
  }

  /** The spans of these passes, drawn together. */
  public static String spans(List<Pass> passes) {
    List<String> parts = new ArrayList<>();
    int i = 0;
    while (i < passes.size()) {
      SpanId first = passes.get(i).span();
      int step = 0;
      int j = i;
      while (j + 1 < passes.size() && passes.get(j + 1).span().kind() == first.kind()) {
        int d = passes.get(j + 1).span().number() - passes.get(j).span().number();
        if (Math.abs(d) != 1 || (step != 0 && d != step)) {
          break;
        }
        step = d;
        j++;
      }
      parts.add(j == i ? first.toString() : first + "-" + passes.get(j).span());
      i = j + 1;
    }
    return String.join(" ", parts);
  }
}
