package org.hoopwright.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Draws together what left and right differ in alike: L7H and R7H become 7H, L3 and R3 main 3. */
final class BothSides {

  private static final Pattern NAME = Pattern.compile("\\b([LR])([1-9][0-9]*)([HT]?)\\b");

  private static final Pattern SIDE = Pattern.compile("the (left|right) side");

  private BothSides() {}

  static List<Difference> merged(Map<Facts.Key, Difference> differences) {
    Map<Facts.Key, Difference> left = new LinkedHashMap<>(differences);
    List<Difference> merged = new ArrayList<>();
    differences.forEach(
        (key, d) -> {
          if (left.remove(key) == null) {
            return; // said with its image
          }
          String image = mirrored(key.about());
          Facts.Key other = new Facts.Key(key.topic(), image);
          Difference o = left.get(other);
          if (!image.equals(key.about()) && o != null && mirrored(d).equals(o)) {
            left.remove(other);
            merged.add(withoutSide(d));
          } else {
            merged.add(d);
          }
        });
    return List.copyOf(merged);
  }

  private static Difference mirrored(Difference d) {
    return new Difference(
        d.topic(),
        mirrored(d.about()),
        d.first().map(BothSides::mirrored),
        d.second().map(BothSides::mirrored),
        mirrored(d.say()));
  }

  /** A text with left and right exchanged in names of holes and mains, and in "the left side". */
  private static String mirrored(String text) {
    String names =
        NAME.matcher(text)
            .replaceAll(m -> (m.group(1).equals("L") ? "R" : "L") + m.group(2) + m.group(3));
    return SIDE.matcher(names)
        .replaceAll(m -> m.group(1).equals("left") ? "the right side" : "the left side");
  }

  private static Difference withoutSide(Difference d) {
    return new Difference(
        d.topic(),
        withoutSide(d.about()),
        d.first().map(BothSides::withoutSide),
        d.second().map(BothSides::withoutSide),
        Sentence.capital(withoutSide(d.say())));
  }

  private static String withoutSide(String text) {
    String named =
        NAME.matcher(text)
            .replaceAll(m -> m.group(3).isEmpty() ? "main " + m.group(2) : m.group(2) + m.group(3));
    return SIDE.matcher(named).replaceAll("each side");
  }
}
