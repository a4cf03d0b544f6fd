package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SideTest {

  @Test
  void leftIsNegativeAndRightIsPositive() {
    assertThat(Side.LEFT.sign()).isEqualTo(-1);
    assertThat(Side.RIGHT.sign()).isEqualTo(1);
  }

  @Test
  void eachSideIsTheOtherOfTheOther() {
    assertThat(Side.LEFT.other()).isEqualTo(Side.RIGHT);
    assertThat(Side.RIGHT.other()).isEqualTo(Side.LEFT);
  }

  @Test
  void onlyTheTwoCapitalsNameASide() {
    for (char c = 0; c < Character.MAX_VALUE; c++) {
      if (c == 'L') {
        assertThat(Side.ofLetter(c)).contains(Side.LEFT);
      } else if (c == 'R') {
        assertThat(Side.ofLetter(c)).contains(Side.RIGHT);
      } else if (Side.ofLetter(c).isPresent()) {
        throw new AssertionError("character " + (int) c + " names a side");
      }
    }
    for (Side side : Side.values()) {
      assertThat(Side.ofLetter(side.letter())).contains(side);
    }
  }
}
