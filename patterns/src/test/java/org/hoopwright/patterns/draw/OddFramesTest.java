package org.hoopwright.patterns.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hoopwright.Hoopwright;
import org.hoopwright.Plan;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Job;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.HostileLayouts;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Frames of unusual shape and size are as readable as the usual ones. */
class OddFramesTest {

  static Stream<Arguments> frames() {
    List<Point> egg = new ArrayList<>();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      double a = i * 2 * Math.PI / 24;
      double half = 125 * (1 - 0.12 * Math.cos(a));
      egg.add(new Point(half * Math.sin(a), 165 * Math.cos(a)));
    }
    for (double[] c :
        new double[][] {
          {0, 165},
          {60, 160},
          {118, 60},
          {125, 0},
          {90, -120},
          {0, -165},
          {-90, -120},
          {-125, 0},
          {-118, 60},
          {-60, 160}
        }) {
      corners.add(new Point(c[0], c[1]));
    }
    return Stream.of(
        Arguments.of("a closed list of points", hoop(new Hoop.Points(egg))),
        Arguments.of("few points with corners", hoop(new Hoop.Points(corners))),
        Arguments.of("a very small hoop", hoop(new Hoop.Superellipse(40, 30, 2))),
        Arguments.of("a very large hoop", hoop(new Hoop.Superellipse(3000, 2200, 2.1))),
        Arguments.of("a round hoop", hoop(new Hoop.Superellipse(250, 250, 2))),
        Arguments.of("a slim hoop", hoop(new Hoop.Superellipse(330, 90, 2))),
        Arguments.of("an almost square hoop", hoop(new Hoop.Superellipse(330, 250, 6))));
  }

  private static Layout hoop(Hoop hoop) {
    return Willowbank.hundred().hoop(hoop).at(java.util.Map.of()).build();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("frames")
  void areDrawnAtEveryStage(String name, Layout layout) {
    clean(Drawing.layout(layout), name);
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    clean(Drawing.bed(bed), name);
    clean(Drawing.bed(bed, DrawingOptions.builder().back(true).build()), name);
    Optional<Plan> plan = Hoopwright.plan(layout, Job.standard()).plan();
    assertThat(plan).isPresent();
    clean(Drawing.route(bed, plan.get().bench().route()), name);
    int last = plan.get().bench().steps().size();
    for (int step : new int[] {0, 9, last / 2, last}) {
      clean(Drawing.plan(plan.get().bench(), step), name + " step " + step);
    }
    assertThat(BenchSheet.of(plan.get()).html()).endsWith("</html>\n");
  }

  private static void clean(Drawing drawing, String name) {
    Picture picture = Picture.read(drawing.svg());
    assertThat(picture.ids()).as(name).doesNotHaveDuplicates();
    assertThat(picture.textFaults()).as(name).isEmpty();
    assertThat(picture.page().width()).as(name).isBetween(100.0, 6000.0);
    assertThat(picture.page().height()).as(name).isBetween(100.0, 6000.0);
  }

  @Test
  void hostileBedsAreDrawnToo() {
    int beds = 0;
    for (int seed = 0; seed < 400; seed++) {
      Layout layout = HostileLayouts.of(Draw.from(seed));
      Optional<Bed> bed = StatedAssignment.assign(layout).bed();
      if (bed.isPresent()) {
        beds++;
        clean(Drawing.bed(bed.get()), "seed " + seed);
      }
    }
    assertThat(beds).isGreaterThan(10);
  }
}
