package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CompareCommandTest {

  private static final String FRAME = "sample:willowbank-100";
  private static final String WORN = "sample:willowbank-100-worn";

  @TempDir private Path folder = Path.of("");

  @Test
  void tellsWhatLayoutsStateAndWhatFollows() {
    Call call = Call.of("compare", FRAME, WORN);
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    assertThat(call.err()).isEmpty();
    assertThat(call.out())
        .startsWith("WHAT DIFFERS\n")
        .contains(
            "first:  Willowbank 100 (sample:willowbank-100)",
            "In the second L11H is blocked; in the first it is not.",
            "X3 runs from L11H to R11H in the first, from L10H to R11H in the second.",
            "The rules allow 152 orders of passes in the first, 84 orders of passes in the second.",
            "more that the first alone allows",
            "THE BEST ROUTES");
    assertThat(call.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
  }

  @Test
  void tellsThatNothingDiffers() {
    Call call = Call.of("compare", FRAME, FRAME);
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    assertThat(call.out()).endsWith("\nNothing differs.\n");
    JsonNode json = json(Call.of("compare", FRAME, FRAME, "--format", "json"));
    assertThat(json.get("differences").size()).isZero();
  }

  private static JsonNode json(Call call) {
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    return JsonMapper.shared().readTree(call.out());
  }

  @Test
  void writesEveryDifferenceAsJson() {
    JsonNode json = json(Call.of("compare", FRAME, WORN, "--format", "json"));
    assertThat(json.propertyNames()).containsExactly("format", "first", "second", "differences");
    assertThat(json.get("format").asString()).isEqualTo("hoopwright/differences-1");
    assertThat(json.get("second").propertyNames()).containsExactly("file", "name", "sha256");
    assertThat(json.get("second").get("name").asString()).isEqualTo("Willowbank 100, worn");
    int orders = 0;
    for (JsonNode d : json.get("differences")) {
      assertThat(d.has("first") || d.has("second")).isTrue();
      assertThat(d.get("topic").asString()).isNotBlank();
      assertThat(d.get("say").asString()).endsWith(".");
      orders += d.get("topic").asString().equals("routes.order") ? 1 : 0;
    }
    assertThat(orders).isGreaterThan(60);
  }

  @Test
  void comparesPlansOfTwoLayouts() {
    JsonNode json = json(Call.of("compare", FRAME, WORN, "--plans", "--format", "json"));
    assertThat(json.get("first").get("route").asInt()).isEqualTo(1);
    assertThat(json.get("differences").toString())
        .contains("\"options\"", "\"estimates.clampPeak\"", "\"pieces.cutLength\"")
        .doesNotContain("\"holes.", "\"bed.", "\"routes");
  }

  @Test
  void comparesTwoRoutesOfOneLayout() {
    Call call = Call.of("compare", FRAME, "--routes", "1,3", "--tension", "25kgf");
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    assertThat(call.out())
        .contains(
            "Willowbank 100 (sample:willowbank-100), route 3",
            "The route is plain in the first, around-the-world in the second.",
            "THE PLANS")
        .doesNotContain("pulled at");
    assertThat(Call.of("compare", FRAME, "--routes", "2,2").out()).contains("Nothing differs.");
    Call none = Call.of("compare", FRAME, "--routes", "1,1000");
    assertThat(none.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(none.err()).contains("there is no route 1000; the last is route 76.");
  }

  @Test
  void refusesAWrongCall() {
    for (String[] words :
        new String[][] {
          {"compare", FRAME},
          {"compare", FRAME, WORN, "--routes", "1,2"},
          {"compare", FRAME, "--routes", "1"},
          {"compare", FRAME, "--routes", "0,1"},
          {"compare", FRAME, "--routes", "1,x"},
          {"compare", FRAME, "--routes", "1,2", "--plans"},
          {"compare", "-", "-"},
          {"compare", FRAME, WORN, FRAME},
          {"compare", FRAME, WORN, "--tension", "25"}
        }) {
      Call call = Call.of(words);
      assertThat(call.code()).as("%s", String.join(" ", words)).isEqualTo(ExitCode.WRONG_CALL);
      assertThat(call.out()).isEmpty();
    }
    assertThat(Call.of("compare", FRAME, "none.json").code()).isEqualTo(ExitCode.FILE);
  }

  @Test
  void saysWhatIsWrongWithAFile() throws IOException {
    Path broken = folder.resolve("broken.json");
    Files.writeString(broken, "{");
    Call layouts = Call.of("compare", FRAME, broken.toString());
    assertThat(layouts.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(layouts.out()).contains("broken.json:1:");
    Path wrong = folder.resolve("wrong.json");
    Files.writeString(
        wrong, Samples.text("willowbank-100").replace("\"count\": 19", "\"count\": 25"));
    Call stated = Call.of("compare", FRAME, wrong.toString());
    assertThat(stated.code()).isEqualTo(ExitCode.DONE);
    assertThat(stated.out())
        .contains("The crosses number 19 in the first, 25 in the second.")
        .contains("There is a bed in the first, no bed in the second.");
    assertThat(Call.of("compare", FRAME, wrong.toString(), "--plans").code())
        .isEqualTo(ExitCode.FINDINGS);
  }
}
