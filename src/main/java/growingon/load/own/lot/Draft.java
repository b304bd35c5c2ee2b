package growingon.load.own.lot;

import growingon.load.own.plant.PlantMatch;
import growingon.load.own.plant.PlantNames;
import growingon.load.own.plant.PlantText;
import growingon.load.own.size.PotSize;
import growingon.load.own.size.SizeParts;
import growingon.load.own.text.Keys;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Predicate;

/** A lot while its row is being read. */
public final class Draft {
  final String sheet;
  public final int row;
  public String code = "";
  public String ownName = "";
  public String genus = "";
  public PlantMatch match = PlantMatch.unknown();
  public OptionalInt quantity = OptionalInt.empty();
  public boolean about;
  public boolean arrivedAbout;
  public boolean rowAsked;
  public boolean quantityIsText;
  public SizeParts size = new SizeParts();
  public OptionalDouble trunkFrom = OptionalDouble.empty();
  public OptionalDouble trunkTo = OptionalDouble.empty();
  public OptionalDouble height = OptionalDouble.empty();
  public String place = "";

  /** Whether the place is a bay, bench, bed or row alone. */
  public boolean placeIsDetail;

  public Optional<YearMonth> arrived = Optional.empty();
  public Optional<YearMonth> potted = Optional.empty();
  public OptionalDouble unitCost = OptionalDouble.empty();
  public OptionalDouble sellingPrice = OptionalDouble.empty();
  public OptionalInt kept = OptionalInt.empty();
  public String form = "";
  public String supplier = "";
  public String passport = "";
  public String origin = "";
  public String calledAs = "";
  public double perUnit = 1;

  /** The column of its number, where that is one of several sizes. */
  public OptionalInt sizeColumn = OptionalInt.empty();

  /** The number that stands before its name in one cell. */
  public OptionalInt namedNumber = OptionalInt.empty();

  /** What a title above says is counted or priced, as price per 100; empty if none does. */
  public String terms = "";

  public String sizeText = "";
  public OptionalInt least = OptionalInt.empty();
  public OptionalInt multiple = OptionalInt.empty();
  public final NavigableMap<Integer, Double> breaks = new TreeMap<>();
  public int takenOff;

  /** By heading of the stock table, as its cells are written. */
  public final Map<String, String> stated = new TreeMap<>();

  public final List<String> aboutTexts = new ArrayList<>();
  public final List<String> notes = new ArrayList<>();
  public final List<Question> questions = new ArrayList<>();

  public Draft(String sheet, int row) {
    this.sheet = sheet;
    this.row = row;
  }

  public void ask(
      String column, String found, String usual, String question, List<String> choices) {
    questions.add(new Question(sheet, row, "", column, found, usual, question, 0, false, choices));
  }

  public void ask(String column, String found, String question) {
    ask(column, found, "", question, List.of());
  }

  public void nod(String column, String found, String said) {
    questions.add(new Question(sheet, row, "", column, found, said, said, 0, true, List.of()));
  }

  public void note(String text) {
    String bare = text.strip();
    if (!bare.isEmpty() && !notes.contains(bare)) {
      notes.add(bare);
    }
  }

  /** A remark that names a place is it where nothing else says where the plants stand. */
  public void placeFromNotes(Predicate<String> isPlace) {
    if (place.isEmpty()) {
      notes.stream()
          .filter(isPlace)
          .findFirst()
          .ifPresent(
              note -> {
                place = note;
                nod("place", note, note + " is where they stand");
              });
    }
  }

  /** Something about: the cell as it stands. */
  public void about(String text) {
    aboutTexts.add(text.strip());
  }

  /** When a title says that all were counted; of a lot that says so itself, or came later, not. */
  public void countedIn(YearMonth month) {
    if (arrived.filter(month::isBefore).isEmpty()) {
      stated.putIfAbsent(Stated.COUNTED, month.toString());
    }
  }

  /** Plants as the list counts them, before what was sold and lost is taken off. */
  public int counted() {
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

  public OwnLot lot() {
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
        new Terms(sizeText, least, multiple, breaks),
        new Stated(stated));
  }
}
