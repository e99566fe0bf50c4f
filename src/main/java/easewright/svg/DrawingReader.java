package easewright.svg;

import easewright.pattern.Caption;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads the visible outlines of an SVG file. Opens nothing but the bytes it is given. */
public final class DrawingReader {
    private DrawingReader() {}

    /** Reads a drawing at the scale that the file states. */
    public static Drawing read(byte[] bytes, String name) throws SvgProblem {
        return read(bytes, name, OptionalDouble.empty());
    }

    /**
     * Reads a drawing.
     *
     * @param bytes     the file's content, as SVG or as SVG packed by gzip
     * @param name      the file's name, for messages
     * @param mmPerUnit what a line of known length shows: mm per user unit of the root element, if anything
     * @throws SvgProblem if the content is no drawing that can be read safely
     * @throws IllegalArgumentException if {@code mmPerUnit} is not above 0
     */
    public static Drawing read(byte[] bytes, String name, OptionalDouble mmPerUnit) throws SvgProblem {
        if (mmPerUnit.isPresent() && !(mmPerUnit.getAsDouble() > 0 && Double.isFinite(mmPerUnit.getAsDouble()))) {
            throw new IllegalArgumentException("Millimetres per unit must be above 0");
        }
        Tree tree = SafeXml.read(PlainBytes.of(bytes, name), name);
        Notes notes = new Notes();
        Styles styles = new Styles(tree);
        Map<String, String> rootStyle = styles.of(tree.root());
        RootScale scale = RootScale.of(tree, rootStyle, mmPerUnit, notes);
        if (styles.doubtful()
                || rootStyle.containsKey("transform")
                || tree.root().get("transform") != null) {
            notes.add("style-unread", Severity.CAUTION, "");
        }
        if (tree.fromEntities()) {
            notes.add("made-by-entities", Severity.CAUTION, "");
        }
        for (String id : tree.repeatedIds()) {
            notes.add(Finding.of("same-id", Severity.CAUTION, ShapeNames.clean(id)));
        }
        Walker walker = new Walker(tree, styles, notes);
        try {
            walker.walk(scale);
        } catch (Walker.TooMuch e) {
            throw new SvgProblem("too-many-segments", Map.of("file", name, "most", Walker.MOST_SEGMENTS), e);
        }
        List<DrawnShape> shapes = Writings.name(walker.shapes(), walker.writings());
        OpenOutlines.tell(shapes, notes);
        if (shapes.isEmpty()) {
            notes.add("no-outlines", Severity.FAULT, "");
        }
        List<Caption> captions =
                walker.writings().stream().map(Walker.Writing::caption).toList();
        return new Drawing(shapes, scale.scale(), notes.all(), scale.toMm(), scale.page(), captions);
    }
}
