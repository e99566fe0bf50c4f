package easewright.svg;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.ListIterator;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * An element of the marks block.
 *
 * @param name       local name
 * @param attributes those without a prefix, in the order written
 * @param foreign    names of attributes with a prefix, namespace declarations left out
 * @param markup     the element as it stands, with every namespace declared that it needs
 */
record MarkNode(
        String namespace,
        String name,
        List<Tag.Attribute> attributes,
        List<String> foreign,
        List<MarkNode> children,
        Supplier<String> markup) {
    /** What all versions of our namespace begin with. */
    static final String FAMILY = "urn:easewright:marks:";

    /** The only version there is. */
    static final String NAMESPACE = FAMILY + "1";

    private static final int MOST_CANDIDATES = 1000;

    /** Longer ones are not declared for marks that are kept as they stand. */
    private static final int LONGEST_PREFIX = 200;

    /** The place of an attribute without a prefix among {@link #attributes}, or -1. */
    int place(String attribute) {
        for (int i = 0; i < attributes.size(); i++) {
            if (attributes.get(i).name().equals(attribute)) {
                return i;
            }
        }
        return -1;
    }

    String value(int place) {
        return XmlText.unescape(attributes.get(place).raw());
    }

    /** The value of an attribute without a prefix, or an empty text. */
    String text(String attribute) {
        int place = place(attribute);
        return place < 0 ? "" : value(place);
    }

    /** The elements named marks in any version of our namespace, in document order. */
    static List<Tag> blocks(SourceText source) {
        List<Tag> found = new ArrayList<>();
        int looked = 0;
        for (Tag tag : source.tags()) {
            if (!tag.name().endsWith("marks") || !tag.localName().equals("marks")) {
                continue;
            }
            if (++looked > MOST_CANDIDATES) {
                // Nobody could say which of so many is ours: taken for several, so that nothing is saved.
                return List.of(tag, tag);
            }
            if (namespaces(source, tag).getOrDefault(prefix(tag.name()), "").startsWith(FAMILY)) {
                found.add(tag);
            }
        }
        return found;
    }

    /**
     * An element with all that is in it.
     *
     * @throws IllegalArgumentException if an attribute refers to an entity of the file's own
     */
    static MarkNode of(SourceText source, Tag tag) {
        return node(source, source.tags().listIterator(tag.index() + 1), tag, namespaces(source, tag));
    }

    /**
     * @param after the tags after this one; those inside it are taken
     */
    private static MarkNode node(SourceText source, ListIterator<Tag> after, Tag tag, Map<String, String> namespaces) {
        List<Tag.Attribute> attributes = tag.attributes();
        List<String> foreign = new ArrayList<>(0);
        for (Tag.Attribute attribute : tag.attributes()) {
            boolean declares = declaredPrefix(attribute.name()) != null;
            boolean prefixed = attribute.name().indexOf(':') >= 0;
            if (prefixed || declares) {
                attributes = attributes.stream().filter(a -> a != attribute).toList();
            } else if (attribute.refers()) {
                // What refers to nothing known is found out now, not when the value is asked for.
                XmlText.unescape(attribute.raw());
            }
            if (prefixed && !declares) {
                foreign.add(attribute.name());
            }
        }
        List<MarkNode> children = new ArrayList<>(0);
        while (after.hasNext()) {
            Tag child = after.next();
            if (child.parent() != tag.index()) {
                after.previous();
                break;
            }
            children.add(node(source, after, child, declared(namespaces, child)));
        }
        return new MarkNode(
                namespaces.getOrDefault(prefix(tag.name()), ""),
                tag.localName(),
                attributes,
                foreign,
                children,
                () -> standalone(source, tag, namespaces));
    }

    /** Namespaces in scope inside a tag, by prefix; a value that cannot be resolved counts as not ours. */
    private static Map<String, String> namespaces(SourceText source, Tag tag) {
        Map<String, String> outer = tag.parent() < 0 ? Map.of() : namespaces(source, source.tag(tag.parent()));
        return declared(outer, tag);
    }

    private static Map<String, String> declared(Map<String, String> outer, Tag tag) {
        Map<String, String> all = outer;
        for (Tag.Attribute attribute : tag.attributes()) {
            String prefix = declaredPrefix(attribute.name());
            if (prefix != null) {
                all = all == outer ? new TreeMap<>(outer) : all;
                all.put(prefix, literal(attribute.raw()));
            }
        }
        return all;
    }

    private static String literal(String raw) {
        try {
            return XmlText.unescape(raw);
        } catch (IllegalArgumentException e) {
            return raw;
        }
    }

    /** The prefix that the attribute declares, empty for the default namespace; null if it declares none. */
    private static String declaredPrefix(String attribute) {
        if (!attribute.startsWith("xmlns")) {
            return null;
        }
        if (attribute.length() == 5) {
            return "";
        }
        return attribute.charAt(5) == ':' ? attribute.substring(6) : null;
    }

    private static String prefix(String name) {
        return name.substring(0, Math.max(0, name.indexOf(':')));
    }

    /** Everything in a text that may be a namespace prefix: what stands before a colon. */
    private static Set<String> prefixes(String body) {
        Set<String> prefixes = new HashSet<>();
        for (int colon = body.indexOf(':'); colon >= 0; colon = body.indexOf(':', colon + 1)) {
            int from = colon;
            while (from > 0 && colon - from < LONGEST_PREFIX && " \t\r\n<>/=\"':".indexOf(body.charAt(from - 1)) < 0) {
                from--;
            }
            prefixes.add(body.substring(from, colon));
        }
        return prefixes;
    }

    private static String standalone(SourceText source, Tag tag, Map<String, String> namespaces) {
        String text = source.text();
        StringBuilder out = new StringBuilder(text.substring(tag.from(), tag.afterName()));
        String body = text.substring(tag.afterName(), tag.endTo());
        Set<String> prefixes = prefixes(body);
        namespaces.forEach((prefix, uri) -> {
            String attribute = prefix.isEmpty() ? "xmlns" : "xmlns:" + prefix;
            boolean used = prefix.isEmpty() || tag.name().startsWith(prefix + ":") || prefixes.contains(prefix);
            boolean own = tag.attribute(attribute).isPresent();
            boolean inherited = prefix.isEmpty() && uri.equals(NAMESPACE);
            if (used && !own && !inherited) {
                out.append(' ')
                        .append(attribute)
                        .append("=\"")
                        .append(XmlText.escape(uri))
                        .append('"');
            }
        });
        if (!namespaces.containsKey("")) {
            out.append(" xmlns=\"\"");
        }
        return out.append(body).toString();
    }
}
