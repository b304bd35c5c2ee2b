package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import growingon.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One fault in one file of an otherwise tidy nursery, and every word that the user reads of it. */
class LoaderFaultsTest {
  @TempDir private Path folder;

  private static Arguments fault(String name, String... sentences) {
    return arguments(name, List.of(sentences));
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        fault(
            "arrival-below-a-dated-step",
            "error: routes.csv, row 4, column when: nothing can be done on arrival after the step wire; move the row up, or date it"),
        fault(
            "arrived-is-a-bare-year",
            "error: stock.csv, row 2, column arrived: this is no month of a year (2025); write it as 2027-03 or Mar 2027"),
        fault(
            "arrived-is-an-ambiguous-date",
            "error: stock.csv, row 2, column arrived: this date may be day or month first (03/04/2025); write 2025-04-03 or 2025-03-04"),
        fault(
            "arrived-is-no-month",
            "error: stock.csv, row 2, column arrived: this is no month of a year (last spring); write it as 2027-03 or Mar 2027"),
        fault(
            "arrives-out-of-season",
            "warning: stock.csv, row 3, column arrived: plants of the form bare root arrive in July, outside the dormant season November to March (2025-07); see that the month is right"),
        fault(
            "ball-lifted-without-a-pot",
            "warning: routes.csv, row 6, column lifted ball litres: a ball is lifted but not potted, and has no effect (4); name the pot"),
        fault(
            "base-wider-than-top",
            "warning: pots.csv, row 3, column base mm: the base of this pot is wider than its top (300); see that they are not swapped"),
        fault(
            "care-of-an-unknown-kind",
            "error: care.csv, row 3, column place kind: this must be one of bench, tunnel, standing ground, field bed and quarantine (bensh); perhaps bench is meant"),
        fault(
            "care-with-half-a-span",
            "error: care.csv, row 3, column to month: from month and to month go together; fill in both, or neither for the whole year"),
        fault(
            "cash-outside-the-plan",
            "warning: other cash.csv, row 4, column month: this month lies outside the plan, its cash does not count (2037-05)"),
        fault(
            "class-falls",
            "error: stock.csv, row 3, column trunk to mm: the class ends below its beginning of 30 (20); swap them"),
        fault(
            "class-with-a-spread",
            "error: stock.csv, row 3, column trunk spread %: a size class has no spread (20); leave trunk spread % empty"),
        fault(
            "class-without-its-end",
            "error: stock.csv, row 3, column trunk to mm: this value is missing; fill it in"),
        fault(
            "column-without-heading",
            "warning: stock.csv, row 2, column AK: this column has no heading and is not read (strong lot); give it a heading if it is to count"),
        fault(
            "component-comes-twice",
            "error: mixes.csv, row 3, column component: the mix has this component already (fine bark); add up its parts"),
        fault(
            "component-is-unknown",
            "error: mixes.csv, row 3, column component: unknown component (gritt); the nearest known one is grit"),
        fault(
            "counted-after-the-first-month",
            "error: stock.csv, row 2, column counted: this lies after the first month of the plan, 2026-11 (2027-01); correct it, or begin the plan later"),
        fault(
            "counted-before-arrival",
            "error: stock.csv, row 2, column counted: the lot is counted before it arrives in 2025-03 (2025-02); correct one of them"),
        fault(
            "csv-is-empty",
            "error: stock.csv: this file is empty; fill it or take it out of the folder"),
        fault(
            "csv-name-is-mistyped",
            "warning: car.csv: this is no table of a nursery and is not read (car); if it is the table care, name it so"),
        fault(
            "csv-not-utf-8",
            "error: stock.csv: this text file is not UTF-8; save it as \"CSV UTF-8\", or keep the table in an .xlsx workbook"),
        fault(
            "csv-of-another-kind",
            "notice: customers.csv: this is no table of a nursery and is not read (customers)"),
        fault(
            "csv-quote-does-not-close",
            "error: stock.csv: this is no proper CSV: a quotation mark does not close or closes too early (row 2); write a quotation mark within quoted text twice"),
        fault(
            "currency-is-none",
            "error: offers.csv, row 4, column currency: this is no currency (francs); write its code of three letters, such as EUR"),
        fault(
            "currency-of-the-plan-is-none",
            "error: nursery.json, line 3, key currency: this is no currency (euros); write its code of three letters, such as EUR",
            "notice: nursery.json, line 4, key CHF: 1 CHF counts as 1.05 plan currency"),
        fault(
            "currency-without-rate",
            "error: offers.csv, row 4, column currency: there is no exchange rate for this currency (USD); add a setting exchange rate USD, or USD under exchange rates in nursery.json"),
        fault(
            "curve-is-mistyped",
            "error: species.json, line 9, key curve: this must be one of steady, levelling, logistic, gompertz, richards and theta-logistic (logistik); perhaps logistic is meant"),
        fault(
            "curve-lacks-a-parameter",
            "error: species.json, line 9, key r: this value is missing; fill it in"),
        fault(
            "curve-with-a-foreign-parameter",
            "error: species.json, line 9, key k: a logistic curve has no such parameter (k); it has D and r"),
        fault(
            "daybook-before-the-lot",
            "error: daybook.csv, row 3, column date: the lot Yews is not there before 2024-11 (2024-10-31); correct the date, or the arrival of the lot"),
        fault(
            "daybook-before-the-split",
            "error: daybook.csv, row 3, column date: the lot Yews for hedges is not there before 2026-03-02 (2026-03-01); correct the date, or the arrival of the lot"),
        fault(
            "daybook-count-of-nothing",
            "error: daybook.csv, row 2, column quantity: this value is missing; fill it in"),
        fault(
            "daybook-date-has-not-come",
            "error: daybook.csv, row 2, column date: this day has not come yet, today is 2027-04-30 (2027-05-01); correct the date"),
        fault(
            "daybook-date-is-a-month",
            "error: daybook.csv, row 2, column date: this is no date with its day (2026-03); write it as 2027-03-15"),
        fault(
            "daybook-date-is-missing",
            "error: daybook.csv, row 2, column date: this value is missing; fill it in"),
        fault(
            "daybook-grade-of-no-ladder",
            "error: daybook.csv, row 3, column grade: unknown grade of the ladder small trees (bensh); the nearest known one is bench"),
        fault(
            "daybook-joins-passports",
            "error: daybook.csv, row 2, column to lot: a lot has one passport, but 12 has UP-77 by stock.csv, row 2 and spring liners has UP-78 by offers.csv, row 2 (spring liners); keep them as separate lots"),
        fault(
            "daybook-joins-passports-of-a-split",
            "error: daybook.csv, row 2, column to lot: a lot has one passport, but spring liners has UP-78 by offers.csv, row 2 and mixed rowans has UP-77 by daybook.csv, row 3 (mixed rowans); keep them as separate lots"),
        fault(
            "daybook-joins-species",
            "error: daybook.csv, row 2, column to lot: a lot is of one species, but Yews is Yew and Old rowans is Rowan (Old rowans); keep them as separate lots"),
        fault(
            "daybook-joins-species-of-a-split",
            "error: daybook.csv, row 3, column to lot: a lot is of one species, but Old rowans is Rowan and for hedges is Yew (for hedges); keep them as separate lots"),
        fault(
            "daybook-lot-is-unknown",
            "error: daybook.csv, row 2, column lot: unknown lot (Yewz); the nearest known one is Yews"),
        fault(
            "daybook-moves-into-itself",
            "error: daybook.csv, row 2, column to lot: these plants would go to the lot they come from (Yews); name the other lot"),
        fault(
            "daybook-moves-nowhere",
            "error: daybook.csv, row 2, column to lot: it is not said which lot the plants are moved to; fill in to lot, or leave quantity empty if the whole lot went to another place"),
        fault(
            "daybook-moves-to-an-unknown-lot",
            "error: daybook.csv, row 2, column to lot: unknown lot (Old rowens); the nearest known one is Old rowans"),
        fault(
            "daybook-quality-is-mistyped",
            "error: daybook.csv, row 2, column quality: this must be one of first, second and third (secund); perhaps second is meant"),
        fault(
            "daybook-quantity-is-negative",
            "error: daybook.csv, row 2, column quantity: this must be between 0 and 10000000 (-4); correct it"),
        fault(
            "daybook-sells-to-a-lot",
            "error: daybook.csv, row 2, column to lot: plants go to another lot only where they are split or moved, not sold (Old rowans); leave to lot empty, or write split or moved"),
        fault(
            "daybook-spends-nothing",
            "error: daybook.csv, row 2, column amount: it is not said what was spent; fill in amount or hours"),
        fault(
            "daybook-splits-to-a-name-nearly-known",
            "warning: daybook.csv, row 2, column to lot: this split makes a new lot whose name is nearly that of the lot Old rowans (Old rowens); if Old rowans is meant, write it so"),
        fault(
            "daybook-splits-to-nothing",
            "error: daybook.csv, row 2, column to lot: it is not said which lot the plants split off go to; fill in to lot, with a new name if it is a new lot"),
        fault(
            "daybook-total-under-the-list",
            "error: daybook.csv, row 3: this row lacks date, lot and what (2); complete it, or move totals and remarks out of the table"),
        fault(
            "daybook-what-is-unknown",
            "error: daybook.csv, row 2, column what: this must be one of arrived, counted, sold, died, culled, split, moved, potted, used, returned, found, lost, spent and released (solt); perhaps sold is meant"),
        fault(
            "daybook-without-what",
            "error: daybook.csv, row 2, column what: this value is missing; fill it in"),
        fault(
            "demand-without-rows",
            "warning: there is no demand, so nothing is sold; add a table demand with prices"),
        fault(
            "firsts-and-seconds-over-all",
            "error: stock.csv, row 2, column second %: firsts and seconds are more than all (110 %); thirds are what is left of 100"),
        fault(
            "form-is-mistyped",
            "error: stock.csv, row 2, column form: this must be one of bare root, root ball, container, cutting and seedling (sedling); perhaps seedling is meant"),
        fault(
            "grade-comes-twice",
            "error: grades.csv, row 5, column grade: this is given already (Bench); keep one of them, or rename it"),
        fault(
            "grade-is-unknown",
            "error: demand.csv, row 3, column grade: unknown grade of the ladder small trees (bensh); the nearest known one is bench"),
        fault(
            "growth-months-do-not-sum",
            "error: species.json, line 12, key growth months: the twelve shares must sum to 1 or 100, but sum to 109; correct them"),
        fault(
            "heading-comes-twice",
            "error: stock.csv, row 1: the heading place comes twice; keep one of the columns",
            "warning: stock.csv, row 2, column AK: this column has no heading and is not read (strong lot); give it a heading if it is to count"),
        fault(
            "heading-is-mistyped",
            "error: stock.csv, row 1: the heading quantity is missing (quantaty); rename quantaty if it is meant",
            "warning: stock.csv, row 1: this heading is not known, its column is not read (quantaty); the nearest known one is quantity"),
        fault(
            "heading-is-unknown",
            "warning: stock.csv, row 1: this heading is not known, its column is not read (colour)"),
        fault(
            "hold-grade-is-unknown",
            "error: stock.csv, row 4, column hold to grade: unknown grade of the ladder small trees (speciman); the nearest known one is specimen"),
        fault(
            "hold-share-without-grade",
            "error: stock.csv, row 2, column hold share %: a hold share needs a grade (40); fill in hold to grade"),
        fault(
            "hours-lack-a-month",
            "error: hours.csv: hours are missing for July; give all twelve months"),
        fault(
            "hours-month-twice",
            "error: hours.csv, row 8, column month: this is given already (June); keep one of them, or rename it"),
        fault(
            "hours-twice",
            "error: nursery.json, line 5, key hours a week: hours are given twice, here and in hours.csv; keep one of them"),
        fault(
            "json-comma-is-missing",
            "error: nursery.json, line 4: this is no proper JSON (Unexpected character ('\"' (code 34)): was expecting comma to separate Object entries); see to quotation marks, commas and brackets on this line and the one before"),
        fault(
            "json-goes-on",
            "error: plan.json, line 8: there is more behind the closing brace; remove it"),
        fault(
            "json-is-a-list",
            "error: plan.json: a JSON file must hold an object in braces { }; begin it with { and end it with }"),
        fault(
            "json-key-comes-twice",
            "error: nursery.json, line 10: this key comes twice, first on line 9 (opening cash); keep one of them"),
        fault(
            "json-key-is-mistyped",
            "error: nursery.json, line 9: this key is not known (openning cash); the nearest known one is opening cash"),
        fault(
            "json-list-for-a-value",
            "error: nursery.json, line 5, key hourly rate: this must be a single value ([21]); correct it"),
        fault(
            "json-needed-key-missing",
            "error: nursery.json, line 1: the settings lack currency; add to nursery.json or to a table settings what is missing",
            "notice: nursery.json, line 4, key CHF: 1 CHF counts as 1.05 plan currency"),
        fault(
            "json-of-another-kind",
            "warning: nurserie.json: this file is not read; if it is meant to be nursery.json, name it so"),
        fault(
            "json-value-for-a-list",
            "error: nursery.json, line 8, key month pattern of sales: this must be a list in brackets [ ] (7); correct it"),
        fault(
            "kept-is-over-quantity",
            "error: stock.csv, row 2, column kept: more plants are kept than the 240 there are (500); correct one of them"),
        fault(
            "ladder-is-unknown",
            "error: species.csv, row 2, column ladder: unknown ladder (smal trees); the nearest known one is small trees"),
        fault(
            "last-step-is-unknown",
            "error: stock.csv, row 2, column last step: unknown step of the route pot and wire (pott up); the nearest known one is pot up"),
        fault(
            "last-step-recurs",
            "error: stock.csv, row 2, column last step: a step that recurs cannot be the last step done (repot); name the last once-only step"),
        fault(
            "least-trunk-falls",
            "error: grades.csv, row 4, column least trunk mm: the least trunk is less than the 25 mm of the lower grade bench (20); correct trunks or ranks"),
        fault(
            "lifted-out-of-season",
            "warning: routes.csv, row 7, column when: this step lifts plants from the ground in July, outside the dormant season November to March (July once trunk 40); lift them in that season"),
        fault(
            "litres-against-measures",
            "warning: pots.csv, row 3, column litres: the measures give 7.52 litres to the brim, but 15.00 litres are stated and used (15); a label is not a volume: leave litres empty to use the measures"),
        fault(
            "lot-comes-to-a-condition-without-growth",
            "error: stock.csv, row 3, column species: the lot Yews comes to grow in the condition field, for which Yew has no growth; it has growth for training pot (Yew); add that growth, or another condition of pot or place"),
        fault(
            "lot-comes-twice",
            "error: stock.csv, row 4, column lot: this is given already, as Yews (YEWS); keep one of them, or rename it"),
        fault(
            "material-in-another-unit",
            "error: routes.csv, row 3, column materials: wire is counted in m (24 cm wire); write the amount in that unit"),
        fault(
            "material-is-unknown",
            "error: routes.csv, row 3, column materials: unknown material (wyre); the nearest known one is wire"),
        fault(
            "material-twice",
            "error: routes.csv, row 3, column materials: the step names this material twice (wire); add up the amounts"),
        fault(
            "material-without-amount",
            "error: routes.csv, row 3, column materials: this is no amount of a material (some wire); write it as 2.4 m wire; 5 ml dressing"),
        fault(
            "mix-is-unknown",
            "error: routes.csv, row 2, column mix: unknown mix (lite mix); see the table mixes"),
        fault(
            "mix-says-otherwise",
            "error: mixes.csv, row 3, column firming %: a row above says otherwise (9); say it once, or the same on every row"),
        fault(
            "mix-without-a-pot",
            "error: routes.csv, row 3, column mix: a mix needs a pot in the same step (light mix); name the pot, also if it is the same size again"),
        fault(
            "mix-without-parts",
            "error: mixes.csv, row 3, column parts: this must be more than 0 (0); correct it"),
        fault(
            "most-below-least",
            "error: offers.csv, row 2, column most: the most is below the least of 50 (40); correct one of them"),
        fault(
            "name-is-too-long",
            "error: stock.csv, row 2, column lot: a name has at most 100 letters (xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx...); shorten it; longer texts belong under note"),
        fault(
            "no-headings",
            "error: stock.csv: no row looks like the headings of the table stock; it needs lot, species, form, quantity, arrived and route"),
        fault(
            "no-pot-and-no-plants-per-m2",
            "error: stock.csv, row 3, column plants per m2: the lot Yews stands without a pot and has no plants per m2; fill it in, on the lot or on the step"),
        fault(
            "no-sales-in-these-months",
            "warning: demand.csv, row 3, column from month: no sales fall in these months by the month pattern of sales, so nothing is sold; widen the months or see to the pattern"),
        fault(
            "no-trunk",
            "error: stock.csv, row 2, column trunk mm: the trunks are not stated; fill in trunk mm, or trunk from mm and trunk to mm, or girth from cm and girth to cm"),
        fault(
            "offer-arrives-out-of-season",
            "warning: offers.csv, row 4, column arrival month: plants of the form root ball arrive in June, outside the dormant season November to March (2027-06); see that the month is right"),
        fault(
            "offer-below-its-least",
            "error: plan.json, line 5, key spring liners: of the offer spring liners at least 50 plants must be taken (20); take that many, or 0"),
        fault(
            "offer-is-unknown",
            "error: plan.json, line 5, key sprong liners: unknown offer (sprong liners); the nearest known one is spring liners"),
        fault(
            "offer-named-like-a-lot",
            "error: offers.csv, row 4, column offer: a lot of the stock list has this name (Yews); rename the offer"),
        fault(
            "offer-not-taken-outside-the-plan",
            "warning: offers.csv, row 4, column arrival month: the offer arrives outside the plan, which runs from 2026-11 to 2030-09, and is left out (2037-11)"),
        fault(
            "offer-off-its-multiple",
            "error: plan.json, line 5, key spring liners: the offer spring liners is sold in multiples of 50 (210); take a multiple"),
        fault(
            "offer-over-its-most",
            "error: plan.json, line 5, key spring liners: of the offer spring liners at most 500 plants can be had (550); take fewer"),
        fault(
            "offer-taken-outside-the-plan",
            "warning: offers.csv, row 2, column arrival month: the offer arrives outside the plan, which runs from 2026-11 to 2030-09, and is left out (2026-02)",
            "error: plan.json, line 5, key spring liners: the offer spring liners arrives outside the plan (2026-02); take it out, or let the plan run at that time"),
        fault(
            "old-spreadsheet-beside",
            "warning: counts.ods: spreadsheets of this kind are not read; save it as an Excel workbook (.xlsx) or as CSV"),
        fault(
            "other-ladder",
            "error: demand.csv, row 4, column ladder: Yew is on the ladder small trees (hedges); write that ladder or leave it empty"),
        fault(
            "passports-differ",
            "error: stock.csv, row 4, column from lot: lots with different passports cannot be one: UP-79 and UP-77 (12); keep them as separate lots"),
        fault(
            "pattern-does-not-sum",
            "error: nursery.json, line 8, key month pattern of sales: the twelve shares must sum to 1 or 100, but sum to 103; correct them"),
        fault(
            "pattern-of-eleven-months",
            "error: nursery.json, line 8, key month pattern of sales: twelve numbers are needed, January first, but there are 11 ([2, 3, 10, 18, 20, 12, 5, 4, 10, 10, 4]); write one for each month"),
        fault(
            "pattern-sums-nearly",
            "notice: nursery.json, line 8, key month pattern of sales: the twelve shares sum to 100.4 and are scaled to the whole"),
        fault(
            "place-closes-before-opening",
            "error: places.csv, row 5, column until: the place closes before it opens in 2031-04 (2025-10); correct one of them"),
        fault(
            "place-is-unknown",
            "error: stock.csv, row 2, column place: unknown place (Nort bench); the nearest known one is North bench"),
        fault(
            "plan-month-is-a-number",
            "error: plan.json, line 3, key first month: this is no month of a year (202611); write it as 2027-03 or Mar 2027"),
        fault(
            "plan-name-is-a-path",
            "error: plan.json, line 2, key name: a plan's name is that of its report folder and may not hold / \\ : * ? \" < > | or begin or end with a dot (../first); rename the plan"),
        fault(
            "plan-of-too-many-seasons",
            "error: plan.json, line 4, key seasons: this must be between 1 and 40 (41); correct it"),
        fault(
            "plan-takes-outside-itself",
            "warning: demand.csv, row 3, column season: this season lies outside the plan, its demand does not count (2027/28)",
            "warning: offers.csv, row 4, column arrival month: the offer arrives outside the plan, which runs from 2026-11 to 2027-09, and is left out (2027-11)",
            "error: plan.json, line 5, key big yews: the offer big yews arrives outside the plan (2027-11); take it out, or let the plan run at that time"),
        fault(
            "pot-against-the-steps",
            "warning: stock.csv, row 2, column pot: after the step pot up the lot should stand in the pot liner pot (training pot); see which of them is right"),
        fault(
            "pot-comes-twice",
            "error: pots.csv, row 4, column pot: this is given already, as liner pot (Liner Pot); keep one of them, or rename it"),
        fault(
            "pot-is-unknown",
            "error: stock.csv, row 2, column pot: unknown pot (tall pot); see the table pots"),
        fault(
            "pot-without-a-mix",
            "warning: routes.csv, row 4, column pot: the step pots without a mix and uses no substrate (training pot); name the mix"),
        fault(
            "pot-without-height",
            "error: pots.csv, row 3, column height mm: this value is missing; fill it in"),
        fault(
            "potted-in-the-future",
            "error: stock.csv, row 2, column potted: this lies after the first month of the plan, 2026-11 (2027-03); correct it, or begin the plan later"),
        fault(
            "potted-without-a-pot",
            "error: stock.csv, row 2, column potted: a month of potting needs a pot (2025-03); name the pot or leave potted empty"),
        fault(
            "price-break-says-otherwise",
            "error: offers.csv, row 3, column supplier: a row above says otherwise (Far Fields); say it once, or the same on every row"),
        fault(
            "price-break-twice",
            "error: offers.csv, row 3, column least: the offer spring liners has two prices from 50 plants; give each price break its own least"),
        fault(
            "price-is-missing",
            "error: demand.csv, row 3, column price: this value is missing; fill it in"),
        fault(
            "quantity-is-a-word",
            "error: stock.csv, row 2, column quantity: this is no number (a dozen); write digits, such as 12.5"),
        fault(
            "quantity-is-negative",
            "error: stock.csv, row 2, column quantity: this must be between 0 and 10000000 (-3); correct it"),
        fault(
            "quantity-is-not-whole",
            "error: stock.csv, row 2, column quantity: this must be a whole number (240.5); round it"),
        fault(
            "price-with-thousands-comma",
            "error: stock.csv, row 2, column unit cost: this may be thousands or decimals (3,250); write 3250 or 3.25"),
        fault(
            "rank-comes-twice",
            "error: grades.csv, row 4, column rank: two grades of the ladder have the rank 2; give each its own"),
        fault(
            "rate-of-no-currency",
            "error: nursery.json, line 4, key francs: this is no currency (francs); write its code of three letters, such as EUR",
            "error: offers.csv, row 4, column currency: there is no exchange rate for this currency (CHF); add a setting exchange rate CHF, or CHF under exchange rates in nursery.json"),
        fault(
            "remark-under-the-list",
            "warning: stock.csv, row 1: this heading is not known, its column is not read (remarks of Anna)",
            "error: stock.csv, row 5: this row lacks lot, species, form, quantity, arrived and route (counted by Anna); complete it, or move totals and remarks out of the table"),
        fault(
            "route-is-unknown",
            "error: stock.csv, row 2, column route: unknown route (pot and wier); the nearest known one is pot and wire"),
        fault(
            "season-is-none",
            "error: demand.csv, row 3, column season: this is no season of this nursery (2027/29); write it as 2026/27, or every"),
        fault(
            "season-of-one-year",
            "error: demand.csv, row 3, column season: this is no season of this nursery (2027); write it as 2026/27, or every"),
        fault(
            "season-outside-the-plan",
            "warning: demand.csv, row 3, column season: this season lies outside the plan, its demand does not count (2035/36)"),
        fault(
            "share-is-less-than-1",
            "notice: stock.csv, row 2, column first %: less than 1 % is meant here, by the heading (0.9); write 80 for 80 %",
            "notice: stock.csv, row 2, column second %: less than 1 % is meant here, by the heading (0.1); write 80 for 80 %"),
        fault(
            "share-is-over-100",
            "error: stock.csv, row 2, column first %: this must be between 0 and 100 (190); correct it"),
        fault(
            "sort-recurs",
            "error: routes.csv, row 5, column sort: a step that recurs cannot sort; sort in a step that is done once"),
        fault(
            "sorted-is-neither-yes-nor-no",
            "error: stock.csv, row 2, column sorted: this must be yes or no (perhaps); write yes or no"),
        fault(
            "species-in-both-files",
            "error: species.json, line 4, key Yew: this species is given already, in this file or in the table species (Yew); keep one of them"),
        fault(
            "species-is-missing",
            "error: stock.csv, row 2, column species: this value is missing; fill it in"),
        fault(
            "species-is-unknown",
            "error: stock.csv, row 2, column species: unknown species (Rowen); the nearest known one is Rowan"),
        fault(
            "star-without-ladder",
            "error: demand.csv, row 2, column ladder: a row for every species (*) needs a ladder; name it"),
        fault(
            "step-comes-twice",
            "error: routes.csv, row 3, column step: this is given already, as pot up (Pot Up); keep one of them, or rename it"),
        fault(
            "stock-from-the-future",
            "error: stock.csv, row 2, column arrived: the lot arrives in or after the first month of the plan, 2026-11 (2026-11); enter it as an offer"),
        fault(
            "take-without-quantity",
            "error: offers.csv, row 2, column quantity: this value is missing; fill it in"),
        fault(
            "total-row-under-the-list",
            "error: stock.csv, row 5: this row lacks species, form, arrived and route (Total); complete it, or move totals and remarks out of the table"),
        fault(
            "trunk-in-other-unit",
            "notice: stock.csv, row 2, column trunk mm: this counts as a trunk of 14 mm (1.4 cm)"),
        fault(
            "trunk-is-zero",
            "error: stock.csv, row 2, column trunk mm: this must be more than 0 (0); correct it"),
        fault(
            "trunk-stated-twice",
            "error: stock.csv, row 2, column trunk mm: the trunks are stated in more than one way; keep one of trunk mm, trunk from/to mm and girth from/to cm"),
        fault(
            "trunk-with-decimal-comma",
            "error: stock.csv, row 2, column trunk mm: this number has a decimal comma, which only files with semicolons between the columns may use (14,5); write a decimal point"),
        fault(
            "unit-cost-in-other-currency",
            "error: stock.csv, row 2, column unit cost: this amount must be in EUR ($ 3.25); write it in EUR or without a currency"),
        fault(
            "usual-condition-without-growth",
            "error: species.csv, row 2, column usual condition: the usual condition has no growth; there is growth for field, liner pot and training pot (shallow pot); add mm a year shallow pot, or a curve in species.json"),
        fault(
            "when-after-a-later-step",
            "error: routes.csv, row 3, column when: unknown once-only step above this one (pot on); the nearest known one is pot up"),
        fault(
            "when-after-a-recurring-step",
            "error: routes.csv, row 6, column when: unknown once-only step above this one (repot); see the table routes"),
        fault(
            "when-says-nothing",
            "error: routes.csv, row 4, column when: this does not say when the step is due (in two years); write arrival, March year 0, 3 months after STEP, every 3 years in March, or March once trunk 40"),
        fault(
            "xlsx-is-empty",
            "error: prices.xlsx: this file is empty; fill it or take it out of the folder"),
        fault(
            "xlsx-is-no-workbook",
            "error: prices.xlsx: this file has the name of a workbook but is none; open it in the program that made it and save it as an Excel workbook (.xlsx)"),
        fault(
            "year-falls",
            "warning: routes.csv, row 7, column when: a step above is of a later year, so this one always comes late (March year 0); put the steps in the order of their dates"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void file_withOneFault_isReportedInWholeSentences(String name, List<String> sentences)
      throws IOException {
    SmallNursery.copyTidy(folder);
    SmallNursery.copy("faults/" + name, folder);

    Loader.Reading reading = SmallNursery.read(folder);

    assertThat(reading.findings().problems())
        .extracting(LoaderFaultsTest::sentence)
        .filteredOn(sentence -> !SmallNursery.isUsual(sentence))
        .containsExactlyElementsOf(sentences);
    assertThat(reading.inputs().isPresent())
        .as("inputs are there exactly if no problem is an error")
        .isEqualTo(reading.findings().problems().stream().noneMatch(Problem::isError));
    assertThat(reading.rows().accepted() + reading.rows().reported())
        .as("no row is passed over in silence")
        .isEqualTo(reading.rows().read());
  }

  private static String sentence(Problem problem) {
    return problem.severity() + ": " + problem;
  }

  @Test
  void faultFiles_allHaveTheirCase() throws IOException {
    List<Object> cases = faults().map(each -> each.get()[0]).toList();
    try (Stream<Path> folders = Files.list(SmallNursery.resource("faults"))) {
      assertThat(folders.map(each -> each.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(cases.stream().map(Object::toString).toList());
    }
  }
}
