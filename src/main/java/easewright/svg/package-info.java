/**
 * Drawings in and out. Reading is safe against hostile files: markup that is not plain goes through the JDK's own
 * parser, which refuses external entities and excess of every kind (docs/decisions/0080-plain-markup.md), nothing
 * outside the bytes is ever fetched, no script runs, and nothing recurses on the depth of the file. Geometry and style
 * are worked out here, in {@code double} (docs/decisions/0004-own-reader.md).
 *
 * <p>Guarantees: shapes come out in millimetres of the whole drawing with every transform applied; quadratics are
 * raised to cubics exactly; arcs become cubics that stay within 1e-5 mm of the true arc; a shape that could not be
 * read completely is always named in a finding.
 *
 * <p>{@link easewright.svg.SvgFile} is the one door. Behind it, in the order of a file's way:
 *
 * <ol>
 *   <li>bytes to a tree: {@code PlainBytes}, {@code Markup}, {@code PlainXml} or {@code SafeXml}, {@code TreeBuilder}
 *   <li>the tree to what is drawn: {@code Walker}, {@code Styles}, {@code PathParser}, {@code ShapeCollector}, to
 *       {@link easewright.svg.Drawing}
 *   <li>what is drawn to a pattern: {@code MarksReader}, or without marks {@code BarePattern}, with {@code LineJoiner}
 *       for outlines of loose lines
 *   <li>a changed pattern to edits of the text: {@code Rewriting}, {@code Targets}, {@code ShapeRewriter},
 *       {@code MarksWriter}, {@code Splices}
 *   <li>the text to the disk and unsaved work: {@link easewright.svg.disk}
 *   <li>how it looks, for whoever paints it: {@code SceneryPlayer} tells {@link easewright.svg.Scenery}
 * </ol>
 */
package easewright.svg;
