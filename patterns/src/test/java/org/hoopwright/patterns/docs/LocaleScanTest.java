package org.hoopwright.patterns.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No text that the library makes depends on the default locale, in its digits or its letters. */
class LocaleScanTest {

  // "text".formatted(…) takes the default locale, whose digits may not be 0 to 9; %s does not.
  private static final Pattern NUMBER_IN_FORMATTED =
      Pattern.compile("%[-#+ 0,(]*[0-9]*(\\.[0-9]+)?[dfeEgGxXoaA][^;]*?\\.formatted\\(");

  private static final Pattern FORMAT_WITHOUT_LOCALE =
      Pattern.compile("(String\\.format|\\.printf)\\(\\s*(?!(java\\.util\\.)?Locale\\.ROOT)\\S");

  private static final Pattern CASE_WITHOUT_LOCALE =
      Pattern.compile("\\.to(Upper|Lower)Case\\(\\s*\\)");

  private static final Pattern LOCAL_CLASSES =
      Pattern.compile("\\b(NumberFormat|DecimalFormat|MessageFormat|Collator|DateFormat)\\b");

  static List<String> faults(String text) {
    List<String> faults = new ArrayList<>();
    String source = text.replace("%%", "");
    for (Pattern p :
        List.of(NUMBER_IN_FORMATTED, FORMAT_WITHOUT_LOCALE, CASE_WITHOUT_LOCALE, LOCAL_CLASSES)) {
      Matcher m = p.matcher(source);
      while (m.find()) {
        faults.add(m.group().lines().findFirst().orElse(""));
      }
    }
    return faults;
  }

  @ParameterizedTest
  @ValueSource(strings = {"core", "patterns"})
  void sourcesNameTheirLocale(String module) throws IOException {
    List<String> all = new ArrayList<>();
    int files = 0;
    try (Stream<Path> sources =
        Files.walk(Repository.root().resolve(module).resolve("src/main/java"))) {
      for (Path file : sources.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        files++;
        faults(Repository.text(file)).forEach(f -> all.add(file.getFileName() + ": " + f));
      }
    }
    assertThat(files).isGreaterThan(30);
    assertThat(all)
        .as("Write numbers with %%s in formatted(), or say String.format(Locale.ROOT, …)")
        .isEmpty();
  }

  @Test
  void theScanSeesWhatItIsFor() {
    assertThat(faults("\"Main %d\".formatted(k)")).hasSize(1);
    assertThat(faults("(a ? \"%.1f mm\"\n : \"no\")\n .formatted(k)")).hasSize(1);
    assertThat(faults("String.format(\n \"%s\", k)")).hasSize(1);
    assertThat(faults("word.toUpperCase()")).hasSize(1);
    assertThat(faults("new DecimalFormat(\"0.0\")")).hasSize(1);
    assertThat(
            faults(
                "String.format(\n Locale.ROOT, \"%d\", k); \"100 %% of %s\".formatted(k);"
                    + " w.toLowerCase(Locale.ROOT)"))
        .isEmpty();
  }
}
