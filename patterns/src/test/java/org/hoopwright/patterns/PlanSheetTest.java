package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hoopwright.Plan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.Layout;
import org.hoopwright.replay.ForceParameters;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanSheetTest {

  static final Pattern UNSAFE = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}&&[^\n]]");

  static Stream<String> samples() {
    return Samples.list().stream().map(Sample::name);
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @MethodSource("samples")
  void hasEverythingInThePlanOnLinesThatFit(String name) {
    Plan plan = Plans.best(Samples.layout(name), Job.standard());
    String sheet = PlanSheet.of(plan);

    assertThat(sheet.lines()).allMatch(l -> l.length() <= 100).noneMatch(l -> l.endsWith(" "));
    assertThat(UNSAFE.matcher(sheet).find()).isFalse();
    String flat = flat(sheet);
    List<Step> steps = plan.bench().steps();
    int from = 0;
    for (int i = 0; i < steps.size(); i++) {
      String step = " " + (i + 1) + ". " + flat(steps.get(i).say());
      assertThat(flat.indexOf(step, from)).as(step).isNotNegative();
      from = flat.indexOf(step, from);
    }
    plan.findings().forEach(f -> assertThat(flat).contains(flat(f.message()), flat(f.fix())));
    plan.bench()
        .route()
        .pieces()
        .forEach(p -> p.ends().forEach(e -> assertThat(flat).contains(Words.knot(e.finish()))));
  }

  @Test
  void putsCautionsBeforeAnythingElse() {
    Plan plan = Plans.best(Willowbank.hundred().build(), Job.standard());
    String sheet = PlanSheet.of(plan);

    assertThat(sheet.indexOf("TAKE CARE")).isLessThan(sheet.indexOf("THE ROUTE"));
    plan.cautions().forEach(c -> assertThat(sheet).contains("  ! " + c + "\n"));
  }

  @Test
  void groupsStepsByWhatTheyAreAbout() {
    Plan plan = Plans.best(Willowbank.hundred().build(), Plans.pieces(1));
    List<SheetPhases.Phase> phases = SheetPhases.of(plan.bench());

    assertThat(phases)
        .extracting(SheetPhases.Phase::heading)
        .startsWith("Get ready", "Start the mains", "Go on with the mains", "Tie the short end")
        .endsWith("Tie the long end", "Finish");
    assertThat(phases.stream().flatMap(p -> p.steps().stream()).toList())
        .isEqualTo(plan.bench().steps());
    int next = 1;
    for (SheetPhases.Phase phase : phases) {
      assertThat(phase.first()).isEqualTo(next);
      next += phase.steps().size();
    }
  }

  @Test
  void namesBothPiecesAndTheirEnds() {
    String sheet = PlanSheet.of(Plans.best(Willowbank.hundred().build(), Plans.pieces(2)));

    assertThat(sheet)
        .contains("two pieces", "cut mains", "cut crosses", "start of the crosses")
        .contains("\n  Get the second piece ready\n", "\n  Crosses X1 to X19\n");
  }

  @ParameterizedTest
  @MethodSource("starts")
  void saysHowTheMainsStart(StartMethod method) {
    Job job = Job.builder().startMethod(method).build();
    String sheet = flat(PlanSheet.of(Plans.best(Willowbank.hundred().build(), job)));

    assertThat(sheet)
        .contains(
            switch (method) {
              case ANCHOR_MAIN -> "starting clamp outside at";
              case HAND_HELD -> "a hand keeps its tail straight, and bears no tension";
              case DOUBLED_CLAMP -> "both machine clamps hold main";
            });
  }

  static StartMethod[] starts() {
    return StartMethod.values();
  }

  @Test
  void tellsTheWeaveOfEveryCross() {
    Plan plan = Plans.best(Willowbank.hundred().build(), Job.standard());
    String sheet = PlanSheet.of(plan);

    plan.bench()
        .bed()
        .crosses()
        .forEach(
            x -> assertThat(sheet).containsPattern(x.id() + " from [LR]\\d+[HT] (over|under)"));
  }

  @Test
  void callsEstimatesEstimates() {
    String sheet = PlanSheet.of(Plans.best(Willowbank.hundred().build(), Job.standard()));

    assertThat(sheet)
        .contains("ESTIMATES (worked out from the parameters below, not measured)")
        .contains("180 to 220 N (40 to 49 lbf, 18 to 22 kgf)")
        .contains("friction of string on the frame, coefficient  0.13 to 0.20");
  }

  @Test
  void saysWhatEveryParameterIs() {
    Plan plan = Plans.best(Willowbank.teaching().build(), Job.standard());

    assertThat(ForceParameters.of(plan.bench()).byName().keySet())
        .isNotEmpty()
        .allMatch(name -> !SheetTables.parameter(name).equals(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u001b[2J\u0007\r\n\t\u0000",
        "\u202e\u200b\u2066\ufeff",
        "\ud800 lone",
        "\u2028\u2029\u0085",
      })
  void showsNothingThatCouldPaintTheTerminal(String name) {
    Layout layout = PlanWriterTest.renamed(Willowbank.teaching().build(), "A" + name + "Z");
    String sheet = PlanSheet.of(Plans.best(layout, Job.standard()));

    assertThat(UNSAFE.matcher(sheet).find()).isFalse();
    assertThat(sheet).contains("STRINGING PLAN: A\\u");
    assertThat(sheet.lines()).allMatch(l -> l.length() <= 100);
  }

  @Test
  void breaksEvenANameWithoutSpaces() {
    Layout layout =
        PlanWriterTest.renamed(
            Willowbank.teaching().build(), "\uD83C\uDFBE".repeat(400) + "x".repeat(999));

    assertThat(PlanSheet.of(Plans.best(layout, Job.standard())).lines())
        .allMatch(l -> l.length() <= 100)
        .noneMatch(l -> Character.isHighSurrogate(l.isEmpty() ? 'x' : l.charAt(l.length() - 1)));
  }
}
