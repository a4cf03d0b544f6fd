package org.hoopwright.frame;

/**
 * A stretch of the frame's outside that no run may pass, between two holes of a side.
 *
 * @param from one end of the stretch
 * @param to the other end, on the same side or sides
 */
public record NoRun(HoleRef from, HoleRef to) {

  /** Left and right exchanged. */
  public NoRun mirrored() {
    return new NoRun(from.mirrored(), to.mirrored());
  }
}
