package org.hoopwright.patterns.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hoopwright.Hoopwright;
import org.hoopwright.Plan;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.frame.Layout;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a real browser makes of sheets and drawings. */
class BrowserTest {

  private static final String MISSING =
      "SKIPPED: no Chromium on the PATH, so sheets and drawings were not tried in a browser.";

  @TempDir Path folder;
  private Chromium browser;

  @BeforeEach
  void findBrowser() {
    browser =
        Chromium.find(folder)
            .orElseGet(
                () -> {
                  System.err.println(MISSING);
                  return Assumptions.abort(MISSING);
                });
  }

  @Test
  void theSheetStepsTicksAndSwitchesUnits() throws Exception {
    BenchPlan plan = SamplePlans.of("willowbank-100");
    String html = BenchSheet.of(plan, BenchSheetTest.CAUTIONS, List.of()).html();
    String result = drive(html, resource("sheet-driver.js"));
    int last = plan.steps().size();
    assertThat(result)
        .contains("start=Overview of " + last + " steps")
        .contains("right right=Step 2 of " + last)
        .contains("left=Step 1 of " + last)
        .contains("end=Step " + last + " of " + last)
        .contains("past the end=Step " + last + " of " + last)
        .contains("home=Overview of " + last + " steps")
        .contains("L1 at 3=span main end-short laced now")
        .contains("X1 at 3=span cross end-finish open")
        .contains("ticked=true then Step 2 of " + last)
        .contains("lbf=55.0 lbf")
        .contains("N=244.7 N")
        .contains("kgf=24.9 kgf")
        .contains("mm=6000 mm")
        .contains("in=236 in");
  }

  @Test
  void theSheetIsAccessible() throws Exception {
    BenchPlan plan = SamplePlans.of("willowbank-teaching");
    assertAccessible(BenchSheet.of(plan, BenchSheetTest.CAUTIONS, List.of()).html());
  }

  @Test
  void thePageOfFindingsIsAccessible() throws Exception {
    Layout layout = Willowbank.hundred().blocked("L7H", "R4T").build();
    assertAccessible(
        FindingsPage.html(
            List.of(
                new FindingsPage.Checked(
                    "a.json", Optional.of(layout), StatedAssignment.assign(layout).findings()),
                new FindingsPage.Checked("b.json", Optional.empty(), List.of()))));
  }

  private void assertAccessible(String html) throws Exception {
    String axe;
    try (InputStream in = ClassLoader.getSystemResourceAsStream("axe.min.js")) {
      axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    String result =
        drive(
            html,
            axe,
            """
            axe.run(document).then((r) => {
              done("rules passed=" + r.passes.length + "\\nviolations=" + r.violations
                .map((v) => v.id + " " + v.nodes.map((n) => n.target).join(" ")).join("; "));
            });
            """);
    assertThat(result).containsPattern("rules passed=[1-9][0-9]").endsWith("violations=");
  }

  /** What a browser makes of a name is no element, and runs nothing: a script would change it. */
  @Test
  void aNameInjectsNothing() throws Exception {
    String evil =
        "</script></title></style></svg><img src=x onerror=\"document.title='HIT'\">"
            + "<script>document.title='HIT'</script>";
    Layout layout =
        Layout.builder(evil)
            .hoop(Willowbank.teaching().build().hoop())
            .holes(4, 4)
            .tieOff("1H", "1T")
            .mains(4)
            .mainsSkip()
            .crosses(4)
            .build();
    Plan plan = Hoopwright.plan(layout, Job.standard()).plan().orElseThrow();
    for (String page :
        List.of(
            BenchSheet.of(plan).html(),
            FindingsPage.html(
                List.of(new FindingsPage.Checked(evil, Optional.of(layout), plan.findings()))),
            "<!DOCTYPE html><html><head><title>t</title></head><body>"
                + Drawing.route(plan.bench().bed(), plan.bench().route()).inline()
                + "</body></html>")) {
      String shown = browser.page(page).out();
      assertThat(shown).contains("onerror=", "</body>").doesNotContain("<img", ">HIT");
      assertThat(shown.split("<script", -1).length).isEqualTo(page.split("<script", -1).length);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"willowbank-badminton", "willowbank-98-uneven"})
  void theSheetPrintsOnTwoPages(String sample) throws Exception {
    BenchPlan plan = SamplePlans.of(sample);
    String html = BenchSheet.of(plan, USUAL, plan.findings()).html();
    assertThat(browser.printedPages(html)).isEqualTo(2);
  }

  /** As long as the cautions of a plan. */
  private static final List<String> USUAL =
      java.util.Collections.nCopies(
          8,
          "String under tension can whip and hurt: wear eye protection, keep your face out of its"
              + " line and your fingers clear of gripper and clamps.");

  @Test
  void noTextOverlapsAnotherOrLeavesThePage() throws Exception {
    StringBuilder page =
        new StringBuilder("<!DOCTYPE html><html><head><title>t</title></head><body>");
    int n = 0;
    for (BenchPlan plan : SamplePlans.all()) {
      DrawingOptions options = DrawingOptions.builder().idPrefix("p" + n++ + "-").build();
      page.append(Drawing.route(plan.bed(), plan.route(), options).inline());
      options = DrawingOptions.builder().idPrefix("p" + n++ + "-").build();
      page.append(Drawing.bed(plan.bed(), options).inline());
      options = DrawingOptions.builder().idPrefix("p" + n++ + "-").build();
      page.append(Drawing.plan(plan, plan.steps().size() / 2, options).inline());
    }
    page.append("</body></html>");
    String result = drive(page.toString(), resource("overlap-driver.js"));
    assertThat(result).containsPattern("texts=[1-9][0-9]{3}").endsWith("faults=");
  }

  /** Adds scripts to a page, lets it run, and returns what they say; the log must stay empty. */
  private String drive(String html, String... scripts) throws Exception {
    StringBuilder added = new StringBuilder("<pre id=\"result\"></pre>");
    StringBuilder hashes = new StringBuilder();
    String done = "const done = (t) => { document.getElementById('result').textContent = t; };";
    for (String script : List.of(done, String.join("\n;", scripts))) {
      added.append("<script>").append(script).append("</script>");
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
      hashes.append(" 'sha256-").append(Base64.getEncoder().encodeToString(hash)).append('\'');
    }
    int end = html.lastIndexOf("</body>");
    String page =
        (html.substring(0, end) + added + html.substring(end))
            .replace("script-src ", "script-src" + hashes + " ");
    if (!page.contains("script-src")) {
      page = page.replace("default-src 'none';", "default-src 'none'; script-src" + hashes + ";");
    }
    Chromium.Result result = browser.page(page);
    assertThat(result.log()).doesNotContain("CONSOLE");
    Matcher m =
        Pattern.compile("<pre id=\"result\"[^>]*>(.*?)</pre>", Pattern.DOTALL)
            .matcher(result.out());
    assertThat(m.find()).as("the page came back").isTrue();
    return m.group(1);
  }

  private static String resource(String name) throws Exception {
    try (InputStream in = BrowserTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
