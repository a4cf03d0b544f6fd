package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.geometry.Side;

/**
 * The holes of a layout in order round the hoop, with what each of them takes.
 *
 * <p>Each side's holes from the head's middle to the throat's middle are its list; a hole's
 * <em>place</em> is its index there, from 0. Names that a layout states but that its counts do not
 * have are left out here (a rule reports them), so a ring can be made of any layout. Immutable.
 */
public final class Ring {

  private final EachSide<List<HoleId>> lists;
  private final EachSide<Integer> headCounts;
  private final Set<HoleId> tieOff;
  private final Set<HoleId> shared;
  private final Set<HoleId> blocked;
  private final Map<HoleId, Integer> statedBore = new LinkedHashMap<>();
  private final List<Stretch> forbidden = new ArrayList<>();

  /** A stretch of one side's list, from one place to a later one. */
  private record Stretch(Side side, int from, int to) {}

  private Ring(Layout layout) {
    headCounts =
        new EachSide<>(clamp(layout.headHoles().left()), clamp(layout.headHoles().right()));
    lists = new EachSide<>(listed(layout, Side.LEFT), listed(layout, Side.RIGHT));
    tieOff = existing(layout.tieOff());
    shared = existing(layout.shared());
    blocked = existing(layout.blocked());
    layout
        .bore()
        .forEach(
            (ref, n) -> ref.holes().stream().filter(this::has).forEach(h -> statedBore.put(h, n)));
    for (NoRun no : layout.noRun()) {
      for (Side side : Side.values()) {
        Optional<HoleId> a = no.from().on(side).filter(this::has);
        Optional<HoleId> b = no.to().on(side).filter(this::has);
        if (a.isPresent() && b.isPresent()) {
          int pa = place(a.get());
          int pb = place(b.get());
          forbidden.add(new Stretch(side, Math.min(pa, pb), Math.max(pa, pb)));
        }
      }
    }
  }

  /** The ring of a layout. */
  public static Ring of(Layout layout) {
    return new Ring(layout);
  }

  private List<HoleId> listed(Layout layout, Side side) {
    List<HoleId> list = new ArrayList<>();
    for (int i = 1; i <= headCounts.of(side); i++) {
      list.add(new HoleId(side, End.HEAD, i));
    }
    for (int i = clamp(layout.throatHoles().of(side)); i >= 1; i--) {
      list.add(new HoleId(side, End.THROAT, i));
    }
    return List.copyOf(list);
  }

  private static int clamp(int count) {
    return Math.max(0, Math.min(HoleId.MAX_NUMBER, count));
  }

  private Set<HoleId> existing(Collection<HoleRef> refs) {
    Set<HoleId> holes = new HashSet<>();
    refs.forEach(ref -> ref.holes().stream().filter(this::has).forEach(holes::add));
    return holes;
  }

  /** A side's holes from the head's middle to the throat's middle: 1H … hH, tT … 1T. */
  public List<HoleId> list(Side side) {
    return lists.of(side);
  }

  /** How many holes this side has. */
  public int size(Side side) {
    return list(side).size();
  }

  /** Whether the layout's counts have this hole. */
  public boolean has(HoleId hole) {
    int head = headCounts.of(hole.side());
    int count = hole.end() == End.HEAD ? head : size(hole.side()) - head;
    return hole.number() <= count;
  }

  /** Whether the layout's counts have all these holes. */
  public boolean hasAll(List<HoleId> holes) {
    for (HoleId hole : holes) {
      if (!has(hole)) {
        return false;
      }
    }
    return true;
  }

  /**
   * The hole's place in its side's list, from 0.
   *
   * @throws IllegalArgumentException when the layout has no such hole
   */
  public int place(HoleId hole) {
    if (!has(hole)) {
      throw new IllegalArgumentException(
          "The hole (%s) must be one of the layout's.\nMaybe ask has(hole) first.".formatted(hole));
    }
    return hole.end() == End.HEAD ? hole.number() - 1 : size(hole.side()) - hole.number();
  }

  /** The hole at a place of a side's list. */
  public HoleId at(Side side, int place) {
    return list(side).get(place);
  }

  /** Whether the hole has a knot place. */
  public boolean isTieOff(HoleId hole) {
    return tieOff.contains(hole);
  }

  /** Whether the hole takes two passes. */
  public boolean isShared(HoleId hole) {
    return shared.contains(hole);
  }

  /** Whether the hole takes no string at all. */
  public boolean isBlocked(HoleId hole) {
    return blocked.contains(hole);
  }

  /** How many strings the hole takes in all, passes and knot together; 0 when blocked. */
  public int bore(HoleId hole) {
    if (isBlocked(hole)) {
      return 0;
    }
    Integer stated = statedBore.get(hole);
    return stated != null ? Math.max(0, stated) : isShared(hole) || isTieOff(hole) ? 2 : 1;
  }

  /**
   * How many passes the hole takes: 0 when blocked, 2 when shared, else 1, and never more than its
   * bore.
   */
  public int passLimit(HoleId hole) {
    return Math.min(bore(hole), isShared(hole) ? 2 : 1);
  }

  /**
   * Whether a run may lie between two holes as far as the maker's forbidden stretches go: the holes
   * differ, are on one side, and no forbidden stretch lies between them, wholly or in part.
   */
  public boolean runAllowed(HoleId a, HoleId b) {
    if (a.side() != b.side() || a.equals(b)) {
      return false;
    }
    int pa = place(a);
    int pb = place(b);
    int from = Math.min(pa, pb);
    int to = Math.max(pa, pb);
    for (Stretch s : forbidden) {
      if (s.side == a.side() && Math.max(s.from, from) < Math.min(s.to, to)) {
        return false;
      }
    }
    return true;
  }
}
