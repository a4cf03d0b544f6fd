package org.hoopwright.patterns.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.hoopwright.finding.HoopwrightFault;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;

/** Runs the command line within a process: words and streams in, exit code out. */
public final class CommandRunner {

  private static final int HELP_WIDTH = 100;

  private CommandRunner() {}

  /**
   * Runs a command. Never throws for what the words or files hold.
   *
   * @param streams what it reads and writes; they are flushed, not closed
   * @param args the words after the program's name
   * @return one of {@link ExitCode}
   */
  public static int run(Streams streams, String... args) {
    Console console = new Console();
    int code;
    try {
      Session session = new Session(streams, console);
      code = isPlainCheck(args) ? plainCheck(session, args) : execute(session, args);
    } catch (OutOfMemoryError e) {
      code = tooMuch(console);
    } catch (RuntimeException | StackOverflowError e) {
      code = fault(console, e);
    }
    return console.flush(streams, code);
  }

  /**
   * Whether the words are {@code check} and nothing but files. Editors call that at every save, and
   * taking the words apart with all that options may be would take longer than the check.
   */
  private static boolean isPlainCheck(String... args) {
    if (args.length < 2 || !args[0].equals("check")) {
      return false;
    }
    int inputs = 0;
    for (int i = 1; i < args.length; i++) {
      if (args[i].equals("-")) {
        inputs++;
      } else if (args[i].startsWith("-")) {
        return false;
      }
    }
    return inputs < 2;
  }

  private static int plainCheck(Session session, String... args) {
    return FileCheck.plain(session).run(List.of(args).subList(1, args.length));
  }

  private static int execute(Session session, String... args) {
    StringWriter help = new StringWriter();
    CommandLine line =
        new CommandLine(new RootCommand())
            .addSubcommand(new CheckCommand(session))
            .addSubcommand(new PlanCommand(session))
            .addSubcommand(new DrawCommand(session))
            .addSubcommand(new SheetCommand(session))
            .addSubcommand(new InferCommand(session))
            .addSubcommand(new DetourCommand(session))
            .addSubcommand(new CompareCommand(session))
            .addSubcommand(new StateCommand(session))
            .addSubcommand(new ResumeCommand(session))
            .addSubcommand(new NewCommand(session))
            .addSubcommand(new SamplesCommand(session));
    line.setExpandAtFiles(false)
        .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
        .setUsageHelpWidth(HELP_WIDTH)
        .setOut(new PrintWriter(help))
        .setErr(new PrintWriter(new StringWriter()))
        .setParameterExceptionHandler((e, words) -> wrongCall(session.console(), e))
        .setExecutionExceptionHandler(
            (e, command, parsed) ->
                e instanceof FileRefused refused
                    ? refused(session.console(), command, refused)
                    : fault(session.console(), e));
    describe(line);
    int code = line.execute(args);
    session.console().result(help.toString());
    return code;
  }

  /** Every help ends with the exit codes. */
  private static void describe(CommandLine line) {
    line.getCommandSpec().usageMessage().exitCodeListHeading("%nExit codes:%n");
    line.getCommandSpec().usageMessage().exitCodeList(ExitCode.table());
    line.getSubcommands().values().forEach(CommandRunner::describe);
  }

  private static int wrongCall(Console console, ParameterException e) {
    CommandLine line = e.getCommandLine();
    String name = line.getCommandSpec().qualifiedName();
    console.message(name + ": " + e.getMessage());
    if (e instanceof NoCommand) {
      console.message(line.getUsageMessage(Ansi.OFF));
    } else {
      console.message("See " + name + " --help.");
    }
    return ExitCode.WRONG_CALL;
  }

  private static int refused(Console console, CommandLine line, FileRefused e) {
    console.result(e.result());
    console.message(line.getCommandSpec().qualifiedName() + ": " + e.getMessage());
    return e.exitCode();
  }

  /** Whatever comes this far is ours: callers' mistakes and bad files are told before. */
  private static int fault(Console console, Throwable e) {
    console.dropResults();
    console.message("hoopwright: this is a fault of the program, please report it: " + words(e));
    return ExitCode.FAULT;
  }

  private static int tooMuch(Console console) {
    console.dropResults();
    console.message(
        "hoopwright: there is not enough memory for this call; name fewer files, or give Java more"
            + " with -Xmx.");
    return ExitCode.GAVE_UP;
  }

  private static String words(Throwable e) {
    String message = e.getMessage() == null ? "" : e.getMessage().lines().findFirst().orElse("");
    return e instanceof HoopwrightFault ? message : e.getClass().getSimpleName() + " " + message;
  }

  /** A call without any command. */
  static final class NoCommand extends ParameterException {
    private static final long serialVersionUID = 1L;

    NoCommand(CommandLine line) {
      super(line, "a command is missing; see what there is below.");
    }
  }
}
