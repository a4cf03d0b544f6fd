package org.hoopwright.patterns.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.Samples;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.junit.jupiter.api.Test;

class BenchSheetTest {

  static final List<String> CAUTIONS =
      List.of(
          "The instructions of the frame's maker come first.", "String can whip: mind your eyes.");

  private static Picture body(String html) {
    int from = html.indexOf("<body>");
    int to = html.lastIndexOf("<script>");
    return Picture.read(
        html.substring(from, to).replaceAll("<input([^>]*)>", "<input$1/>").replace("//>", "/>")
            + "</body>");
  }

  @Test
  void saysEveryStepAndEveryCaution() {
    for (BenchPlan plan : SamplePlans.all()) {
      String html = BenchSheet.of(plan, CAUTIONS, plan.findings()).html();
      Picture page = body(html);
      assertThat(page.ids()).doesNotHaveDuplicates();
      for (int i = 0; i < plan.steps().size(); i++) {
        assertThat(page.byId("step-" + (i + 1)).getTextContent()).isNotBlank();
      }
      assertThat(page.byId("step-1").getTextContent().trim()).isEqualTo(plan.steps().get(0).say());
      assertThat(page.byId("drawing").getTagName()).isEqualTo("svg");
      for (String caution : CAUTIONS) {
        assertThat(page.elements("li").stream().map(e -> e.getTextContent())).contains(caution);
      }
    }
  }

  @Test
  void cautionsStandBeforeAnyStep() {
    String html = BenchSheet.of(SamplePlans.of("willowbank-100"), CAUTIONS, List.of()).html();
    assertThat(html.indexOf(CAUTIONS.get(0).substring(4, 30)))
        .isPositive()
        .isLessThan(html.indexOf("id=\"step-1\""));
  }

  @Test
  void theWorkListKeepsEveryPassInOrder() {
    for (BenchPlan plan : SamplePlans.all()) {
      List<SheetRow> rows = SheetRow.of(plan);
      int next = 1;
      for (SheetRow row : rows) {
        assertThat(row.first()).isEqualTo(next);
        next = row.last() + 1;
      }
      assertThat(next - 1).isEqualTo(plan.steps().size());
      assertThat(rows.size()).isLessThan(plan.steps().size() * 2 / 3);
      long pulls = plan.steps().stream().filter(s -> s instanceof Step.Pull).count();
      assertThat(rows.stream().filter(r -> r.text().contains("ull")).count())
          .isGreaterThanOrEqualTo(pulls);
    }
  }

  @Test
  void allowsNoScriptButItsOwn() throws Exception {
    String html = BenchSheet.of(SamplePlans.of("willowbank-97"), CAUTIONS, List.of()).html();
    Matcher script = Pattern.compile("<script>(.*?)</script>", Pattern.DOTALL).matcher(html);
    assertThat(script.find()).isTrue();
    String hash =
        Base64.getEncoder()
            .encodeToString(
                MessageDigest.getInstance("SHA-256")
                    .digest(script.group(1).getBytes(StandardCharsets.UTF_8)));
    assertThat(html).contains("default-src 'none'").contains("script-src 'sha256-" + hash + "'");
    assertThat(script.find()).as("a second script").isFalse();
    assertThat(html.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http:", "https:");
  }

  @Test
  void aNameInjectsNothing() {
    Layout layout = Samples.layout("willowbank-teaching");
    String evil = "</title></body><script>alert(1)</script><img src=x onerror=alert(1)> 12 mm";
    Layout renamed =
        Layout.builder(evil)
            .hoop(layout.hoop())
            .holes(4, 4)
            .tieOff("1H", "1T")
            .mains(4)
            .mainsSkip()
            .crosses(4)
            .build();
    Bed bed = StatedAssignment.assign(renamed).bed().orElseThrow();
    BenchPlan plan =
        RouteSearch.search(bed, RouteRequest.defaults()).ranked().stream()
            .flatMap(r -> Planner.plan(bed, r.route(), Job.standard()).stream())
            .findFirst()
            .orElseThrow();
    String html = BenchSheet.of(plan, List.of(evil), List.of()).html();
    assertThat(html).doesNotContain("<script>alert", "<img").containsOnlyOnce("<script>");
    assertThat(html).containsOnlyOnce("</body>");
  }

  @Test
  void theSamePlanGivesTheSameBytes() {
    BenchPlan plan = SamplePlans.of("willowbank-badminton");
    assertThat(BenchSheet.of(plan, CAUTIONS, List.of()).html())
        .isEqualTo(BenchSheet.of(plan, CAUTIONS, List.of()).html());
  }

  @Test
  void quantitiesInSentencesFollowTheReadersUnits() {
    BenchPlan plan = SamplePlans.of("willowbank-100"); // in mm and lbf
    String html =
        BenchSheet.of(
                plan,
                List.of("It bears 311 N, 70.5 lbf, at 28 mm; 99999999 lbf, v1.5 N and 3 Nm stay."),
                List.of())
            .html();
    assertThat(html)
        .contains(
            "It bears <span class=\"q\" data-newtons=\"311.0000\" data-decimals=\"0\">70 lbf</span>,",
            "data-decimals=\"1\">70.5 lbf</span>, at ",
            "data-mm=\"28\">28 mm</span>; 99999999 lbf, v1.5 N and 3 Nm stay.");
  }
}
