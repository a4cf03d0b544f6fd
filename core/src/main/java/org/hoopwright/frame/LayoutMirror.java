package org.hoopwright.frame;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.finding.Places;
import org.hoopwright.geometry.Point;

/** Exchanges left and right in a layout. */
final class LayoutMirror {

  private LayoutMirror() {}

  static Layout of(Layout l) {
    LayoutBuilder b = l.toBuilder();
    b.places = Places.none();
    if (l.hoop() instanceof Hoop.Points p) {
      b.hoop = new Hoop.Points(p.points().stream().map(Point::mirrored).toList());
    }
    b.headHoles = l.headHoles().swapped();
    b.throatHoles = l.throatHoles().swapped();
    b.tieOff = refs(l.tieOff());
    b.shared = refs(l.shared());
    b.blocked = refs(l.blocked());
    Map<HoleRef, Integer> bore = new LinkedHashMap<>();
    l.bore().forEach((ref, n) -> bore.put(ref.mirrored(), n));
    b.bore(bore);
    Map<HoleRef, Point> at = new LinkedHashMap<>();
    // A name without side states the right hole and is mirrored to the left by its own rule, so its
    // point stays.
    l.at().forEach((ref, p) -> at.put(ref.mirrored(), ref.side().isPresent() ? p.mirrored() : p));
    b.at(at);
    b.noRun = l.noRun().stream().map(NoRun::mirrored).toList();
    b.mainsSkip = l.mainsSkip().map(LayoutMirror::refs);
    b.mainsOffsets = l.mainsOffsets().map(EachSide::swapped);
    b.shortSide = l.shortSide().map(s -> s.other());
    b.crossesSkip = refs(l.crossesSkip());
    b.crossesOffsets = l.crossesOffsets().map(EachSide::swapped);
    b.crossesFirst = l.crossesFirst().map(LayoutMirror::holes);
    b.crossesLast = l.crossesLast().map(LayoutMirror::holes);
    b.startSide = l.startSide().map(s -> s.other());
    b.headZone = l.headZone().map(LayoutMirror::holes);
    return b.build();
  }

  private static List<HoleRef> refs(List<HoleRef> refs) {
    return refs.stream().map(HoleRef::mirrored).toList();
  }

  private static EachSide<HoleId> holes(EachSide<HoleId> pair) {
    return new EachSide<>(pair.right().mirrored(), pair.left().mirrored());
  }
}
