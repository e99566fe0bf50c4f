package easewright.svg;

import java.io.IOException;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;

/** Reads a drawing once more and hands on what may be seen of it. */
final class SceneryPlayer extends OwnEvents {
    /** More elements than this take too long to draw. */
    static final int MOST_ELEMENTS = 60_000;

    private static final int MOST_LETTERS = 200_000;
    private static final int MOST_STOPS = 64;

    private static final Set<String> SHAPES =
            Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");
    private static final Set<String> OTHERS = Set.of(
            "g",
            "a",
            "switch",
            "svg",
            "defs",
            "symbol",
            "use",
            "text",
            "tspan",
            "linearGradient",
            "radialGradient",
            "stop",
            "marker");
    private static final Set<String> REFERRING = Set.of("use", "linearGradient", "radialGradient");

    /** What says where an element lies; colours and pens are in {@link SceneryRules}. */
    private static final Set<String> PLACES = Set.of(
            "id",
            "class",
            "d",
            "points",
            "x",
            "y",
            "width",
            "height",
            "rx",
            "ry",
            "cx",
            "cy",
            "r",
            "x1",
            "y1",
            "x2",
            "y2",
            "dx",
            "dy",
            "fx",
            "fy",
            "offset",
            "transform",
            "gradientTransform",
            "gradientUnits",
            "spreadMethod",
            "viewBox",
            "preserveAspectRatio",
            "refX",
            "refY",
            "markerWidth",
            "markerHeight",
            "markerUnits",
            "orient");

    private final ReadOptions options;
    private final Set<Integer> hidden = new HashSet<>();
    private final Scenery to;
    private final StringBuilder sheet = new StringBuilder();
    private int count;
    private int emitted;
    private int letters;
    private int stops;
    private int skipping;
    private boolean inSheet;
    private String current = "";

    /** There are more elements than are shown. */
    private static final class TooLarge extends SAXException {
        private static final long serialVersionUID = 1L;
    }

    private SceneryPlayer(Drawing drawing, ReadOptions options, Set<String> without, Scenery to) {
        this.options = options;
        this.to = to;
        drawing.all().stream()
                .filter(s -> !s.shown() || without.contains(s.id()))
                .forEach(s -> hidden.add(s.element()));
        drawing.shapes().stream().filter(s -> !without.contains(s.id())).forEach(s -> hidden.remove(s.element()));
    }

    static void play(byte[] plain, String name, Drawing drawing, ReadOptions options, Set<String> without, Scenery to)
            throws SvgProblem {
        try {
            SafeXml.play(plain, new SceneryPlayer(drawing, options, without, to));
        } catch (TooLarge e) {
            throw new SvgProblem("scenery-large", Map.of("most", MOST_ELEMENTS), e);
        } catch (SAXException | IOException e) {
            throw new SvgProblem("not-well-formed", Map.of("file", name, "line", 1, "column", 1), e);
        }
    }

    @Override
    public void startElement(String namespace, String local, String qualified, Attributes given) throws SAXException {
        // Counted as when the drawing was read, so that elements have the same numbers.
        int index = inEntity() ? count - 1 : count++;
        if (skipping > 0 || inSheet) {
            skipping++;
            return;
        }
        if (namespace.equals(Element.SVG) && local.equals("style")) {
            inSheet = true;
            return;
        }
        boolean known = namespace.equals(Element.SVG) && (SHAPES.contains(local) || OTHERS.contains(local));
        if (!known || isLeftOut(local, index, given)) {
            skipping = 1;
            return;
        }
        if (++emitted > MOST_ELEMENTS) {
            throw new TooLarge();
        }
        boolean root = emitted == 1;
        current = root || local.equals("a") || local.equals("switch") ? "g" : local;
        to.start(current, root ? look(given, true) : attributes(local, given));
    }

    private boolean isLeftOut(String local, int index, Attributes given) {
        if (SHAPES.contains(local)) {
            return hidden.contains(index);
        }
        if (local.equals("stop")) {
            return ++stops > MOST_STOPS;
        }
        stops = 0;
        String key = key(index, given);
        boolean unasked = !options.layers().isEmpty() && "layer".equals(given.getValue("inkscape:groupmode"));
        return options.without().contains(key) || unasked && !options.layers().contains(key);
    }

    private static String key(int index, Attributes given) {
        String id = given.getValue("", "id");
        return id == null || id.isEmpty() ? "layer-" + index : id;
    }

    private Map<String, String> attributes(String local, Attributes given) {
        Map<String, String> kept =
                look(given, local.equals("g") && options.besides().contains(key(0, given)));
        for (int i = 0; i < given.getLength(); i++) {
            String name = given.getLocalName(i);
            if (given.getURI(i).isEmpty() && PLACES.contains(name)) {
                kept.put(name, given.getValue(i));
            }
            if (name.equals("href")
                    && REFERRING.contains(local)
                    && given.getValue(i).strip().matches("#[^\\s#]+")) {
                kept.put("href", given.getValue(i).strip());
            }
        }
        return kept;
    }

    /** Colours, pens and letters of an element. */
    private static Map<String, String> look(Attributes given, boolean seen) {
        Map<String, String> kept = new TreeMap<>();
        for (int i = 0; i < given.getLength(); i++) {
            String name = given.getLocalName(i);
            String value = given.getValue(i);
            if (given.getURI(i).isEmpty() && SceneryRules.isPlain(name, value)) {
                kept.put(name, value.strip());
            }
        }
        String style = given.getValue("", "style");
        if (style != null) {
            kept.put("style", SceneryRules.declarations(style));
        }
        for (String name : new String[] {"id", "class"}) {
            if (given.getValue("", name) != null) {
                kept.put(name, given.getValue("", name));
            }
        }
        if (seen) {
            // A layer that was asked for is seen though the drawing hides it.
            kept.put("style", kept.getOrDefault("style", "").replaceAll("display:[^;]*;", "") + "display:inline;");
        }
        return kept;
    }

    @Override
    public void endElement(String namespace, String local, String qualified) {
        if (skipping > 0) {
            skipping--;
        } else if (inSheet) {
            inSheet = false;
            to.rules(SceneryRules.sheet(sheet.toString()));
            sheet.setLength(0);
        } else {
            to.end();
        }
    }

    @Override
    public void characters(char[] text, int start, int length) {
        if (skipping > 0) {
            return;
        }
        if (inSheet) {
            sheet.append(text, start, length);
        } else if ((current.equals("text") || current.equals("tspan")) && letters < MOST_LETTERS) {
            letters += length;
            to.words(new String(text, start, length));
        }
    }
}
