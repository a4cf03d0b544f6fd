package org.hoopwright.route;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A route with the reason for its rank. Immutable; the route and the words are made when they are
 * first asked for, as most callers look at one of many.
 */
public final class RankedRoute {

  private final RouteRanking ranking;
  private final List<Candidate> all;
  private final int rank;
  private final int knotVariants;

  // Made on demand, the same whoever makes them.
  private @Nullable Map<String, String> values;
  private @Nullable String why;
  private @Nullable LaidRuns laidRuns;

  RankedRoute(RouteRanking ranking, List<Candidate> all, int rank, int knotVariants) {
    this.ranking = ranking;
    this.all = all;
    this.rank = rank;
    this.knotVariants = knotVariants;
  }

  /** The route. */
  public Route route() {
    return all.get(rank).route();
  }

  /**
   * What each preference says of it, by the preference's name, most important first. Not
   * modifiable.
   */
  public Map<String, String> values() {
    Map<String, String> v = values;
    if (v == null) {
      v = Collections.unmodifiableMap(ranking.values(all.get(rank)));
      values = v;
    }
    return v;
  }

  /** One sentence: why it stands above the next, or how it stands to the best. */
  public String why() {
    String w = why;
    if (w == null) {
      w =
          all.size() == 1
              ? "It is the only order of passes that the rules allow."
              : rank + 1 < all.size()
                  ? ranking.why(all.get(rank), all.get(rank + 1))
                  : "It is the last of " + all.size() + " orders of passes.";
      why = w;
    }
    return w;
  }

  /** How its runs are laid along the frame's outside, and which lies beside or upon which. */
  public LaidRuns laidRuns() {
    LaidRuns l = laidRuns;
    if (l == null) {
      l = ranking.laidRuns(all.get(rank));
      laidRuns = l;
    }
    return l;
  }

  /** In how many ways its ends can be knotted, this one included. */
  public int knotVariants() {
    return knotVariants;
  }

  /** Equal when the route, its values, its reason and the number of variants are. */
  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof RankedRoute r
        && knotVariants == r.knotVariants
        && route().equals(r.route())
        && values().equals(r.values())
        && why().equals(r.why());
  }

  @Override
  public int hashCode() {
    return route().hashCode() * 31 + knotVariants;
  }

  @Override
  public String toString() {
    return route() + " " + values();
  }
}
