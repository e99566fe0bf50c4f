package easewright.svg;

import easewright.pattern.Caption;
import easewright.pattern.FileTrouble;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Rider;
import easewright.pattern.Scale;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One SVG file, opened: its bytes, what they draw, and the pattern they hold. Immutable. Writing a changed pattern
 * touches only the changed elements' own attributes and our block of marks.
 */
public final class SvgFile {
    private final String name;
    private final byte[] bytes;

    /** What was said on opening. */
    private final ReadOptions options;

    private final Opening opening;

    private final FreeLines free;
    private final AtScales scales = new AtScales(this);

    private SvgFile(String name, byte[] bytes, ReadOptions options, Opening opening) {
        this.name = name;
        this.bytes = bytes;
        this.options = options;
        this.opening = opening;
        this.free = new FreeLines(opening);
    }

    /**
     * Opens a file, plain or packed by gzip.
     *
     * @throws SvgProblem {@code too-large}, why it cannot be read ({@link FileTrouble#unread}), or why it is no drawing
     */
    public static SvgFile read(Path file) throws SvgProblem {
        try {
            if (Files.size(file) > PlainBytes.MOST) {
                throw new SvgProblem("too-large", Map.of("file", file.toString(), "megabytes", PlainBytes.MOST >> 20));
            }
            return opened(Files.readAllBytes(file), file.toString(), ReadOptions.AS_FILED);
        } catch (IOException e) {
            throw new SvgProblem(FileTrouble.of(file, e).unread(), Map.of("file", file.toString()), e);
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
        return new SvgFile(
                name, bytes, options, Opening.of(Markup.of(PlainBytes.of(bytes, name), name), name, options));
    }

    /** Opens what was just written, all of it read by the JDK's parser, which had no part in the writing. */
    static SvgFile proving(byte[] written, String name) throws SvgProblem {
        Markup markup = Markup.parsed(PlainBytes.of(written, name), name);
        return new SvgFile(name, written, ReadOptions.AS_FILED, Opening.of(markup, name, ReadOptions.AS_FILED));
    }

    /** The pattern: by its marks if the file holds any, else bare pieces. */
    public Pattern pattern() {
        return opening.pattern();
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
        return opening.drawing().scale().mmPerUnitX() * realMm / drawnMm;
    }

    /**
     * The length of a drawn line by the present scale, mm; of a closed one, such as a test square, the width. Empty if
     * nothing has the id.
     */
    public OptionalDouble drawnLength(String id) {
        Optional<DrawnShape> shape = opening.drawing().shape(id);
        if (shape.isEmpty() || shape.get().subPaths().isEmpty()) {
            return OptionalDouble.empty();
        }
        SubPath line = shape.get().subPaths().get(0);
        return OptionalDouble.of(
                line.closed() ? line.chain().box().width() : line.chain().length());
    }

    /** Whether marks were read from the file. */
    public boolean marked() {
        return opening.marks().block().isPresent();
    }

    /** Marked pieces in layers that are not read: they stay in the file, and come back with their layer. */
    public Optional<Pattern> resting() {
        return opening.marks().resting().pattern();
    }

    /** The same file with the marks of other pieces kept in it although their layers are not read. */
    public SvgFile withResting(Pattern pieces) {
        return new SvgFile(name, bytes, options.withResting(pieces), opening.withResting(pieces));
    }

    /** All that was noticed on reading: about the drawing first, then about the opening.marks(). */
    public List<Finding> findings() {
        return opening.findings();
    }

    /** The same for a pattern of this file: what was said of its scale is left out where that is another by now. */
    public List<Finding> findings(Pattern present) {
        boolean same = present.scale().isAs(opening.pattern().scale());
        return findings().stream()
                .filter(f -> same || !ScaleSigns.isAboutProof(f))
                .toList();
    }

    public Drawing drawing() {
        return opening.drawing();
    }

    DrawnGeometry drawn() {
        return opening.drawn();
    }

    /** The words written on the drawing, where they stand at the scale of {@link #drawing()}. */
    public List<Caption> texts() {
        return opening.drawing().captions();
    }

    /** What is to be told of words that were drawn on pieces before a pattern of this file made them left and right. */
    public List<Finding> oldWords(Pattern of) {
        return OldWords.in(opening.drawing(), of);
    }

    /** Names of the layers and other groups on which each piece of a pattern of this file is drawn, outermost first. */
    public Map<String, List<String>> layerNames(Pattern of) {
        return LayerNames.of(opening.drawing(), opening.drawn(), of);
    }

    /**
     * The drawn lines that belong to no piece of the pattern, at the scale of {@link #drawing()}: each with the id by
     * which a piece could take it along.
     */
    public List<Rider> loose(Pattern of) {
        return free.lines(of);
    }

    /** Those of them that are closed and hold the area of a piece; found quickly, since they are asked for often. */
    public List<Rider> looseOutlines(Pattern of) {
        return free.outlines(of);
    }

    /**
     * Ids of the drawn copies for one side of the body that writing the pattern takes out, since their piece is one for
     * both sides again.
     */
    public Set<String> spare(Pattern of) {
        return free.spare(of);
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
        return scales.pattern(present, mmPerUnit, statedToo);
    }

    /**
     * The same file with what rests brought to another scale, lengths stated in numbers too; itself where nothing rests.
     *
     * @param mmPerUnit mm per user unit of the root element
     * @throws SvgProblem {@code scale-not-writable}
     */
    public SvgFile withStatedAtScale(double mmPerUnit) throws SvgProblem {
        Optional<Pattern> resting = resting();
        return resting.isEmpty() ? this : withResting(scales.pattern(resting.get(), mmPerUnit, true));
    }

    /**
     * Patterns of this file as they are at one scale. Lengths stated in numbers stay.
     *
     * @throws SvgProblem {@code scale-not-writable}
     */
    public List<Pattern> allAt(Scale scale, List<Pattern> patterns) throws SvgProblem {
        return scales.all(scale, patterns);
    }

    /**
     * Shows how the drawing looks: its elements with nothing in them that could fetch, run or swell.
     *
     * @param without ids of drawn lines that are left out
     * @throws SvgProblem {@code scenery-large} if there are more of them than can be drawn in a moment
     */
    public void show(Scenery to, Set<String> without) throws SvgProblem {
        SceneryPlayer.play(PlainBytes.of(bytes, name), name, opening.drawing(), options, without, to);
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

    /** The same for a file of another name, see {@link #named}. */
    public byte[] write(Pattern changed, String other) throws SvgProblem {
        return named(write(changed), other);
    }

    /**
     * A content that was written, for a file of another name: packed by gzip if its ending is that of packed drawings
     * and this file's is not, plain the other way round.
     */
    public byte[] named(byte[] written, String other) throws SvgProblem {
        boolean packed = PlainBytes.isPacked(written);
        boolean wanted = PlainBytes.isNameOfPacked(other);
        if (packed == wanted || wanted == PlainBytes.isNameOfPacked(name)) {
            return written;
        }
        return wanted ? PlainBytes.packed(written) : PlainBytes.of(written, other);
    }

    /**
     * A new content of the file.
     *
     * @param redrawn      names of the pieces of which lines are drawn anew; every other line is as it was
     * @param consequences what writing did beyond moving lines: elements that had to become paths
     */
    public record Written(byte[] bytes, List<String> redrawn, List<Finding> consequences) {}

    /** The same as {@link #write}, together with what it means for the file. */
    public Written writing(Pattern changed) throws SvgProblem {
        // Which layers hold the pieces is known to the file only once they are written down.
        boolean asFiled = options.mmPerUnit().isEmpty()
                && options.resting().isEmpty()
                && (opening.marks().block().isPresent()
                        || options.besides().isEmpty() && options.without().isEmpty());
        if (asFiled && changed.equals(opening.pattern())) {
            return new Written(bytes(), List.of(), List.of());
        }
        SvgFile base = scales.of(changed);
        Rewriting rewriting = new Rewriting(name, bytes, base.opening, changed);
        return new Written(rewriting.bytes(), rewriting.redrawn(), rewriting.consequences());
    }
}
