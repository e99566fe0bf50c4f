package easewright.backdrop;

import easewright.geom.Affine;
import easewright.svg.Scenery;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Builds the document that is painted, in millimetres of the drawing. */
final class SceneryDocument implements Scenery {
    private static final String SVG = SVGDOMImplementation.SVG_NAMESPACE_URI;
    static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final Pattern REFERENCE = Pattern.compile("url\\(#([^)]+)\\)");
    private static final Set<String> PAINTS = Set.of("linearGradient", "radialGradient");

    private final Document document;
    private final Deque<Element> open = new ArrayDeque<>();
    private final Map<String, String> kinds = new HashMap<>();
    private final List<Element> referring = new ArrayList<>();

    private SceneryDocument() {
        DOMImplementation maker = SVGDOMImplementation.getDOMImplementation();
        document = maker.createDocument(SVG, "svg", null);
    }

    static Document of(SvgFile svg, Set<String> without) throws SvgProblem {
        SceneryDocument scenery = new SceneryDocument();
        Element root = scenery.document.getDocumentElement();
        // Large enough never to cut anything off; the origin is the page's corner, and some draw beyond it.
        root.setAttributeNS(null, "width", "1000000");
        root.setAttributeNS(null, "height", "1000000");
        root.setAttributeNS(null, "style", "overflow:visible");
        Element scaled = scenery.document.createElementNS(SVG, "g");
        scaled.setAttributeNS(null, "transform", matrix(svg.drawing().rootToMm()));
        root.appendChild(scaled);
        scenery.open.push(scaled);
        svg.show(scenery, without);
        scenery.forgetWhatIsNotThere();
        return scenery.document;
    }

    private static String matrix(Affine map) {
        return "matrix(" + map.a() + " " + map.b() + " " + map.c() + " " + map.d() + " " + map.e() + " " + map.f()
                + ")";
    }

    @Override
    public void start(String name, Map<String, String> attributes) {
        Element element = document.createElementNS(SVG, name);
        attributes.forEach((key, value) -> {
            if (key.equals("href")) {
                element.setAttributeNS(XLINK, "xlink:href", value);
            } else {
                element.setAttributeNS(null, key, value);
            }
        });
        if (attributes.containsKey("id")) {
            kinds.putIfAbsent(attributes.get("id"), name);
        }
        if (attributes.values().stream().anyMatch(v -> v.contains("url(#")) || attributes.containsKey("href")) {
            referring.add(element);
        }
        if (name.equals("text") || name.equals("tspan")) {
            // Letters are filled: the outline of each, dashed, is what a hostile file would make of them.
            element.setAttributeNS(null, "style", attributes.getOrDefault("style", "") + ";stroke:none");
        }
        open.element().appendChild(element);
        open.push(element);
    }

    @Override
    public void words(String words) {
        open.element().appendChild(document.createTextNode(words));
    }

    @Override
    public void end() {
        open.pop();
    }

    @Override
    public void rules(String css) {
        Element style = document.createElementNS(SVG, "style");
        style.setAttributeNS(null, "type", "text/css");
        style.appendChild(document.createTextNode(css));
        document.getDocumentElement().appendChild(style);
    }

    /** A reference to what does not come, such as a pattern, would stop the painting of its element. */
    private void forgetWhatIsNotThere() {
        for (Element element : referring) {
            String href = element.getAttributeNS(XLINK, "href");
            if (!href.isEmpty() && !kinds.containsKey(href.substring(1))) {
                element.removeAttributeNS(XLINK, "href");
            }
            for (String name : List.of("fill", "stroke", "marker-start", "marker-end")) {
                if (isLost(name, element.getAttributeNS(null, name))) {
                    element.removeAttributeNS(null, name);
                }
            }
            StringBuilder style = new StringBuilder();
            for (String declaration : element.getAttributeNS(null, "style").split(";")) {
                int colon = declaration.indexOf(':');
                if (colon > 0 && !isLost(declaration.substring(0, colon).strip(), declaration)) {
                    style.append(declaration).append(';');
                }
            }
            element.setAttributeNS(null, "style", style.toString());
        }
    }

    private boolean isLost(String property, String value) {
        Matcher reference = REFERENCE.matcher(value);
        if (!reference.find()) {
            return false;
        }
        String kind = kinds.getOrDefault(reference.group(1), "");
        return property.startsWith("marker") ? !kind.equals("marker") : !PAINTS.contains(kind);
    }
}
