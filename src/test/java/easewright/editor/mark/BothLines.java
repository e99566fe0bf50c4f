package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Alteration;
import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.alter.Within;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;

/** A skirt on the table whose front is drawn with both lines, the cutting and the stitching one, before it is marked. */
abstract class BothLines {
    static final String OUTER = "shape-2";
    static final String INNER = "shape-3";

    Bare bare;

    @BeforeEach
    void aSkirtWhoseFrontHasBothLines() throws Exception {
        bare = Bare.of(Files.readString(Path.of("src/test/resources/lines/dart-cut-in.svg")));
    }

    Pattern pattern() {
        return bare.session.desk().pattern();
    }

    Piece front() {
        return pattern().piece("Skirt front").orElseThrow();
    }

    /** The first level at which there is a girth. */
    String level() {
        return Measures.of(pattern()).girths().get(0).name();
    }

    double girth() {
        return Measures.of(pattern()).girth(level()).orElseThrow().finished();
    }

    private static String seam(Piece piece) {
        return piece.edges().stream()
                .filter(e -> e.role() == EdgeRole.SEAM)
                .findFirst()
                .orElseThrow()
                .name();
    }

    private SeamChange widening(Piece piece, double mm) {
        return SeamChange.at(level(), mm).withShares(new Share(EdgeRef.of(piece.id(), seam(piece)), 1));
    }

    /** Widens a piece at its seam. */
    void widen(Piece piece, double mm) throws Refusal {
        bare.session.edit(widening(piece, mm).apply(pattern()).pattern());
    }

    /** On the right of the wearer alone, which makes a piece of its own for that side. */
    void widenRightSide(Piece piece, double mm) throws Refusal {
        Alteration onOne = Within.of(new Scope(Optional.empty(), Side.RIGHT), widening(piece, mm));
        bare.session.edit(onOne.apply(pattern()).pattern());
    }

    /** What a file would hold says the same as what lies on the table. */
    void savedAndReadAgain() throws Exception {
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        SvgFile saved = SvgFile.read(file.write(pattern()), "saved.svg");
        assertThat(saved.findings()).extracting(Finding::severity).doesNotContain(Severity.FAULT);
        Pattern again = saved.pattern();
        assertThat(again.changes()).isEqualTo(pattern().changes());
        assertThat(again.aside()).isEqualTo(pattern().aside());
        assertThat(again.pieces())
                .extracting(Piece::id)
                .isEqualTo(pattern().pieces().stream().map(Piece::id).toList());
        assertThat(Measures.of(again).girth(level()).orElseThrow().finished()).isCloseTo(girth(), within(1e-4));
    }

    /** Lays another drawing with both lines on the table. */
    void lay(String name) throws Exception {
        bare = Bare.of(Files.readString(Path.of("src/test/resources/lines", name + ".svg")));
    }

    /** @param swap whether the line is the piece from now on */
    void say(String line, boolean swap) throws MarkRefused {
        SaidLater.line(bare.session.desk(), bare.marker.sheet(), bare.other(line), swap)
                .edit(bare.session);
    }
}
