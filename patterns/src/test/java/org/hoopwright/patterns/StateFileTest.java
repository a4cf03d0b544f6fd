package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.hoopwright.Hoopwright;
import org.hoopwright.Plan;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.StrungPiece;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.junit.jupiter.api.Test;

/** Files of half-done jobs: what is written reads back, and what is wrong is said where it is. */
class StateFileTest {

  private static StateResult read(String text) throws UnreadableFile {
    return StateReader.read("job.json", text.getBytes(UTF_8));
  }

  @Test
  void whatIsWrittenReadsBack() throws UnreadableFile {
    Plan plan =
        Hoopwright.plan(Samples.layout("willowbank-100"), Job.standard()).plan().orElseThrow();
    for (int step = 0; step <= plan.bench().steps().size(); step++) {
      HalfDone state = HalfDone.after(plan.bench(), step);
      if (step % 3 == 0) {
        StrungPiece mains = state.pieces().get(0);
        state =
            new HalfDone(
                List.of(new StrungPiece(mains.ends(), true)),
                state.pulled(),
                state.clamps(),
                List.of(SpanId.cross(3)));
      }
      String text = StateWriter.write(state);
      StateResult back = read(text);
      assertThat(back.findings()).isEmpty();
      assertThat(back.state()).contains(state);
      assertThat(StateWriter.write(back.state().orElseThrow())).isEqualTo(text);
    }
  }

  @Test
  void everyFlawIsSaidAtItsPlace() throws UnreadableFile {
    String text =
        """
        {
          // somebody's job
          "format": "hoopwright/bench-state-1",
          "pieces": [
            { "ends": [
              { "name": "shrt", "passes": [ { "span": "M1", "from": "L1T", "to": "1H" } ], "tail": -3 },
              { "name": "long", "passes": [ { "span": "R1", "from": "R1T" } ],
                "knot": { "kind": "bow", "hole": "R8T", "anchor": "R7" } } ] } ],
          "pulled": [ "L1", 7 ],
          "clamp": []
        }
        """;
    StateResult result = read(text);
    assertThat(result.state()).isEqualTo(Optional.empty());
    assertThat(result.findings())
        .extracting(f -> f.pointer() + " " + f.code())
        .contains(
            "/pieces/0/ends/0/name " + FindingCode.WRONG_VALUE,
            "/pieces/0/ends/0/passes/0/span " + FindingCode.WRONG_VALUE,
            "/pieces/0/ends/0/passes/0/to " + FindingCode.BAD_HOLE_NAME,
            "/pieces/0/ends/0/tail " + FindingCode.NUMBER_RANGE,
            "/pieces/0/ends/1/passes/0/to " + FindingCode.MISSING_MEMBER,
            "/pieces/0/ends/1/knot/kind " + FindingCode.WRONG_VALUE,
            "/pulled/1 " + FindingCode.WRONG_TYPE,
            "/clamp " + FindingCode.UNKNOWN_MEMBER);
    assertThat(result.findings()).allMatch(f -> f.place().isPresent());
    assertThat(result.findings()).extracting(Finding::fix).noneMatch(String::isEmpty);
  }

  @Test
  void whatIsNoSuchFileIsSaid() throws UnreadableFile {
    for (String text :
        List.of(
            "",
            "null",
            "[]",
            "3",
            "{",
            "{\"format\": \"hoopwright/layout-1\"}",
            "{\"format\": \"hoopwright/bench-state-1\", \"pieces\": []}",
            "{\"format\": \"hoopwright/bench-state-1\", \"pieces\": [{\"ends\": []}]}",
            "{\"format\": \"hoopwright/bench-state-1\", \"pieces\": [3, {}, 4]}")) {
      StateResult result = read(text);
      assertThat(result.state()).as(text).isEmpty();
      assertThat(result.findings()).as(text).isNotEmpty();
    }
  }
}
