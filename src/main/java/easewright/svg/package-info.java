/**
 * Drawings in and out. Reading is safe against hostile files: a pre-pass with the JDK's own parser refuses external
 * entities and excess of every kind before anything else sees the bytes, nothing outside the bytes is ever fetched,
 * no script runs, and nothing recurses on the depth of the file. Geometry and style are worked out here, in
 * {@code double} (docs/decisions/0004-own-reader.md).
 *
 * <p>Guarantees: shapes come out in millimetres of the whole drawing with every transform applied; quadratics are
 * raised to cubics exactly; arcs become cubics that stay within 1e-5 mm of the true arc; a shape that could not be
 * read completely is always named in a finding.
 */
package easewright.svg;
