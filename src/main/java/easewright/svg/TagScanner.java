package easewright.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Finds tags and their attributes in XML text, taking it for well-formed. It keeps what XML parsers
 * throw away: where each thing stands. Tags that come out of an entity are not in the text and not found.
 */
final class TagScanner {
    /** Places for names met already, found by a few of their characters; a power of two. */
    private static final int KNOWN = 256;

    /** Deeper than any drawing that is read, so that nothing else need be kept of one that is not. */
    private static final int DEEPEST = 2 * SafeXml.DEEPEST;

    /** A text that is not well-formed: something that begins at a place has no end, or no beginning. */
    static final class Torn extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        private final int at;

        Torn(String message, int at) {
            super(message);
            this.at = at;
        }

        /** Index of the character where it begins. */
        int at() {
            return at;
        }
    }

    private final String text;
    private final String[] known = new String[KNOWN];
    private final List<Tag> tags = new ArrayList<>();

    /** Tags whose end is not known yet. */
    private final Deque<Tag> open = new ArrayDeque<>();

    private TagScanner(String text) {
        this.text = text;
    }

    /**
     * All start tags in document order. Of a text that is not well-formed it may find anything, or throw.
     *
     * @throws Torn if a tag, comment or the like does not end, or elements are nested too deep
     */
    static List<Tag> scan(String text) {
        TagScanner scanner = new TagScanner(text);
        scanner.run();
        return List.copyOf(scanner.tags);
    }

    private void run() {
        int at = text.indexOf('<');
        while (at >= 0) {
            int after;
            if (text.startsWith("<!--", at)) {
                after = past("-->", at + 4);
            } else if (text.startsWith("<![CDATA[", at)) {
                after = past("]]>", at + 9);
            } else if (text.startsWith("<?", at)) {
                after = past("?>", at + 2);
            } else if (text.startsWith("<!", at)) {
                after = pastDeclaration(at + 2);
            } else if (text.startsWith("</", at)) {
                after = past(">", at + 2);
                endTag(at, after);
            } else {
                after = startTag(at);
            }
            at = text.indexOf('<', after);
        }
        if (!open.isEmpty()) {
            throw new Torn(
                    "The element <" + open.peek().name() + "> does not end",
                    open.peek().from());
        }
    }

    /** Whether the document type declaration, if the text begins with one after comments and the like, has an end. */
    static boolean doctypeEnds(String text) {
        TagScanner scanner = new TagScanner(text);
        try {
            int at = text.indexOf('<');
            while (at >= 0) {
                if (text.startsWith("<?", at)) {
                    at = scanner.past("?>", at + 2);
                } else if (text.startsWith("<!--", at)) {
                    at = scanner.past("-->", at + 4);
                } else {
                    return !text.startsWith("<!DOCTYPE", at) || scanner.pastDeclaration(at + 2) > at;
                }
                at = text.indexOf('<', at);
            }
            return true;
        } catch (Torn endless) {
            return false;
        }
    }

    private int past(String end, int from) {
        int found = text.indexOf(end, from);
        if (found < 0) {
            throw new Torn("No " + end + " after character " + from, from);
        }
        return found + end.length();
    }

    /** Past a document type declaration, with quotes, comments and instructions in its internal part. */
    private int pastDeclaration(int from) {
        int depth = 0;
        int at = from;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '"' || c == '\'') {
                at = past(String.valueOf(c), at + 1);
                continue;
            }
            if (text.startsWith("<!--", at)) {
                at = past("-->", at + 4);
                continue;
            }
            if (text.startsWith("<?", at)) {
                at = past("?>", at + 2);
                continue;
            }
            depth += c == '<' ? 1 : 0;
            at++;
            if (c == '>' && --depth < 0) {
                return at;
            }
        }
        throw new Torn("The document type declaration does not end", from);
    }

    private void endTag(int from, int to) {
        if (open.isEmpty()) {
            throw new Torn("An end tag without a start at character " + from, from);
        }
        Tag closed = open.pop();
        tags.set(closed.index(), closed.ended(from, to));
    }

    private int startTag(int from) {
        int at = from + 1;
        while (at < text.length() && !isSpace(text.charAt(at)) && text.charAt(at) != '>' && text.charAt(at) != '/') {
            at++;
        }
        String name = name(from + 1, at);
        Tag.Attribute[] attributes = new Tag.Attribute[4];
        int count = 0;
        while (true) {
            at = pastSpace(at);
            if (text.startsWith("/>", at) || text.startsWith(">", at)) {
                break;
            }
            int nameEnd = at;
            while (nameEnd < text.length() && text.charAt(nameEnd) != '=' && !isSpace(text.charAt(nameEnd))) {
                nameEnd++;
            }
            int quote = pastSpace(pastSpace(nameEnd) + 1);
            if (quote >= text.length() || (text.charAt(quote) != '"' && text.charAt(quote) != '\'')) {
                throw new Torn("An attribute of <" + name + "> has no quoted value", from);
            }
            int end = text.indexOf(text.charAt(quote), quote + 1);
            if (end < 0) {
                throw new Torn("An attribute of <" + name + "> does not end", from);
            }
            attributes = count < attributes.length ? attributes : Arrays.copyOf(attributes, 2 * count);
            attributes[count++] = new Tag.Attribute(name(at, nameEnd), at, quote + 1, end, text);
            at = end + 1;
        }
        boolean selfClosed = text.charAt(at) == '/';
        int to = selfClosed ? at + 2 : at + 1;
        int parent = open.isEmpty() ? -1 : open.peek().index();
        List<Tag.Attribute> found = List.of(Arrays.copyOf(attributes, count));
        Tag tag = new Tag(tags.size(), parent, name, from, to, selfClosed, to, to, found);
        tags.add(tag);
        if (!selfClosed) {
            open.push(tag);
            if (open.size() > DEEPEST) {
                throw new Torn("Elements are nested too deep", from);
            }
        }
        return to;
    }

    /** The same few names come again and again. */
    private String name(int from, int to) {
        if (from == to) {
            return "";
        }
        int slot = (text.charAt(from) + 31 * text.charAt(to - 1) + 7 * (to - from)) & KNOWN - 1;
        String name = known[slot];
        if (name == null || name.length() != to - from || !text.startsWith(name, from)) {
            name = text.substring(from, to);
            known[slot] = name;
        }
        return name;
    }

    private int pastSpace(int from) {
        int at = from;
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\n' || c == '\t' || c == '\r';
    }
}
