package org.hoopwright.replay;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.ClampOn;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.StrungPiece;
import org.hoopwright.route.Pass;

/** What cannot be in a half-done job. */
final class StateCheck {

  private StateCheck() {}

  static List<Breach> check(Bed bed, HalfDone state) {
    Breaches breaches = new Breaches();
    breaches.turnTo(0);
    Set<SpanId> laced = new TreeSet<>();
    for (Pass p : state.passes()) {
      boolean there =
          bed.find(p.span())
              .filter(s -> s.uses(p.from()) && s.other(p.from()).equals(p.to()))
              .isPresent();
      breaches.addIf(
          !there,
          Invariant.I10_ROUTE,
          "No span %s runs from %s to %s.".formatted(p.span(), p.from(), p.to()));
      breaches.addIf(!laced.add(p.span()), Invariant.I10_ROUTE, p.span() + " is strung twice.");
    }
    state.pulled().stream()
        .filter(s -> !laced.contains(s))
        .forEach(s -> breaches.add(Invariant.I6_OWN_PULL, s + " is pulled, but it is not strung."));
    Set<String> names = new TreeSet<>();
    for (ClampOn c : state.clamps()) {
      breaches.addIf(
          !laced.contains(c.span()) || bed.find(c.span()).filter(s -> s.uses(c.near())).isEmpty(),
          Invariant.I2_CLAMPS,
          "The clamp %s is on %s near %s, but no such string is in."
              .formatted(c.clamp(), c.span(), c.near()));
      breaches.addIf(
          !names.add(c.clamp()),
          Invariant.I2_CLAMPS,
          "The clamp %s is on twice.".formatted(c.clamp()));
      breaches.addIf(
          ClampKind.of(c.clamp()).isEmpty(),
          Invariant.I2_CLAMPS,
          "\"%s\" is no clamp's name, which is such as machine-1 or starting-1."
              .formatted(c.clamp()));
    }
    if (breaches.all().isEmpty()) {
      Set<SpanId> broken = new TreeSet<>();
      for (StrungPiece piece : state.pieces()) {
        if (piece.broken()) {
          piece.ends().forEach(e -> e.passes().forEach(p -> broken.add(p.span())));
        }
      }
      new HeldCheck(broken).begin(new BenchState(bed, state), breaches);
    }
    return breaches.all();
  }
}
