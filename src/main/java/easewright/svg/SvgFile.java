package easewright.svg;

import easewright.geom.Affine;
import easewright.pattern.Caption;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One SVG file, opened: its bytes, what they draw, and the pattern they hold. Immutable. Writing a changed pattern
 * touches only the changed elements' own attributes and our block of marks.
 */
public final class SvgFile {
    private final String name;
    private final byte[] bytes;
    private final SourceText source;
    private final Drawing drawing;
    private final DrawnGeometry drawn;
    private final Pattern pattern;
    private final MarksState marks;
    private final List<Finding> findings;

    /** What was said on opening. */
    private final ReadOptions options;

    /**
     * The marks as found.
     *
     * @param block      the element that holds them, if there is exactly one
     * @param understood false if there is something that may hold marks but cannot be read as a whole
     * @param kept       elements that could not be used
     */
    record MarksState(Optional<Tag> block, boolean understood, List<KeptMark> kept) {}

    private SvgFile(
            String name,
            byte[] bytes,
            SourceText source,
            Drawing drawing,
            DrawnGeometry drawn,
            Pattern pattern,
            MarksState marks,
            List<Finding> findings,
            ReadOptions options) {
        this.name = name;
        this.bytes = bytes;
        this.source = source;
        this.drawing = drawing;
        this.drawn = drawn;
        this.pattern = pattern;
        this.marks = marks;
        this.findings = List.copyOf(findings);
        this.options = options;
    }

    /**
     * Opens a file, plain or packed by gzip.
     *
     * @throws SvgProblem {@code file-missing}, {@code file-unreadable}, {@code too-large}, or why it is no drawing
     */
    public static SvgFile read(Path file) throws SvgProblem {
        try {
            if (Files.size(file) > PlainBytes.MOST) {
                throw new SvgProblem("too-large", Map.of("file", file.toString(), "megabytes", PlainBytes.MOST >> 20));
            }
            return opened(Files.readAllBytes(file), file.toString(), ReadOptions.AS_FILED);
        } catch (NoSuchFileException e) {
            throw new SvgProblem("file-missing", Map.of("file", file.toString()), e);
        } catch (IOException e) {
            throw new SvgProblem("file-unreadable", Map.of("file", file.toString()), e);
        }
    }

    /** Opens the content of a file. */
    public static SvgFile read(byte[] bytes, String name) throws SvgProblem {
        return read(bytes, name, ReadOptions.AS_FILED);
    }

    /**
     * Opens the content of a file as asked. If its scale is proved by a line of known length, the places of marks
     * already in the file are scaled along; lengths that people stated, such as allowances, stay what they are, and a
     * finding says so.
     */
    public static SvgFile read(byte[] bytes, String name, ReadOptions options) throws SvgProblem {
        return opened(bytes.clone(), name, options);
    }

    /** Opens bytes that nobody else will change. */
    private static SvgFile opened(byte[] bytes, String name, ReadOptions options) throws SvgProblem {
        return of(bytes, Markup.of(PlainBytes.of(bytes, name), name), name, options);
    }

    /** Opens what was just written, all of it read by the JDK's parser, which had no part in the writing. */
    static SvgFile proving(byte[] written, String name) throws SvgProblem {
        return of(written, Markup.parsed(PlainBytes.of(written, name), name), name, ReadOptions.AS_FILED);
    }

    private static SvgFile of(byte[] bytes, Markup markup, String name, ReadOptions options) throws SvgProblem {
        OptionalDouble mmPerUnit = options.mmPerUnit();
        Drawing drawing = DrawingReader.read(markup.tree(), name, options);
        SourceText source = markup.source();
        List<Finding> findings = new ArrayList<>();
        MarksState state = new MarksState(Optional.empty(), true, List.of());
        List<Tag> blocks = MarkNode.blocks(source);
        Optional<MarkNode> block = Optional.empty();
        if (!blocks.isEmpty()) {
            block = block(source, blocks, findings);
            state = new MarksState(block.map(b -> blocks.get(0)), block.isPresent(), List.of());
        }
        Optional<Scale> stated = block.flatMap(MarksReader::scale);
        boolean knownLine = stated.isPresent() && stated.get().proof() == Scale.Proof.KNOWN_LINE;
        if (mmPerUnit.isEmpty() && knownLine) {
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
            if (factor != 1 && options.statedToo()) {
                pattern = StatedLengths.scaled(pattern, factor);
            } else if (factor != 1 && !StatedLengths.of(pattern).isEmpty()) {
                findings.add(Finding.of("stated-lengths-kept", Severity.CAUTION, "")
                        .with("count.number", StatedLengths.of(pattern).size())
                        .with("factor.number", factor));
            }
            state = new MarksState(state.block(), true, read.kept());
            Unmarked.tell(drawing, pattern, findings);
        } else {
            BarePattern bare = BarePattern.of(drawing);
            pattern = bare.pattern();
            findings.addAll(bare.findings());
            tellLayers(drawing, options, findings);
        }
        return new SvgFile(name, bytes, source, drawing, drawn, pattern, state, findings, options);
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

    /** Several layers with outlines are often the sizes of a nest, of which one is wanted. */
    private static void tellLayers(Drawing drawing, ReadOptions options, List<Finding> findings) {
        List<String> names = drawing.layers().stream()
                .filter(layer -> layer.outlines() > 0)
                .map(Layer::name)
                .toList();
        if (names.size() > 1 && options.layers().isEmpty()) {
            findings.add(Finding.of("layers-to-choose", Severity.NOTE, "").with("names", String.join(", ", names)));
        }
    }

    /** The pattern: by its marks if the file holds any, else bare pieces. */
    public Pattern pattern() {
        return pattern;
    }

    /** The same file with more said about it; what was said on opening is forgotten. */
    public SvgFile reread(ReadOptions other) throws SvgProblem {
        return opened(bytes, name, other);
    }

    /** What was said about the file on opening. */
    public ReadOptions options() {
        return options;
    }

    /**
     * What one unit of the drawing must be, in mm, for a distance in it to be as long as it is known to be.
     *
     * @param drawnMm the distance by the present scale, mm: between two places, or {@link #drawnLength}
     * @param realMm  what it is in truth, mm
     */
    public double unitFor(double drawnMm, double realMm) {
        return drawing.scale().mmPerUnitX() * realMm / drawnMm;
    }

    /**
     * The length of a drawn line by the present scale, mm; of a closed one, such as a test square, the width. Empty if
     * nothing has the id.
     */
    public OptionalDouble drawnLength(String id) {
        Optional<DrawnShape> shape = drawing.shape(id);
        if (shape.isEmpty() || shape.get().subPaths().isEmpty()) {
            return OptionalDouble.empty();
        }
        SubPath line = shape.get().subPaths().get(0);
        return OptionalDouble.of(
                line.closed() ? line.chain().box().width() : line.chain().length());
    }

    /** Whether marks were read from the file. */
    public boolean marked() {
        return marks.block().isPresent();
    }

    /** All that was noticed on reading: about the drawing first, then about the marks. */
    public List<Finding> findings() {
        return findings;
    }

    public Drawing drawing() {
        return drawing;
    }

    /** The words written on the drawing, where they stand at the scale of {@link #drawing()}. */
    public List<Caption> texts() {
        return drawing.captions();
    }

    /** Names of the layers and other groups on which each piece of a pattern of this file is drawn, outermost first. */
    public Map<String, List<String>> layerNames(Pattern of) {
        Map<String, List<String>> layers = new HashMap<>();
        for (Piece piece : of.pieces()) {
            drawn.piece(piece.id())
                    .map(DrawnGeometry.Part::shape)
                    .or(() -> drawn.joined(piece.id()).map(j -> j.parts().get(0).shape()))
                    .map(shape -> drawing.all().get(shape).layers())
                    .filter(names -> !names.isEmpty())
                    .ifPresent(names -> layers.put(piece.id(), names));
        }
        return layers;
    }

    /**
     * The drawn lines that belong to no piece of the pattern, at the scale of {@link #drawing()}: each with the id by
     * which a piece could take it along.
     */
    public List<Rider> loose(Pattern of) {
        return LooseLines.of(drawing, drawn, of);
    }

    /**
     * The pattern as it is when the drawing has another scale, proved by a line of known length. Places move; body
     * measurements and wishes stay.
     *
     * @param present   a pattern of this file, at whatever scale
     * @param mmPerUnit mm per user unit of the root element
     * @param statedToo whether lengths stated in numbers, such as allowances, change along ({@link StatedLengths})
     * @throws IllegalArgumentException if it is not above 0
     * @throws SvgProblem {@code scale-not-writable}
     */
    public Pattern atScale(Pattern present, double mmPerUnit, boolean statedToo) throws SvgProblem {
        SvgFile now = opened(bytes, name, options.withScale(mmPerUnit));
        Pattern rescaled = new Rescaling(recalibrated(present).drawn, now.drawn).of(present);
        Scale before = present.scale();
        Scale after = rescaled.scale();
        double factor = Math.sqrt(after.mmPerUnitX() / before.mmPerUnitX() * after.mmPerUnitY() / before.mmPerUnitY());
        return statedToo ? StatedLengths.scaled(rescaled, factor) : rescaled;
    }

    /**
     * Shows how the drawing looks: its elements with nothing in them that could fetch, run or swell.
     *
     * @throws SvgProblem {@code scenery-large} if there are more of them than can be drawn in a moment
     */
    public void show(Scenery to) throws SvgProblem {
        SceneryPlayer.play(PlainBytes.of(bytes, name), name, drawing, options, to);
    }

    /** The file as it was read. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** The file's name, as given on opening. */
    public String name() {
        return name;
    }

    /**
     * The file with the pattern as it is now; the very same bytes if the pattern is the one read. The result has been
     * read again and measured: what was not to change is identical bit for bit, the rest right within 1e-6 mm.
     *
     * @throws SvgProblem {@code marks-not-understood}, {@code piece-not-drawn}, {@code rider-not-writable},
     *                    {@code shape-not-editable}, {@code shape-copied}, {@code scale-not-writable}, {@code text-unwritable},
     *                    {@code encoding-not-kept} or {@code write-unproved}
     */
    public byte[] write(Pattern changed) throws SvgProblem {
        return writing(changed).bytes();
    }

    /**
     * A new content of the file.
     *
     * @param consequences what writing did beyond moving lines: elements that had to become paths
     */
    public record Written(byte[] bytes, List<Finding> consequences) {}

    /** The same as {@link #write}, together with what it means for the file. */
    public Written writing(Pattern changed) throws SvgProblem {
        if (options.mmPerUnit().isEmpty() && changed.equals(pattern)) {
            return new Written(bytes(), List.of());
        }
        SvgFile base = recalibrated(changed);
        Rewriting rewriting = new Rewriting(name, bytes, base.source, base.drawing, base.drawn, base.marks, changed);
        return new Written(rewriting.bytes(), rewriting.consequences());
    }

    private SvgFile recalibrated(Pattern changed) throws SvgProblem {
        Scale wanted = changed.scale();
        if (wanted.equals(pattern.scale())) {
            return this;
        }
        SvgFile other = opened(bytes, name, options.withScale(wanted.mmPerUnitX()));
        if (!other.pattern.scale().equals(wanted)) {
            throw new SvgProblem("scale-not-writable", Map.of("file", name));
        }
        return other;
    }
}
