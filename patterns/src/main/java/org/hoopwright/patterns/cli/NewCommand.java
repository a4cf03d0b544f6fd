package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.Callable;
import org.hoopwright.finding.HoopwrightFault;
import picocli.CommandLine.Command;

/** Prints a layout to begin with. */
@Command(
    name = "new",
    description = "Prints a commented layout to begin with; it checks clean and can be planned.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class NewCommand implements Callable<Integer> {

  private static final String FILE = "starter.json";

  private final Session session;

  NewCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    try (InputStream in = NewCommand.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new HoopwrightFault("This copy of hoopwright lacks its file " + FILE + ".");
      }
      session.console().result(new String(in.readAllBytes(), UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return ExitCode.DONE;
  }
}
