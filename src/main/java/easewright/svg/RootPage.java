package easewright.svg;

import easewright.geom.Affine;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The page as the root element states it, attribute by attribute as it stands, and how it becomes larger: to the right
 * and downwards only, so that the upper left corner, from which all places are counted, stays where it is, and with the
 * very same scale.
 */
record RootPage(Optional<String> width, Optional<String> height, Optional<String> viewBox, Optional<String> aspect) {
    /** Free of lines beside what the page is made larger for, mm. */
    private static final double MARGIN = 20;

    /** So many sizes are tried until one gives the very same scale; mostly the first few do. */
    private static final int MOST_TRIED = 400;

    /** Places after the point that are tried for a size, before all that there are. */
    private static final int FEW_PLACES = 6;

    /** Empty where an attribute leans on entities, so that its text is not what it says. */
    static Optional<RootPage> of(Tag root) {
        List<Optional<Tag.Attribute>> all = List.of(
                root.attribute("width"),
                root.attribute("height"),
                root.attribute("viewBox"),
                root.attribute("preserveAspectRatio"));
        if (all.stream().flatMap(Optional::stream).anyMatch(Tag.Attribute::refers)) {
            return Optional.empty();
        }
        List<Optional<String>> raw =
                all.stream().map(a -> a.map(Tag.Attribute::raw)).toList();
        return Optional.of(new RootPage(raw.get(0), raw.get(1), raw.get(2), raw.get(3)));
    }

    /** How it is read, unless a style says otherwise. */
    RootScale read() {
        Notes unheard = new Notes();
        return RootScale.stated(
                width.flatMap(t -> RootScale.size(t, unheard)),
                height.flatMap(t -> RootScale.size(t, unheard)),
                box(),
                aspect.orElse(null),
                unheard);
    }

    Optional<ViewBox> box() {
        return viewBox.flatMap(ViewBox::parse);
    }

    /** Where it ends on the right or below, mm from its upper left corner; not a number where nothing says so. */
    private double end(boolean across) {
        RootScale read = read();
        Optional<ViewBox> box = box();
        if (box.isPresent() && read.page().isEmpty()) {
            return across
                    ? box.get().width() * read.toMm().a()
                    : box.get().height() * read.toMm().d();
        }
        return (across ? read.statedWidth() : read.statedHeight())
                .map(Length::mm)
                .orElseGet(
                        () -> read.page().map(p -> across ? p.maxX() : p.maxY()).orElse(Double.NaN));
    }

    /** Whether a place, mm from the upper left corner, is beyond the page or there is no page to be seen. */
    boolean lacks(double right, double below) {
        return !(right <= end(true) && below <= end(false));
    }

    /** Whether it reaches further right or down than another one does. */
    boolean reachesBeyond(RootPage other) {
        return end(true) > other.end(true) || end(false) > other.end(false);
    }

    /** The page, larger where it has to be; empty if it states no size, or none gives the very same scale. */
    Optional<RootPage> holding(double right, double below) {
        return grown(true, right).flatMap(wide -> wide.grown(false, below));
    }

    private Optional<RootPage> grown(boolean across, double wanted) {
        double end = end(across);
        if (Double.isNaN(end)) {
            return Optional.empty();
        }
        if (wanted <= end) {
            return Optional.of(this);
        }
        if (box().isEmpty()) {
            return sized(across, wanted + MARGIN);
        }
        // Best as it is, with more room at its end; else so that nothing is left over on the way to be laid in the
        // middle.
        return widened(across, wanted + MARGIN, List.of(viewBox.get()))
                .or(() -> widened(across, wanted + MARGIN, filled(across)));
    }

    /** Without a viewBox the scale does not hang on the size. */
    private Optional<RootPage> sized(boolean across, double mm) {
        Optional<Length> stated = across ? read().statedWidth() : read().statedHeight();
        return sizes(across, stated, Math.ceil(mm)).stream()
                .map(size -> with(across, size, viewBox))
                .findFirst();
    }

    private RootPage with(boolean across, Optional<String> size, Optional<String> box) {
        return across ? new RootPage(size, height, box, aspect) : new RootPage(width, size, box, aspect);
    }

    /** The page with so much room that its scale is the same to the last bit. */
    private Optional<RootPage> widened(boolean across, double mm, List<String> boxes) {
        RootScale was = read();
        double mmPerUnit = across ? was.toMm().a() : was.toMm().d();
        double end = end(across);
        Optional<Length> stated = across ? was.statedWidth() : was.statedHeight();
        // About a millimetre, in a round number of units.
        double step = Math.pow(10, Math.floor(Math.log10(1 / mmPerUnit)));
        double more = (mm - end) / mmPerUnit;
        for (int i = 0; i < MOST_TRIED; i++) {
            for (String boxText : boxes) {
                ViewBox box = ViewBox.parse(boxText).orElseThrow();
                double from = across ? box.width() : box.height();
                double units = Double.parseDouble(Decimals.rounded((Math.ceil((from + more) / step) + i) * step, 9));
                String larger = replaced(boxText, across ? 2 : 3, units);
                for (Optional<String> size : sizes(across, stated, end + (units - from) * mmPerUnit)) {
                    RootPage tried = with(across, size, Optional.of(larger));
                    RootScale now = tried.read();
                    if (now.toMm().equals(was.toMm()) && now.scale().equals(was.scale())) {
                        return Optional.of(tried);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** ViewBoxes that fill the axis without a rest, beginning where the page does. */
    private List<String> filled(boolean across) {
        Affine map = read().toMm();
        double mmPerUnit = across ? map.a() : map.d();
        double corner = (0 - (across ? map.e() : map.f())) / mmPerUnit;
        List<String> boxes = new ArrayList<>();
        for (double tried : new double[] {corner, Math.nextUp(corner), Math.nextDown(corner)}) {
            String filled = replaced(viewBox.orElseThrow(), across ? 0 : 1, tried);
            boxes.add(replaced(filled, across ? 2 : 3, end(across) / mmPerUnit));
        }
        return boxes;
    }

    /** Ways to write the size on an axis so that it comes to so many millimetres; as it stands where it says nothing. */
    private List<Optional<String>> sizes(boolean across, Optional<Length> stated, double mm) {
        Optional<String> text = across ? width : height;
        if (stated.isEmpty()) {
            return List.of(text);
        }
        double value = mm / new Length(1, stated.get().unit()).mm();
        Set<String> numbers = new LinkedHashSet<>();
        for (int places = 0; places <= FEW_PLACES; places++) {
            numbers.add(Decimals.rounded(value, places));
        }
        numbers.add(Decimals.exact(value));
        numbers.add(Decimals.exact(Math.nextUp(value)));
        numbers.add(Decimals.exact(Math.nextDown(value)));
        List<Optional<String>> sizes = new ArrayList<>();
        numbers.forEach(n -> sizes.add(text.map(t -> replaced(t, 0, Double.parseDouble(n)))));
        return sizes;
    }

    /** A text with one of its numbers changed and everything else as it stands. */
    private static String replaced(String text, int which, double value) {
        NumberScanner in = new NumberScanner(text);
        in.skipSpace();
        for (int i = 0; i < which; i++) {
            in.number();
            in.skipCommaSpace();
        }
        int from = in.at();
        in.number();
        return text.substring(0, from) + Decimals.exact(value) + text.substring(in.at());
    }

    /** What has to be written for another page, which states what this one does and perhaps more. */
    List<Edit> edits(Tag root, RootPage other) {
        List<Edit> edits = new ArrayList<>();
        StringBuilder more = new StringBuilder();
        edit(root, "width", width, other.width, edits, more);
        edit(root, "height", height, other.height, edits, more);
        edit(root, "viewBox", viewBox, other.viewBox, edits, more);
        if (!more.isEmpty()) {
            edits.add(new Edit(root.afterName(), root.afterName(), more.toString()));
        }
        return edits;
    }

    private static void edit(
            Tag root, String name, Optional<String> is, Optional<String> other, List<Edit> edits, StringBuilder more) {
        if (is.equals(other)) {
            return;
        }
        String value = other.orElseThrow();
        if (is.isEmpty()) {
            more.append(' ').append(name).append("=\"").append(value).append('"');
        } else {
            Tag.Attribute attribute = root.attribute(name).orElseThrow();
            edits.add(new Edit(attribute.valueFrom(), attribute.valueTo(), value));
        }
    }

    boolean statesTheSameAs(RootPage other) {
        return width.isPresent() == other.width.isPresent()
                && height.isPresent() == other.height.isPresent()
                && viewBox.isPresent() == other.viewBox.isPresent();
    }

    /** Spelt out, since what Java makes to compare records takes long in a short run. */
    @Override
    public boolean equals(Object other) {
        return other instanceof RootPage p
                && width.equals(p.width)
                && height.equals(p.height)
                && viewBox.equals(p.viewBox)
                && aspect.equals(p.aspect);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * width.hashCode() + height.hashCode()) + viewBox.hashCode();
    }
}
