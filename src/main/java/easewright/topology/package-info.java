/**
 * Questions about outlines as areas: what a level passes over, where the stitching line runs inside a cutting line,
 * whether an outline crosses itself. Takes and returns {@link easewright.geom} values in mm, and works on the curves
 * themselves, not on a flattening.
 */
package easewright.topology;
