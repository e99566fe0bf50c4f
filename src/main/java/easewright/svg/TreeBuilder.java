package easewright.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Builds the tree while a file is read, tag by tag. */
final class TreeBuilder {
    /** No more than this of a title or text is of use as a name, characters. */
    private static final int LONGEST_LABEL = 2000;

    private static final int LONGEST_GENERATOR = 4000;

    /** Stands between the lines of a text; white space to everybody else. */
    static final char LINE_BREAK = '\u2028';

    /** Elements whose inside is never drawn here and never looked at. */
    private static final Set<String> OPAQUE =
            Set.of("metadata", "script", "foreignObject", "filter", "linearGradient", "radialGradient", "font");

    private final Map<String, Element> byId = new HashMap<>();
    private final Set<String> repeatedIds = new HashSet<>();
    private final List<Element> styleSheets = new ArrayList<>();
    private final StringBuilder generator = new StringBuilder();
    private Element root;
    private Element current;

    /** The style, title or text element whose content is being collected. */
    private Element collecting;

    private int count;
    private boolean fromEntities;
    private boolean styledFromOutside;

    /** How deep we are inside an element that is not looked at. */
    private int skipping;

    /** What has been built, after the last end tag. */
    Tree tree() {
        return new Tree(root, byId, repeatedIds, styleSheets, generator.toString(), fromEntities, styledFromOutside);
    }

    /** Whether the attributes of the next element, and what is in it, are not looked at. */
    boolean skips() {
        return skipping > 0;
    }

    /** Whether the characters that come next are kept. */
    boolean collects() {
        return skipping == 0 && collecting != null;
    }

    /**
     * A start tag.
     *
     * @param attributes names by {@link Element#key} and values in turn
     * @param made       whether it came out of an entity
     */
    void start(String namespace, String local, String[] attributes, boolean made) {
        boolean svg = namespace.equals(Element.SVG);
        fromEntities |= made;
        int index = made ? count - 1 : count++;
        if (skipping > 0) {
            skipping++;
            return;
        }
        Element element = new Element(svg ? local : "", index, current, made, attributes);
        if (current == null) {
            root = element;
        } else {
            current.children.add(element);
        }
        String id = element.id();
        if (!id.isEmpty() && byId.putIfAbsent(id, element) != null) {
            repeatedIds.add(id);
        }
        if (!svg || OPAQUE.contains(local)) {
            skipping = 1;
            return;
        }
        current = element;
        if (local.equals("style")) {
            styleSheets.add(element);
        }
        if (collecting != null && local.equals("tspan")) {
            boolean ownLine = element.get("y") != null || element.get("dy") != null;
            collecting.text.append(ownLine ? LINE_BREAK : ' ');
        }
        if (collecting == null && (local.equals("style") || local.equals("title") || local.equals("text"))) {
            element.text = new StringBuilder();
            collecting = element;
        }
    }

    void end() {
        if (skipping > 1) {
            skipping--;
            return;
        }
        if (skipping == 1) {
            skipping = 0;
            return;
        }
        if (collecting == current) {
            collecting = null;
        }
        current = current.parent;
    }

    /** Characters between tags, references resolved. */
    void text(CharSequence text) {
        if (!collects()) {
            return;
        }
        boolean style = collecting.name.equals("style");
        int length = text.length();
        int room = style ? length : Math.min(length, LONGEST_LABEL - collecting.text.length());
        collecting.text.append(text, 0, Math.max(0, room));
    }

    void comment(CharSequence text) {
        if (root == null && generator.length() < LONGEST_GENERATOR) {
            generator
                    .append(text, 0, Math.min(text.length(), LONGEST_GENERATOR))
                    .append('\n');
        }
    }

    void instruction(String target) {
        styledFromOutside |= target.equals("xml-stylesheet");
    }
}
