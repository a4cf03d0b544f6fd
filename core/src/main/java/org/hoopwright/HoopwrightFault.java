package org.hoopwright;

/**
 * A fault of this library: it made something that its own proof refuses. Please report it with the
 * layout.
 */
public final class HoopwrightFault extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * A fault.
   *
   * @param message what went wrong, with the values
   */
  public HoopwrightFault(String message) {
    super(message);
  }
}
