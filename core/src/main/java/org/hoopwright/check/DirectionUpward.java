package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Direction;

/** The maker asks for crosses from the throat up. */
final class DirectionUpward extends Rule {

  DirectionUpward() {
    super(FindingCode.DIRECTION_UPWARD, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/crosses/direction");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.layout().direction().filter(d -> d == Direction.THROAT_TO_HEAD).isPresent()) {
      out.accept(
          finding()
              .message(
                  "The maker asks for crosses from the throat up, which strains the shoulders of most hoops.")
              .at("/crosses/direction", facts.layout().places())
              .fix("Nothing needs doing if the maker's leaflet says so.")
              .source("Student tutorial \"Around the World (ATW)\"")
              .build());
    }
  }
}
