package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import org.hoopwright.finding.HoopwrightFault;

/**
 * The JSON Schemas (2020-12) of the file formats, for editors and other programs. They are also in
 * the folder {@code docs/schema}, and in the jar under {@code org/hoopwright/patterns/schema}.
 *
 * <p>What the layout's schema accepts {@link LayoutReader} reads, but for what no schema can say
 * (its {@code $comment} lists that); what the reader reads and the checks find no error in, the
 * schema accepts.
 */
public final class Schemas {

  private Schemas() {}

  /** The schema of layout files, {@value LayoutReader#FORMAT}. */
  public static String layout() {
    return resource("layout-1.schema.json");
  }

  /** The schema of plan files, {@value PlanWriter#FORMAT}. */
  public static String plan() {
    return resource("plan-1.schema.json");
  }

  /**
   * The schema of ways on from a half-done job, {@value WaysWriter#FORMAT}. It refers to that of
   * plans.
   */
  public static String ways() {
    return resource("ways-1.schema.json");
  }

  /** The schema of bench files, {@value BenchReader#FORMAT}. */
  public static String bench() {
    return resource("bench-1.schema.json");
  }

  private static String resource(String file) {
    try (InputStream in = Schemas.class.getResourceAsStream("schema/" + file)) {
      if (in == null) {
        throw new HoopwrightFault("This copy of the library lacks its file schema/" + file + ".");
      }
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException e) {
      throw new HoopwrightFault("The library's own file schema/" + file + " cannot be read.");
    }
  }
}
