package org.hoopwright.check;

import java.util.List;

/** Every rule. A new one is entered here. */
final class Rules {

  private static final List<Rule> ALL =
      List.of(
          new HolesCrowded(),
          new HolesGap(),
          new HolesUneven(),
          new HolesNotMirrored(),
          new BoreNeedless(),
          new BoreIdle(),
          new BlockedUsed(),
          new HoopUnusual(),
          new HoopProportion(),
          new HoopExponent(),
          new HoopUneven(),
          new MainsUnusual(),
          new MainsSkewed(),
          new MainsSpacing(),
          new MainsCentre(),
          new MainsNotMirrored(),
          new MainsSkipIdle(),
          new CrossesUnusual(),
          new CrossesSkewed(),
          new CrossesSpacing(),
          new CrossesSkipIdle(),
          new TieOffFew(),
          new TieOffFull(),
          new TieOffNoAnchor(),
          new TieOffOneSide(),
          new HeadZoneShort(),
          new MainsEndAtThroat(),
          new DirectionUpward(),
          new RouteHard(),
          new RouteLongRun(),
          new RouteDoubled(),
          new TensionUnusual(),
          new TensionWide(),
          new PatternThinCentre(),
          new PatternNotUniform());

  private Rules() {}

  /** The rules in the order in which they are asked: one that another depends on comes first. */
  static List<Rule> all() {
    return ALL;
  }
}
