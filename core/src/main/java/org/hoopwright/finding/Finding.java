package org.hoopwright.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One thing found in a layout, a route or a plan. Immutable; made by {@link #of(FindingCode)}.
 *
 * <p>Two findings are equal when all their parts are.
 */
public final class Finding {

  private final FindingCode code;
  private final String message;
  private final String pointer;
  private final @Nullable Place place;
  private final List<String> about;
  private final String fix;
  private final @Nullable String source;
  private final List<Fact> facts;
  private final List<PatchStep> patch;

  private Finding(Builder b) {
    this.code = b.code;
    this.message = b.message;
    this.pointer = b.pointer;
    this.place = b.place;
    this.about = List.copyOf(b.about);
    this.fix = b.fix;
    this.source = b.source;
    this.facts = List.copyOf(b.facts);
    this.patch = List.copyOf(b.patch);
  }

  /** Starts a finding of this code. */
  public static Builder of(FindingCode code) {
    return new Builder(code);
  }

  /** What kind of finding this is. */
  public FindingCode code() {
    return code;
  }

  /** How grave it is. */
  public Severity severity() {
    return code.severity();
  }

  /** What is wrong, with the values, as one plain sentence. */
  public String message() {
    return message;
  }

  /** JSON pointer (RFC 6901) to the value it is about; the empty text is the whole layout. */
  public String pointer() {
    return pointer;
  }

  /** Where that value stands in the file; empty for a layout built in code. */
  public Optional<Place> place() {
    return Optional.ofNullable(place);
  }

  /** Names of the holes and spans it is about, such as {@code L7H} or {@code X1}; may be empty. */
  public List<String> about() {
    return about;
  }

  /** What to do, as one plain sentence; empty when nothing needs doing. */
  public String fix() {
    return fix;
  }

  /** The published source of the rule, when it has one. */
  public Optional<String> source() {
    return Optional.ofNullable(source);
  }

  /** The numbers it rests on, in the order of the message; may be empty. */
  public List<Fact> facts() {
    return facts;
  }

  /** The fix as steps on the file, where it is mechanical; empty where a person must decide. */
  public List<PatchStep> patch() {
    return patch;
  }

  /** The same finding with another pointer; its place stays. */
  public Finding withPointer(String jsonPointer) {
    Builder b = new Builder(code).message(message).fix(fix).about(about);
    b.pointer = jsonPointer;
    b.place = place;
    b.source = source;
    b.facts.addAll(facts);
    b.patch.addAll(patch);
    return b.build();
  }

  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Finding f
        && code == f.code
        && message.equals(f.message)
        && pointer.equals(f.pointer)
        && Objects.equals(place, f.place)
        && about.equals(f.about)
        && fix.equals(f.fix)
        && Objects.equals(source, f.source)
        && facts.equals(f.facts)
        && patch.equals(f.patch);
  }

  @Override
  public int hashCode() {
    return Objects.hash(code, message, pointer, place, about, fix, source, facts, patch);
  }

  /** For example {@code 3:14: error: Main 4 … [main-hole-blocked]}. */
  @Override
  public String toString() {
    String at = place == null ? "" : place.line() + ":" + place.column() + ": ";
    return at + severity().word() + ": " + message + " [" + code.code() + "]";
  }

  /** Gathers the parts of a finding. Not thread-safe. */
  public static final class Builder {
    private final FindingCode code;
    private String message;
    private String pointer = "";
    private @Nullable Place place;
    private final List<String> about = new ArrayList<>();
    private String fix = "";
    private @Nullable String source;
    private final List<Fact> facts = new ArrayList<>();
    private final List<PatchStep> patch = new ArrayList<>();

    private Builder(FindingCode code) {
      this.code = code;
      this.message = code.summary();
    }

    /** What is wrong, with the values; the code's summary when left out. */
    public Builder message(String text) {
      this.message = text;
      return this;
    }

    /** The value it is about, and its place as the layout's {@link Places} know it. */
    public Builder at(String jsonPointer, Places places) {
      this.pointer = jsonPointer;
      this.place = places.nearest(jsonPointer).orElse(null);
      return this;
    }

    /** The value it is about, with a place of its own. */
    public Builder at(String jsonPointer, Place exact) {
      this.pointer = jsonPointer;
      this.place = exact;
      return this;
    }

    /** Adds holes or spans, by the {@code toString} of each. */
    public Builder about(Object... names) {
      for (Object name : names) {
        about.add(name.toString());
      }
      return this;
    }

    /** Adds holes or spans, by the {@code toString} of each. */
    public Builder about(Iterable<?> names) {
      for (Object name : names) {
        about.add(name.toString());
      }
      return this;
    }

    /** What to do. */
    public Builder fix(String text) {
      this.fix = text;
      return this;
    }

    /** The published source of the rule. */
    public Builder source(String text) {
      this.source = text;
      return this;
    }

    /** A measure that it rests on; one beyond all measure is no fact, and the message tells. */
    public Builder fact(String name, double value, String unit) {
      if (Math.abs(value) < Fact.BEYOND) {
        facts.add(new Fact(name, value, unit, false));
      }
      return this;
    }

    /** A count that it rests on. */
    public Builder fact(String name, int count) {
      facts.add(new Fact(name, count, "", true));
      return this;
    }

    /** A step of a mechanical fix. */
    public Builder patch(PatchStep step) {
      patch.add(step);
      return this;
    }

    /** The steps of a mechanical fix; may be none. */
    public Builder patch(List<PatchStep> steps) {
      patch.addAll(steps);
      return this;
    }

    /** The finding. */
    public Finding build() {
      return new Finding(this);
    }
  }
}
