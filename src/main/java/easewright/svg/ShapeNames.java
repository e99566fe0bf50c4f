package easewright.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Unique ids for shapes, and names fit to show. */
final class ShapeNames {
    /** Names longer than this are cut when shown, characters. */
    private static final int LONGEST = 100;

    private final Tree tree;
    private final Set<String> used;
    private final Map<String, Integer> next = new HashMap<>();

    ShapeNames(Tree tree) {
        this.tree = tree;
        used = new HashSet<>(tree.byId().keySet());
    }

    /** Whether this element is the one that its id means. */
    boolean given(Element element) {
        return !element.id().isBlank() && tree.byId().get(element.id()) == element;
    }

    /** The element's own id where the file means this element by it, else one made up from it or from its number. */
    String idOf(Element element) {
        if (given(element)) {
            return element.id();
        }
        return unique(element.id().isBlank() ? "shape-" + element.index : element.id(), 2);
    }

    /** An id for a copy drawn through a use element. */
    String idOfCopy(Element use) {
        String id = use.id().isBlank() ? "copy-" + use.index : use.id();
        return unique(id, 1);
    }

    private String unique(String wanted, int first) {
        if (used.add(wanted)) {
            return wanted;
        }
        int number = next.getOrDefault(wanted, first);
        while (!used.add(wanted + "-" + number)) {
            number++;
        }
        next.put(wanted, number + 1);
        return wanted + "-" + number;
    }

    /** What the element itself is called: title, accessible name or an editor's label; may be empty. */
    static String label(Element element) {
        for (String text : new String[] {
            element.title(), element.get("aria-label"), element.get("inkscape:label"), element.get("data-name")
        }) {
            String clean = clean(text);
            if (!clean.isEmpty()) {
                return clean;
            }
        }
        return "";
    }

    /** The groups inside the element: those around it, and itself where it is called something. */
    List<DrawnShape.Group> groupsWithin(Element group, List<DrawnShape.Group> around) {
        String name = label(group);
        name = name.isEmpty() ? readable(group.id()) : name;
        if (name.isEmpty()) {
            return around;
        }
        List<DrawnShape.Group> groups = new ArrayList<>(around);
        groups.add(new DrawnShape.Group(key(group), name));
        return groups;
    }

    /** By what a layer can be asked for: its id, or its number where it has none of its own. */
    String key(Element group) {
        return given(group) ? group.id() : "layer-" + group.index;
    }

    /** What an element is called in findings. */
    static String called(Element element) {
        String label = label(element);
        if (!label.isEmpty()) {
            return label;
        }
        String id = readable(element.id());
        return id.isEmpty() ? "shape-" + element.index : id;
    }

    /** An id as a name: some editors write letters that ids must not hold as {@code _x20_}. */
    static String readable(String id) {
        if (!id.contains("_x")) {
            return clean(id);
        }
        StringBuilder text = new StringBuilder();
        java.util.regex.Matcher code =
                java.util.regex.Pattern.compile("_x([0-9A-Fa-f]{2,4})_").matcher(id);
        while (code.find()) {
            String letter = String.valueOf((char) Integer.parseInt(code.group(1), 16));
            code.appendReplacement(text, java.util.regex.Matcher.quoteReplacement(letter));
        }
        return clean(code.appendTail(text).toString());
    }

    /**
     * A text fit to show on one line: control and formatting characters, which could turn a line around or drive a
     * terminal, are taken out.
     */
    static String clean(String text) {
        if (text == null) {
            return "";
        }
        StringBuilder clean = new StringBuilder();
        boolean space = false;
        for (int i = 0; i < text.length() && clean.length() < LONGEST; ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            int type = Character.getType(c);
            if (Character.isWhitespace(c) || type == Character.LINE_SEPARATOR || type == Character.SPACE_SEPARATOR) {
                space = clean.length() > 0;
            } else if (type != Character.CONTROL
                    && type != Character.FORMAT
                    && type != Character.SURROGATE
                    && type != Character.UNASSIGNED) {
                if (space) {
                    clean.append(' ');
                    space = false;
                }
                clean.appendCodePoint(c);
            }
        }
        return clean.toString();
    }
}
