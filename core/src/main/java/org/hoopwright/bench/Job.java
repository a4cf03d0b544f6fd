package org.hoopwright.bench;

import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.units.Force;

/**
 * What is to be done: string, tensions, bench and routes wanted. Immutable; {@link #builder()}
 * starts with nothing said, and what is not said follows from the layout: the middle of the maker's
 * tension range, else 245 N for tennis and other games, 105 N for badminton, 115 N for squash, 135
 * N for racquetball; gauge 16, 21, 17, 17; nylon (all our choice).
 */
public final class Job {

  private final RouteRequest routes;
  private final Optional<Force> mainsTension;
  private final Optional<Force> crossesTension;
  private final Force lastPullExtra;
  private final Optional<StringSpec> mainsString;
  private final Optional<StringSpec> crossesString;
  private final Bench bench;
  private final int leadLimit;
  private final Optional<StartMethod> startMethod;
  private final Optional<Side> anchorSide;
  private final Optional<Integer> anchorMain;
  private final boolean clampInHeadZoneAllowed;
  private final Optional<StringAtHand> stringAtHand;
  private final ClampUse backUp;
  private final ClampUse thirdClamp;

  private Job(Builder b) {
    this.routes = b.routes;
    this.mainsTension = b.mainsTension;
    this.crossesTension = b.crossesTension;
    this.lastPullExtra = b.lastPullExtra;
    this.mainsString = b.mainsString;
    this.crossesString = b.crossesString;
    this.bench = b.bench;
    this.leadLimit = b.leadLimit;
    this.startMethod = b.startMethod;
    this.anchorSide = b.anchorSide;
    this.anchorMain = b.anchorMain;
    this.clampInHeadZoneAllowed = b.clampInHeadZoneAllowed || b.anchorMain.isPresent();
    this.stringAtHand = b.stringAtHand;
    this.backUp = b.backUp;
    this.thirdClamp = b.thirdClamp;
  }

  /** Starts with nothing said. */
  public static Builder builder() {
    return new Builder();
  }

  /** A job with nothing said. */
  public static Job standard() {
    return builder().build();
  }

  /** Which routes are wanted, and their limits. */
  public RouteRequest routes() {
    return routes;
  }

  /** The reference tension of the mains of this layout. */
  public Force mainsTension(Layout layout) {
    return mainsTension.orElseGet(() -> usualTension(layout));
  }

  /**
   * The reference tension of the crosses of this layout; that of the mains when nothing is said.
   */
  public Force crossesTension(Layout layout) {
    return crossesTension.orElseGet(() -> mainsTension(layout));
  }

  /** What is added for the last pull before a knot. */
  public Force lastPullExtra() {
    return lastPullExtra;
  }

  /** The string of the mains. */
  public StringSpec mainsString(Layout layout) {
    return mainsString.orElseGet(() -> usualString(layout));
  }

  /** The string of the crosses; that of the mains when nothing is said. */
  public StringSpec crossesString(Layout layout) {
    return crossesString.orElseGet(() -> mainsString(layout));
  }

  /** The reference tension of a span. */
  public Force tension(SpanId span, Layout layout) {
    return span.isMain() ? mainsTension(layout) : crossesTension(layout);
  }

  /**
   * The string of a span; where a string of the mains goes on into crosses the two are the same.
   */
  public StringSpec string(SpanId span, Layout layout) {
    return span.isMain() ? mainsString(layout) : crossesString(layout);
  }

  /** Whether mains and crosses are of different string, which takes two pieces. */
  public boolean hybrid(Layout layout) {
    return !mainsString(layout).equals(crossesString(layout));
  }

  /** What is at hand. */
  public Bench bench() {
    return bench;
  }

  /** By how many mains one side may be ahead of the other: 1 to 3. */
  public int leadLimit() {
    return leadLimit;
  }

  /** The start that is asked for; empty to choose by bench and frame. */
  public Optional<StartMethod> startMethod() {
    return startMethod;
  }

  /** The side whose main is the anchor main; empty for the short side. */
  public Optional<Side> anchorSide() {
    return anchorSide;
  }

  /**
   * Which main of the anchor side is asked to be the anchor main, 1 or 2; empty for the one whose
   * tail leaves at the throat.
   */
  public Optional<Integer> anchorMain() {
    return anchorMain;
  }

  /** Whether a starting clamp may be set outside in the head zone, which is warned of. */
  public boolean clampInHeadZoneAllowed() {
    return clampInHeadZoneAllowed;
  }

  /** The string that there is for the job; empty when that is not said. */
  public Optional<StringAtHand> stringAtHand() {
    return stringAtHand;
  }

  /**
   * When a starting clamp backs up a machine clamp: behind it, outside the frame. As needed is
   * where the machine clamps were tested with the string and not held so much, and where a floating
   * clamp finds no tight neighbour.
   */
  public ClampUse backUp() {
    return backUp;
  }

  /**
   * When a starting clamp is the third clamp: it holds an end that waits for its knot, so that both
   * machine clamps are free. As needed is where a machine clamp would have to sit away from the
   * frame meanwhile, and tests show that a starting clamp holds a full pull of the string.
   */
  public ClampUse thirdClamp() {
    return thirdClamp;
  }

  /** Whether only plans of two pieces serve: two different strings, or two lengths at hand. */
  public boolean needsTwoPieces(Layout layout) {
    return hybrid(layout) || stringAtHand.filter(StringAtHand::isPack).isPresent();
  }

  /**
   * What is asked of the search for routes: what {@link #routes()} asks, and what string and bench
   * ask besides.
   *
   * @throws IllegalArgumentException when the job asks for one piece of two different strings, or
   *     of a pack of two lengths
   */
  public RouteRequest routeRequest(Layout layout) {
    RouteRequest.Builder request =
        routes.toBuilder()
            .startingClamps(bench.startingClamps())
            .crossesOfOtherString(hybrid(layout));
    if (needsTwoPieces(layout)) {
      if (routes.pieces().orElse(2) == 1) {
        throw new IllegalArgumentException(
            "The number of pieces (1) must be 2 when mains and crosses are of different string, or of a pack of two lengths.\nMaybe leave the pieces open.");
      }
      request.pieces(2);
    }
    return request.build();
  }

  private static Force usualTension(Layout layout) {
    return layout
        .tension()
        .map(t -> Force.ofNewtons((t.least().newtons() + t.most().newtons()) / 2))
        .orElseGet(
            () ->
                Force.ofNewtons(
                    switch (layout.game()) {
                      case TENNIS, OTHER -> 245;
                      case BADMINTON -> 105;
                      case SQUASH -> 115;
                      case RACQUETBALL -> 135;
                    }));
  }

  private static StringSpec usualString(Layout layout) {
    Gauge gauge =
        switch (layout.game()) {
          case TENNIS, OTHER -> Gauge.G16;
          case BADMINTON -> Gauge.G21;
          case SQUASH, RACQUETBALL -> Gauge.G17;
        };
    return new StringSpec(gauge, Material.NYLON);
  }

  /** Gathers a job. Not thread-safe. */
  public static final class Builder {
    private RouteRequest routes = RouteRequest.defaults();
    private Optional<Force> mainsTension = Optional.empty();
    private Optional<Force> crossesTension = Optional.empty();
    private Force lastPullExtra = Force.ofNewtons(0);
    private Optional<StringSpec> mainsString = Optional.empty();
    private Optional<StringSpec> crossesString = Optional.empty();
    private Bench bench = Bench.standard();
    private int leadLimit = 2;
    private Optional<StartMethod> startMethod = Optional.empty();
    private Optional<Side> anchorSide = Optional.empty();
    private Optional<Integer> anchorMain = Optional.empty();
    private boolean clampInHeadZoneAllowed = false;
    private Optional<StringAtHand> stringAtHand = Optional.empty();
    private ClampUse backUp = ClampUse.AS_NEEDED;
    private ClampUse thirdClamp = ClampUse.AS_NEEDED;

    private Builder() {}

    /**
     * Which routes are wanted. Starting clamps are taken from the bench, whatever the request says.
     */
    public Builder routes(RouteRequest value) {
      routes = value;
      return this;
    }

    /**
     * The reference tension of the mains, and of the crosses unless they have their own.
     *
     * @throws IllegalArgumentException when it is zero
     */
    public Builder mainsTension(Force value) {
      mainsTension = Optional.of(pullable(value));
      return this;
    }

    /**
     * The reference tension of the crosses.
     *
     * @throws IllegalArgumentException when it is zero
     */
    public Builder crossesTension(Force value) {
      crossesTension = Optional.of(pullable(value));
      return this;
    }

    /** What is added for the last pull before a knot. */
    public Builder lastPullExtra(Force value) {
      lastPullExtra = value;
      return this;
    }

    /** The string of mains and crosses. */
    public Builder string(StringSpec value) {
      mainsString = Optional.of(value);
      crossesString = Optional.of(value);
      return this;
    }

    /** The string of the mains and that of the crosses. */
    public Builder strings(StringSpec mains, StringSpec crosses) {
      mainsString = Optional.of(mains);
      crossesString = Optional.of(crosses);
      return this;
    }

    /** What is at hand. */
    public Builder bench(Bench value) {
      bench = value;
      return this;
    }

    /**
     * By how many mains one side may be ahead.
     *
     * @throws IllegalArgumentException when it is not from 1 to 3: common practice is 2, at most 3
     *     (racket-service page "A Brief Glossary of Terms")
     */
    public Builder leadLimit(int mains) {
      if (mains < 1 || mains > 3) {
        throw new IllegalArgumentException(
            "The lead limit (%s) must be from 1 to 3 mains.".formatted(mains));
      }
      leadLimit = mains;
      return this;
    }

    /** Asks for a start. */
    public Builder startMethod(StartMethod value) {
      startMethod = Optional.of(value);
      return this;
    }

    /** Asks for the side of the anchor main. */
    public Builder anchorSide(Side value) {
      anchorSide = Optional.of(value);
      return this;
    }

    /**
     * Asks for the anchor main, wherever its tail leaves. This allows a starting clamp in the head
     * zone, which is then warned of.
     *
     * @param main 1 or 2, counted from the long axis
     * @throws IllegalArgumentException when it is neither
     */
    public Builder anchorMain(int main) {
      if (main < 1 || main > 2) {
        throw new IllegalArgumentException("The anchor main (%s) must be 1 or 2.".formatted(main));
      }
      anchorMain = Optional.of(main);
      return this;
    }

    /** Allows a starting clamp outside in the head zone, with a warning. */
    public Builder clampInHeadZoneAllowed(boolean value) {
      clampInHeadZoneAllowed = value;
      return this;
    }

    /** Says what string there is, so that a plan tells whether it is enough. */
    public Builder stringAtHand(StringAtHand value) {
      stringAtHand = Optional.of(value);
      return this;
    }

    /** Says when a starting clamp backs up a machine clamp; see {@link Job#backUp()}. */
    public Builder backUp(ClampUse value) {
      backUp = value;
      return this;
    }

    /** Says when a starting clamp is the third clamp; see {@link Job#thirdClamp()}. */
    public Builder thirdClamp(ClampUse value) {
      thirdClamp = value;
      return this;
    }

    /**
     * The job.
     *
     * @throws IllegalArgumentException when the start asked for needs a starting clamp and the
     *     bench has none, or when it always begins with main 1 and another is asked for
     */
    public Job build() {
      if (startMethod.filter(m -> m == StartMethod.ANCHOR_MAIN).isPresent()
          && bench.startingClamps() == 0) {
        throw new IllegalArgumentException(
            "The start (anchor-main) needs a starting clamp, and the bench has 0.\nMaybe ask for hand-held or doubled-clamp.");
      }
      if (anchorMain.filter(k -> k != 1).isPresent()
          && startMethod.filter(m -> m != StartMethod.ANCHOR_MAIN).isPresent()) {
        throw new IllegalArgumentException(
            "The anchor main (2) must be 1 with the start "
                + startMethod.get().word()
                + ".\nMaybe ask for anchor-main.");
      }
      return new Job(this);
    }

    private static Force pullable(Force value) {
      if (value.newtons() <= 0) {
        throw new IllegalArgumentException(
            "The tension (" + value.newtons() + " N) must be more than 0 N.");
      }
      return value;
    }
  }
}
