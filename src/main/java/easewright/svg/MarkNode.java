package easewright.svg;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        Map<String, String> attributes,
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

    /** The elements named marks in any version of our namespace, in document order. */
    static List<Tag> blocks(SourceText source) {
        List<Tag> found = new ArrayList<>();
        int looked = 0;
        for (Tag tag : source.tags()) {
            if (tag.localName().equals("marks") && ++looked > MOST_CANDIDATES) {
                // Nobody could say which of so many is ours: taken for several, so that nothing is saved.
                return List.of(tag, tag);
            }
            if (tag.localName().equals("marks")
                    && namespaces(source, tag)
                            .getOrDefault(prefix(tag.name()), "")
                            .startsWith(FAMILY)) {
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
        Map<Integer, List<Tag>> inside = new TreeMap<>();
        for (int i = tag.index() + 1; i < source.tags().size() && source.tag(i).from() < tag.endTo(); i++) {
            Tag child = source.tag(i);
            inside.computeIfAbsent(child.parent(), k -> new ArrayList<>()).add(child);
        }
        return node(source, tag, namespaces(source, tag), inside);
    }

    private static MarkNode node(
            SourceText source, Tag tag, Map<String, String> namespaces, Map<Integer, List<Tag>> inside) {
        Map<String, String> attributes = new LinkedHashMap<>();
        List<String> foreign = new ArrayList<>();
        for (Tag.Attribute attribute : tag.attributes()) {
            if (declaredPrefix(attribute.name()).isPresent()) {
                continue;
            }
            if (attribute.name().indexOf(':') >= 0) {
                foreign.add(attribute.name());
            } else {
                attributes.put(attribute.name(), XmlText.unescape(attribute.raw()));
            }
        }
        List<MarkNode> children = new ArrayList<>();
        for (Tag child : inside.getOrDefault(tag.index(), List.of())) {
            children.add(node(source, child, declared(namespaces, child), inside));
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
        if (tag.attributes().stream().noneMatch(a -> declaredPrefix(a.name()).isPresent())) {
            return outer;
        }
        Map<String, String> all = new TreeMap<>(outer);
        for (Tag.Attribute attribute : tag.attributes()) {
            declaredPrefix(attribute.name()).ifPresent(prefix -> all.put(prefix, literal(attribute.raw())));
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

    private static Optional<String> declaredPrefix(String attribute) {
        if (attribute.equals("xmlns")) {
            return Optional.of("");
        }
        return attribute.startsWith("xmlns:") ? Optional.of(attribute.substring(6)) : Optional.empty();
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
