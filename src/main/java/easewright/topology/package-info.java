/**
 * Questions about outlines as areas: what a level passes over, where the stitching line runs inside a cutting line,
 * whether an outline crosses itself. Takes and returns {@link easewright.geom} values in mm; the one room that may use
 * the JTS library, which by now only its tests do.
 */
package easewright.topology;
