package org.hoopwright;

import java.util.List;

/** What to mind when string is under tension. */
public final class Cautions {

  private Cautions() {}

  /** The usual cautions, most important first. */
  public static final List<String> USUAL =
      List.of(
          "The instructions of the frame's maker and of the machine's maker, local codes and trained practice come before this plan.",
          "String under tension can whip and hurt: wear eye protection, keep your face out of its line and your fingers clear of gripper and clamps.",
          "Do not pull above the frame's marked maximum; a wrong pattern, a wrong order or too high a pull can crack a frame.",
          "Look frame, grommets and bumper over before you cut anything; cut old strings out from the centre outwards, all of them.",
          "Mount the frame firmly, not so tight as to crush it, and do not stop with the job half strung.",
          "Pull knots below the string bed, so that slipping pliers miss the face; mind the cut tails.",
          "Clamp just tight enough not to slip; replace a string that has slipped; never use acetone on a clamp.",
          "Lengths and forces here are estimates. Nothing in this plan has been measured on your bench.");
}
