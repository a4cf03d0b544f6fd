package org.hoopwright.patterns.draw;

/** The look of every drawing: plain and calm, for light and dark pages and for one colour. */
final class Style {

  private Style() {}

  private static final String LIGHT =
      "--paper:#fff;--ink:#1d2733;--quiet:#5c6672;--frame:#ece7dc;--edge:#6b6558;--long:#17578f;"
          + "--short:#a04400;--finish:#2c6a2f;--faint:#c3c8cd;--now:#b1005f;--clamp:#ffd54a";
  private static final String DARK =
      "--paper:#14181d;--ink:#e8ecf0;--quiet:#a9b4bf;--frame:#39362f;--edge:#a39c8c;--long:#8ec2f5;"
          + "--short:#ffb077;--finish:#95d38f;--faint:#4a525b;--now:#ff80c0;--clamp:#ffd54a";

  /** Style rules for the drawing; they touch nothing outside it. No angle bracket, no ampersand. */
  static final String CSS =
      """
      .hw{%LIGHT%;max-width:100%;height:auto;background:var(--paper);\
      font-family:"DejaVu Sans",Verdana,Arial,"Liberation Sans",sans-serif}
      @media screen and (prefers-color-scheme:dark){.hw{%DARK%}}
      .hw text{fill:var(--ink)}
      .hw .bold{font-weight:bold}
      .hw .quiet,.hw .span-name,.hw .side{fill:var(--quiet)}
      .hw .frame{fill:var(--frame);stroke:var(--edge);stroke-width:1.2}
      .hw .head-zone{fill:none;stroke:var(--edge);stroke-width:5;stroke-dasharray:1.5 4.5}
      .hw .no-run{fill:none;stroke:var(--ink);stroke-width:2.5;stroke-dasharray:9 4}
      .hw .hole circle{fill:var(--paper);stroke:var(--ink);stroke-width:1.6}
      .hw .hole .diamond{fill:var(--paper);stroke:var(--ink);stroke-width:1.6}
      .hw .hole.blocked rect{fill:var(--ink);stroke:var(--ink)}
      .hw .hole.blocked .cross-out{stroke:var(--paper);stroke-width:2.2;fill:none}
      .hw .span{fill:none;stroke:var(--long);stroke-width:3;stroke-linejoin:round}
      .hw .span.cross{stroke:var(--short);stroke-width:2.2}
      .hw .span.end-short{stroke:var(--short);stroke-width:4.4}
      .hw .span.end-long{stroke:var(--long);stroke-width:2.6}
      .hw .span.end-finish{stroke:var(--finish);stroke-width:3.2}
      .hw .run .line{fill:none;stroke:var(--long);stroke-width:3;stroke-linejoin:round}
      .hw .run.end-short .line{stroke:var(--short);stroke-width:4.2}
      .hw .arrow{fill:var(--long);stroke:var(--paper);stroke-width:1}
      .hw .arrow.end-short,.hw .run.end-short .arrow{fill:var(--short)}
      .hw .run.end-finish .line,.hw .run.end-start .line{stroke:var(--finish)}
      .hw .arrow.end-finish,.hw .run.end-finish .arrow,.hw .run.end-start .arrow{fill:var(--finish)}
      .hw .leader{fill:none;stroke:var(--quiet);stroke-width:.8}
      .hw .plate{fill:var(--paper)}
      .hw .span-name,.hw .pass,.hw .hole-name,.hw .knot-name{paint-order:stroke;\
      stroke:var(--paper);stroke-width:4;stroke-linejoin:round}
      .hw .knot .ball{fill:var(--ink);stroke:var(--paper);stroke-width:1.2}
      .hw .knot .eye{fill:var(--paper)}
      .hw .clamp .jaws{fill:var(--clamp);stroke:#1d2733;stroke-width:1.6}
      .hw .clamp text{fill:#1d2733}
      .hw .grip .arrow{fill:var(--now)}
      .hw .grip .line{fill:none;stroke:var(--now);stroke-width:3.4}
      .hw .start-mark{fill:none;stroke:var(--ink);stroke-width:9;stroke-opacity:.45}
      .hw .finding path,.hw .finding circle{fill:var(--paper);stroke:var(--ink);stroke-width:1.8}
      .hw .finding.error path{fill:var(--ink)}
      .hw .finding.error text{fill:var(--paper)}
      .hw .span.open,.hw .run.open .line{stroke:var(--faint);stroke-width:1.4}
      .hw .pass.open,.hw .knot-name.open{fill:var(--quiet);font-weight:normal}
      .hw .clamp.now .jaws{stroke:var(--now);stroke-width:4}
      .hw .arrow.open,.hw .run.open .arrow,.hw .knot.open,.hw .clamp.open,.hw .off{display:none}
      .hw .span.laced{stroke-width:1.9;stroke-dasharray:7 2.5}
      .hw .span.now,.hw .run.now .line{stroke:var(--now);stroke-width:5;stroke-dasharray:none}
      .hw .arrow.now,.hw .run.now .arrow{fill:var(--now)}
      .hw .knot.now .ball{fill:var(--now)}
      """
          .replace("%LIGHT%", LIGHT)
          .replace("%DARK%", DARK);
}
