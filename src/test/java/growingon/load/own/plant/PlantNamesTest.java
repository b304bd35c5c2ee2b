package growingon.load.own.plant;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of plants as lists have them. */
class PlantNamesTest {
  private static PlantMatch find(String name) {
    return PlantNames.shipped().find(name, "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "Acer palmatum 'Osakazuki'|Acer palmatum",
        "Fächerahorn \"Atropurpureum\"|Acer palmatum",
        "FAECHERAHORN|Acer palmatum",
        "Fächer-Ahorn Sämlinge|Acer palmatum",
        "Hornbeam whips|Carpinus betulus",
        "Hainbuche 1+1|Carpinus betulus",
        "Europäische Lärche 1+2|Larix decidua",
        "Pinus sylvestris \"Watereri\" on P. sylvestris|Pinus sylvestris",
        "C. bet.|Carpinus betulus",
        "F sylv|Fagus sylvatica",
        "QUERCUS ROB|Quercus robur",
        "Maple, field|Acer campestre",
        "Ginkgo|Ginkgo biloba",
      })
  void name_asListsHaveIt_isTheTaxon(String name, String taxon) {
    assertThat(find(name).taxon()).as(name).contains(taxon);
  }

  @Test
  void genusOfSeveral_alone_isAsked() {
    assertThat(find("Pinus").how()).isEqualTo(PlantMatch.How.OPEN);
    assertThat(find("Pine").how()).isEqualTo(PlantMatch.How.OPEN);
  }

  @Test
  void epithet_behindTheGenusOfItsGroup_isTheTaxon() {
    assertThat(PlantNames.shipped().find("palmatum 'Deshojo'", "acer").taxon())
        .contains("Acer palmatum");
    assertThat(PlantNames.shipped().find("parviflora (grafted)", "pinus").taxon())
        .contains("Pinus parviflora");
  }

  @Test
  void name_thatTheLibraryLacks_isUnknown() {
    assertThat(find("Eisenholzbaum").how()).isEqualTo(PlantMatch.How.UNKNOWN);
    assertThat(find("Acer rubrum").genus()).isEqualTo("acer");
  }
}
