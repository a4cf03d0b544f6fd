package org.hoopwright.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Tables of gauges and materials, against what is printed. */
class StringTest {

  // source: article "Tennis String Gauge" and stringer page "How to select the best gauge", which
  // agree in every diameter.
  @ParameterizedTest
  @CsvSource({
    "13, 1.65, 1.80",
    "14, 1.50, 1.65",
    "15, 1.41, 1.49",
    "15L, 1.33, 1.41",
    "16, 1.26, 1.34",
    "16L, 1.22, 1.30",
    "17, 1.16, 1.24",
    "18, 1.06, 1.16",
    "19, 0.90, 1.06",
    "20, 0.80, 0.90",
    "21, 0.70, 0.80",
    "22, 0.60, 0.70"
  })
  void diametersAreThosePrinted(String word, double least, double most) {
    Gauge gauge = Gauge.ofWord(word).orElseThrow();
    assertThat(gauge.minMm()).isEqualTo(least);
    assertThat(gauge.maxMm()).isEqualTo(most);
    assertThat(Gauge.values()).hasSize(12);
  }

  // The ranges overlap, share ends and leave a hole: a diameter belongs to a set of gauges.
  @ParameterizedTest
  @CsvSource({
    "1.335, 15L 16",
    "1.28, 16 16L",
    "1.23, 16L 17",
    "1.65, 13 14",
    "1.41, 15 15L",
    "1.16, 17 18",
    "1.06, 18 19",
    "0.90, 19 20",
    "0.70, 21 22",
    "1.495, ''",
    "1.81, ''",
    "0.59, ''",
    "1.20, 17"
  })
  void aDiameterBelongsToASetOfGauges(double mm, String words) {
    List<String> wanted = words.isEmpty() ? List.of() : List.of(words.split(" "));
    assertThat(Gauge.ofDiameter(mm).stream().map(Gauge::word).toList()).isEqualTo(wanted);
  }

  // From the same two tables, worked out by hand: these neighbours overlap, these share an end, and
  // between 15 and 14 is a hole. Other pairs have nothing in common.
  @Test
  void rangesOverlapOnlyWhereTheTablesDo() {
    List<String> common = new ArrayList<>();
    List<Gauge> all = List.of(Gauge.values());
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        double low = Math.max(all.get(i).minMm(), all.get(j).minMm());
        double high = Math.min(all.get(i).maxMm(), all.get(j).maxMm());
        if (low <= high) {
          common.add(all.get(i).word() + "/" + all.get(j).word() + " " + low + "-" + high);
        }
      }
    }
    assertThat(common)
        .containsExactly(
            "13/14 1.65-1.65",
            "15/15L 1.41-1.41",
            "15L/16 1.33-1.34",
            "16/16L 1.26-1.3",
            "16L/17 1.22-1.24",
            "17/18 1.16-1.16",
            "18/19 1.06-1.06",
            "19/20 0.9-0.9",
            "20/21 0.8-0.8",
            "21/22 0.7-0.7");
    assertThat(Gauge.G14.minMm()).isGreaterThan(Gauge.G15.maxMm());
  }

  // source: racquetball column "String Gauge: The Basic Choice", which has no 16L; retail article
  // "String Theory, Part II": they differ from ours by less than a tenth of a millimetre.
  @ParameterizedTest
  @CsvSource({
    "15, 1.41, 1.49",
    "15L, 1.33, 1.41",
    "16, 1.26, 1.34",
    "16, 1.26, 1.33",
    "17, 1.16, 1.26",
    "18, 1.06, 1.16",
    "19, 1.00, 1.10"
  })
  void otherTablesDifferByLessThanATenth(String word, double least, double most) {
    Gauge gauge = Gauge.ofWord(word).orElseThrow();
    assertThat(Math.abs(gauge.minMm() - least)).isLessThanOrEqualTo(0.1 + 1e-9);
    assertThat(Math.abs(gauge.maxMm() - most)).isLessThanOrEqualTo(0.1 + 1e-9);
    assertThat(most).isGreaterThan(gauge.minMm());
    assertThat(least).isLessThan(gauge.maxMm());
  }

  // source: stringer blog "Difficulties of Hybriding Strings", 2014/11: stretch at 55 lbf.
  @ParameterizedTest
  @CsvSource({
    "NATURAL_GUT, 0.06, 0.07",
    "NYLON, 0.09, 0.10",
    "MULTIFILAMENT, 0.10, 0.12",
    "POLYESTER, 0.03, 0.04",
    "ARAMID, 0.01, 0.02"
  })
  void stretchIsThatPrinted(Material material, double least, double most) {
    assertThat(material.minStretch()).isEqualTo(least);
    assertThat(material.maxStretch()).isEqualTo(most);
  }

  @ParameterizedTest
  @EnumSource(Material.class)
  void wordsLeadBack(Material material) {
    assertThat(Material.ofWord(material.word())).contains(material);
    assertThat(Material.ofWord(material.word() + " ")).isEmpty();
  }

  @Test
  void gaugesAreCountedFromThickToThin() {
    List<Gauge> all = List.of(Gauge.values());
    for (int i = 0; i + 1 < all.size(); i++) {
      assertThat(all.get(i).maxMm()).isGreaterThan(all.get(i + 1).maxMm());
      assertThat(all.get(i).minMm()).isGreaterThan(all.get(i + 1).minMm());
    }
  }
}
