/** How charts look: colours, hatching, lettering, and the sizes they are laid out for. */
package growingon.write.chart.look;
