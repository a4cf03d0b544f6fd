package org.hoopwright.patterns.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.hoopwright.finding.Place;
import org.hoopwright.patterns.json.JsonNode.TextNode;
import org.junit.jupiter.api.Test;

class JsonNodeTest {

  private static final String TEXT =
      "{\n  \"a/b\": [1, {\"c~\": \"x\"}],\n  \"d\": 1, \"d\": 2,\n  \"\": true\n}\n";

  private static final JsonNode ROOT = JsonTree.parse(TEXT).root().orElseThrow();

  private static Optional<Place> place(String pointer) {
    return ROOT.find(pointer).map(found -> found.value().place());
  }

  /** source: RFC 6901, sections 3 and 4 (escapes, indices without leading zeros). */
  @Test
  void followsPointers() {
    assertThat(place("")).contains(new Place(1, 1, 5, 2));
    assertThat(place("/a~1b/0")).contains(new Place(2, 11, 2, 12));
    assertThat(ROOT.find("/a~1b/1/c~0").orElseThrow().value())
        .isInstanceOfSatisfying(TextNode.class, t -> assertThat(t.text()).isEqualTo("x"));
    assertThat(place("/")).contains(new Place(4, 7, 4, 11));
  }

  @Test
  void takesTheFirstOfAMemberStatedTwice() {
    assertThat(place("/d")).contains(new Place(3, 8, 3, 9));
  }

  @Test
  void knowsWhereAMembersNameStands() {
    assertThat(ROOT.find("/d").orElseThrow().member().orElseThrow().whole())
        .isEqualTo(new Place(3, 3, 3, 9));
    assertThat(ROOT.find("/a~1b/0").orElseThrow().member()).isEmpty();
  }

  @Test
  void leadsNowhereWhereThereIsNothing() {
    for (String pointer :
        new String[] {
          "/e", "/a~1b/2", "/a~1b/-", "/a~1b/00", "/a~1b/x", "/a~1b/", "/d/0", "/a~1b/9999999999"
        }) {
      assertThat(place(pointer)).as(pointer).isEmpty();
    }
  }
}
