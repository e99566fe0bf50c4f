/**
 * How a drawing looks, painted by Apache Batik as a picture to lie under the pieces: words where they stand, colours,
 * dashes, arrow heads. It gets nothing but what {@link easewright.svg.Scenery} lets through, and is never measured.
 *
 * <p>Guarantees: nothing is fetched and no script runs; a picture comes within the time given or not at all; one element
 * that cannot be painted costs itself and not the picture.
 */
package easewright.backdrop;
