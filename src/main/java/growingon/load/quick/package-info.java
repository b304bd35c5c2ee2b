/** The ten cells of a quick sheet, turned into a nursery. */
package growingon.load.quick;
