package easewright.svg;

import java.io.ByteArrayInputStream;
import java.io.CharConversionException;
import java.io.IOException;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;

/**
 * The only door through which XML comes in. The JDK's own parser is named explicitly, so that nothing on the class
 * path can replace it; it fetches nothing, and every limit is set here rather than left to the JDK's version. A
 * DOCTYPE is allowed, since everyday files carry one; whatever would make the file depend on something outside it is
 * refused rather than silently dropped, because a path that lost an entity would measure wrong.
 */
final class SafeXml {
    private static final String LIMITS = "http://www.oracle.com/xml/jaxp/properties/";

    /** Deepest nesting of elements that is read. */
    static final int DEEPEST = 256;

    /** A declaration that begins later than this is not looked for, bytes. */
    private static final int PROLOG = 1 << 16;

    private SafeXml() {}

    /**
     * The tree of a drawing.
     *
     * @param plain XML text, not packed
     * @param name  the file's name, for problems
     */
    static Tree read(byte[] plain, String name) throws SvgProblem {
        TreeBuilder builder = new TreeBuilder();
        ParserEvents events = new ParserEvents(builder);
        requireWholeDoctype(plain, name);
        try {
            play(plain, events);
        } catch (OwnEvents.Refused e) {
            throw problem(e.code(), name, events, e);
        } catch (SAXParseException e) {
            throw parseProblem(e, name);
        } catch (SAXException e) {
            throw problem("not-well-formed", name, events, e);
        } catch (UnsupportedEncodingException e) {
            throw problem("encoding-unknown", name, events, e);
        } catch (CharConversionException e) {
            throw problem("encoding-broken", name, events, e);
        } catch (IOException e) {
            throw problem("not-well-formed", name, events, e);
        }
        return builder.tree();
    }

    /** Reads a drawing that was read to a tree before, with the same limits, for whoever looks at it in another way. */
    static void play(byte[] plain, OwnEvents handler) throws SAXException, IOException {
        XMLReader reader = parser().getXMLReader();
        reader.setContentHandler(handler);
        reader.setDTDHandler(handler);
        reader.setEntityResolver(handler);
        reader.setErrorHandler(handler);
        reader.setProperty("http://xml.org/sax/properties/lexical-handler", handler);
        reader.setProperty("http://xml.org/sax/properties/declaration-handler", handler);
        reader.parse(new InputSource(new ByteArrayInputStream(plain)));
    }

    /**
     * The JDK's parser prints a stack trace of its own where the file ends within the declaration. Taken byte by byte,
     * without the zeros of UTF-16, the signs that matter here read the same in every encoding it knows.
     */
    private static void requireWholeDoctype(byte[] plain, String name) throws SvgProblem {
        String start = rough(plain, Math.min(plain.length, PROLOG));
        // Nearly every declaration ends within the start; the whole file is looked through only where it does not.
        if (start.contains("<!DOCTYPE")
                && !TagScanner.doctypeEnds(start)
                && !TagScanner.doctypeEnds(rough(plain, plain.length))) {
            throw new SvgProblem("not-well-formed", Map.of("file", name, "line", 1, "column", 1), null);
        }
    }

    private static String rough(byte[] plain, int length) {
        return new String(plain, 0, length, StandardCharsets.ISO_8859_1).replace("\0", "");
    }

    private static SAXParser parser() throws SAXException {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setValidating(false);
            factory.setXIncludeAware(false);
            SAXParser parser = factory.newSAXParser();
            // On the reader: the factory would make a parser for each of them only to try it.
            XMLReader reader = parser.getXMLReader();
            reader.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            reader.setFeature("http://xml.org/sax/features/external-general-entities", false);
            reader.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            reader.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            parser.setProperty(LIMITS + "entityExpansionLimit", "1000");
            parser.setProperty(LIMITS + "totalEntitySizeLimit", "1000000");
            parser.setProperty(LIMITS + "maxGeneralEntitySizeLimit", "100000");
            parser.setProperty(LIMITS + "maxElementDepth", String.valueOf(DEEPEST));
            parser.setProperty(LIMITS + "elementAttributeLimit", "1000");
            return parser;
        } catch (ParserConfigurationException e) {
            // The JDK's parser has all of these; without one of them reading would not be safe.
            throw new IllegalStateException("This Java has no safe XML parser", e);
        }
    }

    private static SvgProblem parseProblem(SAXParseException e, String name) {
        String message = String.valueOf(e.getMessage());
        Map<String, Object> values = new TreeMap<>();
        values.put("file", name);
        values.put("line", Math.max(1, e.getLineNumber()));
        values.put("column", Math.max(1, e.getColumnNumber()));
        // The JDK's own codes for its limits; the wording varies with the language of the machine.
        if (message.contains("maxElementDepth") || message.contains("JAXP00010006")) {
            values.put("depth", DEEPEST);
            return new SvgProblem("too-deep", values, e);
        }
        if (message.contains("JAXP0001")) {
            return new SvgProblem("too-much", values, e);
        }
        if (e.getException() instanceof CharConversionException) {
            return new SvgProblem("encoding-broken", values, e);
        }
        return new SvgProblem("not-well-formed", values, e);
    }

    private static SvgProblem problem(String code, String name, ParserEvents events, Exception cause) {
        return new SvgProblem(code, Map.of("file", name, "line", events.line(), "column", 1), cause);
    }
}
