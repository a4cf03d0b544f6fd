package org.hoopwright.weave;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.hoopwright.bed.SpanId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;

/**
 * How hard a cross is to weave: it goes along or against the ups and downs that its tensioned
 * neighbours have given to the mains (Racquet Sports Industry, "Catching Box Pattern Misweaves",
 * 2006/05; Tennis Industry, "Weave Your Way to Consistency", 2015/04).
 */
public enum Hardness {
  /** No tensioned cross is near. */
  FREE("free"),
  /** Along the nearest tensioned crosses. */
  EASY("easy"),
  /** Along the one on one side, against the one on the other. */
  SEMI_HARD("semi-hard"),
  /** Against the nearest tensioned crosses. */
  HARD("hard");

  /**
   * How many places away a tensioned cross is still felt: our choice; farther off the mains have
   * straightened.
   */
  private static final int FELT = 2;

  private final String word;

  Hardness(String word) {
    this.word = word;
  }

  /** {@code free}, {@code easy}, {@code semi-hard} or {@code hard}. */
  public String word() {
    return word;
  }

  /**
   * How hard each cross of a route is to weave, in the order of stringing.
   *
   * @param route the route
   * @param oneAhead whether each cross is woven before the one strung last is tensioned, which
   *     makes it go along the one before that
   */
  public static Map<SpanId, Hardness> of(Route route, boolean oneAhead) {
    List<SpanId> order = crosses(route);
    Map<SpanId, Hardness> hardness = new LinkedHashMap<>();
    NavigableSet<Integer> tensioned = new TreeSet<>();
    for (int i = 0; i < order.size(); i++) {
      int last = oneAhead ? i - 2 : i - 1;
      if (last >= 0) {
        tensioned.add(order.get(last).number());
      }
      hardness.put(order.get(i), of(order.get(i).number(), tensioned));
    }
    return hardness;
  }

  private static Hardness of(int cross, NavigableSet<Integer> tensioned) {
    Integer above = tensioned.lower(cross);
    Integer below = tensioned.higher(cross);
    boolean hard = false;
    boolean easy = false;
    for (Integer near : new Integer[] {above, below}) {
      if (near != null && Math.abs(near - cross) <= FELT) {
        // Crosses an even number of places apart are woven alike.
        boolean alike = (near - cross) % 2 == 0;
        easy |= alike;
        hard |= !alike;
      }
    }
    return hard ? (easy ? SEMI_HARD : HARD) : easy ? EASY : FREE;
  }

  private static List<SpanId> crosses(Route route) {
    List<SpanId> order = new ArrayList<>();
    for (Moment m : route.order()) {
      if (m.what() == Moment.What.PASS) {
        EndName end = m.end();
        Pass pass = route.end(end).orElseThrow().passes().get(m.pass());
        if (pass.span().isCross()) {
          order.add(pass.span());
        }
      }
    }
    return order;
  }
}
