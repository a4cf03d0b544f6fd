package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Limits;

/**
 * Limits of one game's governing body on the sizes of frame and hoop, in SI units, which take
 * precedence where a rule prints inches too. The inside of the hoop stands for the hitting surface
 * or strung area.
 */
abstract class SizeRule extends Rule {

  /** Far below any measurement, far above what a conversion from inches rounds. */
  static final double ROUNDING = 1e-6;

  private final Game game;
  private final String source;

  /**
   * The rule of one game.
   *
   * @param source where it is published
   */
  SizeRule(Game game, String source) {
    super(FindingCode.RULE_SIZE, Stage.LAYOUT);
    this.game = game;
    this.source = source;
  }

  @Override
  final List<String> needs() {
    return List.of("/units", "/hoop", "/frame", "/game");
  }

  @Override
  final void look(Facts facts, Consumer<Finding> out) {
    if (facts.layout().game() == game) {
      sizes(facts, out);
    }
  }

  /** Compares the sizes of a frame of this game. */
  abstract void sizes(Facts facts, Consumer<Finding> out);

  /** Overall length and width, in mm. */
  final void frame(Facts facts, double length, double width, Consumer<Finding> out) {
    facts
        .layout()
        .frame()
        .ifPresent(
            f -> {
              double longMm = facts.layout().mm(f.length());
              double wideMm = facts.layout().mm(f.width());
              mm(facts, "/frame/length", "The frame's length", longMm, length, out);
              mm(facts, "/frame/width", "The frame's width", wideMm, width, out);
            });
  }

  /** Length or width of what the body calls its part of the hoop, in mm. */
  final void hoop(
      Facts facts, String name, String part, double mm, double limit, Consumer<Finding> out) {
    String member = facts.layout().hoop() instanceof Hoop.Points ? "points" : name;
    mm(facts, "/hoop/" + member, "The %s of the %s".formatted(name, part), mm, limit, out);
  }

  private void mm(
      Facts facts, String pointer, String what, double mm, double limit, Consumer<Finding> out) {
    if (mm <= Limits.MAX_MM) { // a size that is no size at all is reported as such
      limit(facts, pointer, what, mm, limit, "mm", out);
    }
  }

  /** Reports a value above its limit. */
  final void limit(
      Facts facts,
      String pointer,
      String what,
      double value,
      double limit,
      String unit,
      Consumer<Finding> out) {
    if (value > limit + ROUNDING) {
      out.accept(
          finding()
              .message(
                  "%s (%s %s) is above %s %s, the limit of the %s rules."
                      .formatted(
                          what,
                          Say.thousandths(value),
                          unit,
                          Say.thousandths(limit),
                          unit,
                          game.word()))
              .at(pointer, facts.layout().places())
              .fix(
                  "Check the number; a frame beyond the limit is not allowed in play under these rules.")
              .source(source)
              .fact("value", value, unit)
              .fact("limit", limit, unit)
              .build());
    }
  }
}
