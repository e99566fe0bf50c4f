/**
 * Questions about outlines as areas: what a level passes over, where the stitching line runs inside a cutting line,
 * whether an outline crosses itself, how much of the table two share. Takes and returns {@link easewright.geom} values
 * in mm; the one room that may use the JTS library, which only {@code Overlap} and the tests do.
 */
package easewright.topology;
