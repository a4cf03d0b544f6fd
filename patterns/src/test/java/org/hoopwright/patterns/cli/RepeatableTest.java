package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same call gives the same bytes: as last committed, in every locale, in every thread. */
class RepeatableTest {

  private static final Path GOLDEN =
      Path.of("src", "test", "resources", "org", "hoopwright", "patterns", "golden");

  @ParameterizedTest
  @CsvSource({
    "willowbank-100-one-piece.json, willowbank-100 --pieces 1 --direction head-to-throat --format json",
    "willowbank-100-one-piece.txt, willowbank-100 --pieces 1 --direction head-to-throat",
    "willowbank-100-all.txt, willowbank-100 --all",
    "willowbank-teaching.json, willowbank-teaching --format json",
    "willowbank-teaching.txt, willowbank-teaching",
  })
  void writesWhatIsCommitted(String file, String words) throws IOException {
    String[] args = ("plan sample:" + words).split(" ");
    Call call = Call.of(args);
    assertThat(call.code()).as(call.err()).isZero();
    Path golden = GOLDEN.resolve(file);
    String committed = Files.exists(golden) ? Files.readString(golden, UTF_8) : "";
    if (!committed.equals(call.out()) && Boolean.getBoolean("hoopwright.rewrite")) {
      Files.createDirectories(GOLDEN);
      Files.writeString(golden, call.out(), UTF_8);
    }
    // A run that rewrites fails too, so that nobody commits a plan without a look at it.
    assertThat(call.out())
        .as("%s is stale; -Dhoopwright.rewrite=true writes it, then look at it", golden)
        .isEqualTo(committed);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "de-DE"})
  void noLocaleHasASay(String tag) {
    List<String[]> calls =
        List.of(
            new String[] {"plan", "sample:willowbank-teaching"},
            new String[] {"plan", "sample:willowbank-teaching", "--format", "json"},
            new String[] {"plan", "sample:willowbank-teaching", "--all"},
            new String[] {"plan", "sample:willowbank-teaching", "--direction", "INVALID"},
            new String[] {"plan", "--help"},
            new String[] {"draw", "sample:willowbank-teaching", "--step=5", "-o", "-"},
            new String[] {"sheet", "sample:willowbank-teaching", "-o", "-"},
            new String[] {"check", "sample:willowbank-squash", "--format", "json"});
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      List<Call> usual = calls.stream().map(Call::of).toList();
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(calls.stream().map(Call::of).toList()).isEqualTo(usual);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void callsSideBySideDoNotDisturbEachOther() throws Exception {
    Callable<Call> call = () -> Call.of("plan", "sample:willowbank-100", "--format", "json");
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      List<Future<Call>> calls = two.invokeAll(List.of(call, call));
      assertThat(calls.get(0).get()).isEqualTo(calls.get(1).get()).isEqualTo(call.call());
    } finally {
      two.shutdownNow();
    }
  }
}
