package easewright.svg;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Builds the tree of a drawing that is written in nothing but plain XML 1.0: UTF-8, no document type, no references
 * but XML's own five and characters by number, names in ASCII. Nearly every drawing is, and needs none of a parser's
 * machinery. It checks all that makes such a text well-formed, and at the first thing that is not, or that is not
 * plain, it gives nothing: the JDK's parser then reads the file, or says what is wrong with it.
 */
final class PlainXml {
    private static final String SPACE = "[ \\t\\r\\n]";

    private static final Pattern DECLARATION = Pattern.compile("<\\?xml" + SPACE + "+version" + SPACE + "*=" + SPACE
            + "*(\"1\\.0\"|'1\\.0')(" + SPACE + "+encoding" + SPACE + "*=" + SPACE
            + "*(\"(?i:utf-8)\"|'(?i:utf-8)'))?(" + SPACE + "+standalone" + SPACE + "*=" + SPACE
            + "*(\"(yes|no)\"|'(yes|no)'))?" + SPACE + "*\\?>");

    /** Fewer than the parser's own limits, so that those are left to it. */
    private static final int MOST_ATTRIBUTES = 40;

    private static final int LONGEST_NAME = 200;

    private final String text;
    private final List<Tag> tags;
    private final TreeBuilder tree = new TreeBuilder();
    private final NamespaceScope namespaces = new NamespaceScope();
    private final Tag[] open = new Tag[SafeXml.DEEPEST];
    private final PlainValues values;
    private int depth;

    /** The text is not plain, or not well-formed. */
    private static final class NotPlain extends Exception {
        private static final long serialVersionUID = 1L;

        NotPlain() {
            super("Not plain", null, false, false);
        }
    }

    private PlainXml(SourceText source) {
        this.text = source.text();
        this.tags = source.tags();
        this.values = new PlainValues(text);
    }

    /** The tree, if the text is plain and well-formed and its root is a drawing. */
    static Optional<Tree> tree(SourceText source) {
        if (!source.isUtf8() || source.tags().isEmpty() || !source.holdsOnlyCharacters()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new PlainXml(source).read());
        } catch (NotPlain notPlain) {
            return Optional.empty();
        }
    }

    private static void require(boolean plain) throws NotPlain {
        if (!plain) {
            throw new NotPlain();
        }
    }

    private Tree read() throws NotPlain {
        int at = declaration();
        for (Tag tag : tags) {
            between(at, tag.from());
            start(tag);
            at = tag.to();
        }
        between(at, text.length());
        require(depth == 0);
        return tree.tree();
    }

    /** Steps over the XML declaration, if there is one. */
    private int declaration() throws NotPlain {
        if (!text.startsWith("<?xml")) {
            return 0;
        }
        Matcher declaration = DECLARATION.matcher(text);
        require(declaration.lookingAt());
        return declaration.end();
    }

    /** What stands between two start tags: characters, end tags, comments, instructions. */
    private void between(int from, int to) throws NotPlain {
        int at = from;
        while (at < to) {
            int markup = text.indexOf('<', at);
            int end = markup < 0 || markup > to ? to : markup;
            characters(at, end);
            at = end == to ? to : markup(end);
        }
        require(at == to);
    }

    /** One piece of markup that is no start tag; gives the place after it. */
    private int markup(int at) throws NotPlain {
        if (text.startsWith("</", at)) {
            return end(at);
        }
        if (text.startsWith("<!--", at)) {
            int end = text.indexOf("--", at + 4);
            require(end >= 0 && text.startsWith("-->", end));
            if (depth == 0) {
                tree.comment(lines(at + 4, end));
            }
            return end + 3;
        }
        if (text.startsWith("<?", at)) {
            return instruction(at + 2);
        }
        require(text.startsWith("<![CDATA[", at) && depth > 0);
        int end = text.indexOf("]]>", at + 9);
        require(end >= 0);
        if (tree.collects()) {
            tree.text(lines(at + 9, end));
        }
        return end + 3;
    }

    private int instruction(int from) throws NotPlain {
        int nameEnd = name(from);
        require(nameEnd > from);
        String target = text.substring(from, nameEnd);
        require(!target.equalsIgnoreCase("xml") && target.indexOf(':') < 0);
        int end = text.indexOf("?>", nameEnd);
        require(end >= 0 && (end == nameEnd || PlainValues.isSpace(text.charAt(nameEnd))));
        tree.instruction(target);
        return end + 2;
    }

    private int end(int at) throws NotPlain {
        require(depth > 0);
        Tag tag = open[--depth];
        int nameEnd = at + 2 + tag.name().length();
        require(text.startsWith(tag.name(), at + 2));
        int end = pastSpace(nameEnd);
        require(end < text.length() && text.charAt(end) == '>');
        ended();
        return end + 1;
    }

    private void ended() {
        namespaces.leave();
        tree.end();
    }

    private void characters(int from, int to) throws NotPlain {
        boolean special = false;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            require(depth > 0 || PlainValues.isSpace(c));
            require(c != ']' || !text.startsWith("]]>", i));
            special |= c == '&';
        }
        if (special || tree.collects()) {
            String resolved = values.characters(from, to);
            require(resolved != null);
            tree.text(resolved);
        }
    }

    private String lines(int from, int to) {
        return PlainValues.withPlainLineEnds(text.substring(from, to));
    }

    private void start(Tag tag) throws NotPlain {
        // One root, nothing nested too deep, and no markup inside a tag.
        int next = text.indexOf('<', tag.from() + 1);
        require((depth > 0) == (tag.index() > 0) && depth < SafeXml.DEEPEST - 1 && (next < 0 || next >= tag.to()));
        require(name(tag.from() + 1) == tag.afterName() && tag.attributes().size() <= MOST_ATTRIBUTES);
        namespaces.enter();
        int at = tag.afterName();
        int kept = 0;
        for (Tag.Attribute attribute : tag.attributes()) {
            attributeSyntax(at, attribute);
            at = attribute.to();
            if (declaresNamespace(attribute.name())) {
                String prefix =
                        attribute.name().length() == 5 ? "" : attribute.name().substring(6);
                require(PlainValues.isLiteral(attribute.raw()) && namespaces.declare(prefix, attribute.raw()));
            } else {
                kept += 2;
            }
        }
        int end = pastSpace(at);
        require(end == (tag.selfClosed() ? tag.to() - 2 : tag.to() - 1));
        requireDistinct(tag.attributes());
        String namespace = namespaces.ofElement(tag.name());
        require(namespace != null
                && (tag.index() > 0
                        || namespace.equals(Element.SVG) && tag.localName().equals("svg")));
        tree.start(namespace, tag.localName(), attributes(tag, kept), false);
        open[depth++] = tag;
        if (tag.selfClosed()) {
            depth--;
            ended();
        }
    }

    /** Space, name, equals sign, quoted value. */
    private void attributeSyntax(int after, Tag.Attribute attribute) throws NotPlain {
        int nameEnd = attribute.from() + attribute.name().length();
        require(attribute.from() > after && pastSpace(after) == attribute.from());
        require(name(attribute.from()) == nameEnd);
        int equals = pastSpace(nameEnd);
        require(text.charAt(equals) == '=' && pastSpace(equals + 1) == attribute.valueFrom() - 1);
    }

    private static void requireDistinct(List<Tag.Attribute> attributes) throws NotPlain {
        for (int i = 1; i < attributes.size(); i++) {
            String name = attributes.get(i).name();
            int colon = name.indexOf(':');
            for (int k = 0; k < i; k++) {
                String other = attributes.get(k).name();
                require(!name.equals(other));
                // Two prefixes may stand for one namespace.
                require(colon < 0
                        || other.indexOf(':') < 0
                        || declaresNamespace(name)
                        || declaresNamespace(other)
                        || !name.substring(colon).equals(other.substring(other.indexOf(':'))));
            }
        }
    }

    /** Names and values as the tree keeps them; all are checked, but none made for an element that is not looked at. */
    private String[] attributes(Tag tag, int kept) throws NotPlain {
        String[] attributes = new String[tree.skips() ? 0 : kept];
        int n = 0;
        for (Tag.Attribute attribute : tag.attributes()) {
            if (declaresNamespace(attribute.name())) {
                continue;
            }
            String namespace = namespaces.ofAttribute(attribute.name());
            require(namespace != null);
            if (!tree.skips() || !values.isLiteral(attribute)) {
                String value = values.of(attribute);
                require(value != null);
                if (!tree.skips()) {
                    String local = attribute.name().substring(attribute.name().indexOf(':') + 1);
                    attributes[n++] = Element.key(namespace, local);
                    attributes[n++] = value;
                }
            }
        }
        return attributes;
    }

    private static boolean declaresNamespace(String name) {
        return name.startsWith("xmlns") && (name.length() == 5 || name.charAt(5) == ':');
    }

    /** The place after the name that begins here, of ASCII letters and the like, at most one colon inside; -1 for none. */
    private int name(int from) {
        int at = from;
        int colon = -1;
        while (at < text.length() && at - from < LONGEST_NAME) {
            char c = text.charAt(at);
            boolean begins = at == from || at == colon + 1;
            boolean letter = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_';
            boolean inside = c >= '0' && c <= '9' || c == '-' || c == '.';
            if (c == ':' && colon < 0 && !begins) {
                colon = at;
            } else if (!letter && (begins || !inside)) {
                break;
            }
            at++;
        }
        return at == from || at == colon + 1 ? -1 : at;
    }

    private int pastSpace(int from) {
        int at = from;
        while (at < text.length() && PlainValues.isSpace(text.charAt(at))) {
            at++;
        }
        return at;
    }
}
