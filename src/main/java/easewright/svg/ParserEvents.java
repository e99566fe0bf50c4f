package easewright.svg;

import java.nio.CharBuffer;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;

/**
 * Hands on to a tree builder what the JDK's parser reads, and refuses declarations that would make the file depend on
 * anything outside it.
 */
final class ParserEvents extends OwnEvents {
    private final TreeBuilder tree;
    private Locator locator;
    private boolean begun;

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
        tree.start(namespace, local, attributes, inEntity());
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
}
