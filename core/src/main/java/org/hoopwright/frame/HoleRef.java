package org.hoopwright.frame;

import java.util.List;
import java.util.Optional;
import org.hoopwright.geometry.Side;
import org.jspecify.annotations.Nullable;

/**
 * A hole name as a layout states it: with a side ({@code L7H}, one hole) or without ({@code 7H},
 * one on each side).
 */
public final class HoleRef {

  private final @Nullable Side side;
  private final End end;
  private final int number;
  private final List<HoleId> holes;

  private HoleRef(@Nullable Side side, End end, int number) {
    this.side = side;
    this.end = end;
    this.number = number;
    this.holes =
        side == null
            ? List.of(new HoleId(Side.LEFT, end, number), new HoleId(Side.RIGHT, end, number))
            : List.of(new HoleId(side, end, number));
  }

  /**
   * The name in this text.
   *
   * @throws IllegalArgumentException when the text is not a hole name such as {@code 7H} or {@code
   *     L7H}
   */
  public static HoleRef of(String name) {
    return find(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "The hole name (%s) must be a number from 1 to %s and H or T, with L or R before it for one side: 7H, L7H."
                        .formatted(name, HoleId.MAX_NUMBER)));
  }

  /** The name of one hole. */
  public static HoleRef of(HoleId hole) {
    return new HoleRef(hole.side(), hole.end(), hole.number());
  }

  /** The name of the holes of this number on both sides. */
  public static HoleRef both(End end, int number) {
    return new HoleRef(null, end, new HoleId(Side.LEFT, end, number).number());
  }

  /** The name in this text, or empty when it is none. Capital letters only, no leading zero. */
  public static Optional<HoleRef> find(String text) {
    int from = 0;
    Side side = null;
    if (!text.isEmpty()) {
      Optional<Side> named = Side.ofLetter(text.charAt(0));
      if (named.isPresent()) {
        side = named.get();
        from = 1;
      }
    }
    int digits = text.length() - from - 1;
    if (digits < 1 || digits > 3) {
      return Optional.empty();
    }
    int number = 0;
    for (int i = from; i < from + digits; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9' || (i == from && c == '0')) {
        return Optional.empty();
      }
      number = number * 10 + (c - '0');
    }
    char last = text.charAt(text.length() - 1);
    End end = last == 'H' ? End.HEAD : last == 'T' ? End.THROAT : null;
    if (end == null || number > HoleId.MAX_NUMBER) {
      return Optional.empty();
    }
    return Optional.of(new HoleRef(side, end, number));
  }

  /** The side named, or empty when both are meant. */
  public Optional<Side> side() {
    return Optional.ofNullable(side);
  }

  /** The end from which the hole is counted. */
  public End end() {
    return end;
  }

  /** The number from the long axis, from 1. */
  public int number() {
    return number;
  }

  /** The holes meant: one, or the left and then the right one. */
  public List<HoleId> holes() {
    return holes;
  }

  /** The hole meant on this side, or empty when only the other side is named. */
  public Optional<HoleId> on(Side which) {
    return side == null || side == which
        ? Optional.of(new HoleId(which, end, number))
        : Optional.empty();
  }

  /** The name with left and right exchanged; itself when it names both. */
  public HoleRef mirrored() {
    return side == null ? this : new HoleRef(side.other(), end, number);
  }

  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof HoleRef r && side == r.side && end == r.end && number == r.number;
  }

  @Override
  public int hashCode() {
    return 6 * number + (side == null ? 4 : side == Side.LEFT ? 0 : 2) + (end == End.HEAD ? 0 : 1);
  }

  /** The name, such as {@code 7H} or {@code L7H}. */
  @Override
  public String toString() {
    return (side == null ? "" : String.valueOf(side.letter())) + number + end.letter();
  }
}
