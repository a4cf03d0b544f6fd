package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hoopwright.patterns.Json;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PlanCommandTest {

  private static final String FRAME = "sample:willowbank-100";
  private static final String SMALL = "sample:willowbank-teaching";

  private static Json json(String... args) {
    String[] all = new String[args.length + 3];
    all[0] = "plan";
    all[1] = "--format";
    all[2] = "json";
    System.arraycopy(args, 0, all, 3, args.length);
    Call call = Call.of(all);
    assertThat(call.code()).as(call.err()).isZero();
    return Json.parse(call.out());
  }

  static List<String> samples() {
    return LayoutInput.sampleNames();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void plansEverySampleInBothFormats(String name) {
    Call text = Call.of("plan", "sample:" + name);
    assertThat(text.code()).as(text.err()).isZero();
    assertThat(text.err()).isEmpty();
    assertThat(text.out()).contains("STRINGING PLAN", "TAKE CARE", "STEPS");
    assertThat(text.out().lines()).allMatch(l -> l.length() <= 100);

    Json plan = json("sample:" + name);
    assertThat(plan.at("format").text()).isEqualTo("hoopwright/plan-1");
    assertThat(plan.at("layout", "sha256").text()).matches("[0-9a-f]{64}");
    assertThat(plan.at("steps").items()).isNotEmpty();
  }

  @Test
  void putsTheKnownOrderFirst() {
    Json plan = json(FRAME, "--pieces", "1", "--direction", "head-to-throat");
    List<String> end =
        plan.at("pieces", 0, "ends", 1, "passes").items().stream()
            .map(p -> p.at("span").text())
            .toList();

    assertThat(plan.at("options", "pieces").number()).isEqualTo(1);
    assertThat(plan.at("options", "direction").text()).isEqualTo("head-to-throat");
    assertThat(plan.at("route", "family").texts()).containsExactly("around-the-world");
    assertThat(end).containsSubsequence("R8", "X19", "L8", "X1", "X18").endsWith("X18");
    assertThat(plan.at("pieces").items()).hasSize(1);
  }

  @Test
  void takesBothTensionsWithTheirUnits() {
    Json options = json(SMALL, "--tension", "24.5kgf", "--cross-tension", "50 lbf").at("options");

    assertThat(options.at("mainsTension").number()).isEqualTo(240.3);
    assertThat(options.at("crossesTension").number()).isEqualTo(222.4);
  }

  @Test
  void takesEveryOtherOption() {
    Json options =
        json(
                FRAME,
                "--pieces=2",
                "--gauge=17",
                "--material=multifilament",
                "--start=anchor-main",
                "--start-clamps=2",
                "--run-limit=5",
                "--knot-limit=7",
                "--lead-limit=3",
                "--max-nodes=9000000")
            .at("options");

    assertThat(options.at("pieces").number()).isEqualTo(2);
    assertThat(options.at("gauge").text()).isEqualTo("17");
    assertThat(options.at("material").text()).isEqualTo("multifilament");
    assertThat(options.at("start").text()).isEqualTo("anchor-main");
    assertThat(options.at("startingClamps").number()).isEqualTo(2);
    assertThat(options.at("runLimit").number()).isEqualTo(5);
    assertThat(options.at("knotLimit").number()).isEqualTo(7);
    assertThat(options.at("leadLimit").number()).isEqualTo(3);
  }

  @Test
  void takesWhatIsAtTheBench() {
    Json options =
        json(
                FRAME,
                "--clamps=floating",
                "--tensioner=lockout",
                "--reach=10in",
                "--anchor-main=1",
                "--anchor-side=right")
            .at("options");

    assertThat(options.at("clamps").text()).isEqualTo("floating");
    assertThat(options.at("tensioner").text()).isEqualTo("lockout");
    assertThat(options.at("reach").number()).isEqualTo(254.0);
    assertThat(options.at("anchorMain").number()).isEqualTo(1);
    assertThat(options.at("anchorSide").text()).isEqualTo("right");
    assertThat(Call.of("plan", FRAME, "--start=hand-held", "--anchor-main=2").err())
        .contains("must be 1 with the start hand-held");
  }

  @Test
  void holdsClampsAgainstTheirTests() {
    String[] tests = {
      "--clamp-test=18/nylon/40lbf/held",
      "--clamp-test=18/nylon/45lbf/slipped/deep",
      "--start-clamp-test=18/nylon/45lbf/slipped",
      "--start-clamp-test=cleaned",
      "--start-clamp-test=18/nylon/40lbf/held/tip"
    };
    List<String> words = new java.util.ArrayList<>(List.of("plan", FRAME, "--gauge=18"));
    words.addAll(List.of(tests));
    words.add("--forces");
    Call call = Call.of(words.toArray(new String[0]));

    assertThat(call.code()).as(call.err()).isZero();
    assertThat(call.out())
        .contains("[clamp-may-slip]", "[clamp-not-cleaned]", "A machine clamp has slipped")
        .doesNotContain("A starting clamp has slipped")
        .contains("FORCES AFTER EACH STEP, lbf", "holds: tested up to 80 lbf");
    // At its most the starting clamp backs a machine clamp up: each of the two has held 40 lbf.
  }

  @Test
  void forcesAreThoseOfEveryStep() {
    Json plain = json(SMALL);
    Json forces = json(SMALL, "--forces");

    assertThat(plain.has("forces")).isFalse();
    assertThat(forces.at("forces").items()).hasSizeGreaterThan(20);
    Json last = forces.at("forces", forces.at("forces").items().size() - 1);
    assertThat(last.at("spans", "L1").value())
        .isEqualTo(forces.at("estimates", "spanTension", "L1").value());
    Call text = Call.of("plan", SMALL, "--forces");
    assertThat(text.out()).startsWith(Call.of("plan", SMALL).out());
    assertThat(text.out().lines()).allMatch(l -> l.length() <= 100);
    assertThat(Call.of("plan", SMALL, "--forces", "--all").code()).isEqualTo(ExitCode.WRONG_CALL);
  }

  @Test
  void stringsAHybridInTwoPieces() {
    Json plan = json(FRAME, "--gauge", "17/16", "--material", "polyester/natural-gut");

    assertThat(plan.at("options", "gauge", "mains").text()).isEqualTo("17");
    assertThat(plan.at("options", "gauge", "crosses").text()).isEqualTo("16");
    assertThat(plan.at("options", "material", "crosses").text()).isEqualTo("natural-gut");
    assertThat(plan.at("pieces").items()).hasSize(2);
    Call call = Call.of("plan", FRAME, "--gauge", "17/16", "--pieces", "1");
    assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(call.err()).contains("one piece cannot be of two strings");
  }

  @ParameterizedTest
  @CsvSource({
    "--pieces, 3, must be 1 or 2",
    "--pieces, one, --pieces",
    "--direction, down, 'head-to-throat, throat-to-head'",
    "--tension, 24.5, 'write 24.5N, 24.5lbf or 24.5kgf'",
    "--tension, 55lb, 'must be a number with its unit'",
    "--tension, -5N, 'must be a number with its unit'",
    "--tension, 0N, must be more than 0 N",
    "--cross-tension, 20, 'write 20N'",
    "--gauge, 12, 'must be one of 13, 14'",
    "--gauge, 16/17/18, two with a /",
    "--material, steel, natural-gut",
    "--start, quick, 'anchor-main, hand-held, doubled-clamp'",
    "--start-clamps, 3, must be from 0 to 2",
    "--anchor-main, 3, must be 1 or 2",
    "--anchor-side, middle, 'left, right'",
    "--clamps, magnetic, 'fixed, swivel, floating'",
    "--tensioner, hand, 'constant-pull, lockout, drop-weight'",
    "--reach, 230, 'write 230mm or 230in'",
    "--reach, 3000mm, 'must be from 0.0 to 2000.0 mm'",
    "--clamp-test, 18/nylon/40/held, 18/nylon/40lbf/held",
    "--clamp-test, 18/nylon/0lbf/held, 18/nylon/40lbf/held",
    "--start-clamp-test, 18/nylon/40lbf/fine, 18/nylon/40lbf/held",
    "--run-limit, 0, must be from 1 to 1000",
    "--knot-limit, 1001, must be from 1 to 1000",
    "--lead-limit, 4, must be from 1 to 3",
    "--max-nodes, 0, must be 1 or more",
    "--limit, 3, goes with --all only",
    "--format, yaml, --format",
    "--speed, fast, --speed",
  })
  void wrongValuesAreWrongCallsThatSayTheWayOut(String option, String value, String says) {
    // The call is looked at before the file.
    for (String file : new String[] {FRAME, "no-such-file.json"}) {
      Call call = Call.of("plan", file, option, value);

      assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
      assertThat(call.out()).isEmpty();
      assertThat(call.err()).startsWith("hoopwright plan: ").contains(says, "--help");
    }
  }

  @Test
  void stepsAndLimitGoWithAll() {
    assertThat(Call.of("plan", SMALL, "--steps").code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("plan", SMALL, "--all", "--limit", "0").code())
        .isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("plan").code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("plan", SMALL, FRAME).code()).isEqualTo(ExitCode.WRONG_CALL);
  }

  @Test
  void listsEveryRouteAsATable() {
    Call call = Call.of("plan", FRAME, "--all");

    assertThat(call.code()).isZero();
    assertThat(call.out()).startsWith("ROUTES: Willowbank 100").doesNotContain("STRINGING PLAN");
    assertThat(Call.of("plan", FRAME, "--all", "--limit", "2").out())
        .contains("The first 2 are listed.");
    assertThat(Call.of("plan", SMALL, "--all", "--limit", "2", "--steps").out())
        .startsWith("ROUTES")
        .containsOnlyOnce("ROUTES")
        .contains("STRINGING PLAN", "STEPS");
  }

  @Test
  void listsEveryRouteAsJson() {
    Json all = json(SMALL, "--all");
    Json two = json(SMALL, "--all", "--limit", "2", "--steps");

    assertThat(all.names()).containsExactly("plans");
    assertThat(all.at("plans").items()).hasSizeGreaterThan(2).noneMatch(p -> p.has("steps"));
    assertThat(two.at("plans").items()).hasSize(2).allMatch(p -> p.has("steps"));
    assertThat(two.at("plans", 0).value()).isEqualTo(json(SMALL).value());
    assertThat(all.at("plans").items())
        .extracting(p -> p.at("layout", "sha256").text())
        .containsOnly(json(SMALL).at("layout", "sha256").text());
  }

  @Test
  void badLayoutHasNoPlanButFindings() {
    String bad = Samples.text("willowbank-100").replace("\"tennis\"", "\"tenis\"");
    Call text = Call.withInput(bad, "plan", "-");
    Call json = Call.withInput(bad, "plan", "--format", "json", "-");

    assertThat(text.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(text.out()).contains("[wrong-value]").doesNotContain("STRINGING PLAN");
    assertThat(text.err()).contains("there is no plan");
    assertThat(json.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(Json.parse(json.out()).at("format").text()).isEqualTo("hoopwright/findings-1");
  }

  @Test
  void saysWhyNoRouteExists() {
    Call call = Call.of("plan", FRAME, "--run-limit", "1");

    assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(call.out()).contains("[no-route]", "run");
  }

  @Test
  void givesUpAtItsLimit() {
    for (String format : new String[] {"text", "json"}) {
      Call call = Call.of("plan", FRAME, "--max-nodes", "10", "--format", format);

      assertThat(call.code()).isEqualTo(ExitCode.GAVE_UP);
      assertThat(call.out()).isEmpty();
      assertThat(call.err()).contains("10 nodes", "--max-nodes");
    }
  }

  @Test
  void unreadableFileIsNoPlan() {
    Call call = Call.of("plan", "no-such-file.json");

    assertThat(call.code()).isEqualTo(ExitCode.FILE);
    assertThat(call.out()).isEmpty();
    assertThat(call.err()).contains("no-such-file.json", "there is no such file");
  }

  @Test
  void warningsOfTheLayoutComeAlong() {
    String warned = Samples.text("willowbank-100").replace("\"12T\"]", "\"12T\", \"12T\"]");
    Call call = Call.withInput(warned, "plan", "-");
    Call all = Call.withInput(warned, "plan", "--all", "--limit=1", "--format=json", "-");

    assertThat(call.code()).isZero();
    assertThat(call.out()).contains("[hole-twice]");
    assertThat(Json.parse(all.out()).at("plans", 0, "findings", 0, "code").text())
        .isEqualTo("hole-twice");
  }

  @Test
  void pullAboveTheMakersLimitIsWarnedOf() {
    Call call = Call.of("plan", FRAME, "--tension", "70lbf");

    assertThat(call.code()).isZero();
    assertThat(call.out()).contains("[tension-above-max]");
  }

  @Test
  void tellsWhetherTheStringAtHandIsEnough() {
    Json set = json(FRAME, "--at-hand", "40ft");
    assertThat(set.at("options", "stringAtHand").number()).isEqualTo(12192);
    assertThat(set.at("string", 0, "verdict").text()).isEqualTo("enough");
    assertThat(set.at("string").items()).hasSize(1);

    Json pack = json(FRAME, "--at-hand", "22ft/18ft");
    assertThat(pack.at("options", "stringAtHand", "crosses").number()).isEqualTo(5486.4);
    assertThat(pack.at("string", 1, "atHand").number()).isEqualTo(5486.4);
    assertThat(pack.at("pieces").items()).hasSize(2);

    assertThat(Call.of("plan", FRAME, "--at-hand", "200 m").out())
        .containsPattern("at hand +200000 mm: enough for 17 such jobs, [0-9]+ mm over");
    Call tooShort = Call.of("plan", FRAME, "--at-hand", "9m/9m");
    assertThat(tooShort.out()).contains("at hand, mains", "at hand, crosses");
    assertThat(Call.of("plan", FRAME, "--at-hand", "9m").out())
        .contains("too short; see the findings", "[string-short]");
  }

  @ParameterizedTest
  @CsvSource({
    "12, write 12m or 12ft",
    "0m, must be more than 0 mm",
    "999999ft, at most 100 km",
    "1m/2m/3m, or two with a / between them",
    "m, write it like 12m or 40ft",
    "9m/, write it like 12m or 40ft",
  })
  void stringAtHandMustHaveItsUnit(String value, String says) {
    Call call = Call.of("plan", FRAME, "--at-hand", value);
    assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(call.err()).contains(says);
    assertThat(Call.of("plan", FRAME, "--at-hand=6m/6m", "--pieces=1").err())
        .contains("one piece cannot be cut from a pack of two");
  }
}
