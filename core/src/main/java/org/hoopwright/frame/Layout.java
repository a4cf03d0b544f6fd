package org.hoopwright.frame;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.hoopwright.finding.Places;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.units.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * What is drilled in a frame, what the frame's maker says about it, and what is worn or blocked.
 *
 * <p>A layout says exactly what a layout file says, lengths in {@link #units()}. It may be wrong:
 * the rules of {@code org.hoopwright.check} tell. Values that no layout could mean (a missing name,
 * for instance) are refused by the builder. Immutable; two layouts are equal when they state the
 * same, wherever they were read from: {@link #places()} does not count.
 *
 * <pre>{@code
 * Layout layout = Layout.builder("Willowbank teaching frame")
 *     .hoop(new Hoop.Superellipse(120, 100, 2))
 *     .holes(4, 4)
 *     .tieOff("1H", "1T")
 *     .mains(4).mainsSkip()
 *     .crosses(4)
 *     .build();
 * }</pre>
 */
public final class Layout {
  private final String name;
  private final Game game;
  private final LengthUnit units;
  private final Optional<FrameSize> frame;
  private final Hoop hoop;
  private final EachSide<Integer> headHoles;
  private final EachSide<Integer> throatHoles;
  private final List<HoleRef> tieOff;
  private final List<HoleRef> shared;
  private final List<HoleRef> blocked;
  private final Map<HoleRef, Integer> bore;
  private final Map<HoleRef, Point> at;
  private final List<NoRun> noRun;
  private final int mainsCount;
  private final Optional<List<HoleRef>> mainsSkip;
  private final Optional<EachSide<StringOffsets.Mains>> mainsOffsets;
  private final Optional<End> mainsStart;
  private final Optional<Side> shortSide;
  private final int crossesCount;
  private final List<HoleRef> crossesSkip;
  private final Optional<EachSide<StringOffsets.Crosses>> crossesOffsets;
  private final Optional<EachSide<HoleId>> crossesFirst;
  private final Optional<EachSide<HoleId>> crossesLast;
  private final Optional<Direction> direction;
  private final Optional<Side> startSide;
  private final OptionalInt pieces;
  private final boolean aroundTheWorld;
  private final Optional<EachSide<HoleId>> headZone;
  private final Optional<TensionRange> tension;
  private final Places places;

  Layout(LayoutBuilder b) {
    this.name = b.stated(b.name, "name");
    this.game = b.game;
    this.units = b.units;
    this.frame = b.frame;
    this.hoop = b.stated(b.hoop, "hoop");
    this.headHoles = b.stated(b.headHoles, "headHoles");
    this.throatHoles = b.stated(b.throatHoles, "throatHoles");
    this.tieOff = b.tieOff;
    this.shared = b.shared;
    this.blocked = b.blocked;
    this.bore = b.bore;
    this.at = b.at;
    this.noRun = b.noRun;
    this.mainsCount = b.stated(b.mainsCount, "mainsCount");
    this.mainsSkip = b.mainsSkip;
    this.mainsOffsets = b.mainsOffsets;
    this.mainsStart = b.mainsStart;
    this.shortSide = b.shortSide;
    this.crossesCount = b.stated(b.crossesCount, "crossesCount");
    this.crossesSkip = b.crossesSkip;
    this.crossesOffsets = b.crossesOffsets;
    this.crossesFirst = b.crossesFirst;
    this.crossesLast = b.crossesLast;
    this.direction = b.direction;
    this.startSide = b.startSide;
    this.pieces = b.pieces;
    this.aroundTheWorld = b.aroundTheWorld;
    this.headZone = b.headZone;
    this.tension = b.tension;
    this.places = b.places;
  }

  /**
   * Starts a layout.
   *
   * @param name what people call the frame; not blank
   * @throws IllegalArgumentException when the name is blank
   */
  public static LayoutBuilder builder(String name) {
    return new LayoutBuilder(name);
  }

  /** A builder that states what this layout states. */
  public LayoutBuilder toBuilder() {
    LayoutBuilder b = new LayoutBuilder(name);
    b.game = game;
    b.units = units;
    b.frame = frame;
    b.hoop = hoop;
    b.headHoles = headHoles;
    b.throatHoles = throatHoles;
    b.tieOff = tieOff;
    b.shared = shared;
    b.blocked = blocked;
    b.bore = bore;
    b.at = at;
    b.noRun = noRun;
    b.mainsCount = mainsCount;
    b.mainsSkip = mainsSkip;
    b.mainsOffsets = mainsOffsets;
    b.mainsStart = mainsStart;
    b.shortSide = shortSide;
    b.crossesCount = crossesCount;
    b.crossesSkip = crossesSkip;
    b.crossesOffsets = crossesOffsets;
    b.crossesFirst = crossesFirst;
    b.crossesLast = crossesLast;
    b.direction = direction;
    b.startSide = startSide;
    b.pieces = pieces;
    b.aroundTheWorld = aroundTheWorld;
    b.headZone = headZone;
    b.tension = tension;
    b.places = places;
    return b;
  }

  /** The layout's name, as people call the frame. */
  public String name() {
    return name;
  }

  /** The game, which decides whose limits apply. */
  public Game game() {
    return game;
  }

  /** The unit of every length in this layout. */
  public LengthUnit units() {
    return units;
  }

  /** Overall length and width of the racket; without it no limit on them is checked. */
  public Optional<FrameSize> frame() {
    return frame;
  }

  /** The inside of the hoop. */
  public Hoop hoop() {
    return hoop;
  }

  /** How many holes each side counts from the head. */
  public EachSide<Integer> headHoles() {
    return headHoles;
  }

  /** How many holes each side counts from the throat. */
  public EachSide<Integer> throatHoles() {
    return throatHoles;
  }

  /** Holes with one knot place. */
  public List<HoleRef> tieOff() {
    return tieOff;
  }

  /** Holes that take two passes. */
  public List<HoleRef> shared() {
    return shared;
  }

  /** Holes that take no string at all: worn, cracked or filled. */
  public List<HoleRef> blocked() {
    return blocked;
  }

  /** Strings that a hole takes in all, where it is not the usual number; in stated order. */
  public Map<HoleRef, Integer> bore() {
    return bore;
  }

  /**
   * Coordinates of holes, in stated order; for a name without side those of the right hole,
   * mirrored to the left.
   */
  public Map<HoleRef, Point> at() {
    return at;
  }

  /** Stretches of the frame's outside that no run may pass. */
  public List<NoRun> noRun() {
    return noRun;
  }

  /** How many mains there are in all, both sides together. */
  public int mainsCount() {
    return mainsCount;
  }

  /** Holes that the mains leave out; absent when they are to be inferred. */
  public Optional<List<HoleRef>> mainsSkip() {
    return mainsSkip;
  }

  /** Measured distances of the mains from the long axis. */
  public Optional<EachSide<StringOffsets.Mains>> mainsOffsets() {
    return mainsOffsets;
  }

  /** The end at which the mains start; empty when either will do. */
  public Optional<End> mainsStart() {
    return mainsStart;
  }

  /** The side of the short end, where the maker asks for one. */
  public Optional<Side> shortSide() {
    return shortSide;
  }

  /** How many crosses there are. */
  public int crossesCount() {
    return crossesCount;
  }

  /** Holes that the crosses leave out. */
  public List<HoleRef> crossesSkip() {
    return crossesSkip;
  }

  /** Measured distances of the crosses below the inside of the head. */
  public Optional<EachSide<StringOffsets.Crosses>> crossesOffsets() {
    return crossesOffsets;
  }

  /** The holes of the cross nearest the head, where stated. */
  public Optional<EachSide<HoleId>> crossesFirst() {
    return crossesFirst;
  }

  /** The holes of the cross nearest the throat, where stated; checked only. */
  public Optional<EachSide<HoleId>> crossesLast() {
    return crossesLast;
  }

  /** The order in which the maker wants the crosses; empty when either will do. */
  public Optional<Direction> direction() {
    return direction;
  }

  /** The side on which the maker wants the crosses to start, for directional frames. */
  public Optional<Side> startSide() {
    return startSide;
  }

  /** 1 or 2 pieces of string, where the maker asks for it. */
  public OptionalInt pieces() {
    return pieces;
  }

  /** False where the maker forbids around-the-world. */
  public boolean aroundTheWorld() {
    return aroundTheWorld;
  }

  /**
   * The last hole of the head zone on each side, where stated; otherwise it is the outermost main's
   * head hole.
   */
  public Optional<EachSide<HoleId>> headZone() {
    return headZone;
  }

  /** The reference tension that the maker allows. */
  public Optional<TensionRange> tension() {
    return tension;
  }

  /** Where each stated value stands in the file it was read from. */
  public Places places() {
    return places;
  }

  /** A length stated in {@link #units()}, in millimetres. */
  public double mm(double stated) {
    return units.toMm(stated);
  }

  /** How many mains each side has: half of {@link #mainsCount()}, rounded down. */
  public int mainsPerSide() {
    return mainsCount / 2;
  }

  /**
   * The same frame seen in a mirror: left and right exchanged everywhere. Places are dropped,
   * because the mirrored layout stands in no file.
   */
  public Layout mirrored() {
    return LayoutMirror.of(this);
  }

  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Layout l
        && name.equals(l.name)
        && game.equals(l.game)
        && units.equals(l.units)
        && frame.equals(l.frame)
        && hoop.equals(l.hoop)
        && headHoles.equals(l.headHoles)
        && throatHoles.equals(l.throatHoles)
        && tieOff.equals(l.tieOff)
        && shared.equals(l.shared)
        && blocked.equals(l.blocked)
        && List.copyOf(bore.entrySet()).equals(List.copyOf(l.bore.entrySet()))
        && List.copyOf(at.entrySet()).equals(List.copyOf(l.at.entrySet()))
        && noRun.equals(l.noRun)
        && mainsCount == l.mainsCount
        && mainsSkip.equals(l.mainsSkip)
        && mainsOffsets.equals(l.mainsOffsets)
        && mainsStart.equals(l.mainsStart)
        && shortSide.equals(l.shortSide)
        && crossesCount == l.crossesCount
        && crossesSkip.equals(l.crossesSkip)
        && crossesOffsets.equals(l.crossesOffsets)
        && crossesFirst.equals(l.crossesFirst)
        && crossesLast.equals(l.crossesLast)
        && direction.equals(l.direction)
        && startSide.equals(l.startSide)
        && pieces.equals(l.pieces)
        && aroundTheWorld == l.aroundTheWorld
        && headZone.equals(l.headZone)
        && tension.equals(l.tension);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        name,
        game,
        units,
        frame,
        hoop,
        headHoles,
        throatHoles,
        tieOff,
        shared,
        blocked,
        bore,
        at,
        noRun,
        mainsCount,
        mainsSkip,
        mainsOffsets,
        mainsStart,
        shortSide,
        crossesCount,
        crossesSkip,
        crossesOffsets,
        crossesFirst,
        crossesLast,
        direction,
        startSide,
        pieces,
        aroundTheWorld,
        headZone,
        tension);
  }

  /** The name and the pattern, such as {@code Willowbank 100 (16 x 19)}. */
  @Override
  public String toString() {
    return name + " (" + mainsCount + " x " + crossesCount + ")";
  }
}
