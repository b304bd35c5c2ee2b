/**
 * What the columns of a list are: by the grower's own words, by their headings, and where these are
 * open by their cells. Start at {@link growingon.load.own.heading.Columns}; the headings stand in
 * headings.csv and offer-headings.csv.
 */
package growingon.load.own.heading;
