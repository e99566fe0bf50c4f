package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Goes through the tree in painting order, without recursion, and collects the visible shapes. Copies made by
 * {@code use} are cut where they go in circles and limited in number.
 */
final class Walker {
    /** Deepest chain of use elements that is followed. */
    private static final int DEEPEST_USE = 64;

    /** Most elements drawn through use. */
    private static final int MOST_COPIES = 100_000;

    /** Most segments in a drawing: some hundred times a large nest of sizes. */
    static final int MOST_SEGMENTS = 1_000_000;

    /** Longest path data or list of points that is read, characters. */
    private static final int LONGEST_DATA = 8_000_000;

    /** Nothing on a cutting table is this far away, mm. */
    private static final double FARTHEST = 1e6;

    /** Words and where they are anchored, mm. */
    record Writing(Point at, Caption caption) {}

    private final Tree tree;
    private final Styles styles;
    private final Notes notes;
    private final ShapeNames names;
    private final Deque<Frame> waiting = new ArrayDeque<>();
    private final List<DrawnShape> shapes = new ArrayList<>();
    private final List<Writing> writings = new ArrayList<>();
    private int copies;
    private int segments;

    Walker(Tree tree, Styles styles, Notes notes) {
        this.tree = tree;
        this.styles = styles;
        this.notes = notes;
        this.names = new ShapeNames(tree);
    }

    List<DrawnShape> shapes() {
        return shapes;
    }

    List<Writing> writings() {
        return writings;
    }

    /** Draws everything inside the root. */
    void walk(RootScale scale) throws TooMuch {
        Element root = tree.root();
        Map<String, String> style = styles.of(root);
        if (hidden(root, style)) {
            return;
        }
        boolean shown = visible(root, style, true);
        pushChildren(root, new Frame(root, scale.toMm(), scale.width(), scale.height(), shown, List.of(), null, false));
        while (!waiting.isEmpty()) {
            draw(waiting.pop());
        }
    }

    /** The drawing has more segments than any pattern. */
    static final class TooMuch extends Exception {
        private static final long serialVersionUID = 1L;
    }

    private void pushChildren(Element parent, Frame inherited) {
        for (int i = parent.children.size() - 1; i >= 0; i--) {
            push(parent.children.get(i), inherited);
        }
    }

    private void push(Element child, Frame inherited) {
        waiting.push(inherited.child(
                child,
                inherited.toMm(),
                inherited.viewportWidth(),
                inherited.viewportHeight(),
                inherited.visible(),
                inherited.layers()));
    }

    private void draw(Frame frame) throws TooMuch {
        Element element = frame.element();
        if (frame.via() != null && ++copies > MOST_COPIES) {
            notes.add("too-many-copies", Severity.FAULT, "");
            return;
        }
        if (!drawable(element, frame.target())) {
            return;
        }
        Map<String, String> style = styles.of(element);
        if (hidden(element, style)) {
            return;
        }
        Optional<Affine> own = ElementTransform.of(element, style, notes, nameOf(element));
        if (own.isEmpty()) {
            return;
        }
        Affine toMm = frame.toMm().after(own.get());
        boolean shown = visible(element, style, frame.visible());
        Frame inner = frame.child(element, toMm, frame.viewportWidth(), frame.viewportHeight(), shown, frame.layers());
        switch (element.name) {
            case "g", "a" -> pushChildren(element, within(inner));
            case "svg", "symbol" ->
                Viewport.of(frame, style, toMm, notes)
                        .ifPresent(viewport -> pushChildren(
                                element,
                                within(inner.child(
                                        element,
                                        viewport.toMm(),
                                        viewport.width(),
                                        viewport.height(),
                                        shown,
                                        frame.layers()))));
            case "switch" ->
                element.children.stream()
                        .filter(child -> !child.name.isEmpty() && conditionsHold(child))
                        .findFirst()
                        .ifPresent(child -> push(child, inner));
            case "use" -> use(inner, style);
            case "text" -> write(inner);
            default -> {
                if (shown) {
                    shape(inner, style);
                }
            }
        }
    }

    private static Frame within(Frame inner) {
        List<String> layers = ShapeNames.layersWithin(inner.element(), inner.layers());
        return inner.child(
                inner.element(), inner.toMm(), inner.viewportWidth(), inner.viewportHeight(), inner.visible(), layers);
    }

    private static boolean drawable(Element element, boolean target) {
        boolean known = switch (element.name) {
            case "g", "a", "svg", "switch", "use", "text" -> true;
            case "symbol" -> target;
            default -> ShapeGeometry.draws(element.name);
        };
        return known && conditionsHold(element);
    }

    /** Conditional processing: nothing beyond SVG itself is supported, and English is spoken. */
    private static boolean conditionsHold(Element element) {
        String extensions = element.get("requiredExtensions");
        String language = element.get("systemLanguage");
        return (extensions == null || extensions.isBlank())
                && (language == null || language.strip().startsWith("en") || language.contains(",en"));
    }

    private static boolean hidden(Element element, Map<String, String> style) {
        String display = style.getOrDefault("display", element.get("display"));
        return display != null && display.strip().equalsIgnoreCase("none");
    }

    private static boolean visible(Element element, Map<String, String> style, boolean inherited) {
        String visibility = style.getOrDefault("visibility", element.get("visibility"));
        if (visibility == null) {
            return inherited;
        }
        return switch (visibility.strip().toLowerCase(Locale.ROOT)) {
            case "visible" -> true;
            case "hidden", "collapse" -> false;
            default -> inherited;
        };
    }

    private void use(Frame frame, Map<String, String> style) {
        Element use = frame.element();
        String href = use.href() == null ? "" : use.href().strip();
        Element target = href.startsWith("#") ? tree.byId().get(href.substring(1)) : null;
        if (target == null) {
            boolean outside = !href.isEmpty() && !href.startsWith("#");
            notes.add(outside ? "use-outside" : "use-missing", Severity.CAUTION, nameOf(use));
            return;
        }
        int depth = frame.via() == null ? 1 : frame.via().depth() + 1;
        if (Frame.Via.circles(frame.via(), use, target)) {
            notes.add("use-in-circles", Severity.CAUTION, nameOf(use));
            return;
        }
        if (depth > DEEPEST_USE) {
            notes.add("use-too-deep", Severity.CAUTION, "");
            return;
        }
        Optional<Point> at = Viewport.corner(use, style, frame.viewportWidth(), frame.viewportHeight());
        if (at.isEmpty()) {
            notes.add(Finding.of("number-unreadable", Severity.CAUTION, nameOf(use))
                    .with("what", "x"));
            return;
        }
        waiting.push(new Frame(
                target,
                frame.toMm().after(Affine.translation(at.get())),
                frame.viewportWidth(),
                frame.viewportHeight(),
                frame.visible(),
                frame.layers(),
                new Frame.Via(use, target, frame.via(), depth),
                true));
    }

    private void shape(Frame frame, Map<String, String> style) throws TooMuch {
        Element element = frame.element();
        Element source = frame.via() == null ? element : outermost(frame.via());
        ShapeGeometry geometry = new ShapeGeometry(
                element, style, frame.toMm(), frame.viewportWidth(), frame.viewportHeight(), nameOf(source), notes);
        String data = element.get(element.name.equals("path") ? "d" : "points");
        if (data != null && data.length() > LONGEST_DATA) {
            throw new TooMuch();
        }
        List<SubPath> drawn;
        try {
            drawn = geometry.subPaths();
        } catch (IllegalArgumentException beyondNumbers) {
            notes.add("out-of-range", Severity.CAUTION, nameOf(source));
            return;
        }
        if (drawn.isEmpty()) {
            return;
        }
        for (SubPath one : drawn) {
            segments += one.segments().size();
        }
        if (segments > MOST_SEGMENTS) {
            throw new TooMuch();
        }
        if (farAway(drawn)) {
            notes.add("out-of-range", Severity.CAUTION, nameOf(source));
            return;
        }
        boolean flat = frame.toMm().isSingular();
        if (flat) {
            notes.add("transform-flattens", Severity.CAUTION, nameOf(source));
        }
        String id = frame.via() == null ? names.idOf(element) : names.idOfCopy(source);
        List<SubPath> closed = new ArrayList<>(drawn.size());
        for (SubPath one : drawn) {
            closed.add(Closing.of(one, nameOf(source), notes));
        }
        String label = ShapeNames.label(source);
        shapes.add(new DrawnShape(
                element.index,
                id,
                frame.via() == null && names.given(element),
                element.name,
                label.isEmpty() ? ShapeNames.label(element) : label,
                frame.layers(),
                closed,
                frame.toMm(),
                frame.via() == null && !flat && !element.fromEntity && !geometry.styled()));
    }

    private static Element outermost(Frame.Via via) {
        Frame.Via each = via;
        while (each.outer() != null) {
            each = each.outer();
        }
        return each.use();
    }

    private static boolean farAway(List<SubPath> drawn) {
        return drawn.stream()
                .flatMap(one -> one.segments().stream())
                .anyMatch(segment -> farAway(segment.start()) || farAway(segment.end()));
    }

    private static boolean farAway(Point p) {
        return Math.abs(p.x()) > FARTHEST || Math.abs(p.y()) > FARTHEST;
    }

    private void write(Frame frame) {
        Element text = frame.element();
        String words = ShapeNames.clean(text.text == null ? "" : text.text.toString());
        if (words.isEmpty() || !frame.visible()) {
            return;
        }
        Element placed = text;
        if (text.get("x") == null && text.get("y") == null) {
            placed = text.children.stream()
                    .filter(child -> child.name.equals("tspan"))
                    .findFirst()
                    .orElse(text);
        }
        try {
            Viewport.corner(placed, Map.of(), frame.viewportWidth(), frame.viewportHeight())
                    .ifPresent(at -> writings.add(
                            new Writing(frame.toMm().apply(at), new Lettering(text, styles).caption(at, frame))));
        } catch (IllegalArgumentException beyondNumbers) {
            // A text off the page names nothing.
            return;
        }
    }

    private static String nameOf(Element element) {
        String label = ShapeNames.label(element);
        if (!label.isEmpty()) {
            return label;
        }
        String id = ShapeNames.readable(element.id());
        return id.isEmpty() ? "shape-" + element.index : id;
    }
}
