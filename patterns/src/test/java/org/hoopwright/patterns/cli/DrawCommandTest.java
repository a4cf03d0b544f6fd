package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The commands that write drawings and sheets. */
class DrawCommandTest {

  private static final String SMALL = "sample:willowbank-teaching";
  private static final String EVIL =
      "</script></title><img src=x onerror=alert(1)><script>alert(1)//";

  @TempDir Path folder;

  private String drawn(String... args) throws IOException {
    Path file = folder.resolve("out.svg");
    Files.deleteIfExists(file);
    List<String> words = new ArrayList<>(List.of(args));
    words.addAll(List.of("-o", file.toString()));
    Call call = Call.of(words.toArray(new String[0]));
    assertThat(call).isEqualTo(new Call(0, "", ""));
    return Files.readString(file, UTF_8);
  }

  static List<String> samples() {
    return LayoutInput.sampleNames();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void drawsEverySample(String name) throws IOException {
    assertThat(drawn("draw", "sample:" + name, "--stage", "bed"))
        .startsWith("<?xml")
        .contains(">Bed: ");
  }

  @Test
  void drawsWhatIsAskedFor() throws IOException {
    assertThat(drawn("draw", SMALL, "--stage=layout")).contains(">Frame with ");
    assertThat(drawn("draw", SMALL, "--stage=bed")).contains(">Bed: 4 mains");
    assertThat(drawn("draw", SMALL)).contains(">Route: ", "id=\"knot-");
    assertThat(drawn("draw", SMALL, "--stage=route")).isEqualTo(drawn("draw", SMALL));
    assertThat(drawn("draw", SMALL, "--step", "0")).contains("Before the first step");
    assertThat(drawn("draw", SMALL, "--step=3", "--stage=plan")).contains(">Step 3 of ");
    assertThat(drawn("draw", SMALL, "--stage=plan", "--pieces=2"))
        .isNotEqualTo(drawn("draw", SMALL, "--stage=plan", "--pieces=1"));
    assertThat(drawn("draw", SMALL, "--side", "back")).contains("Seen from the back");
    assertThat(drawn("draw", SMALL, "--side", "front")).isEqualTo(drawn("draw", SMALL));
    assertThat(drawn("draw", SMALL, "--size", "4in")).contains("width=\"101.6mm\"");
    assertThat(drawn("draw", SMALL, "--size", "120.5 mm")).contains("width=\"120.5mm\"");
  }

  @Test
  void writesToStandardOutputToo() throws IOException {
    assertThat(Call.of("draw", SMALL, "-o", "-")).isEqualTo(new Call(0, drawn("draw", SMALL), ""));
    assertThat(Call.of("sheet", SMALL, "-o", "-").out()).startsWith("<!DOCTYPE html>");
  }

  @Test
  void writesTheSheetOfTheJob() throws IOException {
    String sheet = drawn("sheet", SMALL, "--tension", "100N", "--cross-tension=90N");
    assertThat(sheet).startsWith("<!DOCTYPE html>").contains("100.0 N", "90.0 N", "<svg");
    assertThat(sheet).isNotEqualTo(drawn("sheet", SMALL));
  }

  @ParameterizedTest
  @CsvSource({
    "draw, --stage, frame, --stage",
    "draw, --step, -1, must be 0 or more",
    "draw, --step, 9999, must be from 0 to",
    "draw, --step, two, --step",
    "draw, --side, top, --side",
    "draw, --size, 180, write 180mm or 180in",
    "draw, --size, wide, write it like 180mm",
    "draw, --size, 39mm, from 40 to 2000 mm",
    "draw, --size, 999999in, from 40 to 2000 mm",
    "draw, --gauge, 12, must be one of",
    "sheet, --tension, 24.5, 'write 24.5N, 24.5lbf or 24.5kgf'",
    "sheet, --stage, bed, --stage",
  })
  void wrongValuesAreWrongCallsAndWriteNothing(
      String command, String option, String value, String says) {
    Path file = folder.resolve("none.svg");
    Call call = Call.of(command, SMALL, "-o", file.toString(), option, value);

    assertThat(call.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(call.out()).isEmpty();
    assertThat(call.err()).startsWith("hoopwright " + command + ": ").contains(says, "--help");
    assertThat(file).doesNotExist();
  }

  @Test
  void whatChangesNothingIsAWrongCall() {
    Call step = Call.of("draw", SMALL, "-o", "-", "--stage=bed", "--step=3");
    Call job = Call.of("draw", SMALL, "-o", "-", "--stage=layout", "--tension=100N");

    assertThat(step.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(step.err()).contains("--step goes with --stage plan only");
    assertThat(job.code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(job.err()).contains("--tension changes nothing in a drawing of the layout");
    assertThat(Call.of("draw", SMALL).code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(Call.of("sheet", SMALL).err()).contains("-o");
  }

  @Test
  void aFrameWithErrorsIsDrawnWithThem() throws IOException {
    String worn =
        Samples.text("willowbank-100").replace("\"blocked\": []", "\"blocked\": [\"L2H\"]");
    Path out = folder.resolve("worn.svg");
    Call layout = Call.withInput(worn, "draw", "-", "--stage=layout", "-o", out.toString());

    assertThat(layout.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(layout.err()).contains("[main-hole-blocked]");
    assertThat(Files.readString(out)).contains("error at L2H");

    Path none = folder.resolve("none.svg");
    for (String stage : new String[] {"bed", "route", "plan"}) {
      Call call = Call.withInput(worn, "draw", "-", "--stage", stage, "-o", none.toString());
      assertThat(call.code()).isEqualTo(ExitCode.FINDINGS);
      assertThat(call.out()).contains("[main-hole-blocked]");
      assertThat(call.err()).contains("there is no " + (stage.equals("bed") ? "bed" : "plan"));
    }
    Call sheet = Call.withInput("{", "sheet", "-", "-o", none.toString());
    assertThat(sheet.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(sheet.out()).contains("[json-syntax]");
    assertThat(Call.withInput("{", "draw", "-", "--stage=layout", "-o", none.toString()).code())
        .isEqualTo(ExitCode.FINDINGS);
    assertThat(none).doesNotExist();
  }

  @Test
  void otherEndsOfACallAreThoseOfPlan() {
    assertThat(Call.of("sheet", "none.json", "-o", "-").code()).isEqualTo(ExitCode.FILE);
    assertThat(Call.of("draw", "none.json", "-o", "-").code()).isEqualTo(ExitCode.FILE);
    Call gaveUp = Call.of("sheet", "sample:willowbank-100", "--max-nodes=10", "-o", "-");
    assertThat(gaveUp.code()).isEqualTo(ExitCode.GAVE_UP);
    assertThat(gaveUp.err()).startsWith("hoopwright sheet: gave up");
    Call noRoute = Call.of("draw", "sample:willowbank-100", "--run-limit=1", "-o", "-");
    assertThat(noRoute.code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(noRoute.out()).contains("[no-route]").doesNotContain("<svg");
  }

  @Test
  void aNameInjectsNothing() throws IOException {
    Path file = folder.resolve("evil.json");
    Files.writeString(
        file, Samples.text("willowbank-teaching").replace("Willowbank teaching board", EVIL));
    for (String text :
        List.of(
            drawn("draw", file.toString(), "--stage=layout"),
            drawn("draw", file.toString()),
            drawn("sheet", file.toString()),
            Call.of("check", "--format=html", file.toString()).out())) {
      assertThat(text).contains("onerror").doesNotContain("<img", "<script>alert");
    }
  }
}
