package easewright.svg;

import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/**
 * What the JDK's parser reads of a drawing, from its own text alone: nothing outside it is fetched, no error is passed
 * over, and it is known what an entity made, which has no number of its own among the elements.
 */
abstract class OwnEvents extends DefaultHandler2 {
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

    private int entityDepth;

    /** Whether what is being read comes out of an entity. */
    final boolean inEntity() {
        return entityDepth > 0;
    }

    /** The document type's own subset is announced in the same way as an entity, and is none. */
    private static boolean isEntity(String name) {
        return !name.startsWith("[");
    }

    @Override
    public final void startEntity(String name) {
        if (isEntity(name)) {
            entityDepth++;
        }
    }

    @Override
    public final void endEntity(String name) {
        if (isEntity(name)) {
            entityDepth--;
        }
    }

    @Override
    public final InputSource resolveEntity(String name, String publicId, String base, String systemId)
            throws SAXException {
        throw new Refused("external-entity");
    }

    @Override
    public final InputSource resolveEntity(String publicId, String systemId) throws SAXException {
        throw new Refused("external-entity");
    }

    @Override
    public final void error(SAXParseException e) throws SAXException {
        throw e;
    }

    @Override
    public final void fatalError(SAXParseException e) throws SAXException {
        throw e;
    }
}
