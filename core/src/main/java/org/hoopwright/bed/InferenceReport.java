package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** Says in words which patterns were read off the holes, and what to look at to choose. */
final class InferenceReport {

  private final Layout layout;
  private final LabelResult result;
  private final List<Reading> readings;
  private final int count;

  InferenceReport(Layout layout, LabelResult result, List<Reading> readings, int count) {
    this.layout = layout;
    this.result = result;
    this.readings = readings;
    this.count = count;
  }

  List<Finding> findings(Inference.Status status) {
    List<Finding> findings = new ArrayList<>();
    switch (status) {
      case SURE -> {
        findings.add(inferred());
        candidates(readings.get(0), findings);
      }
      case UNSURE -> findings.add(unsure());
      case NONE -> findings.add(none());
    }
    return findings;
  }

  private Finding inferred() {
    return Finding.of(FindingCode.PATTERN_INFERRED)
        .message("Read off the holes: %s.".formatted(words(readings.get(0).layout())))
        .at("/mains/skip", layout.places())
        .fix("Compare this with the frame, and state mains.skip.")
        .build();
  }

  private void candidates(Reading reading, List<Finding> findings) {
    if (!reading.sharedCandidates().isEmpty()) {
      findings.add(
          Finding.of(FindingCode.SHARED_CANDIDATE)
              .message(
                  "%s must take two strings for the pattern to fit."
                      .formatted(named("Hole", reading.sharedCandidates())))
              .at("/holes/shared", layout.places())
              .about(reading.sharedCandidates())
              .fix("Look at the bore, and name the holes that take two under holes.shared.")
              .build());
    }
    if (!reading.tieOffCandidates().isEmpty()) {
      findings.add(
          Finding.of(FindingCode.TIE_OFF_CANDIDATE)
              .message(
                  "No tie-off hole is stated; %s taken for it."
                      .formatted(
                          named("hole", reading.tieOffCandidates())
                              + (reading.tieOffCandidates().size() == 1 ? " is" : " are")))
              .at("/holes/tieOff", layout.places())
              .about(reading.tieOffCandidates())
              .fix("Look at the bore, and name the wider holes under holes.tieOff.")
              .build());
    }
  }

  private Finding unsure() {
    StringBuilder message = new StringBuilder();
    if (result.status() == LabelResult.Status.LIMIT_REACHED) {
      message.append("The search ended at its limit");
      message.append(readings.isEmpty() ? "." : "; the best that it found: ");
    } else {
      message.append(
          "%s patterns fit the holes about as well%s: "
              .formatted(count, count > readings.size() ? ", the best of them" : ""));
    }
    for (int i = 0; i < readings.size(); i++) {
      message.append(
          "%s(%s) %s%s"
              .formatted(i == 0 ? "" : "; ", i + 1, words(readings.get(i).layout()), dearer(i)));
    }
    if (!readings.isEmpty()) {
      message.append(".");
    }
    return Finding.of(FindingCode.PATTERN_UNSURE)
        .message(message.toString())
        .at("/mains/skip", layout.places())
        .fact("patterns", count)
        .about(readings.size() < 2 ? List.of() : differ(readings.get(0), readings.get(1)))
        .fix(fix())
        .build();
  }

  private String dearer(int i) {
    double more =
        (readings.get(i).labelling().cost().totalUm()
                - readings.get(0).labelling().cost().totalUm())
            / 1000.0;
    return i == 0 ? "" : more == 0 ? ", as good" : ", %s mm worse".formatted(Words.mm(more));
  }

  private String fix() {
    String state =
        layout.crossesFirst().isEmpty() || layout.crossesLast().isEmpty()
            ? "State crosses.first and crosses.last, the outermost holes that a cross goes through, or mains.skip."
            : "Measure the holes' coordinates to within a millimetre, or state mains.skip.";
    if (readings.size() < 2) {
      return state;
    }
    return "Look at %s: the groove that the old string wore shows whether it ran along the frame or across. "
            .formatted(named("hole", differ(readings.get(0), readings.get(1))))
        + state;
  }

  private Finding none() {
    return Finding.of(FindingCode.PATTERN_NONE)
        .message(
            "No pattern of %s mains and %s crosses fits the holes."
                .formatted(layout.mainsCount(), layout.crossesCount()))
        .at("/holes", layout.places())
        .fact("mains", layout.mainsCount())
        .fact("crosses", layout.crossesCount())
        .fix(
            "Check the counts of holes, mains and crosses, and what is stated about the first and last cross, shared and blocked holes.")
        .build();
  }

  private List<HoleId> differ(Reading a, Reading b) {
    Ring ring = Ring.of(layout);
    List<HoleId> holes = new ArrayList<>();
    for (Side side : Side.values()) {
      for (HoleId hole : ring.list(side)) {
        int p = ring.place(hole);
        if (a.labelling().labels().of(side).get(p) != b.labelling().labels().of(side).get(p)) {
          holes.add(hole);
        }
      }
    }
    return holes;
  }

  private static String named(String word, List<HoleId> holes) {
    List<HoleRef> refs = CompleteLayout.refs(holes);
    return word + (refs.size() == 1 ? " " : "s ") + Words.some(refs);
  }

  private static String words(Layout complete) {
    List<HoleRef> skip = complete.mainsSkip().orElse(List.of());
    StringBuilder text = new StringBuilder("the mains leave out ");
    text.append(skip.isEmpty() ? "no hole" : Words.some(skip));
    complete.crossesFirst().ifPresent(f -> text.append(", crosses run from ").append(pair(f)));
    complete.crossesLast().ifPresent(l -> text.append(" to ").append(pair(l)));
    if (!complete.crossesSkip().isEmpty()) {
      text.append(", empty: ").append(Words.some(complete.crossesSkip()));
    }
    if (!complete.shared().isEmpty()) {
      text.append(", shared: ").append(Words.some(complete.shared()));
    }
    return text.toString();
  }

  private static String pair(EachSide<HoleId> pair) {
    return pair.left().mirrored().equals(pair.right())
        ? HoleRef.both(pair.left().end(), pair.left().number()).toString()
        : pair.left() + " and " + pair.right();
  }
}
