package org.hoopwright.route;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;

/**
 * What is asked of a route search. Immutable; {@link #builder()} starts with the defaults.
 *
 * <p>What the caller fixes here excludes other routes; what a layout's maker asks (direction,
 * pieces, sides) is a preference, and {@code aroundTheWorld: false} and the mains' start of a
 * layout exclude.
 */
public final class RouteRequest {

  private final OptionalInt pieces;
  private final Optional<Direction> direction;
  private final Optional<End> mainsStart;
  private final int runLimit;
  private final int knotLimit;
  private final int startingClamps;
  private final boolean crossesOfOtherString;
  private final long maxNodes;
  private final List<RoutePreference> preferences;
  private final BooleanSupplier cancelled;

  private RouteRequest(Builder b) {
    this.pieces = b.pieces;
    this.direction = b.direction;
    this.mainsStart = b.mainsStart;
    this.runLimit = b.runLimit;
    this.knotLimit = b.knotLimit;
    this.startingClamps = b.startingClamps;
    this.crossesOfOtherString = b.crossesOfOtherString;
    this.maxNodes = b.maxNodes;
    this.preferences = List.copyOf(b.preferences);
    this.cancelled = b.cancelled;
  }

  /**
   * Starts with the defaults: anything allowed, run limit 4, knot limit 6, one starting clamp, 10
   * million nodes, standard preferences.
   */
  public static Builder builder() {
    return new Builder();
  }

  /** The defaults. */
  public static RouteRequest defaults() {
    return builder().build();
  }

  /** A builder that asks what this asks. */
  public Builder toBuilder() {
    Builder b = new Builder();
    b.pieces = pieces;
    b.direction = direction;
    b.mainsStart = mainsStart;
    b.runLimit = runLimit;
    b.knotLimit = knotLimit;
    b.startingClamps = startingClamps;
    b.crossesOfOtherString = crossesOfOtherString;
    b.maxNodes = maxNodes;
    b.preferences = preferences;
    b.cancelled = cancelled;
    return b;
  }

  /** 1 or 2 pieces only; empty for both. */
  public OptionalInt pieces() {
    return pieces;
  }

  /** This order of the crosses only; empty for both. */
  public Optional<Direction> direction() {
    return direction;
  }

  /** Mains that start at this end only; empty for what the layout says. */
  public Optional<End> mainsStart() {
    return mainsStart;
  }

  /** The longest run, in places of a side's list. */
  public int runLimit() {
    return runLimit;
  }

  /** The farthest tie-off hole from an exit, in places of a side's list. */
  public int knotLimit() {
    return knotLimit;
  }

  /** Starting clamps at hand; with none, a crosses' piece must begin with a starting knot. */
  public int startingClamps() {
    return startingClamps;
  }

  /**
   * Whether the crosses are of another string than the mains; then no string of the mains goes on
   * into crosses, and there are two pieces.
   */
  public boolean crossesOfOtherString() {
    return crossesOfOtherString;
  }

  /** After how many nodes the search gives up. */
  public long maxNodes() {
    return maxNodes;
  }

  /** What to prefer, most important first. */
  public List<RoutePreference> preferences() {
    return preferences;
  }

  /** Asked now and then while searching; true ends the search as if the limit had been reached. */
  public BooleanSupplier cancelled() {
    return cancelled;
  }

  /** Gathers a request. Not thread-safe. */
  public static final class Builder {
    private OptionalInt pieces = OptionalInt.empty();
    private Optional<Direction> direction = Optional.empty();
    private Optional<End> mainsStart = Optional.empty();
    private int runLimit = 4;
    private int knotLimit = 6;
    private int startingClamps = 1;
    private boolean crossesOfOtherString = false;
    private long maxNodes = 10_000_000;
    private List<RoutePreference> preferences = RoutePreferences.standard();
    private BooleanSupplier cancelled = () -> false;

    private Builder() {}

    /**
     * Only routes of this many pieces.
     *
     * @throws IllegalArgumentException when it is neither 1 nor 2
     */
    public Builder pieces(int value) {
      if (value != 1 && value != 2) {
        throw new IllegalArgumentException(
            "The number of pieces (%s) must be 1 or 2.".formatted(value));
      }
      pieces = OptionalInt.of(value);
      return this;
    }

    /** Only this order of the crosses. */
    public Builder direction(Direction value) {
      direction = Optional.of(value);
      return this;
    }

    /** Only mains that start at this end. */
    public Builder mainsStart(End value) {
      mainsStart = Optional.of(value);
      return this;
    }

    /**
     * The longest run.
     *
     * @throws IllegalArgumentException when it is not from 1 to 1000
     */
    public Builder runLimit(int places) {
      runLimit = limit("run limit", places);
      return this;
    }

    /**
     * The farthest tie-off hole.
     *
     * @throws IllegalArgumentException when it is not from 1 to 1000
     */
    public Builder knotLimit(int places) {
      knotLimit = limit("knot limit", places);
      return this;
    }

    /**
     * Starting clamps at hand.
     *
     * @throws IllegalArgumentException when it is negative
     */
    public Builder startingClamps(int count) {
      if (count < 0) {
        throw new IllegalArgumentException(
            "The number of starting clamps (%s) must be 0 or more.".formatted(count));
      }
      startingClamps = count;
      return this;
    }

    /** Whether the crosses are of another string than the mains. */
    public Builder crossesOfOtherString(boolean other) {
      crossesOfOtherString = other;
      return this;
    }

    /**
     * When to give up.
     *
     * @throws IllegalArgumentException when it is below 1
     */
    public Builder maxNodes(long nodes) {
      if (nodes < 1) {
        throw new IllegalArgumentException(
            "The node limit (%s) must be 1 or more.".formatted(nodes));
      }
      maxNodes = nodes;
      return this;
    }

    /**
     * What to prefer, most important first; the built-in tie-breakers follow whatever is given.
     *
     * @throws IllegalArgumentException when two have the same name
     */
    public Builder preferences(List<RoutePreference> list) {
      if (list.stream().map(RoutePreference::name).distinct().count() != list.size()) {
        throw new IllegalArgumentException(
            "The preferences (%s) must have different names."
                .formatted(list.stream().map(RoutePreference::name).toList()));
      }
      preferences = List.copyOf(list);
      return this;
    }

    /** Asked now and then; true ends the search. */
    public Builder cancelled(BooleanSupplier value) {
      cancelled = value;
      return this;
    }

    /** The request. */
    public RouteRequest build() {
      return new RouteRequest(this);
    }

    private static int limit(String what, int places) {
      if (places < 1 || places > 1000) {
        throw new IllegalArgumentException(
            "The %s (%s) must be from 1 to 1000 places.".formatted(what, places));
      }
      return places;
    }
  }
}
