package easewright.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds tags and their attributes in XML text that is already known to be well-formed. It keeps what XML parsers
 * throw away: where each thing stands. Tags that come out of an entity are not in the text and not found.
 */
final class TagScanner {
    private final String text;
    private final Map<String, String> names = new HashMap<>();
    private final List<Open> tags = new ArrayList<>();
    private final Deque<Open> open = new ArrayDeque<>();

    /** A tag whose end is not known yet. */
    private static final class Open {
        private Tag start;
        private int endFrom;
        private int endTo;
    }

    private TagScanner(String text) {
        this.text = text;
    }

    /**
     * All start tags in document order.
     *
     * @throws IllegalArgumentException if a tag, comment or the like does not end
     */
    static List<Tag> scan(String text) {
        TagScanner scanner = new TagScanner(text);
        scanner.run();
        List<Tag> done = new ArrayList<>(scanner.tags.size());
        for (Open o : scanner.tags) {
            Tag t = o.start;
            done.add(new Tag(
                    t.index(),
                    t.parent(),
                    t.name(),
                    t.from(),
                    t.to(),
                    t.selfClosed(),
                    o.endFrom,
                    o.endTo,
                    t.attributes()));
        }
        return List.copyOf(done);
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
            throw new IllegalArgumentException(
                    "The element <" + open.peek().start.name() + "> does not end");
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
        } catch (IllegalArgumentException endless) {
            return false;
        }
    }

    private int past(String end, int from) {
        int found = text.indexOf(end, from);
        if (found < 0) {
            throw new IllegalArgumentException("No " + end + " after character " + from);
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
        throw new IllegalArgumentException("The document type declaration does not end");
    }

    private void endTag(int from, int to) {
        if (open.isEmpty()) {
            throw new IllegalArgumentException("An end tag without a start at character " + from);
        }
        Open closed = open.pop();
        closed.endFrom = from;
        closed.endTo = to;
    }

    private int startTag(int from) {
        int at = from + 1;
        while (at < text.length() && !isSpace(text.charAt(at)) && text.charAt(at) != '>' && text.charAt(at) != '/') {
            at++;
        }
        String name = name(from + 1, at);
        List<Tag.Attribute> attributes = new ArrayList<>();
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
                throw new IllegalArgumentException("An attribute of <" + name + "> has no quoted value");
            }
            int end = past(String.valueOf(text.charAt(quote)), quote + 1) - 1;
            attributes.add(new Tag.Attribute(name(at, nameEnd), at, quote + 1, end, text));
            at = end + 1;
        }
        boolean selfClosed = text.charAt(at) == '/';
        int to = selfClosed ? at + 2 : at + 1;
        Open tag = new Open();
        int parent = open.isEmpty() ? -1 : open.peek().start.index();
        tag.start = new Tag(tags.size(), parent, name, from, to, selfClosed, to, to, attributes);
        tag.endFrom = to;
        tag.endTo = to;
        tags.add(tag);
        if (!selfClosed) {
            open.push(tag);
        }
        return to;
    }

    /** The same few names come again and again. */
    private String name(int from, int to) {
        String name = text.substring(from, to);
        String known = names.putIfAbsent(name, name);
        return known == null ? name : known;
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
