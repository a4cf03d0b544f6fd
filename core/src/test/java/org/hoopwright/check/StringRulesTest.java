package org.hoopwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.testing.Willowbank.both;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules on what each hole came to carry, and on strings that meet no other. */
class StringRulesTest {

  private static final Set<FindingCode> CODES =
      Set.of(
          FindingCode.CROSSES_HOLES_LEFT,
          FindingCode.CROSS_HOLE_BLOCKED,
          FindingCode.SHARED_UNUSED,
          FindingCode.SPAN_ALONE);

  private static List<String> found(LayoutBuilder builder) {
    return Checker.bed(builder.build(), StatedAssignment::assign).findings().stream()
        .filter(f -> CODES.contains(f.code()))
        .map(f -> f.code().code() + " " + f.pointer() + " " + f.about())
        .toList();
  }

  @Test
  void soundFramesHaveNone() {
    assertThat(found(Willowbank.hundred())).isEmpty();
    assertThat(found(Willowbank.ninetyFive())).isEmpty();
    assertThat(found(Willowbank.teaching())).isEmpty();
  }

  static List<Arguments> oneWrong() {
    List<Arguments> a = new ArrayList<>();
    add(a, b -> b.crosses(3), "crosses-holes-left /crosses [L3T, R3T]");
    add(a, b -> b.crosses(3).crossesSkip("4T"));
    add(a, b -> b.crosses(3).crossesFirst(both("4H")), "crosses-holes-left /crosses [L3H, R3H]");
    add(a, b -> b.crosses(3).blocked("4T"), "cross-hole-blocked /holes/blocked/0 [L4T, R4T]");
    add(
        a,
        b -> b.crosses(2).blocked("L4T", "R3T").crossesSkip("R3H", "L3T"),
        "cross-hole-blocked /holes/blocked/0 [L4T]",
        "cross-hole-blocked /holes/blocked/1 [R3T]");
    add(a, b -> b.crosses(3).blocked("3H").crossesFirst(both("4H")));
    add(
        a,
        b -> b.shared("2H", "L1T"),
        "shared-unused /holes/shared/0 [L2H, R2H]",
        "shared-unused /holes/shared/1 [L1T]");
    add(
        a,
        b -> b.crosses(5).shared("2H", "2T").crossesFirst(both("2H")),
        "shared-unused /holes/shared/1 [L2T, R2T]");
    add(
        a,
        b -> b.crosses(5).shared("2H", "2T").crossesLast(both("2T")),
        "shared-unused /holes/shared/0 [L2H, R2H]");
    add(a, b -> b.crosses(5).shared("2T"));
    add(
        a,
        b -> b.crosses(5).shared("1H", "2H"),
        "shared-unused /holes/shared/1 [L2H, R2H]",
        "span-alone /crosses [X1]");
    add(
        a,
        b -> b.holes(EachSide.both(5), EachSide.both(4)).mainsSkip("1H").crossesSkip("5H"),
        "span-alone /crosses [X1]");
    add(
        a,
        b ->
            b.holes(5, 5)
                .mainsSkip("2H", "3H", "4H", "2T", "3T", "4T")
                .crosses(2)
                .crossesSkip("3H", "3T", "4H", "4T"),
        "span-alone /mains [L2]",
        "span-alone /mains [R2]");
    return a;
  }

  private static void add(
      List<Arguments> all, UnaryOperator<LayoutBuilder> change, String... expected) {
    all.add(Arguments.of(all.size(), change, List.of(expected)));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource("oneWrong")
  void eachFaultHasItsFinding(
      int index, UnaryOperator<LayoutBuilder> change, List<String> expected) {
    assertThat(found(change.apply(Willowbank.teaching())))
        .as("case %d", index)
        .containsExactlyInAnyOrderElementsOf(expected);
  }
}
