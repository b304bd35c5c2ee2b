package growingon.load.table.species;

import growingon.load.row.Row;
import growingon.load.source.Key;
import growingon.load.source.NumberOrByName;
import growingon.nursery.species.Curve;
import java.util.List;
import java.util.Map;

/**
 * The keys of species.json: species whose assumptions are too rich for the species table. The
 * components are looked at, never filled: values go through {@link Row}, like those of tables.
 */
public record SpeciesShape(
    @Key(value = "$schema", says = "JSON Schema of this file, for editors") String schema,
    @Key(value = SPECIES, says = "Species by name", needed = true) Map<String, Entry> species) {
  public static final String SPECIES = "species";

  /** One species. */
  public record Entry(
      @Key(value = SpeciesTable.LADDER, says = "Name of its grade ladder", needed = true)
          String ladder,
      @Key(
              value = SpeciesTable.KIND,
              says = "Whether it keeps its leaves in winter [deciduous]",
              words = {"deciduous", "evergreen"})
          String kind,
      @Key(
              value = SpeciesTable.LIBRARY,
              says =
                  "Whether the shipped library of species gives what is not stated here: yes by its own name, or another name of the library, or deciduous or evergreen [no]")
          String library,
      @Key(
              value = SpeciesTable.USUAL_CONDITION,
              says =
                  "Growing condition where neither pot nor place names one [needed; from the library training pot]")
          String usualCondition,
      @Key(
              value = GROWTH,
              says = "A growth curve for each growing condition [needed; from the library]")
          Map<String, Growth> growth,
      @Key(
              value = SpeciesTable.GROWTH_SURE,
              says =
                  "How sure the growth is, %: one number, or one for each growing condition [the setting assumptions sure %; of the library its own]",
              least = 1,
              most = 100)
          NumberOrByName growthSure,
      @Key(
              value = GROWTH_MONTHS,
              says =
                  "How a year's growth falls over the months: 12 shares or percentages, January first [by kind]",
              items = 12,
              least = 0)
          List<Double> growthMonths,
      @Key(
              value = LOSS_MONTHS,
              says =
                  "How a year's loss falls over the months: 12 shares or percentages, January first [by kind]",
              items = 12,
              least = 0)
          List<Double> lossMonths,
      @Key(value = SpeciesTable.VIGOUR_SPREAD, says = "Spread between plants, % [20]", least = 0)
          Double vigourSpread,
      @Key(value = SpeciesTable.YEAR_SPREAD, says = "Spread between years, % [10]", least = 0)
          Double yearSpread,
      @Key(
              value = SpeciesTable.LOT_SPREAD,
              says = "Spread between lots beyond that of years, % [the nursery's]",
              least = 0)
          Double lotSpread,
      @Key(
              value = SpeciesTable.FIRST_YEAR_LOSS,
              says = "Lost in the month of arrival and the 11 after, % [needed; from the library]",
              least = 0,
              most = 100)
          Double firstYearLoss,
      @Key(
              value = SpeciesTable.FIRST_YEAR_LOSS_SURE,
              says = "How sure that is, % [the setting assumptions sure %; of the library its own]",
              least = 1,
              most = 100)
          Double firstYearLossSure,
      @Key(
              value = SpeciesTable.LATER_LOSS,
              says = "Lost a year after that, % [needed; from the library]",
              least = 0,
              most = 100)
          Double laterLoss,
      @Key(
              value = SpeciesTable.LATER_LOSS_SURE,
              says = "How sure that is, % [the setting assumptions sure %; of the library its own]",
              least = 1,
              most = 100)
          Double laterLossSure,
      @Key(
              value = SpeciesTable.LOSS_SPREAD,
              says = "Spread of the loss between years, % [25]",
              least = 0)
          Double lossSpread,
      @Key(
              value = SpeciesTable.CHECK_1,
              says = "Growth factor in the month of root work and the 11 after [0.6]",
              least = 0,
              most = 2)
          Double check1,
      @Key(
              value = SpeciesTable.CHECK_2,
              says = "Growth factor in the 12 months after that [0.85]",
              least = 0,
              most = 2)
          Double check2,
      @Key(
              value = SpeciesTable.POT_BOUND_MONTHS,
              says = "Months at full growth after potting [36]",
              least = 0)
          Integer potBoundMonths,
      @Key(
              value = SpeciesTable.POT_BOUND_FACTOR,
              says = "Growth factor after that [0.6]",
              least = 0,
              most = 2)
          Double potBoundFactor,
      @Key(value = SpeciesTable.WINTER_PLACE, says = "Place of potted plants in winter [none]")
          String winterPlace,
      @Key(value = SpeciesTable.HEALTH_NOTE, says = "Plant health note [none]") String healthNote,
      @Key(
              value = LEARNT_UNTIL,
              says = "Last month of the records that fit learnt from; written by fit [never]")
          String learntUntil,
      @Key(
              value = PRIOR,
              says =
                  "What was assumed before anything was learnt, from which fit starts again: growth and a condition for the rate g, k or r, and what else differs; written by fit [nothing]")
          Map<String, Double> prior,
      @Key(
              value = PRIOR_SURE,
              says =
                  "How sure that was, %: growth and a condition, first-year loss % and later loss %; written by fit [as sure as it is now]")
          Map<String, Double> priorSure) {
    static final String LEARNT_UNTIL = "learnt until";
    public static final String PRIOR = "prior";
    public static final String PRIOR_SURE = "prior sure %";
    static final String GROWTH = "growth";
    static final String GROWTH_MONTHS = "growth months";
    static final String LOSS_MONTHS = "loss months";
  }

  /** A growth law of the trunk, d in mm, t in growth years. */
  record Growth(
      @Key(value = CURVE, says = "The law", needed = true) Curve.Law curve,
      @Key(value = "D", says = "Final trunk, mm", least = 0) Double finalMm,
      @Key(value = "g", says = "Growth, mm a year", least = 0) Double steadyMm,
      @Key(value = "most mm", says = "Trunk at which steady growth stops, mm [none]", least = 0)
          Double mostMm,
      @Key(value = "k", says = "k, a year", least = 0) Double k,
      @Key(value = "r", says = "r, a year", least = 0) Double r,
      @Key(value = "p", says = "p, without unit", least = 0) Double p,
      @Key(value = "q", says = "q, without unit", least = 0) Double q) {
    static final String CURVE = "curve";
  }
}
