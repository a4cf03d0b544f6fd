package org.hoopwright.testing;

import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.hoopwright.frame.Layout;

/**
 * Valid layouts for jqwik: {@code @Domain(LayoutArbitraries.class)} on a property gives every
 * parameter of type {@link Layout} one of them. They shrink to few strings and no features.
 *
 * <p>This is the only fixture that needs a test framework.
 */
public final class LayoutArbitraries extends DomainContextBase {

  /** Layouts of 4 x 4 to 22 x 22. */
  @Provide
  public Arbitrary<Layout> layouts() {
    return layouts(2, 11, 4, 22);
  }

  /**
   * Layouts within these sizes.
   *
   * @param leastMains the fewest mains a side, at least 2
   * @param mostMains the most mains a side
   * @param leastCrosses the fewest crosses, at least 2
   * @param mostCrosses the most crosses
   * @return layouts that have a bed
   */
  public static Arbitrary<Layout> layouts(
      int leastMains, int mostMains, int leastCrosses, int mostCrosses) {
    Arbitrary<Set<LayoutGenerator.Feature>> features =
        Arbitraries.of(LayoutGenerator.Feature.class).set().ofMaxSize(4);
    return Combinators.combine(
            Arbitraries.integers().between(leastMains, mostMains).shrinkTowards(leastMains),
            Arbitraries.integers().between(leastCrosses, mostCrosses).shrinkTowards(leastCrosses),
            features,
            Arbitraries.longs())
        .as(
            (mains, crosses, set, seed) ->
                LayoutGenerator.layout(Draw.from(seed), mains, crosses, set));
  }
}
