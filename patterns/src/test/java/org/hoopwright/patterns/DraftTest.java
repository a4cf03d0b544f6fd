package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.Hoopwright;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.Place;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.Limits;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.JsonTree;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutDetails;
import org.junit.jupiter.api.Test;

/** What can be known is reported, however much else is wrong; and nothing else is. */
class DraftTest {

  private static ReadResult read(String text) {
    try {
      return LayoutReader.read("frame.json", text.getBytes(UTF_8));
    } catch (UnreadableFile e) {
      throw new AssertionError(text, e);
    }
  }

  private static List<Finding> all(String text) {
    ReadResult result = read(text);
    List<Finding> all = new ArrayList<>(result.findings());
    result.draft().ifPresent(d -> all.addAll(Hoopwright.check(d).findings()));
    return Findings.sorted(all);
  }

  private static List<String> codes(String text) {
    return all(text).stream()
        .map(f -> f.code().code() + " " + f.pointer() + " " + f.place().orElseThrow().line())
        .toList();
  }

  private static final String LEAST = BrokenTexts.LEAST;

  @Test
  void findsAnUnknownHoleBesideAMisspeltMember() {
    assertThat(
            codes(
                LEAST
                    .replace("\"name\"", "\"nmae\"")
                    .replace("\"skip\": []", "\"skip\": [\"99T\"]")))
        .containsExactly("unknown-member /nmae 3", "unknown-hole /mains/skip/0 6");
  }

  @Test
  void findsAnUnknownHoleBehindAnEntryThatIsNone() {
    assertThat(
            codes(
                LEAST.replace("\"skip\": []", "\"skip\": [\"x\",\n\"1H\", 7,\n \"99T\", \"99T\"]")))
        .containsExactly(
            "bad-hole-name /mains/skip/0 6",
            "wrong-type /mains/skip/2 7",
            "unknown-hole /mains/skip/3 8",
            "unknown-hole /mains/skip/4 8",
            "hole-twice /mains/skip/4 8");
    assertThat(
            codes(
                LEAST.replace(
                    "\"throat\": 4", "\"throat\": 4, \"noRun\": [[\"1H\"],\n[\"2H\",\n\"R99H\"]]")))
        .containsExactly(
            "wrong-type /holes/noRun/0 5",
            "no-run-sides /holes/noRun/1 6",
            "unknown-hole /holes/noRun/1/1 7");
  }

  @Test
  void findsWhatTheHoopHasNoPartIn() {
    assertThat(
            codes(
                LEAST
                    .replace("\"length\": 120", "\"length\": \"120\"")
                    .replace("\"count\": 4,", "\"count\": 20,")))
        .containsExactly(
            "wrong-type /hoop/length 4",
            "mains-no-hole /mains/count 6",
            "mains-no-hole /mains/count 6",
            "mains-no-hole /mains/count 6",
            "mains-no-hole /mains/count 6");
  }

  @Test
  void saysNothingOfHolesWhoseCountIsNotKnown() {
    assertThat(
            codes(
                LEAST
                    .replace("\"head\": 4", "\"head\": \"4\"")
                    .replace("\"skip\": []", "\"skip\": [\"99T\", \"99T\"]")
                    .replace("\"count\": 4 }", "\"count\": 1 }")))
        .containsExactly(
            "wrong-type /holes/head 5",
            "hole-twice /mains/skip/1 6",
            "crosses-too-few /crosses/count 7");
  }

  @Test
  void aMisspeltMemberThatIsNeededIsNotMissingToo() {
    List<Finding> findings = all(LEAST.replace("\"hoop\"", "\"hop\""));
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).message())
        .isEqualTo(
            "\"hop\" is not a member of the layout; the nearest one is \"hoop\", which is not stated.");
    assertThat(codes(LEAST.replace("\"hoop\"", "\"colour\"")))
        .containsExactly("missing-member /hoop 1", "unknown-member /colour 4");
  }

  @Test
  void checksWhatStandsBeforeTheFaultOfAText() {
    assertThat(
            codes(
                LEAST
                    .replace("\"skip\": []", "\"skip\": [\"99T\"]")
                    .replace("\"count\": 4 }", "\"count\": 1mm }")))
        .containsExactly("unknown-hole /mains/skip/0 6", "json-syntax /crosses 7");
    // The 1 of 1mm is not taken for the count, nor what follows for absent.
    assertThat(codes(LEAST + "}")).containsExactly("json-syntax  9");
  }

  /** Every value of a text, outermost first. */
  private static void values(JsonNode node, List<Place> places) {
    places.add(node.place());
    if (node instanceof ObjectNode o) {
      o.members().forEach(m -> values(m.value(), places));
    } else if (node instanceof ArrayNode a) {
      a.items().forEach(i -> values(i, places));
    }
  }

  private static int offset(String text, int line, int column) {
    int at = 0;
    for (int i = 1; i < line; i++) {
      at = text.indexOf('\n', at) + 1;
    }
    return at + column - 1;
  }

  /** A layout that says much and has a few things wrong. */
  private static String faulty(Draw draw) {
    String text =
        LayoutWriter.write(
            draw.chance(50)
                ? StatedLayouts.any(draw.between(0, 1_000_000))
                : LayoutDetails.any(draw).orElseThrow());
    for (int i = draw.between(0, 2); i > 0; i--) {
      text = text.replaceFirst("\"[LR]?" + draw.between(1, 9) + "H\"", "\"L77H\"");
      text = text.replaceFirst("\"count\": 1", "\"count\": " + draw.between(1, 3));
    }
    return text;
  }

  private static Set<String> said(List<Finding> findings) {
    Set<String> said = new HashSet<>();
    findings.forEach(f -> said.add(f.code() + " " + f.pointer() + " " + f.message()));
    return said;
  }

  /**
   * Beside a count that no bed can have, strings are not laid in holes at all; a draft that lost
   * that count may say more of them.
   */
  private static boolean comparable(String text) {
    return read(text).layout().map(Limits::countsSound).orElse(false);
  }

  /** Beside errors there is no bed, and a draft that lost the error may have one: errors only. */
  private static List<Finding> sure(Draft draft, List<Finding> whole) {
    return Hoopwright.check(draft).findings().stream()
        .filter(f -> f.severity() == Severity.ERROR || !Findings.hasErrors(whole))
        .toList();
  }

  /** What is said of a file with a hole in it would be said of the whole file too. */
  @Property(tries = 300)
  void whatIsLostNeverMakesAFinding(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    String text = faulty(draw);
    Assume.that(comparable(text));
    List<Place> places = new ArrayList<>();
    values(JsonTree.parse(text).root().orElseThrow(), places);
    Place place = places.get(draw.between(1, places.size() - 1));
    int from = offset(text, place.line(), place.column());
    int to = offset(text, place.endLine(), place.endColumn());
    String torn = text.substring(0, from) + "null" + text.substring(to);
    Draft draft = read(torn).draft().orElseThrow();

    List<Finding> whole = all(text);
    assertThat(said(whole)).as(torn).containsAll(said(sure(draft, whole)));
  }

  /** The same where the file ends too early. */
  @Property(tries = 200)
  void norDoesWhatIsCutOff(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    String text = faulty(draw);
    Assume.that(comparable(text));
    String cut = text.substring(0, draw.between(1, text.length() - 1));
    List<Finding> whole = all(text);

    read(cut)
        .draft()
        .ifPresent(d -> assertThat(said(whole)).as(cut).containsAll(said(sure(d, whole))));
  }

  @Test
  void aDraftKnowsWhatIsNeitherLostNorUnderNorAboveIt() {
    Draft draft =
        Draft.of(Samples.layout("willowbank-100"), Set.of("/holes/at/1H", "/mains"), Map.of());
    assertThat(draft.knows("/holes/at")).isFalse();
    assertThat(draft.knows("/holes/at/1H/0")).isFalse();
    assertThat(draft.knows("/holes/at/1T")).isTrue();
    assertThat(draft.knows("/mains/count")).isFalse();
    assertThat(draft.knows("/mainsail")).isTrue();
    assertThat(draft.knows("")).isFalse();
    assertThat(Draft.whole(draft.layout()).isWhole()).isTrue();
  }
}
