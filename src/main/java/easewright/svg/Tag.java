package easewright.svg;

import java.util.List;
import java.util.Optional;

/**
 * One start tag as it stands in the text. All numbers are character indexes.
 *
 * @param index     0-based number among the start tags of the file
 * @param parent    index of the element around it, -1 for the root
 * @param name      as written, with its prefix
 * @param from      index of the {@code <}
 * @param to        just after the {@code >}
 * @param selfClosed whether it ends in {@code />}
 * @param endFrom   index of the {@code <} of the end tag; {@code to} if it has none of its own
 * @param endTo     just after the end tag
 */
record Tag(
        int index,
        int parent,
        String name,
        int from,
        int to,
        boolean selfClosed,
        int endFrom,
        int endTo,
        List<Attribute> attributes) {
    /**
     * One attribute.
     *
     * @param from      index of the first character of the name
     * @param valueFrom just after the opening quote
     * @param valueTo   index of the closing quote
     * @param text      the whole text, which all attributes share
     */
    record Attribute(String name, int from, int valueFrom, int valueTo, String text) {
        /** The value as written, references not resolved. */
        String raw() {
            return text.substring(valueFrom, valueTo);
        }

        /** Whether there may be references in the value. */
        boolean refers() {
            for (int i = valueFrom; i < valueTo; i++) {
                if (text.charAt(i) == '&') {
                    return true;
                }
            }
            return false;
        }

        /** Just after the closing quote. */
        int to() {
            return valueTo + 1;
        }

        /** Takes it out, with the white space before it. */
        Edit takenOut() {
            int start = from;
            while (Character.isWhitespace(text.charAt(start - 1))) {
                start--;
            }
            return new Edit(start, to(), "");
        }
    }

    Tag {
        attributes = List.copyOf(attributes);
    }

    /** The same tag with its end tag. */
    Tag ended(int endTagFrom, int endTagTo) {
        return new Tag(index, parent, name, from, to, selfClosed, endTagFrom, endTagTo, attributes);
    }

    Optional<Attribute> attribute(String wanted) {
        for (Attribute attribute : attributes) {
            if (attribute.name().equals(wanted)) {
                return Optional.of(attribute);
            }
        }
        return Optional.empty();
    }

    /** The prefix with its colon, or nothing. */
    String prefix() {
        return name.substring(0, name.indexOf(':') + 1);
    }

    String localName() {
        return name.substring(name.indexOf(':') + 1);
    }

    /** Where another attribute can be put in: just after the name. */
    int afterName() {
        return from + 1 + name.length();
    }
}
