/**
 * Which plant of the library a grower's name means. Start at {@link
 * growingon.load.own.plant.PlantNames}; the names stand beside it in species-names.csv.
 */
package growingon.load.own.plant;
