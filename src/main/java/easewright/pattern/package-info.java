/**
 * What a paper pattern knows: pieces, their edges, levels, darts, notches, grain, mates; the body it is for and the
 * cloth. Immutable values that check themselves once, when made. Millimetres throughout.
 *
 * <p>Places are kept as {@link easewright.geom.Point}s on the outline and resolved with
 * {@link easewright.geom.Outline#nearest} when needed, so that marks survive a change of the outline's segments.
 */
package easewright.pattern;
