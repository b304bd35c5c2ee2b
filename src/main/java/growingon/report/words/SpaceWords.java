package growingon.report.words;

import growingon.money.Accounts;
import growingon.nursery.Nursery;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.figures.Context;
import growingon.report.figures.SpaceTrouble;
import growingon.report.text.Phrases;
import growingon.report.text.Spell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said about where it fits and where not. */
public final class SpaceWords {
  private static final int TOLD_WHOLE = 2;
  private static final int NAMED = 4;
  private static final int LINES = 3;

  private final Accounts accounts;
  private final Horizon horizon;
  private final Nursery nursery;
  private final List<SpaceTrouble> troubles;
  private final List<Overload> overloads;
  private final Phrases say;

  public SpaceWords(Context context) {
    this.say = context.say();
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.nursery = accounts.projection().scenario().nursery();
    this.troubles = SpaceTrouble.of(accounts);
    this.overloads = Overload.of(accounts);
  }

  /** Where it does not fit or is too heavy, when, by how much, and where there is room. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>(room());
    overloads.forEach(overload -> sentences.add(overload.told(horizon, say)));
    return sentences;
  }

  /** Where it does not fit or is too heavy, in a sentence each. */
  public List<String> headline() {
    List<String> sentences = new ArrayList<>();
    sentences.add(troubles.size() < 2 ? room().get(0) : tooSmall("Too small", troubles));
    if (!overloads.isEmpty()) {
      List<String> heavy = overloads.stream().map(each -> each.named(horizon, say)).toList();
      sentences.add("Too heavy: " + Phrases.list(heavy, NAMED, "places") + ".");
    }
    return sentences;
  }

  private String tooSmall(String opening, List<SpaceTrouble> some) {
    List<String> names = some.stream().map(this::named).toList();
    return opening + ": " + Phrases.list(names, NAMED, "places") + ".";
  }

  private List<String> room() {
    if (nursery.places().isEmpty()) {
      return List.of("The nursery has no places table, so nothing can be said about space.");
    }
    if (troubles.isEmpty()) {
      return List.of("Everything fits: " + fullest());
    }
    List<String> sentences = new ArrayList<>();
    troubles.stream().limit(TOLD_WHOLE).map(this::told).forEach(sentences::add);
    List<SpaceTrouble> rest = troubles.subList(sentences.size(), troubles.size());
    if (!rest.isEmpty()) {
      sentences.add(tooSmall("Also too small", rest));
    }
    return sentences;
  }

  private String fullest() {
    PlaceMonth fullest = null;
    double most = -1;
    for (Optional<String> place : accounts.space().places()) {
      for (PlaceMonth month : accounts.space().months(place)) {
        double share = month.capacityM2() > 0 ? month.neededM2() / month.capacityM2() : 0;
        if (share > most) {
          most = share;
          fullest = month;
        }
      }
    }
    return "the fullest place is %s in %s, with %s of its %s in use."
        .formatted(
            fullest.place().orElseThrow(),
            say.month(horizon, fullest.month()),
            say.percent(most),
            say.squareMetres(fullest.capacityM2()));
  }

  private String told(SpaceTrouble trouble) {
    Spell worst = trouble.worst();
    String month = say.month(horizon, worst.worst());
    if (trouble.place().isEmpty()) {
      return "Lots without a place need up to %s (%s): give each a place in the stock list."
          .formatted(say.squareMetres(worst.most()), month);
    }
    Place place = trouble.place().get();
    PlaceMonth then = accounts.space().months(place).get(worst.worst());
    return "%s is too small %s, %s (%s needed, %s there); %s."
        .formatted(
            Phrases.sentence(place.name()),
            say.when(trouble.spells(), horizon),
            say.most(trouble.spells(), horizon, say.squareMetres(worst.most())),
            say.squareMetres(then.neededM2()),
            say.squareMetres(then.capacityM2()),
            RoomElsewhere.of(place, worst.worst(), worst.most(), accounts).told(place.kind(), say));
  }

  private String named(SpaceTrouble trouble) {
    Spell worst = trouble.worst();
    String name = trouble.name().orElse("room for lots without a place");
    return "%s (by up to %s, %s)"
        .formatted(name, say.squareMetres(worst.most()), say.month(horizon, worst.worst()));
  }

  /** The lines for the terminal. */
  List<String> headlines() {
    List<String> lines = new ArrayList<>(roomLines());
    overloads.stream().limit(LINES).map(each -> each.headline(horizon, say)).forEach(lines::add);
    return lines;
  }

  private List<String> roomLines() {
    if (nursery.places().isEmpty()) {
      return List.of("Space: not known, the nursery has no places table.");
    }
    if (troubles.isEmpty()) {
      return List.of("Space: everything fits.");
    }
    List<String> lines = new ArrayList<>();
    troubles.stream().limit(LINES).map(this::headline).forEach(lines::add);
    if (troubles.size() > LINES) {
      int more = troubles.size() - LINES;
      lines.add("Does not fit: " + say.counted(more, "place more.", "places more."));
    }
    return lines;
  }

  private String headline(SpaceTrouble trouble) {
    String name = trouble.name().orElse("lots without a place");
    String amount = say.squareMetres(trouble.worst().most());
    return "Does not fit: %s %s, %s."
        .formatted(
            name, say.when(trouble.spells(), horizon), say.upTo(trouble.spells(), horizon, amount));
  }
}
