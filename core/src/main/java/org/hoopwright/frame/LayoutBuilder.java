package org.hoopwright.frame;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hoopwright.finding.Places;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * Gathers what a layout states; made by {@link Layout#builder(String)}. Hole names are texts such
 * as {@code 7H} (both sides) or {@code L7H}. Not thread-safe.
 */
public final class LayoutBuilder {

  final String name;
  Game game = Game.OTHER;
  LengthUnit units = LengthUnit.MILLIMETRE;
  Optional<FrameSize> frame = Optional.empty();
  @Nullable Hoop hoop;
  @Nullable EachSide<Integer> headHoles;
  @Nullable EachSide<Integer> throatHoles;
  List<HoleRef> tieOff = List.of();
  List<HoleRef> shared = List.of();
  List<HoleRef> blocked = List.of();
  Map<HoleRef, Integer> bore = Map.of();
  Map<HoleRef, Point> at = Map.of();
  List<NoRun> noRun = List.of();
  @Nullable Integer mainsCount;
  Optional<List<HoleRef>> mainsSkip = Optional.empty();
  Optional<EachSide<StringOffsets.Mains>> mainsOffsets = Optional.empty();
  Optional<End> mainsStart = Optional.empty();
  Optional<Side> shortSide = Optional.empty();
  @Nullable Integer crossesCount;
  List<HoleRef> crossesSkip = List.of();
  Optional<EachSide<StringOffsets.Crosses>> crossesOffsets = Optional.empty();
  Optional<EachSide<HoleId>> crossesFirst = Optional.empty();
  Optional<EachSide<HoleId>> crossesLast = Optional.empty();
  Optional<Direction> direction = Optional.empty();
  Optional<Side> startSide = Optional.empty();
  OptionalInt pieces = OptionalInt.empty();
  boolean aroundTheWorld = true;
  Optional<EachSide<HoleId>> headZone = Optional.empty();
  Optional<TensionRange> tension = Optional.empty();
  Places places = Places.none();

  LayoutBuilder(String name) {
    if (name.isBlank()) {
      throw new IllegalArgumentException("The layout's name (" + name + ") must not be blank.");
    }
    this.name = name;
  }

  <T> T stated(@Nullable T value, String what) {
    if (value == null) {
      throw new IllegalStateException(
          "The layout (%s) states no %s.\nMaybe call the builder's method of that name before build()."
              .formatted(name, what));
    }
    return value;
  }

  /** The game. */
  public LayoutBuilder game(Game value) {
    this.game = value;
    return this;
  }

  /** The unit of every length in the layout. */
  public LayoutBuilder units(LengthUnit value) {
    this.units = value;
    return this;
  }

  /** Overall length and width. */
  public LayoutBuilder frame(double length, double width) {
    this.frame = Optional.of(new FrameSize(length, width));
    return this;
  }

  /** The inside of the hoop. */
  public LayoutBuilder hoop(Hoop value) {
    this.hoop = value;
    return this;
  }

  /** How many holes each side counts from the head and from the throat. */
  public LayoutBuilder holes(int head, int throat) {
    return holes(EachSide.both(head), EachSide.both(throat));
  }

  /** How many holes each side counts from the head and from the throat. */
  public LayoutBuilder holes(EachSide<Integer> head, EachSide<Integer> throat) {
    this.headHoles = head;
    this.throatHoles = throat;
    return this;
  }

  /** Holes with a knot place. */
  public LayoutBuilder tieOff(String... names) {
    return tieOff(refs(names));
  }

  /** Holes with a knot place. */
  public LayoutBuilder tieOff(List<HoleRef> refs) {
    this.tieOff = List.copyOf(refs);
    return this;
  }

  /** Holes that take two passes. */
  public LayoutBuilder shared(String... names) {
    return shared(refs(names));
  }

  /** Holes that take two passes. */
  public LayoutBuilder shared(List<HoleRef> refs) {
    this.shared = List.copyOf(refs);
    return this;
  }

  /** Holes that take no string. */
  public LayoutBuilder blocked(String... names) {
    return blocked(refs(names));
  }

  /** Holes that take no string. */
  public LayoutBuilder blocked(List<HoleRef> refs) {
    this.blocked = List.copyOf(refs);
    return this;
  }

  /** Strings that each hole takes in all; order is kept. */
  public LayoutBuilder bore(Map<HoleRef, Integer> strings) {
    this.bore = Collections.unmodifiableMap(new LinkedHashMap<>(strings));
    return this;
  }

  /** Coordinates of holes; order is kept. */
  public LayoutBuilder at(Map<HoleRef, Point> points) {
    this.at = Collections.unmodifiableMap(new LinkedHashMap<>(points));
    return this;
  }

  /** Stretches that no run may pass. */
  public LayoutBuilder noRun(List<NoRun> stretches) {
    this.noRun = List.copyOf(stretches);
    return this;
  }

  /** A further stretch that no run may pass. */
  public LayoutBuilder noRun(String from, String to) {
    List<NoRun> all = new java.util.ArrayList<>(noRun);
    all.add(new NoRun(HoleRef.of(from), HoleRef.of(to)));
    return noRun(all);
  }

  /** How many mains there are, both sides together. */
  public LayoutBuilder mains(int count) {
    this.mainsCount = count;
    return this;
  }

  /**
   * Holes that the mains leave out; without names: none. Not calling this at all leaves them to be
   * inferred.
   */
  public LayoutBuilder mainsSkip(String... names) {
    return mainsSkip(Optional.of(refs(names)));
  }

  /** Holes that the mains leave out; empty to have them inferred. */
  public LayoutBuilder mainsSkip(Optional<List<HoleRef>> refs) {
    this.mainsSkip = refs.map(List::copyOf);
    return this;
  }

  /** Measured distances of the mains from the long axis, for each side. */
  public LayoutBuilder mainsOffsets(EachSide<StringOffsets.Mains> value) {
    this.mainsOffsets = Optional.of(value);
    return this;
  }

  /** Takes out all measured offsets, of mains and of crosses. */
  public LayoutBuilder withoutOffsets() {
    this.mainsOffsets = Optional.empty();
    this.crossesOffsets = Optional.empty();
    return this;
  }

  /** Takes out the stated first and last hole of the crosses. */
  public LayoutBuilder withoutFirstAndLast() {
    this.crossesFirst = Optional.empty();
    this.crossesLast = Optional.empty();
    return this;
  }

  /** The end at which the mains start. */
  public LayoutBuilder mainsStart(End value) {
    return mainsStart(Optional.of(value));
  }

  /** The end at which the mains start; empty for either. */
  public LayoutBuilder mainsStart(Optional<End> value) {
    this.mainsStart = value;
    return this;
  }

  /** The side of the short end. */
  public LayoutBuilder shortSide(Side value) {
    this.shortSide = Optional.of(value);
    return this;
  }

  /** How many crosses there are. */
  public LayoutBuilder crosses(int count) {
    this.crossesCount = count;
    return this;
  }

  /** Holes that the crosses leave out. */
  public LayoutBuilder crossesSkip(String... names) {
    return crossesSkip(refs(names));
  }

  /** Holes that the crosses leave out. */
  public LayoutBuilder crossesSkip(List<HoleRef> refs) {
    this.crossesSkip = List.copyOf(refs);
    return this;
  }

  /** Measured distances of the crosses below the inside of the head, for each side. */
  public LayoutBuilder crossesOffsets(EachSide<StringOffsets.Crosses> value) {
    this.crossesOffsets = Optional.of(value);
    return this;
  }

  /** The holes of the cross nearest the head. */
  public LayoutBuilder crossesFirst(EachSide<HoleId> value) {
    this.crossesFirst = Optional.of(value);
    return this;
  }

  /** The holes of the cross nearest the throat; checked only. */
  public LayoutBuilder crossesLast(EachSide<HoleId> value) {
    this.crossesLast = Optional.of(value);
    return this;
  }

  /** The maker's order of the crosses. */
  public LayoutBuilder direction(Direction value) {
    this.direction = Optional.of(value);
    return this;
  }

  /** The side on which the crosses start. */
  public LayoutBuilder startSide(Side value) {
    this.startSide = Optional.of(value);
    return this;
  }

  /** 1 or 2 pieces, as the maker asks. */
  public LayoutBuilder pieces(int value) {
    this.pieces = OptionalInt.of(value);
    return this;
  }

  /** Whether around-the-world is allowed. */
  public LayoutBuilder aroundTheWorld(boolean value) {
    this.aroundTheWorld = value;
    return this;
  }

  /** The last hole of the head zone on each side. */
  public LayoutBuilder headZone(EachSide<HoleId> value) {
    this.headZone = Optional.of(value);
    return this;
  }

  /** The reference tension that the maker allows. */
  public LayoutBuilder tension(double min, double max, ForceUnit unit) {
    this.tension = Optional.of(new TensionRange(unit, min, max));
    return this;
  }

  /** Where the stated values stand in a file. */
  public LayoutBuilder places(Places value) {
    this.places = value;
    return this;
  }

  /**
   * The layout.
   *
   * @throws IllegalStateException when hoop, hole counts, mains or crosses have not been stated
   */
  public Layout build() {
    return new Layout(this);
  }

  private static List<HoleRef> refs(String... names) {
    return Arrays.stream(names).map(HoleRef::of).toList();
  }
}
