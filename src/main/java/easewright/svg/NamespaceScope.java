package easewright.svg;

import java.util.Arrays;

/** Which namespaces prefixes stand for, element by element. */
final class NamespaceScope {
    private static final String XML = "http://www.w3.org/XML/1998/namespace";
    private static final String XMLNS = "http://www.w3.org/2000/xmlns/";

    private String[] prefixes = new String[16];
    private String[] uris = new String[16];
    private int count;

    /** How many there were when each open element began. */
    private final int[] begins = new int[SafeXml.DEEPEST + 1];

    private int depth;

    void enter() {
        begins[depth++] = count;
    }

    void leave() {
        count = begins[--depth];
    }

    /**
     * Notes what a prefix stands for inside the element.
     *
     * @param prefix empty for elements without one
     * @return false where that is not allowed, or better left to a parser
     */
    boolean declare(String prefix, String uri) {
        boolean reserved = prefix.startsWith("xml") || uri.equals(XML) || uri.equals(XMLNS);
        if (reserved || uri.isEmpty() && !prefix.isEmpty()) {
            return false;
        }
        if (count == prefixes.length) {
            prefixes = Arrays.copyOf(prefixes, 2 * count);
            uris = Arrays.copyOf(uris, 2 * count);
        }
        prefixes[count] = prefix;
        uris[count++] = uri;
        return true;
    }

    /** The namespace of an element, empty for none; null if its prefix stands for nothing. */
    String ofElement(String name) {
        int colon = name.indexOf(':');
        String found = find(name, Math.max(0, colon));
        return found == null && colon < 0 ? "" : found;
    }

    /** The namespace of an attribute, empty without a prefix; null if its prefix stands for nothing. */
    String ofAttribute(String name) {
        int colon = name.indexOf(':');
        if (colon < 0) {
            return "";
        }
        return name.startsWith("xml:") ? XML : find(name, colon);
    }

    private String find(String name, int length) {
        for (int i = count - 1; i >= 0; i--) {
            if (prefixes[i].length() == length && name.startsWith(prefixes[i])) {
                return uris[i];
            }
        }
        return null;
    }
}
