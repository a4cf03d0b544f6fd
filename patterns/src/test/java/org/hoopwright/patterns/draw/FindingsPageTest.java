package org.hoopwright.patterns.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Place;
import org.hoopwright.frame.Layout;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

class FindingsPageTest {

  private static final String EVIL = "</h2><script>alert(1)</script>";

  private static Picture read(String html) {
    return Picture.read(html.substring(html.indexOf("<body>"), html.indexOf("</html>")));
  }

  @Test
  void marksFindingsOfEachFileOnItsDrawing() {
    Finding finding =
        Finding.of(FindingCode.MAIN_HOLE_BLOCKED)
            .message(EVIL)
            .at("/holes/blocked", new Place(3, 14, 3, 20))
            .about("L4H")
            .build();
    Layout layout = Willowbank.hundred().build();
    String html =
        FindingsPage.html(
            List.of(
                new FindingsPage.Checked(EVIL, Optional.of(layout), List.of(finding)),
                new FindingsPage.Checked("b.json", Optional.of(layout), List.of()),
                new FindingsPage.Checked("c.json", Optional.empty(), List.of(finding))));
    assertThat(html).doesNotContain("<script");
    Picture page = read(html);
    assertThat(page.ids()).doesNotHaveDuplicates().contains("f1-hole-L4H", "f2-hole-L4H");
    assertThat(page.elements("svg")).hasSize(2);
    assertThat(page.elements("li").stream().map(e -> e.getTextContent()))
        .hasSize(2)
        .allSatisfy(t -> assertThat(t).startsWith("line 3, column 14: error: </h2>"));
    assertThat(
            page.elements("g").stream()
                .filter(g -> g.getAttribute("class").equals("finding error"))
                .filter(g -> g.getTextContent().contains("error at L4H")))
        .hasSize(1);
    assertThat(page.elements("p").stream().map(e -> e.getTextContent()))
        .containsExactly("Nothing was found.");
  }
}
