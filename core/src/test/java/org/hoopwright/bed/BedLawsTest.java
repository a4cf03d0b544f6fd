package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.BedLayouts;
import org.hoopwright.testing.Draw;
import org.hoopwright.units.LengthUnit;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** What holds for every bed, on random frames with two different sides. */
class BedLawsTest {

  private static final GeometryFactory JTS = new GeometryFactory();

  private static Layout layout(long seed) {
    Draw draw = Draw.from(seed);
    return draw.chance(30)
        ? BedLayouts.even(draw, 9, draw.chance(50))
        : BedLayouts.uneven(draw, 9, draw.chance(50));
  }

  private static Bed bed(Layout layout) {
    Assignment assignment = StatedAssignment.assign(layout);
    return assignment.bed().orElseThrow(() -> new AssertionError(assignment.findings().toString()));
  }

  @Property
  void theWeaveAlternatesAlongEverySpan(@ForAll long seed) {
    Bed bed = bed(layout(seed));
    for (Span span : bed.spans()) {
      List<Crossing> along = bed.crossings(span.id());
      for (int i = 1; i < along.size(); i++) {
        assertThat(along.get(i).crossOver()).isNotEqualTo(along.get(i - 1).crossOver());
      }
    }
    assertThat(bed.crossOver(SpanId.of("X1"), SpanId.of("R1"))).isTrue();
  }

  @Property
  void crossingsAreThoseOfStraightLines(@ForAll long seed) {
    // Holes on the outline lie on a convex curve; moved ones need not, and there ring order
    // decides.
    Bed bed = bed(layout(seed).toBuilder().at(Map.of()).build());
    for (Span cross : bed.crosses()) {
      LineString line = line(cross);
      for (SpanId id : bed.mainsLeftToRight()) {
        Span main = bed.span(id);
        boolean sharedHole = main.uses(cross.from()) || main.uses(cross.to());
        Geometry meet = line.intersection(line(main));
        boolean meets = !meet.isEmpty() && !sharedHole;
        assertThat(bed.meets(id, cross.id())).as("%s and %s", id, cross.id()).isEqualTo(meets);
        if (meets) {
          Crossing crossing =
              bed.crossings(id).stream()
                  .filter(c -> c.cross().equals(cross.id()))
                  .findFirst()
                  .orElseThrow();
          Point at = new Point(meet.getCoordinate().x, meet.getCoordinate().y);
          assertThat(crossing.at().distanceTo(at)).isLessThan(1e-6);
          assertThat(crossing.fromHeadMm() - main.fromPoint().distanceTo(at))
              .isBetween(-1e-6, 1e-6);
        }
      }
    }
  }

  private static LineString line(Span span) {
    return JTS.createLineString(
        new Coordinate[] {
          new Coordinate(span.fromPoint().x(), span.fromPoint().y()),
          new Coordinate(span.toPoint().x(), span.toPoint().y())
        });
  }

  @Property
  void holesCarryWhatTheirNeighboursLeave(@ForAll long seed) {
    Layout layout = layout(seed);
    Bed bed = bed(layout);
    for (Side side : Side.values()) {
      for (int i = 0; i < bed.ring().size(side); i++) {
        var hole = bed.ring().at(side, i);
        HoleLabel label = bed.labels().of(side).get(i);
        assertThat(label.passes()).isLessThanOrEqualTo(bed.ring().passLimit(hole));
        assertThat(bed.spansAt(hole)).hasSize(label.passes());
        boolean left = layout.crossesSkip().stream().anyMatch(r -> r.holes().contains(hole));
        assertThat(label == HoleLabel.NONE).as("%s", hole).isEqualTo(left);
      }
    }
  }

  @Property
  void aMirroredFrameHasTheMirroredBed(@ForAll long seed) {
    Layout layout = layout(seed);
    Bed bed = bed(layout);
    Bed mirrored = bed(layout.mirrored());
    assertThat(mirrored.labels()).isEqualTo(bed.labels().mirrored());
    bed.positions()
        .forEach(
            (hole, p) -> assertThat(mirrored.position(hole.mirrored())).isEqualTo(p.mirrored()));
    for (Span cross : bed.crosses()) {
      for (Crossing c : bed.crossings(cross.id())) {
        assertThat(mirrored.meets(c.main().mirrored(), c.cross())).isTrue();
        assertThat(mirrored.crossOver(c.cross(), c.main().mirrored()))
            .as("the other way up")
            .isNotEqualTo(c.crossOver());
      }
    }
    assertThat(bed(layout.mirrored().mirrored()).labels()).isEqualTo(bed.labels());
  }

  @Property
  void inchesMakeTheSameBed(@ForAll long seed) {
    Layout layout = layout(seed);
    Hoop.Superellipse hoop = (Hoop.Superellipse) layout.hoop();
    Map<HoleRef, Point> at = new LinkedHashMap<>();
    layout.at().forEach((ref, p) -> at.put(ref, new Point(p.x() / 25.4, p.y() / 25.4)));
    Bed bed = bed(layout);
    Bed inches =
        bed(
            layout.toBuilder()
                .units(LengthUnit.INCH)
                .hoop(
                    new Hoop.Superellipse(
                        hoop.length() / 25.4, hoop.width() / 25.4, hoop.exponent()))
                .at(at)
                .build());
    assertThat(inches.labels()).isEqualTo(bed.labels());
    bed.positions()
        .forEach((hole, p) -> assertThat(inches.position(hole).distanceTo(p)).isLessThan(1e-8));
  }

  @Property(tries = 50)
  void theSameLayoutMakesTheSameBed(@ForAll long seed) {
    Assignment first = StatedAssignment.assign(layout(seed));
    Assignment second = StatedAssignment.assign(layout(seed));
    assertThat(second.findings()).isEqualTo(first.findings());
    assertThat(second.bed().orElseThrow().labels()).isEqualTo(first.bed().orElseThrow().labels());
    assertThat(second.bed().orElseThrow().positions())
        .isEqualTo(first.bed().orElseThrow().positions());
  }
}
