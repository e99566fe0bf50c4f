package easewright.svg;

import java.nio.CharBuffer;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/**
 * Hands on to a tree builder what the JDK's parser reads, and refuses what would make the file depend on anything
 * outside it.
 */
final class ParserEvents extends DefaultHandler2 {
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

    private final TreeBuilder tree;
    private Locator locator;
    private boolean begun;
    private int entityDepth;

    ParserEvents(TreeBuilder tree) {
        this.tree = tree;
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
        if (!begun && !(namespace.equals(Element.SVG) && local.equals("svg"))) {
            throw new Refused("not-svg");
        }
        begun = true;
        String[] attributes = new String[tree.skips() ? 0 : 2 * given.getLength()];
        for (int i = 0; i < attributes.length; i += 2) {
            attributes[i] = Element.key(given.getURI(i / 2), given.getLocalName(i / 2));
            attributes[i + 1] = given.getValue(i / 2);
        }
        tree.start(namespace, local, attributes, entityDepth > 0);
    }

    @Override
    public void endElement(String namespace, String local, String qualified) {
        tree.end();
    }

    @Override
    public void characters(char[] text, int start, int length) {
        if (tree.collects()) {
            tree.text(CharBuffer.wrap(text, start, length));
        }
    }

    @Override
    public void comment(char[] text, int start, int length) {
        tree.comment(CharBuffer.wrap(text, start, length));
    }

    @Override
    public void processingInstruction(String target, String data) {
        tree.instruction(target);
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
