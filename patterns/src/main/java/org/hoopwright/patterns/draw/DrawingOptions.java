package org.hoopwright.patterns.draw;

import java.util.List;
import org.hoopwright.finding.Finding;

/**
 * How a drawing is to be made. Immutable; {@link #builder()} starts with the face of the frame, 180
 * mm wide, without findings.
 */
public final class DrawingOptions {
  private final double widthMm;
  private final boolean back;
  private final List<Finding> findings;
  private final String idPrefix;

  private DrawingOptions(Builder b) {
    this.widthMm = b.widthMm;
    this.back = b.back;
    this.findings = b.findings;
    this.idPrefix = b.idPrefix;
  }

  /** The usual drawing. */
  public static DrawingOptions standard() {
    return builder().build();
  }

  /** Starts with the usual drawing. */
  public static Builder builder() {
    return new Builder();
  }

  /** The width on paper, in mm. */
  public double widthMm() {
    return widthMm;
  }

  /** Whether the frame is seen from the back: turned over about its long axis. */
  public boolean back() {
    return back;
  }

  /** What is marked at holes and spans and listed below the drawing, in this order. */
  public List<Finding> findings() {
    return findings;
  }

  /** What stands before every id, so that several drawings can stand in one page. */
  public String idPrefix() {
    return idPrefix;
  }

  /** Gathers options. Not thread-safe. */
  public static final class Builder {
    private double widthMm = 180;
    private boolean back = false;
    private List<Finding> findings = List.of();
    private String idPrefix = "";

    private Builder() {}

    /**
     * The width on paper.
     *
     * @param mm from 40 to 2000 mm
     * @throws IllegalArgumentException when it is not in that range
     */
    public Builder widthMm(double mm) {
      if (!(mm >= 40 && mm <= 2000)) {
        throw new IllegalArgumentException(
            "The width of the drawing (" + mm + " mm) must be from 40 to 2000 mm.");
      }
      widthMm = mm;
      return this;
    }

    /** Whether the frame is seen from the back; names of sides and holes stay those of the face. */
    public Builder back(boolean value) {
      back = value;
      return this;
    }

    /** Findings to be marked and listed. */
    public Builder findings(List<Finding> value) {
      findings = List.copyOf(value);
      return this;
    }

    /**
     * What stands before every id.
     *
     * @param prefix empty, or a small letter and then small letters, digits and dashes, 40 at most
     * @throws IllegalArgumentException when it is none of these
     */
    public Builder idPrefix(String prefix) {
      if (!prefix.matches("|[a-z][a-z0-9-]{0,39}")) {
        throw new IllegalArgumentException(
            "The prefix of ids ("
                + Words.clean(prefix)
                + ") must be a small letter and then small letters, digits and dashes, 40 at most.");
      }
      idPrefix = prefix;
      return this;
    }

    /** The options. */
    public DrawingOptions build() {
      return new DrawingOptions(this);
    }
  }
}
