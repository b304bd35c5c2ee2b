package growingon.load.own;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;

/** A lot while its row is being read. */
final class Draft {
  final String sheet;
  final int row;
  String code = "";
  String ownName = "";
  String genus = "";
  PlantMatch match = PlantMatch.unknown();
  OptionalInt quantity = OptionalInt.empty();
  boolean about;
  boolean arrivedAbout;
  boolean rowAsked;
  boolean quantityIsText;
  SizeParts size = new SizeParts();
  OptionalDouble trunkFrom = OptionalDouble.empty();
  OptionalDouble trunkTo = OptionalDouble.empty();
  OptionalDouble height = OptionalDouble.empty();
  String place = "";

  /** Whether the place is a bay, bench, bed or row alone. */
  boolean placeIsDetail;

  Optional<YearMonth> arrived = Optional.empty();
  Optional<YearMonth> potted = Optional.empty();
  OptionalDouble unitCost = OptionalDouble.empty();
  OptionalDouble sellingPrice = OptionalDouble.empty();
  OptionalInt kept = OptionalInt.empty();
  String form = "";
  String supplier = "";
  String passport = "";
  String origin = "";
  String calledAs = "";
  double perUnit = 1;
  String sizeText = "";
  OptionalInt least = OptionalInt.empty();
  OptionalInt multiple = OptionalInt.empty();
  final NavigableMap<Integer, Double> breaks = new TreeMap<>();
  int takenOff;
  final List<String> aboutTexts = new ArrayList<>();
  final List<String> notes = new ArrayList<>();
  final List<Question> questions = new ArrayList<>();

  Draft(String sheet, int row) {
    this.sheet = sheet;
    this.row = row;
  }

  void ask(String column, String found, String usual, String question, List<String> choices) {
    questions.add(new Question(sheet, row, "", column, found, usual, question, 0, false, choices));
  }

  void ask(String column, String found, String question) {
    ask(column, found, "", question, List.of());
  }

  void nod(String column, String found, String said) {
    questions.add(new Question(sheet, row, "", column, found, said, said, 0, true, List.of()));
  }

  void note(String text) {
    String bare = text.strip();
    if (!bare.isEmpty() && !notes.contains(bare)) {
      notes.add(bare);
    }
  }

  /** Something about: the cell as it stands. */
  void about(String text) {
    aboutTexts.add(text.strip());
  }

  /** Plants as the list counts them, before what was sold and lost is taken off. */
  int counted() {
    return quantity.orElse(0) + takenOff;
  }

  boolean isEmpty() {
    return ownName.isEmpty() && quantity.isEmpty();
  }

  /** Genus or kind of the library that stands in where the taxon is not known. */
  private String standIn() {
    if (match.isKnown()) {
      return "";
    }
    if (!match.genus().isEmpty()) {
      return match.genus();
    }
    List<String> genera =
        match.candidates().stream()
            .map(each -> PlantNames.genusOf(Keys.of(each)))
            .distinct()
            .toList();
    return genera.size() == 1 ? genera.get(0) : Evergreens.kindOf(match.candidates());
  }

  OwnLot lot() {
    return new OwnLot(
        sheet,
        row,
        code,
        ownName,
        calledAs.isEmpty() ? PlantText.called(ownName) : calledAs,
        match.taxon(),
        standIn(),
        quantity,
        about,
        trunkFrom,
        trunkTo,
        size.pot().map(PotSize::name).orElse(""),
        size.pot().map(pot -> OptionalDouble.of(pot.litres())).orElse(OptionalDouble.empty()),
        height,
        size.years(),
        form.isEmpty() ? size.form().orElse("") : form,
        size.isStandard(),
        place,
        arrived,
        arrivedAbout,
        potted,
        unitCost,
        sellingPrice,
        kept,
        supplier,
        passport,
        origin,
        String.join("; ", notes),
        new Terms(sizeText, least, multiple, breaks));
  }
}
