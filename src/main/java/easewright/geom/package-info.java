/**
 * Plane geometry of pattern outlines. All lengths are millimetres in {@code double}; x runs to the right and y runs
 * down, as in SVG, so a turn from x towards y is clockwise on screen and is counted positive. Every type is
 * immutable. Lines and cubic Bézier curves are the only segments: arcs and quadratics are turned into cubics on
 * reading.
 *
 * <p>Guarantees: splitting keeps the untouched segments as the same objects, so that whoever compares them finds
 * them bit for bit equal; lengths are true to 1e-9 of the length or better.
 */
package easewright.geom;
