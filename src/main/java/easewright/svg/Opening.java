package easewright.svg;

import easewright.geom.Affine;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is made of a file when it is opened: the drawing at its scale, and the pattern in it, by its marks or bare.
 *
 * @param findings about the drawing first, then about the marks
 */
record Opening(
        SourceText source,
        Drawing drawing,
        DrawnGeometry drawn,
        Pattern pattern,
        Opening.MarksState marks,
        List<Finding> findings) {
    /** A page whose scale is off the proved one by more than this part is told of. */
    private static final double PAGE_DIFFERS = 0.001;

    Opening {
        findings = List.copyOf(findings);
    }

    /**
     * The marks as found.
     *
     * @param block      the element that holds them, if there is exactly one
     * @param understood false if there is something that may hold marks but cannot be read as a whole
     * @param kept       elements that could not be used
     * @param page       what the page was before it was made larger
     * @param resting    marks of pieces in layers that are not read
     */
    record MarksState(
            Optional<Tag> block, boolean understood, List<KeptMark> kept, Optional<PageMark> page, Resting resting) {}

    /**
     * @param name the file's name, for problems
     */
    static Opening of(Markup markup, String name, ReadOptions options) throws SvgProblem {
        OptionalDouble mmPerUnit = options.mmPerUnit();
        Drawing drawing = DrawingReader.read(markup.tree(), name, options);
        SourceText source = markup.source();
        List<Finding> findings = new ArrayList<>();
        MarksState state =
                new MarksState(Optional.empty(), true, List.of(), Optional.empty(), Resting.NONE.or(options.resting()));
        List<Tag> blocks = MarkNode.blocks(source);
        Optional<MarkNode> block = Optional.empty();
        if (!blocks.isEmpty()) {
            block = block(source, blocks, findings);
            state = new MarksState(
                    block.map(b -> blocks.get(0)), block.isPresent(), List.of(), Optional.empty(), state.resting());
        }
        Optional<Scale> stated = block.flatMap(ScaleMark::in);
        boolean knownLine = stated.isPresent() && stated.get().proof() == Scale.Proof.KNOWN_LINE;
        if (mmPerUnit.isEmpty() && knownLine) {
            tellPage(drawing.scale(), stated.get(), findings);
            drawing = DrawingReader.read(
                    markup.tree(), name, options.withScale(stated.get().mmPerUnitX()));
        }
        DrawnGeometry drawn = new DrawnGeometry(drawing, rescaled(drawing, stated, mmPerUnit.isPresent()));
        findings.addAll(0, drawing.findings());
        Pattern pattern;
        if (block.isPresent()) {
            MarksReader.Marks read = MarksReader.read(block.get(), drawn);
            pattern = read.pattern();
            findings.addAll(read.findings());
            double factor = Math.sqrt(drawn.rescaled().determinant());
            if (factor != 1 && !StatedLengths.of(pattern).isEmpty()) {
                findings.add(Finding.of("stated-lengths-kept", Severity.CAUTION, "")
                        .with("count", StatedLengths.of(pattern).size())
                        .with("of.percent", 100 * factor));
            }
            state = new MarksState(
                    state.block(),
                    true,
                    read.kept(),
                    read.page(),
                    read.resting().or(options.resting()));
            Unmarked.tell(drawing, pattern, state, findings);
        } else {
            BarePattern bare = BarePattern.of(drawing);
            pattern = bare.pattern();
            findings.addAll(bare.findings());
            tellLayers(drawing, options, findings);
        }
        return new Opening(source, drawing, drawn, pattern, state, findings);
    }

    Opening withResting(Pattern pieces) {
        MarksState now = new MarksState(
                marks.block(),
                marks.understood(),
                marks.kept(),
                marks.page(),
                marks.resting().or(Optional.of(pieces)));
        return new Opening(source, drawing, drawn, pattern, now, findings);
    }

    private static Optional<MarkNode> block(SourceText source, List<Tag> blocks, List<Finding> findings) {
        if (blocks.size() > 1) {
            findings.add(Finding.of("marks-several", Severity.FAULT, "").with("count", blocks.size()));
            return Optional.empty();
        }
        try {
            MarkNode node = MarkNode.of(source, blocks.get(0));
            if (node.namespace().equals(MarkNode.NAMESPACE)) {
                return Optional.of(node);
            }
            findings.add(Finding.of("marks-version-unknown", Severity.FAULT, "")
                    .with("version", node.namespace().substring(MarkNode.FAMILY.length())));
        } catch (IllegalArgumentException e) {
            findings.add(Finding.of("marks-unreadable", Severity.FAULT, ""));
        }
        return Optional.empty();
    }

    private static Affine rescaled(Drawing drawing, Optional<Scale> stated, boolean calibrated) {
        if (!calibrated || stated.isEmpty()) {
            return Affine.IDENTITY;
        }
        Scale now = drawing.scale();
        return Affine.scaling(
                now.mmPerUnitX() / stated.get().mmPerUnitX(),
                now.mmPerUnitY() / stated.get().mmPerUnitY());
    }

    /** A page that says otherwise was made larger or smaller since, or by whoever never read the marks. */
    private static void tellPage(Scale page, Scale proved, List<Finding> findings) {
        double of = page.mmPerUnitX() / proved.mmPerUnitX();
        if (page.proof() == Scale.Proof.PHYSICAL_SIZE && Math.abs(of - 1) > PAGE_DIFFERS) {
            findings.add(Finding.of("scale-page-differs", Severity.CAUTION, "").with("of.percent", 100 * of));
        }
    }

    /** Several layers with outlines are often the sizes of a nest, of which one is wanted. */
    private static void tellLayers(Drawing drawing, ReadOptions options, List<Finding> findings) {
        List<String> names = drawing.layers().stream()
                .filter(layer -> layer.outlines() > 0)
                .map(Layer::name)
                .toList();
        if (names.size() > 1 && options.layers().isEmpty()) {
            findings.add(Finding.of("layers-to-choose", Severity.NOTE, "").with("names", names));
        }
    }
}
