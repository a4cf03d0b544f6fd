package org.hoopwright.patterns.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.StartMark;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.compare.Topic;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Game;
import org.hoopwright.material.Material;
import org.hoopwright.replay.Invariant;
import org.hoopwright.route.CoveredHole;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Family;
import org.hoopwright.route.Half;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Piece;
import org.hoopwright.route.RoutePreference;
import org.hoopwright.route.RoutePreferences;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;
import org.junit.jupiter.api.Test;

/** Every word that a file may hold stands on the page of its format. */
class ClosedSetsTest {

  @Test
  void layoutWords() {
    assertSays("docs/layout-format.md", words(Game.values(), Game::word));
    assertSays("docs/layout-format.md", words(LengthUnit.values(), LengthUnit::symbol));
    assertSays("docs/layout-format.md", words(ForceUnit.values(), ForceUnit::symbol));
    assertSays("docs/layout-format.md", words(End.values(), End::word));
    assertSays("docs/layout-format.md", words(Direction.values(), Direction::word));
  }

  @Test
  void planWords() {
    String page = "docs/plan-format.md";
    assertSays(page, words(Severity.values(), Severity::word));
    assertSays(page, words(StartMethod.values(), StartMethod::word));
    assertSays(page, words(StartMark.Spot.values(), StartMark.Spot::word));
    assertSays(page, words(ClampSide.values(), ClampSide::word));
    assertSays(page, words(Family.values(), Family::word));
    assertSays(page, words(CoveredHole.KeepOpen.values(), CoveredHole.KeepOpen::word));
    assertSays(page, words(Knot.Kind.values(), Knot.Kind::word));
    assertSays(page, words(Piece.Role.values(), Piece.Role::word));
    assertSays(page, words(EndName.values(), EndName::word));
    assertSays(page, words(Half.values(), Half::word));
  }

  @Test
  void topicsOfDifferences() {
    assertSays("docs/compare.md", words(Topic.values(), Topic::word));
  }

  @Test
  void commandWords() {
    assertSays("docs/commands.md", words(Material.values(), Material::word));
    assertSays("docs/commands.md", words(StartMethod.values(), StartMethod::word));
    assertSays("docs/commands.md", words(Direction.values(), Direction::word));
  }

  @Test
  void preferencesInTheirOrder() {
    List<String> rows =
        Repository.text(Repository.root().resolve("docs/routes.md"))
            .lines()
            .filter(l -> l.matches("\\| `[A-Za-z]+` \\|.*"))
            .map(l -> l.substring(3, l.indexOf('`', 3)))
            .toList();
    assertThat(rows)
        .containsExactlyElementsOf(
            RoutePreferences.standard().stream().map(RoutePreference::name).toList());
  }

  @Test
  void invariants() {
    String page = Repository.text(Repository.root().resolve("docs/bench.md"));
    for (Invariant invariant : Invariant.values()) {
      String name = invariant.name();
      assertThat(page).contains("| " + name.substring(0, name.indexOf('_')) + " |");
    }
  }

  private static <T> List<String> words(T[] values, Function<T, String> word) {
    return Arrays.stream(values).map(word).toList();
  }

  /** Each word stands in backquotes, alone or in double quotes as well. */
  private static void assertSays(String page, List<String> words) {
    String text = Repository.text(Repository.root().resolve(page));
    assertThat(words)
        .isNotEmpty()
        .allMatch(
            w -> Stream.of("`" + w + "`", "`\"" + w + "\"`").anyMatch(text::contains),
            "stands in " + page);
  }
}
