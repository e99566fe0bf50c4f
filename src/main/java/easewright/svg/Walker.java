package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Goes through the tree in painting order, without recursion, and hands over what is drawn. Copies made by
 * {@code use} are cut where they go in circles and limited in number.
 */
final class Walker {
    /** Deepest chain of use elements that is followed. */
    private static final int DEEPEST_USE = 64;

    /** Most elements drawn through use. */
    private static final int MOST_COPIES = 100_000;

    private final Tree tree;
    private final Styles styles;
    private final Notes notes;
    private final Notes unsaid = new Notes();
    private final ReadOptions options;
    private final ShapeNames names;
    private final ShapeCollector shapes;
    private final PictureCollector pictures = new PictureCollector();
    private final Deque<Frame> waiting = new ArrayDeque<>();
    private final List<Writings.Writing> writings = new ArrayList<>();
    private int copies;
    private boolean clipped;

    /**
     * @param options which layers to read
     */
    Walker(Tree tree, Styles styles, ReadOptions options, Notes notes) {
        this.tree = tree;
        this.styles = styles;
        this.notes = notes;
        this.options = options;
        this.names = new ShapeNames(tree);
        this.shapes = new ShapeCollector(names);
    }

    List<DrawnShape> shapes() {
        return shapes.found();
    }

    List<Picture> pictures() {
        return pictures.found();
    }

    List<Writings.Writing> writings() {
        return writings;
    }

    /** Draws everything inside the root. */
    void walk(RootScale scale) throws ShapeCollector.TooMuch {
        Element root = tree.root();
        Sight sight = new Sight(true, true, options.layers().isEmpty()).inside(root, styles.of(root), false);
        pushChildren(new Frame(root, scale.toMm(), scale.width(), scale.height(), sight, List.of(), null, false));
        while (!waiting.isEmpty()) {
            draw(waiting.pop());
        }
        if (clipped) {
            notes.add("clip-ignored", Severity.NOTE, "");
        }
    }

    private void pushChildren(Frame parent) {
        List<Element> children = parent.element().children;
        for (int i = children.size() - 1; i >= 0; i--) {
            waiting.push(parent.child(children.get(i)));
        }
    }

    private void draw(Frame frame) throws ShapeCollector.TooMuch {
        Element element = frame.element();
        if (frame.via() != null && ++copies > MOST_COPIES) {
            notes.add("too-many-copies", Severity.FAULT, "");
            return;
        }
        if (!drawable(element, frame.target())) {
            return;
        }
        Map<String, String> style = styles.of(element);
        List<DrawnShape.Group> groups =
                holdsOthers(element) ? names.groupsWithin(element, frame.groups()) : frame.groups();
        String layer = groups.size() > frame.groups().size()
                ? groups.get(groups.size() - 1).key()
                : "";
        boolean asked = options.layers().contains(layer) || options.besides().contains(layer);
        Sight around = options.without().contains(layer) ? frame.sight().unchosen() : frame.sight();
        Sight sight = around.inside(element, style, asked);
        Notes heard = sight.matters() ? notes : unsaid;
        Optional<Affine> own = ElementTransform.of(frame, style, heard);
        if (own.isEmpty()) {
            return;
        }
        Frame inner = frame.at(frame.toMm().after(own.get()), sight).within(groups);
        clipped |= sight.shown() && clips(element, style);
        switch (element.name) {
            case "g", "a" -> pushChildren(inner);
            case "svg", "symbol" ->
                Viewport.of(frame, style, inner.toMm(), heard).ifPresent(v -> pushChildren(inner.in(v)));
            case "switch" ->
                element.children.stream()
                        .filter(child -> !child.name.isEmpty() && conditionsHold(child))
                        .findFirst()
                        .ifPresent(child -> waiting.push(inner.child(child)));
            case "use" -> use(inner, style, heard);
            case "text" -> write(inner);
            case "image" -> pictures.add(inner, style, heard);
            default -> shapes.add(inner, style, heard);
        }
    }

    private static boolean holdsOthers(Element element) {
        return switch (element.name) {
            case "g", "a", "svg", "symbol" -> true;
            default -> false;
        };
    }

    private static boolean drawable(Element element, boolean target) {
        boolean known = switch (element.name) {
            case "g", "a", "svg", "switch", "use", "text", "image" -> true;
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

    private static boolean clips(Element element, Map<String, String> style) {
        return refers(style.getOrDefault("clip-path", element.get("clip-path")))
                || refers(style.getOrDefault("mask", element.get("mask")));
    }

    private static boolean refers(String value) {
        return value != null && value.strip().startsWith("url(");
    }

    private void use(Frame frame, Map<String, String> style, Notes heard) {
        Element use = frame.element();
        String href = use.href() == null ? "" : use.href().strip();
        Element target = href.startsWith("#") ? tree.byId().get(href.substring(1)) : null;
        if (target == null) {
            boolean outside = !href.isEmpty() && !href.startsWith("#");
            heard.add(outside ? "use-outside" : "use-missing", Severity.CAUTION, ShapeNames.called(use));
            return;
        }
        int depth = frame.via() == null ? 1 : frame.via().depth() + 1;
        if (Frame.Via.circles(frame.via(), use, target)) {
            heard.add("use-in-circles", Severity.CAUTION, ShapeNames.called(use));
            return;
        }
        if (depth > DEEPEST_USE) {
            heard.add("use-too-deep", Severity.CAUTION, "");
            return;
        }
        Optional<Point> at = Viewport.corner(use, style, frame.viewportWidth(), frame.viewportHeight());
        if (at.isEmpty()) {
            heard.add(Finding.of("number-unreadable", Severity.CAUTION, ShapeNames.called(use))
                    .with("what", "x"));
            return;
        }
        waiting.push(new Frame(
                target,
                frame.toMm().after(Affine.translation(at.get())),
                frame.viewportWidth(),
                frame.viewportHeight(),
                frame.sight(),
                frame.groups(),
                new Frame.Via(use, target, frame.via(), depth),
                true));
    }

    private void write(Frame frame) {
        Element text = frame.element();
        String words = ShapeNames.clean(text.text == null ? "" : text.text.toString());
        if (words.isEmpty() || !frame.sight().shown()) {
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
                    .ifPresent(at -> writings.add(new Writings.Writing(
                            frame.toMm().apply(at), new Lettering(text, styles).caption(at, frame))));
        } catch (IllegalArgumentException beyondNumbers) {
            // A text off the page names nothing.
            return;
        }
    }
}
