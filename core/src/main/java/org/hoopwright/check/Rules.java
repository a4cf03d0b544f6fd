package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** Every rule that only looks. A new one is entered here. */
final class Rules {

  private static final List<Rule> ALL =
      List.of(
          // The layout: counts.
          new HoleCountRange(),
          new HolesUneven(),
          new MainsOdd(),
          new MainsTooFew(),
          new CrossesTooFew(),
          new StringsTooMany(Strings.MAINS),
          new StringsTooMany(Strings.CROSSES),
          new MainsUnusual(),
          new CrossesUnusual(),
          // The layout: names of holes.
          new UnknownHole(),
          new HoleTwice(),
          new PairOnWrongSide(FindingCode.CROSSES_FIRST, "/crosses/first"),
          new PairOnWrongSide(FindingCode.CROSSES_LAST, "/crosses/last"),
          new PairOnWrongSide(FindingCode.HEAD_ZONE_HOLE, "/headZone"),
          new HeadZoneHole(),
          new NoRunSides(),
          new BlockedUsed(),
          new TieOffOneSide(),
          // The layout: bores.
          new BoreRange(),
          new BoreTooSmall(),
          new BoreNeedless(),
          new BoreIdle(),
          // The layout: hoop and frame.
          new HoopShape(),
          new HoopOffCentre(),
          new HoopUnusual(),
          new HoopProportion(),
          new HoopExponent(),
          new HoopUneven(),
          new FrameSizeRange(),
          new FrameBelowHoop(),
          new SizeTennis(),
          new SizeBadminton(),
          new SizeSquash(),
          new SizeRacquetball(),
          // The layout: what was measured.
          new CoordinateRange(),
          new HoleWrongSide(),
          new HoleOffHoop(),
          new HolesNotMirrored(),
          new OffsetsWithoutSkip(Strings.MAINS),
          new OffsetsWithoutSkip(Strings.CROSSES),
          new OffsetsCount(Strings.MAINS),
          new OffsetsCount(Strings.CROSSES),
          new OffsetRange(Strings.MAINS),
          new OffsetRange(Strings.CROSSES),
          new OffsetsOrder(Strings.MAINS),
          new OffsetsOrder(Strings.CROSSES),
          // The layout: what its maker asks.
          new PiecesNumber(),
          new MainsEndAtThroat(),
          new DirectionUpward(),
          new TensionOutOfRange(),
          new TensionReversed(),
          new TensionUnusual(),
          new TensionWide(),
          // The bed.
          new HolesCrowded(),
          new HolesGap(),
          new MainsSkewed(),
          new MainsSpacing(),
          new MainsCentre(),
          new MainsNotMirrored(),
          new MainsSkipIdle(),
          new CrossesSkewed(),
          new CrossesSpacing(),
          new CrossesSkipIdle(),
          new CrossesHolesLeft(),
          new CrossHoleBlocked(),
          new SharedUnused(),
          new SpanAlone(),
          new TieOffFew(),
          new TieOffFull(),
          new TieOffNoAnchor(),
          new HeadZoneShort(),
          new PatternThinCentre(),
          new PatternNotUniform(),
          // The route.
          new RouteHard(),
          new RouteLongRun(),
          new RouteDoubled());

  private Rules() {}

  /** The rules in the order in which they are asked: one that another depends on comes first. */
  static List<Rule> all() {
    return ALL;
  }

  /** The rules that report findings of this code; none when only work reports them. */
  static List<Rule> of(FindingCode code) {
    return ALL.stream().filter(r -> r.code() == code).toList();
  }
}
