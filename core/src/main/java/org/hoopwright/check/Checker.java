package org.hoopwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.Bed;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.LayoutCheck;
import org.hoopwright.route.RouteResult;

/**
 * Runs the rules.
 *
 * <p>A rule whose ground is missing, because something in the file could not be read or because
 * another rule found it wrong, stays silent, and the report says so. A rule that throws is our
 * fault: that is reported as a finding {@code rule-crashed}, and the others go on.
 */
public final class Checker {

  private final Draft draft;
  private final List<Rule> rules;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Silence> silent = new ArrayList<>();
  private final Set<FindingCode> found = EnumSet.noneOf(FindingCode.class);

  private Checker(Draft draft, List<Rule> rules) {
    this.draft = draft;
    this.rules = rules;
  }

  /**
   * Everything that is wrong, unusual or worth knowing about a layout.
   *
   * @param draft the layout as far as it is known
   * @param assignment the strings laid in its holes
   * @param search looks for the routes of a bed and tells, as findings, when there are none; it is
   *     asked once at most
   */
  public static CheckReport check(
      Draft draft, Assignment assignment, Function<Bed, Routes> search) {
    return new Checker(draft, Rules.all()).run(assignment, Optional.of(search));
  }

  /** As {@link #check}, but without looking for routes. */
  public static List<Finding> layout(Draft draft, Assignment assignment) {
    return new Checker(draft, Rules.all()).run(assignment, Optional.empty()).findings();
  }

  static CheckReport check(Draft draft, Assignment assignment, List<Rule> rules) {
    return new Checker(draft, rules).run(assignment, Optional.empty());
  }

  /**
   * What a search for routes came to.
   *
   * @param result the routes
   * @param findings why there are none, or that the search gave up
   */
  public record Routes(RouteResult result, List<Finding> findings) {
    /** Copies the list. */
    public Routes {
      findings = List.copyOf(findings);
    }
  }

  private CheckReport run(Assignment assignment, Optional<Function<Bed, Routes>> search) {
    add(LayoutCheck.check(draft.layout()));
    add(assignment.findings());
    Optional<Bed> bed = assignment.bed().filter(b -> Needs.met(draft, FindingCode.SPAN_ALONE));
    Optional<RouteResult> routes = Optional.empty();
    if (search.isPresent() && bed.isPresent() && Needs.met(draft, FindingCode.NO_ROUTE)) {
      Routes searched = search.get().apply(bed.get());
      add(searched.findings());
      routes = Optional.of(searched.result()).filter(r -> !r.ranked().isEmpty());
    }
    Facts facts = Facts.of(draft, bed, routes);
    for (Rule rule : rules) {
      if (rule.stage() != Rule.Stage.ROUTE || search.isPresent()) {
        ask(rule, facts);
      }
    }
    for (FindingCode code : Needs.codes()) {
      if (!Needs.met(draft, code)) {
        silent.add(new Silence(code, lost(Needs.of(code))));
      }
    }
    silent.sort(Comparator.comparing(Silence::rule));
    return new CheckReport(Findings.sorted(findings.stream().map(draft::inFile).toList()), silent);
  }

  private void add(List<Finding> more) {
    for (Finding f : more) {
      if (Needs.met(draft, f)) {
        findings.add(f);
        found.add(f.code());
      }
    }
  }

  private void ask(Rule rule, Facts facts) {
    List<String> because = lost(rule.needs());
    if (rule.stage() == Rule.Stage.BED && facts.laid().isEmpty()) {
      because.addAll(lost(Needs.of(FindingCode.SPAN_ALONE)));
      because.addAll(errors());
    }
    if (rule.stage() == Rule.Stage.ROUTE && facts.routes().isEmpty()) {
      because.addAll(lost(Needs.of(FindingCode.NO_ROUTE)));
      because.addAll(errors());
      if (found.contains(FindingCode.ROUTE_UNKNOWN)) {
        because.add(FindingCode.ROUTE_UNKNOWN.code());
      }
    }
    rule.after().forEach(code -> because.addAll(missing(code)));
    if (!because.isEmpty()) {
      silent.add(new Silence(rule.code(), because.stream().distinct().toList()));
      return;
    }
    List<Finding> own = new ArrayList<>();
    try {
      rule.look(facts, own::add);
    } catch (RuntimeException e) {
      own = List.of(crashed(rule, e));
    }
    own.forEach(
        f -> {
          findings.add(f);
          found.add(f.code());
        });
  }

  /** Why a rule that comes first leaves others without ground; empty when it does not. */
  private List<String> missing(FindingCode code) {
    if (found.contains(code)) {
      return List.of(code.code());
    }
    return silent.stream()
        .filter(s -> s.rule() == code)
        .findFirst()
        .map(Silence::because)
        .orElseGet(() -> lost(Needs.of(code)));
  }

  private static Finding crashed(Rule rule, RuntimeException e) {
    return Finding.of(FindingCode.RULE_CRASHED)
        .message(
            "A fault of Hoopwright, not of the layout: the rule %s crashed (%s)."
                .formatted(rule.code().code(), e.getClass().getSimpleName()))
        .fix("Please report it with the layout; all other rules were asked.")
        .build();
  }

  private List<String> lost(List<String> needs) {
    Set<String> lost = new TreeSet<>();
    for (String need : needs) {
      if (!draft.knows(need)) {
        lost.add(need);
      }
    }
    return new ArrayList<>(lost);
  }

  private List<String> errors() {
    return findings.stream()
        .filter(f -> f.severity() == Severity.ERROR)
        .map(f -> f.code().code())
        .distinct()
        .toList();
  }
}
