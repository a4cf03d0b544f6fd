package org.hoopwright.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteResult;

/**
 * What differs between two of a kind. Equal ones have no differences; the other way round the same
 * things differ, with the values exchanged. Differences stand in the order of their topics. Pure
 * and deterministic.
 */
public final class Differences {

  /** Positions that differ by less are the same, in mm: what plans are written to; our choice. */
  private static final double SAME_PLACE_MM = 0.05;

  private static final List<String> ORDER_OF_WORK =
      List.of(
          "mains",
          "crosses",
          Show.end(EndName.SHORT),
          Show.end(EndName.LONG),
          Show.end(EndName.START),
          Show.end(EndName.FINISH));

  private static final Pattern DIGITS = Pattern.compile("[0-9]+");

  private Differences() {}

  /**
   * What two layouts state, hole by hole and in mm, so that one thing said in two ways is no
   * difference. What left and right state alike is one difference.
   */
  public static List<Difference> ofLayouts(Layout first, Layout second) {
    return between(LayoutFacts.of(first), LayoutFacts.of(second));
  }

  /** Spans that run between other holes, and holes that lie elsewhere. */
  public static List<Difference> ofBeds(Optional<Bed> first, Optional<Bed> second) {
    List<Difference> found = new ArrayList<>(between(bed(first), bed(second)));
    if (first.isPresent() && second.isPresent()) {
      moved(first.get(), second.get()).ifPresent(found::add);
    }
    return List.copyOf(found);
  }

  private static Facts bed(Optional<Bed> bed) {
    Facts facts = new Facts();
    String word = bed.isPresent() ? "a bed" : "no bed";
    facts.add(Topic.BED, "bed", word, "there is", word);
    bed.ifPresent(b -> b.spans().forEach(span -> span(span, facts)));
    return facts;
  }

  private static void span(Span span, Facts facts) {
    facts.add(
        Topic.BED_SPAN,
        span.id().toString(),
        span.from() + "-" + span.to(),
        span.id() + " runs",
        "from " + span.from() + " to " + span.to(),
        "there is none");
  }

  /** Holes that both have and that lie elsewhere, in one difference about the farthest. */
  private static Optional<Difference> moved(Bed first, Bed second) {
    int both = 0;
    int moved = 0;
    double most = SAME_PLACE_MM;
    HoleId farthest = null;
    for (HoleId hole : new TreeSet<>(first.positions().keySet())) {
      Point other = second.positions().get(hole);
      if (other == null) {
        continue;
      }
      both++;
      double apart = first.position(hole).distanceTo(other);
      moved += apart > SAME_PLACE_MM ? 1 : 0;
      if (apart > most) {
        most = apart;
        farthest = hole;
      }
    }
    if (farthest == null) {
      return Optional.empty();
    }
    String a = Show.tenths(first.position(farthest));
    String b = Show.tenths(second.position(farthest));
    return Optional.of(
        new Difference(
            Topic.BED_HOLES,
            farthest.toString(),
            Optional.of(a + " mm"),
            Optional.of(b + " mm"),
            ("Holes that lie elsewhere: %s of the %s that both have; farthest is %s, by %s mm: at %s"
                    + " mm in the first, at %s mm in the second.")
                .formatted(moved, both, farthest, Show.rounded(most, 1), a, b)));
  }

  /**
   * Orders of passes that only one of two beds allows, how many each allows, and how the best
   * routes differ. Of a pair of mirror images on a symmetric bed one stands for both. Where a
   * search stopped at its limit, what it has not seen is not said to be impossible.
   */
  public static List<Difference> ofRoutes(
      Bed first, RouteResult ofFirst, Bed second, RouteResult ofSecond) {
    List<Difference> found =
        new ArrayList<>(between(PassOrders.count(ofFirst), PassOrders.count(ofSecond)));
    found.addAll(PassOrders.onlyInOne(first, ofFirst, second, ofSecond));
    Optional<Route> a = ofFirst.best();
    Optional<Route> b = ofSecond.best();
    if (a.isPresent() && b.isPresent()) {
      found.addAll(between(PlanFacts.of(first, a.get()), PlanFacts.of(second, b.get())));
    }
    return List.copyOf(found);
  }

  /** Two plans: route, knots, lengths, clamps and what they bear, tensions and pulls. */
  public static List<Difference> ofPlans(BenchPlan first, BenchPlan second) {
    return between(PlanFacts.of(first), PlanFacts.of(second));
  }

  private static List<Difference> between(Facts first, Facts second) {
    Set<Facts.Key> keys = new LinkedHashSet<>(first.all().keySet());
    keys.addAll(second.all().keySet());
    Map<Facts.Key, Difference> found = new LinkedHashMap<>();
    keys.stream()
        .sorted(
            Comparator.comparing(Facts.Key::topic)
                .thenComparing(Facts.Key::about, Differences::inOrder))
        .forEach(key -> differ(key, first, second).ifPresent(d -> found.put(key, d)));
    return BothSides.merged(found);
  }

  /** Ends of string and strings in the order of the work, the rest by number: L2 before L10. */
  private static int inOrder(String a, String b) {
    int c = Integer.compare(ORDER_OF_WORK.indexOf(a), ORDER_OF_WORK.indexOf(b));
    return c != 0 ? c : padded(a).compareTo(padded(b));
  }

  private static String padded(String text) {
    return DIGITS.matcher(text).replaceAll(m -> String.format(Locale.ROOT, "%4s", m.group()));
  }

  private static Optional<Difference> differ(Facts.Key key, Facts first, Facts second) {
    Optional<Facts.Fact> a = first.get(key);
    Optional<Facts.Fact> b = second.get(key);
    if (a.map(Facts.Fact::value).equals(b.map(Facts.Fact::value))) {
      return Optional.empty();
    }
    String say =
        a.isPresent() && b.isPresent()
            ? Sentence.both(a.get(), b.get())
            : Sentence.one(a.or(() -> b).orElseThrow(), a.isPresent());
    return Optional.of(
        new Difference(
            key.topic(), key.about(), a.map(Facts.Fact::value), b.map(Facts.Fact::value), say));
  }
}
