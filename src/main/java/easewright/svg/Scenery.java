package easewright.svg;

import java.util.Map;

/**
 * Takes in how a drawing looks, element by element in the order of the file. What comes was picked by name from a short
 * list: shapes, words, copies, gradients and arrow heads with the colours and pens they are drawn with. Pictures, links
 * to anything outside, scripts, filters, masks, patterns, animation and whole-group transparency never come.
 */
public interface Scenery {
    /**
     * An element begins. The outermost ones lie in user units of the root ({@link Drawing#rootToMm}).
     *
     * @param name       local name in the SVG namespace
     * @param attributes by local name; a reference is in {@code href} and leads to an id in the drawing
     */
    void start(String name, Map<String, String> attributes);

    /** Words of the element that began last. */
    void words(String words);

    void end();

    /** Rules for the elements: selectors and declarations, without anything that begins with @. */
    void rules(String css);
}
