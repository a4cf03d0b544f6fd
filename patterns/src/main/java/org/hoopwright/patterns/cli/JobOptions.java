package org.hoopwright.patterns.cli;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hoopwright.bench.ClampUse;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.StringAtHand;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.patterns.Workbench;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.units.Force;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** The options that say what is to be done: string, tension, bench and routes. */
final class JobOptions {

  /** What {@code --gauge} and {@code --material} put between the mains' and the crosses' string. */
  private static final String HYBRID = "/";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Option(names = "--pieces", paramLabel = "1|2", description = "Only plans of so many pieces.")
  private @Nullable Integer pieces;

  @Option(
      names = "--direction",
      paramLabel = "DIRECTION",
      description = "Only crosses in this order: head-to-throat, throat-to-head.")
  private @Nullable String direction;

  @Option(
      names = "--tension",
      paramLabel = "FORCE",
      description =
          "Reference tension with its unit (N, lbf, kgf), such as 24.5kgf. Left out: the middle of"
              + " the layout's range, else what is usual for the game.")
  private @Nullable String tension;

  @Option(
      names = "--cross-tension",
      paramLabel = "FORCE",
      description = "Reference tension of the crosses, when it differs.")
  private @Nullable String crossTension;

  @Option(
      names = "--gauge",
      paramLabel = "GAUGE",
      description = "Gauge of the string, such as 16L; MAINS/CROSSES for a hybrid, such as 17/16.")
  private @Nullable String gauge;

  @Option(
      names = "--material",
      paramLabel = "MATERIAL",
      description =
          "natural-gut, nylon, multifilament, polyester or aramid; MAINS/CROSSES for a hybrid.")
  private @Nullable String material;

  @Option(
      names = "--at-hand",
      paramLabel = "LENGTH",
      description =
          "String at hand with its unit (m, ft, mm, in), such as 12m: a set, or what a reel holds;"
              + " MAINS/CROSSES for a pack of two pieces, such as 22ft/18ft. The plan then tells"
              + " whether it is enough.")
  private @Nullable String atHand;

  @Option(
      names = "--start",
      paramLabel = "METHOD",
      description = "How the mains start: anchor-main, hand-held or doubled-clamp.")
  private @Nullable String start;

  @Option(
      names = "--anchor-main",
      paramLabel = "1|2",
      description =
          "The main that is held first, wherever its tail leaves; left out: the one whose tail"
              + " leaves at the throat.")
  private @Nullable Integer anchorMain;

  @Option(
      names = "--anchor-side",
      paramLabel = "SIDE",
      description = "The side of that main: left or right; left out: the short side.")
  private @Nullable String anchorSide;

  @Option(
      names = "--back-up",
      paramLabel = "WHEN",
      description =
          "When a starting clamp backs up a machine clamp: as-needed (its tests do not reach the"
              + " pull, or a floating clamp finds no tight neighbour), always or never; default"
              + " as-needed.")
  private @Nullable String backUp;

  @Option(
      names = "--third-clamp",
      paramLabel = "WHEN",
      description =
          "When a starting clamp holds an end that waits for its knot: as-needed (a machine clamp"
              + " would sit away from the frame, and tests show that the starting clamp holds),"
              + " always or never; default as-needed.")
  private @Nullable String thirdClamp;

  @Mixin private BenchOptions bench = new BenchOptions();

  @Option(
      names = "--run-limit",
      paramLabel = "N",
      description = "The longest run, in places of a side's list of holes; default 4.")
  private @Nullable Integer runLimit;

  @Option(
      names = "--knot-limit",
      paramLabel = "N",
      description = "The farthest tie-off hole from where an end comes out, in places; default 6.")
  private @Nullable Integer knotLimit;

  @Option(
      names = "--lead-limit",
      paramLabel = "N",
      description = "By how many mains one side may be ahead, 1 to 3; default 2.")
  private @Nullable Integer leadLimit;

  @Option(
      names = "--max-nodes",
      paramLabel = "N",
      description = "After how many nodes the search gives up; default 10000000.")
  private @Nullable Long maxNodes;

  /**
   * Reads the options' values, which needs no layout: a wrong call is told before any file is read.
   *
   * @throws ParameterException when a value is wrong
   */
  void check() {
    builder();
    for (int which = 0; which < 2; which++) {
      gauge(which);
      material(which);
    }
  }

  /** The first of these options that the call has, as it is named; for commands that take none. */
  Optional<String> firstGiven() {
    ParseResult call = spec.commandLine().getParseResult();
    return spec.mixins().values().stream()
        .filter(mixin -> mixin.userObject() == this)
        .flatMap(mixin -> mixin.options().stream())
        .map(OptionSpec::longestName)
        .filter(call::hasMatchedOption)
        .findFirst();
  }

  /**
   * The job for a layout.
   *
   * @throws ParameterException when an option's value is wrong, or two contradict each other
   */
  Job job(Layout layout) {
    Job.Builder builder = builder();
    Optional<Workbench.Stock> stock = bench.stock();
    if (gauge != null || material != null || stock.isPresent()) {
      StringSpec usual = Job.standard().mainsString(layout);
      builder.strings(
          string(stock.map(Workbench.Stock::mains).orElse(usual), 0),
          string(stock.map(Workbench.Stock::crosses).orElse(usual), 1));
    }
    Job job = builder.build();
    if (job.needsTwoPieces(layout) && job.routes().pieces().orElse(2) == 1) {
      throw wrong(
          job.hybrid(layout)
              ? "one piece cannot be of two strings; leave out --pieces 1, or name one string only."
              : "one piece cannot be cut from a pack of two; leave out --pieces 1, or name one"
                  + " length only.");
    }
    return job;
  }

  private Job.Builder builder() {
    try {
      Job.Builder job = Job.builder().routes(routes());
      force("--tension", tension).ifPresent(job::mainsTension);
      force("--cross-tension", crossTension).ifPresent(job::crossesTension);
      job.bench(bench.bench());
      if (anchorMain != null) {
        job.anchorMain(anchorMain);
      }
      word("--anchor-side", anchorSide, JobOptions::side, Side.values(), JobOptions::word)
          .ifPresent(job::anchorSide);
      if (leadLimit != null) {
        job.leadLimit(leadLimit);
      }
      bench.stock().ifPresent(s -> job.stringAtHand(s.length()));
      if (atHand != null) {
        job.stringAtHand(stringAtHand(atHand));
      }
      word("--start", start, StartMethod::ofWord, StartMethod.values(), StartMethod::word)
          .ifPresent(job::startMethod);
      word("--back-up", backUp, ClampUse::ofWord, ClampUse.values(), ClampUse::word)
          .ifPresent(job::backUp);
      word("--third-clamp", thirdClamp, ClampUse::ofWord, ClampUse.values(), ClampUse::word)
          .ifPresent(job::thirdClamp);
      job.build(); // it refuses what contradicts itself
      return job;
    } catch (IllegalArgumentException e) {
      // The builders refuse a number that is out of its range, and say which and why.
      throw wrong(String.valueOf(e.getMessage()));
    }
  }

  private RouteRequest routes() {
    RouteRequest.Builder routes = RouteRequest.builder();
    if (pieces != null) {
      routes.pieces(pieces);
    }
    word("--direction", direction, Direction::ofWord, Direction.values(), Direction::word)
        .ifPresent(routes::direction);
    if (runLimit != null) {
      routes.runLimit(runLimit);
    }
    if (knotLimit != null) {
      routes.knotLimit(knotLimit);
    }
    if (bench.startClamps != null) {
      routes.startingClamps(bench.startClamps);
    }
    if (maxNodes != null) {
      routes.maxNodes(maxNodes);
    }
    return routes.build();
  }

  private static Optional<Side> side(String word) {
    return Arrays.stream(Side.values()).filter(s -> word(s).equals(word)).findFirst();
  }

  private static String word(Side side) {
    return side == Side.LEFT ? "left" : "right";
  }

  /** The string of the mains (0) or of the crosses (1). */
  private StringSpec string(StringSpec usual, int which) {
    return new StringSpec(
        gauge(which).orElse(usual.gauge()), material(which).orElse(usual.material()));
  }

  private Optional<Gauge> gauge(int which) {
    return part("--gauge", gauge, which)
        .flatMap(w -> word("--gauge", w, Gauge::ofWord, Gauge.values(), Gauge::word));
  }

  private Optional<Material> material(int which) {
    return part("--material", material, which)
        .flatMap(w -> word("--material", w, Material::ofWord, Material.values(), Material::word));
  }

  private Optional<String> part(String option, @Nullable String value, int which) {
    if (value == null) {
      return Optional.empty();
    }
    String[] parts = value.split(HYBRID, -1);
    if (parts.length > 2) {
      throw wrong(option + " (" + value + ") must be one value, or two with a / between them.");
    }
    return Optional.of(parts[Math.min(which, parts.length - 1)]);
  }

  private Optional<Force> force(String option, @Nullable String value) {
    if (value == null) {
      return Optional.empty();
    }
    Optional<Force> force = Force.parse(value);
    if (force.isPresent()) {
      return force;
    }
    String number = value.strip();
    String wayOut =
        number.matches("[0-9]+(\\.[0-9]+)?")
            ? "write " + number + "N, " + number + "lbf or " + number + "kgf."
            : "write it like 245N, 55lbf or 24.9kgf.";
    throw wrong(option + " (" + value + ") must be a number with its unit: " + wayOut);
  }

  private StringAtHand stringAtHand(String value) {
    double mains = length(part("--at-hand", value, 0).orElseThrow());
    return value.contains(HYBRID)
        ? StringAtHand.pack(mains, length(part("--at-hand", value, 1).orElseThrow()))
        : StringAtHand.one(mains);
  }

  private static double length(String value) {
    return LengthWord.mm("--at-hand", value, LengthWord.Of.STRING);
  }

  private <T> Optional<T> word(
      String option,
      @Nullable String value,
      Function<String, Optional<T>> find,
      T[] all,
      Function<T, String> name) {
    if (value == null) {
      return Optional.empty();
    }
    Optional<T> found = find.apply(value);
    if (found.isEmpty()) {
      throw wrong(
          option
              + " ("
              + value
              + ") must be one of "
              + Arrays.stream(all).map(name).collect(Collectors.joining(", "))
              + ".");
    }
    return found;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
