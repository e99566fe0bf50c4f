package easewright.svg;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads the outlines of an SVG file. Opens nothing but the bytes it is given. */
public final class DrawingReader {
    private DrawingReader() {}

    /** Reads a drawing at the scale that the file states. */
    public static Drawing read(byte[] bytes, String name) throws SvgProblem {
        return read(bytes, name, ReadOptions.AS_FILED);
    }

    /**
     * Reads a drawing at a scale.
     *
     * @param mmPerUnit what a line of known length shows: mm per user unit of the root element, if anything
     * @throws IllegalArgumentException if {@code mmPerUnit} is not above 0
     */
    public static Drawing read(byte[] bytes, String name, OptionalDouble mmPerUnit) throws SvgProblem {
        return read(
                bytes,
                name,
                mmPerUnit.isPresent() ? ReadOptions.AS_FILED.withScale(mmPerUnit.getAsDouble()) : ReadOptions.AS_FILED);
    }

    /**
     * Reads a drawing.
     *
     * @param bytes the file's content, as SVG or as SVG packed by gzip
     * @param name  the file's name, for messages
     * @throws SvgProblem if the content is no drawing that can be read safely
     */
    public static Drawing read(byte[] bytes, String name, ReadOptions options) throws SvgProblem {
        return read(Markup.of(PlainBytes.of(bytes, name), name).tree(), name, options);
    }

    static Drawing read(Tree tree, String name, ReadOptions options) throws SvgProblem {
        Notes notes = new Notes();
        Styles styles = new Styles(tree);
        Map<String, String> rootStyle = styles.of(tree.root());
        RootScale scale = RootScale.of(tree, rootStyle, options.mmPerUnit(), notes);
        if (styles.doubtful()
                || rootStyle.containsKey("transform")
                || tree.root().get("transform") != null) {
            notes.add("style-unread", Severity.CAUTION, "");
        }
        if (styles.outside() || tree.styledFromOutside()) {
            notes.add("style-outside", Severity.CAUTION, "");
        }
        if (tree.fromEntities()) {
            notes.add("made-by-entities", Severity.CAUTION, "");
        }
        for (String id : tree.repeatedIds()) {
            notes.add(Finding.of("same-id", Severity.CAUTION, ShapeNames.clean(id)));
        }
        Walker walker = new Walker(tree, styles, options, notes);
        try {
            walker.walk(scale);
        } catch (Selector.Effort.TooMuch e) {
            throw new SvgProblem("too-much-style", Map.of("file", name), e);
        } catch (ShapeCollector.TooMuch e) {
            throw new SvgProblem("too-many-segments", Map.of("file", name, "most", ShapeCollector.MOST_SEGMENTS), e);
        }
        JoinedLines joined = LineJoiner.find(walker.shapes());
        Writings.Named named = Writings.name(walker.shapes(), joined.outlines(), walker.writings());
        OpenOutlines.tell(named.shapes(), named.joined(), walker.writings(), notes);
        List<Layer> layers = Layer.of(tree, new ShapeNames(tree), named.shapes());
        if (named.shapes().stream().noneMatch(DrawnShape::shown)) {
            notes.add("no-outlines", Severity.FAULT, "");
        }
        List<ScaleProposal> proposals = ScaleSigns.of(scale, tree, named.shapes(), walker.writings(), notes);
        return new Drawing(
                named.shapes(),
                joined.withOutlines(named.joined()),
                layers,
                walker.pictures(),
                scale.scale(),
                proposals,
                notes.all(),
                scale.toMm(),
                scale.page(),
                scale.paperUnit(),
                walker.writings().stream().map(Writings.Writing::caption).toList());
    }
}
