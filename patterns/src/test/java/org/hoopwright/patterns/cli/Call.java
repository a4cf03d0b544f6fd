package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;

/**
 * A call of the command line within the tests' process.
 *
 * @param code the exit code
 * @param out what went to standard output
 * @param err what went to standard error
 */
record Call(int code, String out, String err) {

  static Call of(String... args) {
    return withInput("", args);
  }

  static Call withInput(String input, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        CommandRunner.run(
            new Streams(new ByteArrayInputStream(input.getBytes(UTF_8)), out, err), args);
    return new Call(code, out.toString(UTF_8), err.toString(UTF_8));
  }
}
