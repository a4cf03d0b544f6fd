package org.hoopwright.finding;

/**
 * A fault of this library: it made something that its own proof refuses, or came to a state that
 * cannot be. Never a fault of the caller or of the data; please report it with the layout.
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
