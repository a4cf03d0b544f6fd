package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A job half done, its state in a file, and the way on. */
class ResumeCommandTest {

  @TempDir private Path folder = Path.of("");
  private String state = "";

  @BeforeEach
  void stateInTheMiddle() throws IOException {
    // The step after which the tensioner has let go of X5, so that everything is at rest.
    String plan = Call.of("plan", "sample:willowbank-100", "--format", "json").out();
    String before = plan.substring(0, plan.indexOf("\"tails\": [\"X6\"]"));
    int release = before.lastIndexOf("\"do\": \"release\"");
    int number = before.lastIndexOf("\"n\": ", release) + 5;
    String step = before.substring(number, before.indexOf(',', number));
    Call made = Call.of("state", "sample:willowbank-100", "--after", step);
    assertThat(made.code()).isEqualTo(ExitCode.DONE);
    state = made.out();
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("job.json"), text);
  }

  @Test
  void goesOnWithoutUndoing() throws IOException {
    Call call = Call.of("resume", "sample:willowbank-100", file(state).toString(), "--most", "2");
    assertThat(call.err()).isEmpty();
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    assertThat(call.out())
        .startsWith("TAKE CARE")
        .contains("wear eye protection", "WAYS ON", "1. Nothing is undone", "X6");
    assertThat(call.out()).doesNotContain("WHAT IS UNDONE");
  }

  @Test
  void takesAMisweaveBack() throws IOException {
    String misweaved = state.replace("\"misweaves\": []", "\"misweaves\": [\"X4\"]");
    Call call = Call.of("resume", "sample:willowbank-100", file(misweaved).toString());
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    assertThat(call.out()).contains("1. 2 strings are undone").contains("Draw X4 out");
  }

  @Test
  void saysWhatIsWrongWithTheState() throws IOException {
    Call typo =
        Call.of(
            "resume", "sample:willowbank-100", file(state.replace("\"X1\"", "\"Y1\"")).toString());
    assertThat(typo.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(typo.out()).contains("job.json:").contains("is not a span");

    Call loose =
        Call.of(
            "resume",
            "sample:willowbank-100",
            file(state.replaceAll("\"clamps\": \\[[^\\]]*\\]", "\"clamps\": []")).toString());
    assertThat(loose.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(loose.err()).contains("nothing holds it");

    assertThat(Call.of("resume", "sample:willowbank-100", "none.json").code())
        .isEqualTo(ExitCode.FILE);
    assertThat(Call.of("state", "sample:willowbank-100", "--after", "9999").code())
        .isEqualTo(ExitCode.WRONG_CALL);
  }

  private JsonNode json(String stateText, String... more) throws IOException {
    List<String> words =
        new ArrayList<>(
            List.of("resume", "sample:willowbank-100", file(stateText).toString(), "--format"));
    words.add("json");
    words.addAll(List.of(more));
    Call call = Call.of(words.toArray(new String[0]));
    assertThat(call.err()).isEmpty();
    assertThat(call.code()).isEqualTo(ExitCode.DONE);
    return JsonMapper.shared().readTree(call.out());
  }

  /** Whatever stands in the text stands in the JSON, word for word. */
  @Test
  void writesAsJsonWhatTheTextSays() throws IOException {
    String misweaved = state.replace("\"misweaves\": []", "\"misweaves\": [\"X4\"]");
    String unmeasured = misweaved.replaceAll(", *\n? *\"tail\": [0-9.]+", "");
    assertThat(unmeasured).isNotEqualTo(misweaved);
    for (String job : List.of(state, misweaved, unmeasured)) {
      Call text = Call.of("resume", "sample:willowbank-100", file(job).toString());
      JsonNode json = json(job);
      List<String> told = new ArrayList<>();
      json.get("cautions").forEach(c -> told.add("! " + c.asString()));
      for (JsonNode way : json.get("ways")) {
        told.add(way.get("say").asString());
        told.add(way.get("route").get("line").asString());
        way.get("findings").forEach(f -> told.add(f.get("message").asString()));
      }
      JsonNode first = json.get("ways").get(0);
      List<JsonNode> steps = new ArrayList<>();
      first.get("undo").forEach(steps::add);
      first.get("steps").forEach(steps::add);
      for (int i = 0; i < steps.size(); i++) {
        assertThat(steps.get(i).get("n").asInt()).isEqualTo(i + 1);
        told.add(steps.get(i).get("say").asString());
      }
      String words = bare(String.join(" ", told));
      String unnumbered = text.out().replaceAll("(?m)^ +[0-9]+\\. (?=\\S)", "");
      String shown = bare(unnumbered.replaceAll("(?m)^[A-Z ,:]+(, cheapest first)?$", ""));
      assertThat(words).isEqualTo(shown);
    }
  }

  /** A text without line breaks. */
  private static String bare(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  @Test
  void saysAsJsonWhatIsUndoneAndWhatIsInDoubt() throws IOException {
    String misweaved = state.replace("\"misweaves\": []", "\"misweaves\": [\"X4\"]");
    JsonNode json = json(misweaved.replaceAll(", *\n? *\"tail\": [0-9.]+", ""), "--most", "2");
    assertThat(json.get("format").asString()).isEqualTo("hoopwright/ways-1");
    assertThat(json.get("layout").get("name").asString()).isEqualTo("Willowbank 100");
    assertThat(json.has("on")).isFalse();
    JsonNode first = json.get("ways").get(0);
    assertThat(first.get("undone").toString()).isEqualTo("[\"X4\",\"X5\"]");
    assertThat(first.get("spansUndone").asInt()).isEqualTo(2);
    assertThat(first.get("unmeasured").toString()).isEqualTo("[\"finish\"]");
    assertThat(first.get("say").asString()).contains("Nobody has measured the tail");
    assertThat(first.get("newString").asDouble()).isZero();
    JsonNode second = json.get("ways").get(1);
    assertThat(second.get("cutOut").toString()).isEqualTo("[1]");
    assertThat(second.get("newString").asDouble()).isPositive();
  }

  @Test
  void namesTheLayoutToGoOnWith() throws IOException {
    JsonNode json = json(state, "--on", "sample:willowbank-100-worn");
    assertThat(json.get("on").get("name").asString()).isEqualTo("Willowbank 100, worn");
    assertThat(json.get("ways").get(0).get("undone").toString()).contains("X3");
  }

  @Test
  void reportsFindingsAsJsonToo() throws IOException {
    Call typo =
        Call.of(
            "resume",
            "sample:willowbank-100",
            file(state.replace("\"X1\"", "\"Y1\"")).toString(),
            "--format",
            "json");
    assertThat(typo.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(JsonMapper.shared().readTree(typo.out()).get("format").asString())
        .isEqualTo("hoopwright/findings-1");
  }
}
