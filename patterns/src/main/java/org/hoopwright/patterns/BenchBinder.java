package org.hoopwright.patterns;

import static org.hoopwright.finding.FindingCode.NUMBER_RANGE;
import static org.hoopwright.finding.FindingCode.WRONG_TYPE;
import static org.hoopwright.finding.FindingCode.WRONG_VALUE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchTest;
import org.hoopwright.bench.JawDepth;
import org.hoopwright.bench.MachineClampKind;
import org.hoopwright.bench.StringAtHand;
import org.hoopwright.bench.Tensioner;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.Pointers;
import org.hoopwright.patterns.json.Shown;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;

/** Makes a bench of the outermost JSON value, and reports all that is wrong. */
final class BenchBinder {

  private static final List<String> STRING_UNITS = List.of("m", "ft", "mm", "in");

  /** What a bench test came to. */
  private enum Result {
    HELD("held"),
    SLIPPED("slipped"),
    CLEANED("cleaned");

    private final String word;

    Result(String word) {
      this.word = word;
    }
  }

  private final Values values;
  private final MemberLists lists;
  private LengthUnit unit = LengthUnit.MILLIMETRE;

  BenchBinder(Reading reading) {
    this.values = new Values(reading, /* vital= */ true);
    this.lists = new MemberLists(values);
  }

  Optional<Workbench> bind(JsonNode root) {
    Optional<ObjectNode> object = values.object(root, "", "The bench");
    if (object.isEmpty()) {
      return Optional.empty();
    }
    MemberReader m =
        MemberReader.of(
            values,
            object.get(),
            "",
            "the bench",
            List.of(
                "$schema",
                "format",
                "name",
                "units",
                "machineClamps",
                "startingClamps",
                "clampLength",
                "clampDistance",
                "tensioner",
                "reach",
                "strings"));
    lists.format(m, BenchReader.FORMAT);
    Optional<String> name = m.need("name").flatMap(n -> name(n, "/name"));
    m.find("units")
        .flatMap(n -> lists.one(n, "/units", "units", LengthUnit.values(), LengthUnit::symbol))
        .ifPresent(u -> unit = u);
    Bench.Builder bench = Bench.builder();
    m.find("machineClamps").ifPresent(n -> machineClamps(n, bench));
    m.find("startingClamps").ifPresent(n -> startingClamps(n, bench));
    length(m, "clampLength", bench::clampLengthMm);
    length(m, "clampDistance", bench::clampDistanceMm);
    length(m, "reach", bench::reachMm);
    m.find("tensioner")
        .flatMap(n -> lists.one(n, "/tensioner", "tensioner", Tensioner.values(), Tensioner::word))
        .ifPresent(bench::tensioner);
    List<Workbench.Stock> strings = lists.each(m, "strings", this::stock);
    unique(m, strings);
    return name.isPresent() && values.reading().isSound()
        ? Optional.of(new Workbench(name.get(), bench.build(), strings))
        : Optional.empty();
  }

  private Optional<String> name(JsonNode node, String pointer) {
    Optional<String> name = values.text(node, pointer, "name");
    Optional<String> refused = name.flatMap(NameText::refused);
    return refused.isPresent()
        ? values.wrong(
            WRONG_VALUE,
            node.place(),
            pointer,
            "name " + refused.get() + ".",
            "Name it as people call it.")
        : name;
  }

  private void machineClamps(JsonNode node, Bench.Builder bench) {
    Optional<MemberReader> m =
        members(node, "/machineClamps", "machineClamps", "kind", "count", "drawback", "tests");
    if (m.isEmpty()) {
      return;
    }
    m.get()
        .find("kind")
        .flatMap(
            n ->
                lists.one(
                    n,
                    "/machineClamps/kind",
                    "machineClamps.kind",
                    MachineClampKind.values(),
                    MachineClampKind::word))
        .ifPresent(bench::machineClampKind);
    count(m.get(), bench::machineClamps);
    m.get().find("drawback").ifPresent(n -> drawback(n, "/machineClamps/drawback", bench));
    bench.machineClampTests(lists.each(m.get(), "tests", this::test));
  }

  private void startingClamps(JsonNode node, Bench.Builder bench) {
    Optional<MemberReader> m = members(node, "/startingClamps", "startingClamps", "count", "tests");
    if (m.isPresent()) {
      count(m.get(), bench::startingClamps);
      bench.startingClampTests(lists.each(m.get(), "tests", this::test));
    }
  }

  private Optional<MemberReader> members(
      JsonNode node, String pointer, String title, String... names) {
    return values
        .object(node, pointer, title)
        .map(o -> MemberReader.of(values, o, pointer, title, List.of(names)));
  }

  private void count(MemberReader m, Consumer<Integer> set) {
    m.find("count")
        .ifPresent(
            n ->
                values
                    .integer(n, m.pointer("count"), m.title("count"))
                    .ifPresent(c -> accepted(n, m.pointer("count"), c, set)));
  }

  private void length(MemberReader m, String name, Consumer<Double> set) {
    m.find(name)
        .ifPresent(
            n ->
                values
                    .number(n, m.pointer(name), name)
                    .ifPresent(v -> accepted(n, m.pointer(name), unit.toMm(v), set)));
  }

  /** Gives a value to the builder, which knows its range; what it refuses is a finding. */
  private <T> void accepted(JsonNode node, String pointer, T value, Consumer<T> set) {
    try {
      set.accept(value);
    } catch (IllegalArgumentException e) {
      values.wrong(
          NUMBER_RANGE,
          node.place(),
          pointer,
          String.valueOf(e.getMessage()),
          "Check the number and the file's units.");
    }
  }

  private void drawback(JsonNode node, String pointer, Bench.Builder bench) {
    pair(node, pointer, "machineClamps.drawback")
        .ifPresent(
            range ->
                accepted(
                    node,
                    pointer,
                    range,
                    r -> bench.drawbackMm(unit.toMm(r.get(0)), unit.toMm(r.get(1)))));
  }

  private Optional<List<Double>> pair(JsonNode node, String pointer, String title) {
    if (!(node instanceof ArrayNode a) || a.items().size() != 2) {
      return values.wrong(
          WRONG_TYPE,
          node.place(),
          pointer,
          title + " must be the least and the most of it, two numbers in a list.",
          "Write it as [0.2, 1.0].");
    }
    List<Double> both = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      values.number(a.items().get(i), Pointers.to(pointer, i), title).ifPresent(both::add);
    }
    return both.size() == 2 ? Optional.of(both) : Optional.empty();
  }

  private Optional<BenchTest> test(JsonNode node, String pointer) {
    Optional<MemberReader> found =
        members(
            node, pointer, "a bench test", "gauge", "material", "pull", "unit", "result", "depth");
    if (found.isEmpty()) {
      return Optional.empty();
    }
    MemberReader m = found.get();
    Optional<Result> result = lists.one(m, "result", Result.values(), r -> r.word);
    if (result.filter(r -> r == Result.CLEANED).isPresent()) {
      for (String name : List.of("gauge", "material", "pull", "unit", "depth")) {
        m.refuse(name, "does not go with the result \"cleaned\".", "Leave it out.");
      }
      return Optional.of(new BenchTest.Cleaned());
    }
    Optional<StringSpec> string = string(m);
    Optional<Force> pull = pull(m);
    Optional<JawDepth> depth =
        m.has("depth")
            ? lists.one(m, "depth", JawDepth.values(), JawDepth::word)
            : Optional.of(JawDepth.DEEP);
    return result.isPresent() && string.isPresent() && pull.isPresent() && depth.isPresent()
        ? Optional.of(
            new BenchTest.Pull(string.get(), pull.get(), depth.get(), result.get() == Result.HELD))
        : Optional.empty();
  }

  private Optional<StringSpec> string(MemberReader m) {
    Optional<Gauge> gauge = lists.one(m, "gauge", Gauge.values(), Gauge::word);
    Optional<Material> material = lists.one(m, "material", Material.values(), Material::word);
    return gauge.isPresent() && material.isPresent()
        ? Optional.of(new StringSpec(gauge.get(), material.get()))
        : Optional.empty();
  }

  private Optional<Force> pull(MemberReader m) {
    Optional<ForceUnit> in = lists.one(m, "unit", ForceUnit.values(), ForceUnit::symbol);
    Optional<JsonNode> node = m.need("pull");
    Optional<Double> number = node.flatMap(n -> values.number(n, m.pointer("pull"), "pull"));
    if (in.isEmpty() || number.isEmpty()) {
      return Optional.empty();
    }
    double newtons = number.get() * in.get().newtons();
    return newtons > 0 && newtons <= Force.MAX_NEWTONS
        ? Optional.of(Force.ofNewtons(newtons))
        : values.wrong(
            NUMBER_RANGE,
            node.orElseThrow().place(),
            m.pointer("pull"),
            "pull (%s %s) must be more than 0 N and at most 10000 N."
                .formatted(number.get(), in.get().symbol()),
            "Check the number and its unit.");
  }

  private Optional<Workbench.Stock> stock(JsonNode node, String pointer) {
    Optional<MemberReader> found =
        members(
            node,
            pointer,
            "a string",
            "name",
            "mains",
            "crosses",
            "gauge",
            "material",
            "length",
            "unit");
    if (found.isEmpty()) {
      return Optional.empty();
    }
    MemberReader m = found.get();
    Optional<String> name = m.need("name").flatMap(n -> name(n, m.pointer("name")));
    Optional<String> in =
        m.need("unit").flatMap(n -> values.word(n, m.pointer("unit"), "unit", STRING_UNITS));
    if (m.has("mains") || m.has("crosses")) {
      for (String one : List.of("gauge", "material", "length")) {
        m.refuse(one, "does not go with mains and crosses.", "State it in each of the two.");
      }
      Optional<Part> mains = m.need("mains").flatMap(n -> part(n, m.pointer("mains"), in));
      Optional<Part> crosses = m.need("crosses").flatMap(n -> part(n, m.pointer("crosses"), in));
      return name.isPresent() && mains.isPresent() && crosses.isPresent()
          ? Optional.of(
              new Workbench.Stock(
                  name.get(),
                  mains.get().string(),
                  crosses.get().string(),
                  StringAtHand.pack(mains.get().mm(), crosses.get().mm())))
          : Optional.empty();
    }
    Optional<Part> whole = part(m, in);
    return name.isPresent() && whole.isPresent()
        ? Optional.of(
            new Workbench.Stock(
                name.get(),
                whole.get().string(),
                whole.get().string(),
                StringAtHand.one(whole.get().mm())))
        : Optional.empty();
  }

  /** A string and how much there is of it. */
  private record Part(StringSpec string, double mm) {}

  private Optional<Part> part(JsonNode node, String pointer, Optional<String> in) {
    return members(node, pointer, "one of two strings", "gauge", "material", "length")
        .flatMap(m -> part(m, in));
  }

  private Optional<Part> part(MemberReader m, Optional<String> in) {
    Optional<StringSpec> string = string(m);
    Optional<JsonNode> node = m.need("length");
    Optional<Double> number = node.flatMap(n -> values.number(n, m.pointer("length"), "length"));
    if (string.isEmpty() || number.isEmpty() || in.isEmpty()) {
      return Optional.empty();
    }
    double mm = number.get() * millimetres(in.get());
    return mm > 0 && mm <= StringAtHand.MOST_MM
        ? Optional.of(new Part(string.get(), mm))
        : values.wrong(
            NUMBER_RANGE,
            node.orElseThrow().place(),
            m.pointer("length"),
            "length (%s %s) must be more than 0 m and at most 100 km."
                .formatted(number.get(), in.get()),
            "Check the number and its unit.");
  }

  /** Exactly; inch and foot as in NIST SP 811, appendix B.8. */
  private static double millimetres(String unit) {
    return switch (unit) {
      case "m" -> 1000.0;
      case "ft" -> 304.8;
      case "in" -> 25.4;
      default -> 1.0;
    };
  }

  private void unique(MemberReader m, List<Workbench.Stock> strings) {
    for (int i = 0; i < strings.size(); i++) {
      String name = strings.get(i).name();
      if (strings.subList(0, i).stream().anyMatch(s -> s.name().equals(name))) {
        values.wrong(
            WRONG_VALUE,
            m.find("strings").orElseThrow().place(),
            "/strings",
            "Two strings are named %s.".formatted(Shown.quoted(name)),
            "Give each its own name.");
      }
    }
  }
}
