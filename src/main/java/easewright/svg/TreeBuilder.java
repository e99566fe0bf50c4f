package easewright.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/** Builds the tree while the parser reads, and refuses what would make the file depend on anything outside it. */
final class TreeBuilder extends DefaultHandler2 {
    /** No more than this of a title or text is of use as a name, characters. */
    private static final int LONGEST_LABEL = 2000;

    private static final int LONGEST_GENERATOR = 4000;

    /** Stands between the lines of a text; white space to everybody else. */
    static final char LINE_BREAK = '\u2028';

    /** Elements whose inside is never drawn here and never looked at. */
    private static final Set<String> OPAQUE =
            Set.of("metadata", "script", "foreignObject", "filter", "linearGradient", "radialGradient", "font");

    /** A refusal with its problem code. */
    static final class Refused extends SAXException {
        private static final long serialVersionUID = 1L;

        Refused(String code) {
            super(code);
        }

        String code() {
            return getMessage();
        }
    }

    private final Map<String, Element> byId = new HashMap<>();
    private final Set<String> repeatedIds = new HashSet<>();
    private final List<Element> styleSheets = new ArrayList<>();
    private final StringBuilder generator = new StringBuilder();
    private Locator locator;
    private Element root;
    private Element current;

    /** The style, title or text element whose content is being collected. */
    private Element collecting;

    private int count;
    private int entityDepth;
    private boolean fromEntities;
    private boolean styledFromOutside;

    /** How deep we are inside an element that is not looked at. */
    private int skipping;

    Tree tree() {
        return new Tree(root, byId, repeatedIds, styleSheets, generator.toString(), fromEntities, styledFromOutside);
    }

    /** The line that was being read, from 1. */
    int line() {
        return locator == null ? 1 : Math.max(1, locator.getLineNumber());
    }

    @Override
    public void setDocumentLocator(Locator given) {
        locator = given;
    }

    @Override
    public void startElement(String namespace, String local, String qualified, Attributes given) throws SAXException {
        boolean svg = namespace.equals(Element.SVG);
        if (root == null && !(svg && local.equals("svg"))) {
            throw new Refused("not-svg");
        }
        boolean made = entityDepth > 0;
        fromEntities |= made;
        int index = made ? count - 1 : count++;
        if (skipping > 0) {
            skipping++;
            return;
        }
        Element element = new Element(svg ? local : "", index, current, made, given);
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

    @Override
    public void endElement(String namespace, String local, String qualified) {
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

    @Override
    public void characters(char[] text, int start, int length) {
        if (skipping > 0 || collecting == null) {
            return;
        }
        boolean style = collecting.name.equals("style");
        int room = style ? length : Math.min(length, LONGEST_LABEL - collecting.text.length());
        collecting.text.append(text, start, Math.max(0, room));
    }

    @Override
    public void comment(char[] text, int start, int length) {
        if (root == null && generator.length() < LONGEST_GENERATOR) {
            generator.append(text, start, Math.min(length, LONGEST_GENERATOR)).append('\n');
        }
    }

    @Override
    public void processingInstruction(String target, String data) {
        styledFromOutside |= target.equals("xml-stylesheet");
    }

    @Override
    public void startEntity(String name) {
        // The document type's own subset is announced in the same way.
        if (!name.startsWith("[")) {
            entityDepth++;
        }
    }

    @Override
    public void endEntity(String name) {
        if (!name.startsWith("[")) {
            entityDepth--;
        }
    }

    @Override
    public void externalEntityDecl(String name, String publicId, String systemId) throws SAXException {
        throw new Refused("external-entity");
    }

    @Override
    public void unparsedEntityDecl(String name, String publicId, String systemId, String notation) throws SAXException {
        throw new Refused("external-entity");
    }

    @Override
    public void attributeDecl(String element, String attribute, String type, String mode, String value)
            throws SAXException {
        if (value != null && !attribute.equals("xmlns") && !attribute.startsWith("xmlns:")) {
            throw new Refused("default-attribute");
        }
    }

    @Override
    public void skippedEntity(String name) throws SAXException {
        if (!name.equals("[dtd]")) {
            throw new Refused("entity-missing");
        }
    }

    @Override
    public InputSource resolveEntity(String name, String publicId, String base, String systemId) throws SAXException {
        throw new Refused("external-entity");
    }

    @Override
    public InputSource resolveEntity(String publicId, String systemId) throws SAXException {
        throw new Refused("external-entity");
    }

    @Override
    public void error(SAXParseException e) throws SAXException {
        throw e;
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXException {
        throw e;
    }
}
