package org.hoopwright.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.Places;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.Layout;
import org.hoopwright.route.RouteMeasures;

/**
 * Runs the rules, and between them the work that they look at: first the rules on the layout
 * itself; then its strings are laid in their holes, and the rules on beds look at that; then routes
 * are searched, and the rules on routes look.
 *
 * <p>A rule whose ground is missing, because something in the file could not be read or because
 * another rule found it wrong, stays silent, and the report says so. A rule that throws is our
 * fault: that is reported as a finding {@code rule-crashed}, and the others go on.
 */
public final class Checker {

  private final Draft draft;
  private final List<Rule> rules;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<FindingCode, Set<String>> silent = new TreeMap<>();
  private final Set<FindingCode> found = EnumSet.noneOf(FindingCode.class);

  private Checker(Draft draft, List<Rule> rules) {
    this.draft = draft;
    this.rules = rules;
  }

  /**
   * Everything that is wrong, unusual or worth knowing about a layout.
   *
   * @param draft the layout as far as it is known
   * @param assign lays the strings of a layout without errors of its own in its holes; it is asked
   *     once at most. Of a layout with errors only what its stated rules come to is looked at, and
   *     nothing is searched for
   * @param search looks for the routes of a bed and tells, as findings, when there are none; it is
   *     asked once at most
   */
  public static CheckReport check(
      Draft draft, Function<Layout, Assignment> assign, Function<Bed, Routes> search) {
    Checker checker = new Checker(draft, Rules.all());
    checker.run(assign, Optional.of(search));
    return checker.report();
  }

  static CheckReport check(Draft draft, Function<Layout, Assignment> assign, List<Rule> rules) {
    Checker checker = new Checker(draft, rules);
    checker.run(assign, Optional.empty());
    return checker.report();
  }

  /**
   * What is wrong, unusual or worth knowing about a layout in itself, before any string is laid.
   *
   * @return the findings in the order of {@link Findings#sorted}
   */
  public static List<Finding> layout(Layout layout) {
    Checker checker = new Checker(Draft.whole(layout), Rules.all());
    checker.ask(Rule.Stage.LAYOUT, Facts.of(checker.draft));
    return Findings.sorted(checker.findings);
  }

  /**
   * The bed of a layout, with the errors of the layout itself beside what laying its strings found.
   *
   * @param assign as in {@link #check}
   * @return the bed when nothing is an error
   */
  public static Assignment assign(Layout layout, Function<Layout, Assignment> assign) {
    Checker checker = new Checker(Draft.whole(layout), Rules.all());
    checker.ask(Rule.Stage.LAYOUT, Facts.of(checker.draft));
    Assignment laid = checker.lay(assign);
    checker.findings.removeIf(f -> f.severity() != Severity.ERROR);
    checker.findings.addAll(laid.findings());
    return checker.assignment(laid.bed());
  }

  /**
   * The bed of a layout, with everything that the rules on layouts and beds find.
   *
   * @param assign as in {@link #check}
   * @return the bed when nothing is an error
   */
  public static Assignment bed(Layout layout, Function<Layout, Assignment> assign) {
    Checker checker = new Checker(Draft.whole(layout), Rules.all());
    return checker.assignment(checker.run(assign, Optional.empty()));
  }

  /**
   * What a search for routes came to.
   *
   * @param best what the best route is ranked by; empty when there is none
   * @param runLimit how many places a run may reach
   * @param findings why there are none, or that the search gave up
   */
  public record Routes(Optional<RouteMeasures> best, int runLimit, List<Finding> findings) {
    /** Copies the list. */
    public Routes {
      findings = List.copyOf(findings);
    }
  }

  /** Asks every rule; without a search none on routes. Gives the bed that was looked at. */
  private Optional<Bed> run(
      Function<Layout, Assignment> assign, Optional<Function<Bed, Routes>> search) {
    Facts itself = Facts.of(draft);
    ask(Rule.Stage.LAYOUT, itself);
    Assignment laid = lay(assign);
    add(laid.findings());
    Facts strung = itself.with(laid.bed(), Optional.empty());
    if (search.isPresent()) {
      strung = itself.with(laid.bed(), laid.bed().flatMap(bed -> search(bed, search.get())));
    }
    ask(Rule.Stage.BED, strung);
    if (search.isPresent()) {
      ask(Rule.Stage.ROUTE, strung);
    }
    for (FindingCode code : Needs.codes()) {
      silence(code, lost(Needs.of(code)));
    }
    return laid.bed();
  }

  /**
   * Lays the strings. Beside an error of the layout itself, or a lost part, there is no bed: what
   * its stated rules come to is looked at for what else is wrong.
   */
  private Assignment lay(Function<Layout, Assignment> assign) {
    boolean read = draft.layout().mainsSkip().isEmpty();
    boolean sound =
        findings.stream()
            .filter(Checker::isError)
            // Where the pattern is read off the holes, offsets of strings are left aside.
            .allMatch(f -> read && f.pointer().contains("/offsets"));
    if (sound && lost(Rule.Stage.BED.needs()).isEmpty()) {
      return assign.apply(draft.layout());
    }
    List<Finding> beside =
        draft.layout().mainsSkip().isPresent()
            ? StatedAssignment.assign(draft.layout()).findings()
            : List.of();
    return new Assignment(Optional.empty(), beside);
  }

  private Optional<Facts.Best> search(Bed bed, Function<Bed, Routes> search) {
    if (!lost(Rule.Stage.ROUTE.needs()).isEmpty()) {
      return Optional.empty();
    }
    Routes searched = search.apply(bed);
    add(searched.findings());
    return searched.best().map(measures -> new Facts.Best(measures, searched.runLimit()));
  }

  private Assignment assignment(Optional<Bed> bed) {
    return new Assignment(
        Findings.hasErrors(findings) ? Optional.empty() : bed, Findings.sorted(findings));
  }

  private CheckReport report() {
    List<Silence> all = new ArrayList<>();
    silent.forEach((code, because) -> all.add(new Silence(code, List.copyOf(because))));
    return new CheckReport(Findings.sorted(findings.stream().map(draft::inFile).toList()), all);
  }

  private void add(List<Finding> more) {
    for (Finding f : more) {
      if (Needs.met(draft, f)) {
        findings.add(f);
        found.add(f.code());
      }
    }
  }

  private void ask(Rule.Stage stage, Facts facts) {
    for (Rule rule : rules) {
      if (rule.stage() == stage) {
        ask(rule, facts);
      }
    }
  }

  private void ask(Rule rule, Facts facts) {
    List<String> because = lost(rule.needs());
    if (!rule.stage().reached(facts)) {
      because.addAll(lost(rule.stage().needs()));
      because.addAll(errors());
      if (found.contains(FindingCode.ROUTE_UNKNOWN)) {
        because.add(FindingCode.ROUTE_UNKNOWN.code());
      }
      if (because.isEmpty()) { // whatever forbade the bed rests on a lost part itself
        because.addAll(lost(Rule.Stage.ROUTE.needs()));
      }
    }
    rule.after().forEach(code -> because.addAll(missing(code)));
    if (!because.isEmpty()) {
      silence(rule.code(), because);
      return;
    }
    List<Finding> own = new ArrayList<>();
    try {
      rule.look(facts, own::add);
    } catch (RuntimeException e) {
      own = List.of(crashed(rule, e, draft.layout().places()));
    }
    own.forEach(
        f -> {
          findings.add(f);
          found.add(f.code());
        });
  }

  private void silence(FindingCode code, List<String> because) {
    if (!because.isEmpty()) {
      silent.computeIfAbsent(code, c -> new LinkedHashSet<>()).addAll(because);
    }
  }

  /** Why a rule that comes first leaves others without ground; empty when it does not. */
  private List<String> missing(FindingCode code) {
    if (found.contains(code)) {
      return List.of(code.code());
    }
    Set<String> because = silent.get(code);
    return because == null ? lost(Needs.of(code)) : List.copyOf(because);
  }

  private static Finding crashed(Rule rule, RuntimeException e, Places places) {
    return Finding.of(FindingCode.RULE_CRASHED)
        .at("", places)
        .message(
            "A fault of Hoopwright, not of the layout: the rule %s crashed (%s)."
                .formatted(rule.code().code(), e.getClass().getSimpleName()))
        .fix("Please report it with the layout; all other rules were asked.")
        .build();
  }

  private List<String> lost(List<String> needs) {
    if (draft.isWhole()) {
      return new ArrayList<>();
    }
    Set<String> lost = new TreeSet<>();
    for (String need : needs) {
      if (!draft.knows(need)) {
        lost.add(need);
      }
    }
    return new ArrayList<>(lost);
  }

  /** Whether something is wrong with the layout; a crash of ours says nothing about it. */
  private static boolean isError(Finding f) {
    return f.severity() == Severity.ERROR && f.code() != FindingCode.RULE_CRASHED;
  }

  private List<String> errors() {
    return findings.stream().filter(Checker::isError).map(f -> f.code().code()).distinct().toList();
  }
}
