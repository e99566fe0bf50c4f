package easewright.svg;

import java.util.ArrayList;
import java.util.List;

/** One element of the drawing as read: no behaviour, no links to anything outside the file. */
final class Element {
    static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String INKSCAPE = "http://www.inkscape.org/namespaces/inkscape";

    /** Local name in the SVG namespace; empty for elements of other namespaces. */
    final String name;

    /** Number of the start tag in document order, the root being 0; for one made by an entity, that of its parent. */
    final int index;

    final Element parent;

    /** The element's place among its siblings, from 0. */
    final int position;

    /** Whether it came out of an entity, so that it has no text of its own in the file. */
    final boolean fromEntity;

    final List<Element> children = new ArrayList<>(0);

    /** Names by {@link #key} and values in turn. */
    final String[] attributes;

    /** Content of style, title and text elements; null for others. */
    StringBuilder text;

    /**
     * @param attributes names by {@link #key} and values in turn
     */
    Element(String name, int index, Element parent, boolean fromEntity, String[] attributes) {
        this.name = name;
        this.index = index;
        this.parent = parent;
        this.position = parent == null ? 0 : parent.children.size();
        this.fromEntity = fromEntity;
        this.attributes = attributes;
    }

    /** Under which name an attribute is kept; empty for those of namespaces that nobody asks for. */
    static String key(String namespace, String local) {
        return switch (namespace) {
            case "" -> local;
            case XLINK -> "xlink:" + local;
            case INKSCAPE -> "inkscape:" + local;
            default -> "";
        };
    }

    /**
     * The value of an attribute, or null. Names without a prefix are in no namespace; {@code xlink:} and
     * {@code inkscape:} stand for those namespaces, whatever prefix the file uses.
     */
    String get(String attribute) {
        for (int i = 0; i < attributes.length; i += 2) {
            if (attributes[i].equals(attribute)) {
                return attributes[i + 1];
            }
        }
        return null;
    }

    /** The reference of a use element: href beats xlink:href. */
    String href() {
        String href = get("href");
        return href != null ? href : get("xlink:href");
    }

    /** The id, or an empty text. */
    String id() {
        String id = get("id");
        return id == null ? "" : id;
    }

    /** Whether the other element is this one or lies inside it. */
    boolean holds(Element other) {
        Element up = other;
        while (up != null && up != this) {
            up = up.parent;
        }
        return up == this;
    }

    /** The child title's text, or an empty text. */
    String title() {
        for (Element child : children) {
            if (child.name.equals("title") && child.text != null) {
                return child.text.toString();
            }
        }
        return "";
    }
}
