package org.hoopwright.patterns.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Tells the release that the build has written into this package. */
final class Version implements IVersionProvider {
  private static final String FILE = "version.properties";

  @Override
  public String[] getVersion() throws IOException {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException(
            "This copy of hoopwright lacks its file " + FILE + "; build it anew.");
      }
      properties.load(in);
    }
    return new String[] {"hoopwright " + properties.getProperty("version")};
  }
}
