package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Place;
import org.hoopwright.finding.Places;
import org.hoopwright.patterns.cli.CommandRunner;
import org.hoopwright.patterns.cli.Streams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Our SARIF against the published schema, judged by another's validator. */
class SarifSchemaTest {

  private static final JsonMapper JSON = new JsonMapper();

  private static final Schema SARIF = schema();

  private static Schema schema() {
    try (InputStream in =
        SarifSchemaTest.class.getResourceAsStream("sarif/sarif-2.1.0-rtm.5.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
          .getSchema(new String(in.readAllBytes(), UTF_8), InputFormat.JSON);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<Error> errors(JsonNode log) {
    return SARIF.validate(
        log, context -> context.executionConfig(c -> c.formatAssertionsEnabled(true)));
  }

  private static JsonNode log(List<CheckedFile> files) {
    return JSON.readTree(FindingsSarif.of(files, 1));
  }

  static Stream<CheckedFile> files() {
    return Corpus.checked().stream();
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileOfTheCorpusAndEverySampleGivesAValidLog(CheckedFile file) {
    JsonNode log = log(List.of(file));

    assertThat(errors(log)).isEmpty();
    assertThat(log.at("/runs/0/results")).hasSameSizeAs(file.findings());
  }

  @Test
  void oneLogOfThemAllIsValid() {
    JsonNode log = log(Corpus.checked());

    assertThat(errors(log)).isEmpty();
    assertThat(log.at("/runs/0/results").size()).isGreaterThan(100);
  }

  /** The same through the command, as a build would call it. */
  @Test
  void whatTheCommandPrintsIsValid() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<String> words = new ArrayList<>(List.of("check", "--format", "sarif"));
    words.add(Corpus.FOLDER.toString());
    Samples.list().forEach(s -> words.add("sample:" + s.name()));

    CommandRunner.run(
        new Streams(InputStream.nullInputStream(), out, OutputStream.nullOutputStream()),
        words.toArray(new String[0]));

    JsonNode log = JSON.readTree(out.toString(UTF_8));
    assertThat(errors(log)).isEmpty();
    assertThat(log.at("/runs/0/results").size())
        .isEqualTo(Corpus.checked().stream().mapToInt(f -> f.findings().size()).sum());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "-",
        "sample:x",
        "a b.json",
        "..\\one\\frame.json",
        "\u00e9%41.json",
        "[x]#?&.json"
      })
  void namesOfFilesAreUriReferences(String name) {
    CheckedFile file = Corpus.checked(name, "[]".getBytes(UTF_8));

    assertThat(errors(log(List.of(file)))).isEmpty();
  }

  /** The part of a log that a broken copy changes, and what stands there then. */
  static Stream<List<String>> breaks() {
    return Stream.of(
        List.of("", "version", "\"2.2.0\""),
        List.of("", "unheardOf", "1"),
        List.of("/runs/0", "tool", "{}"),
        List.of("/runs/0/tool/driver", "name", "7"),
        List.of("/runs/0/tool/driver/rules/3", "id", "null"),
        List.of("/runs/0/invocations/0", "exitCode", "\"1\""),
        List.of("/runs/0/results/0", "level", "\"fatal\""),
        List.of("/runs/0/results/0", "message", "{}"),
        List.of("/runs/0/results/0", "ruleIndex", "-2"),
        List.of("/runs/0/results/0/locations/0/physicalLocation/region", "startLine", "0"),
        List.of(
            "/runs/0/results/0/locations/0/physicalLocation/artifactLocation", "uri", "\"a b[\""));
  }

  /** A validator that accepts everything would prove nothing. */
  @ParameterizedTest
  @MethodSource("breaks")
  void aBrokenCopyIsRefused(List<String> change) {
    JsonNode log = log(List.of(Corpus.checked("frame.json", "[]".getBytes(UTF_8))));
    assertThat(errors(log)).isEmpty();

    ((ObjectNode) log.at(change.get(0))).set(change.get(1), JSON.readTree(change.get(2)));

    assertThat(errors(log)).isNotEmpty();
  }

  /** Where a finding stands is told as the standard counts: from 1, the end just past the last. */
  @Test
  void regionsAreThoseOfTheFindings() {
    Finding finding =
        Finding.of(FindingCode.HOLE_TWICE).at("/holes", new Place(3, 5, 4, 1)).build();
    JsonNode result =
        log(List.of(new CheckedFile("frame.json", "", List.of(finding)))).at("/runs/0/results/0");

    assertThat(result.at("/locations/0/physicalLocation/region").toString())
        .isEqualTo("{\"startLine\":3,\"startColumn\":5,\"endLine\":4,\"endColumn\":1}");
    assertThat(result.at("/locations/0/logicalLocations/0/fullyQualifiedName").asString())
        .isEqualTo("/holes");
    Finding nowhere = Finding.of(FindingCode.HOLE_TWICE).at("", Places.none()).build();
    assertThat(errors(log(List.of(new CheckedFile("frame.json", "", List.of(nowhere)))))).isEmpty();
  }
}
