package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampUse;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.MachineClampKind;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.Tensioner;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** What each estimate rests on, and that every result is a range that follows from those ranges. */
class ForceRangesTest {

  private static final Path CORE = Path.of("src/main/java/org/hoopwright");

  private static final Path PAGE = Path.of("..", "docs", "bench.md");

  private static Map<String, Interval> byName(ForceParameters p)
      throws ReflectiveOperationException {
    Map<String, Interval> all = new java.util.LinkedHashMap<>();
    for (RecordComponent c : ForceParameters.class.getRecordComponents()) {
      all.put(c.getName(), (Interval) c.getAccessor().invoke(p));
    }
    return all;
  }

  private static BenchPlan plan(Job job) {
    Bed bed =
        StatedAssignment.assign(Willowbank.teaching().tieOff("1H", "2H", "1T", "2T").build())
            .bed()
            .orElseThrow();
    for (RankedRoute r : RouteSearch.search(bed, job.routeRequest(bed.layout())).ranked()) {
      var plan = Planner.plan(bed, r.route(), job);
      if (plan.isPresent()) {
        return plan.get();
      }
    }
    throw new AssertionError("no plan");
  }

  /** Every parameter has a default range of its own, and is named with it wherever it is shown. */
  @Test
  void everyParameterHasADefaultRange() throws ReflectiveOperationException {
    for (MachineClampKind kind : MachineClampKind.values()) {
      for (Tensioner tensioner : Tensioner.values()) {
        Job job =
            Job.builder()
                .bench(Bench.builder().machineClampKind(kind).tensioner(tensioner).build())
                .build();
        ForceParameters p = ForceParameters.of(plan(job));
        assertThat(p.byName()).isEqualTo(byName(p));
        // A range, not a number; only a tensioner that keeps pulling acts with all of its pull.
        p.byName()
            .forEach(
                (name, i) ->
                    assertThat(i.low() < i.high())
                        .as(name)
                        .isEqualTo(
                            !(name.equals("tensionerShare")
                                && tensioner == Tensioner.CONSTANT_PULL)));
      }
    }
  }

  /** Each says its default, and where it comes from: a source, or "our choice". */
  @Test
  void everyParameterSaysWhereItsDefaultComesFrom() throws IOException {
    String source = Files.readString(CORE.resolve("replay/ForceParameters.java"));
    String page = Files.readString(PAGE);
    for (RecordComponent c : ForceParameters.class.getRecordComponents()) {
      Matcher doc =
          Pattern.compile(
                  " \\* @param " + c.getName() + " (.*?)(?= \\* @param | \\*/)", Pattern.DOTALL)
              .matcher(source);
      assertThat(doc.find()).as(c.getName()).isTrue();
      String text = doc.group(1).replaceAll("\\s*\\n \\* *", " ");
      if (text.startsWith("the same for")) {
        continue; // the crosses' is said with the mains'
      }
      assertThat(text).as(c.getName()).contains("Default");
      assertThat(hasSource(text)).as(c.getName() + ": " + text).isTrue();
      assertThat(page).contains("`" + c.getName() + "`");
      String row =
          page.lines().filter(l -> l.startsWith("| `" + c.getName() + "`")).findFirst().get();
      assertThat(row.split("\\|")).as(row).hasSize(4);
    }
  }

  /** In the text itself, or in that of the class that it names. */
  private static boolean hasSource(String text) throws IOException {
    if (states(text)) {
      return true;
    }
    Matcher link =
        Pattern.compile("\\{@link\\s+(?:org\\.hoopwright\\.)?([a-zA-Z.#]+)").matcher(text);
    while (link.find()) {
      String name = link.group(1);
      String file =
          name.startsWith("#") ? "replay/ForceParameters" : name.replace('.', '/').replace("#", "");
      if (states(
          Files.readString(CORE.resolve(file + ".java")).replaceAll("\\s*\\n *\\* *", " "))) {
        return true;
      }
    }
    return false;
  }

  private static boolean states(String text) {
    return text.contains("our choice") || text.contains("Source");
  }

  private static final List<BenchPlan> PLANS = plans();

  private static List<BenchPlan> plans() {
    Bench two = Bench.builder().startingClamps(2).build();
    List<BenchPlan> plans = new ArrayList<>();
    for (StartMethod start : StartMethod.values()) {
      plans.add(plan(Job.builder().startMethod(start).build()));
    }
    plans.add(plan(Job.builder().bench(two).backUp(ClampUse.ALWAYS).build()));
    plans.add(SmallPlans.headStart().plan());
    plans.add(SmallPlans.startingClamp().plan());
    return plans;
  }

  /** Widening the range of any parameter never narrows any result. */
  @Property(tries = 60)
  void aWiderRangeNeverNarrowsAResult(@ForAll long seed) throws ReflectiveOperationException {
    Draw draw = Draw.from(seed);
    BenchPlan plan = PLANS.get(draw.between(0, PLANS.size() - 1));
    ForceParameters wide = ForceParameters.of(plan);
    Interval[] narrow =
        byName(wide).values().stream().map(i -> within(i, draw)).toArray(Interval[]::new);
    ForceParameters inner = of(narrow);
    List<StepForces> outside = ForceHistory.of(plan, wide).steps();
    List<StepForces> inside = ForceHistory.of(plan, inner).steps();
    for (int i = 0; i < outside.size(); i++) {
      StepForces w = outside.get(i);
      StepForces n = inside.get(i);
      String step = "step " + w.step() + " with " + Arrays.toString(narrow);
      holds(step, w.spans(), n.spans());
      holds(step, w.clamps(), n.clamps());
      holds(step, w.together(), n.together());
      holds(step, w.knots(), n.knots());
      holds(step + " along", w.along(), n.along());
      holds(step + " across", w.across(), n.across());
      holds(step + " right minus left", w.rightMinusLeft(), n.rightMinusLeft());
    }
    Estimates all = ForceEstimate.of(plan, wide);
    Estimates some = ForceEstimate.of(plan, inner);
    holds("end", all.spanTension(), some.spanTension());
    holds("peak", all.clampPeak(), some.clampPeak());
    holds("peak", all.hoopPeak(), some.hoopPeak());
  }

  private static Interval within(Interval i, Draw draw) {
    double a = i.low() + (i.high() - i.low()) * draw.between(0, 100) / 100;
    double b = i.low() + (i.high() - i.low()) * draw.between(0, 100) / 100;
    return new Interval(Math.min(a, b), Math.max(a, b));
  }

  private static ForceParameters of(Interval... i) {
    return new ForceParameters(i[0], i[1], i[2], i[3], i[4], i[5], i[6], i[7], i[8]);
  }

  private static <K> void holds(String what, Map<K, Interval> wide, Map<K, Interval> narrow) {
    assertThat(narrow.keySet()).isEqualTo(wide.keySet());
    wide.forEach((key, w) -> holds(what + " " + key, w, narrow.get(key)));
  }

  private static void holds(String what, Interval wide, Interval narrow) {
    assertThat(narrow.low()).as(what).isGreaterThanOrEqualTo(wide.low() - 1e-6);
    assertThat(narrow.high()).as(what).isLessThanOrEqualTo(wide.high() + 1e-6);
  }
}
