package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Grain;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.svg.ReadOptions;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Five garments of our own, each drawn as one kind of hand draws, and what their drafter would say of them: one claim for
 * each name, count, fold, grain, dart, notch, allowance, level and girth, and for what is no piece.
 */
class FiveHandsTest {
    private final List<String> wrong = new ArrayList<>();
    private int claims;
    private Pattern pattern;
    private Suggestions made;

    private SvgFile read(String name) throws SvgProblem {
        return SvgFile.read(Path.of("src/test/resources/bare", "hand-" + name + ".svg"));
    }

    private void suggest(SvgFile file) throws SvgProblem {
        Pattern bare = file.pattern();
        made = Suggestions.of(new Sheet(bare, file.loose(bare), file.texts(), file.layerNames(bare)), Set.of());
        pattern = made.outcome();
        SvgFile saved = SvgFile.read(file.write(pattern), "saved.svg");
        claim("saved and read again", saved.pattern().equals(pattern), "");
        claim(
                "no fault",
                saved.findings().stream().noneMatch(f -> f.severity() == Severity.FAULT),
                saved.findings().stream().map(Finding::code).toList());
    }

    private void claim(String what, boolean right, Object instead) {
        claims++;
        if (!right) {
            wrong.add(what + ": " + instead);
        }
    }

    private void near(String what, double is, double wanted, double off) {
        claim(what, Math.abs(is - wanted) <= off, String.format(Locale.ROOT, "%.2f, not %.2f", is, wanted));
    }

    private void pieces(String... names) {
        List<String> are = pattern.pieces().stream().map(Piece::name).sorted().toList();
        claim("pieces", are.equals(List.of(names).stream().sorted().toList()), are);
    }

    private void noPieces(int count) {
        claim("no pieces", pattern.noPieces().size() == count, pattern.noPieces());
    }

    private Piece piece(String name) {
        return pattern.piece(name).orElseGet(() -> pattern.pieces().get(0));
    }

    /** How often it is cut, darts by their intake, notches, and that its grain is told. */
    private void marks(String name, int times, boolean onFold, int notches, double... darts) {
        Piece piece = piece(name);
        claim(name + " found", piece.name().equals(name), "");
        claim(name + " cut", piece.times() == times && piece.onFold() == onFold, piece.times() + " " + piece.onFold());
        claim(
                name + " notches",
                piece.notches().size() == notches,
                piece.notches().size());
        List<Double> intakes = piece.darts().stream().map(Dart::intake).sorted().toList();
        claim(name + " darts", intakes.size() == darts.length, intakes);
        for (int i = 0; i < Math.min(darts.length, intakes.size()); i++) {
            near(name + " dart " + i, intakes.get(i), darts[i], 0.6);
        }
    }

    private void grain(String name) {
        claim(
                name + " grain",
                piece(name).grain().filter(FiveHandsTest::upright).isPresent(),
                piece(name).grain());
    }

    private static boolean upright(Grain grain) {
        return Math.abs(grain.from().x() - grain.to().x()) < 0.03 * grain.from().distance(grain.to());
    }

    private void roles(String name, EdgeRole... roles) {
        List<EdgeRole> are =
                piece(name).edges().stream().map(e -> e.role()).sorted().toList();
        claim(name + " edges", are.equals(List.of(roles).stream().sorted().toList()), are);
    }

    private void allowance(String name, EdgeRole role, double wanted, double off) {
        Piece piece = piece(name);
        double is = piece.edges().stream()
                .filter(e -> e.role() == role)
                .mapToDouble(e -> e.allowance().orElse(piece.allowance()))
                .findFirst()
                .orElse(-1);
        near(name + " allowance " + role, is, wanted, off);
    }

    private void girth(String level, double wanted, double off) {
        near(level, Measures.of(pattern).girth(level).map(g -> g.finished()).orElse(0.0), wanted, off);
    }

    private void sewn(String... mates) {
        List<String> are = pattern.mates().stream().map(Mate::name).toList();
        for (String mate : mates) {
            claim("seam " + mate, are.contains(mate), are);
        }
    }

    private void allRight(String hand) {
        assertThat(wrong)
                .as("%s: %d of %d", hand, claims - wrong.size(), claims)
                .isEmpty();
    }

    /** Curves in layers, the stitching line of the front open at the fold, a dart cut into it, a label and a square. */
    @Test
    void aNeatDraft() throws SvgProblem {
        suggest(read("neat"));
        pieces("Front", "Back", "Sleeve");
        noPieces(2);
        marks("Front", 1, true, 1, 26);
        marks("Back", 2, false, 2, 24.04);
        marks("Sleeve", 2, false, 3);
        List.of("Front", "Back", "Sleeve").forEach(this::grain);
        roles(
                "Front",
                EdgeRole.NECK,
                EdgeRole.SHOULDER,
                EdgeRole.ARMHOLE,
                EdgeRole.SEAM,
                EdgeRole.WAIST,
                EdgeRole.FOLD);
        roles(
                "Back",
                EdgeRole.NECK,
                EdgeRole.SHOULDER,
                EdgeRole.ARMHOLE,
                EdgeRole.SEAM,
                EdgeRole.WAIST,
                EdgeRole.CENTRE);
        allowance("Front", EdgeRole.FOLD, 0, 0);
        allowance("Front", EdgeRole.NECK, 6, 0.3);
        allowance("Front", EdgeRole.WAIST, 15, 0.5);
        allowance("Front", EdgeRole.ARMHOLE, 10, 0.5);
        allowance("Back", EdgeRole.CENTRE, 15, 0.3);
        allowance("Back", EdgeRole.NECK, 6, 0.6);
        girth("bust", 2 * (235 + 225), 1);
        sewn("side seam", "shoulder");
        allRight("neat");
    }

    /** Many points that shake, pixels of no known size; both lines of the front end on the fold. */
    @Test
    void aScanThatWasTraced() throws SvgProblem {
        SvgFile file = read("scan");
        double unit = file.drawing().proposals().isEmpty()
                ? 1
                : file.drawing().proposals().get(0).mmPerUnit();
        near("scale by the square", unit * 5.9055, 1, 0.005);
        suggest(file.reread(ReadOptions.AS_FILED.withScale(unit)));
        pieces("Skirt front", "Skirt back");
        noPieces(1);
        marks("Skirt front", 1, true, 1, 18);
        marks("Skirt back", 2, false, 1, 26);
        grain("Skirt front");
        grain("Skirt back");
        roles("Skirt front", EdgeRole.WAIST, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.FOLD);
        roles("Skirt back", EdgeRole.WAIST, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.CENTRE);
        allowance("Skirt front", EdgeRole.FOLD, 0, 0);
        allowance("Skirt front", EdgeRole.SEAM, 15, 0.4);
        allowance("Skirt front", EdgeRole.HEM, 30, 0.4);
        allowance("Skirt back", EdgeRole.CENTRE, 15, 0.4);
        girth("hip", 2 * (245 + 235), 1.5);
        sewn("side seam");
        allRight("scan");
    }

    /** Each edge a line of its own, cut and sewn in layers by number, y upwards. */
    @Test
    void looseSegments() throws SvgProblem {
        suggest(read("loose"));
        pieces("Trouser front", "Trouser back");
        noPieces(0);
        marks("Trouser front", 2, false, 3);
        marks("Trouser back", 2, false, 3, 24.2);
        grain("Trouser front");
        grain("Trouser back");
        for (String half : List.of("Trouser front", "Trouser back")) {
            claim(
                    half + " crotch",
                    piece(half).edges().stream().anyMatch(e -> e.role() == EdgeRole.CROTCH),
                    piece(half).edges().stream().map(e -> e.role()).toList());
            allowance(half, EdgeRole.HEM, 40, 0.5);
            allowance(half, EdgeRole.WAIST, 10, 0.5);
            allowance(half, EdgeRole.CROTCH, 10, 0.5);
        }
        // Where the crotch curve has gone out by 1.02 and 1.93 mm already.
        girth("hip", 2 * (246.02 + 256.93), 0.5);
        sewn("outseam", "inseam");
        allRight("loose");
    }

    /** Clip paths, nested transforms, forty units to the millimetre, allowances told in words. */
    @Test
    void aPlotterExport() throws SvgProblem {
        SvgFile file = read("plotter");
        near("scale", file.pattern().scale().mmPerUnitX(), 0.025, 1e-9);
        suggest(file);
        pieces("T-shirt front", "T-shirt back", "Sleeve", "Neckband");
        noPieces(1);
        marks("T-shirt front", 1, true, 1);
        marks("T-shirt back", 1, true, 2);
        marks("Sleeve", 2, false, 3);
        marks("Neckband", 1, false, 0);
        List.of("T-shirt front", "T-shirt back", "Sleeve").forEach(this::grain);
        for (String half : List.of("T-shirt front", "T-shirt back")) {
            roles(half, EdgeRole.NECK, EdgeRole.SHOULDER, EdgeRole.ARMHOLE, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.FOLD);
            allowance(half, EdgeRole.SEAM, 8, 0.01);
        }
        girth("waist", 4 * 225, 1);
        sewn("side seam", "shoulder");
        allRight("plotter");
    }

    /** Inches, round numbers and comments; a front that wraps over its centre by six inches. */
    @Test
    void writtenByHandInInches() throws SvgProblem {
        SvgFile file = read("inches");
        near("scale", file.pattern().scale().mmPerUnitX(), 25.4, 1e-9);
        suggest(file);
        pieces("Back", "Wrap front", "Waistband");
        noPieces(1);
        marks("Back", 1, true, 0, 25.52);
        marks("Wrap front", 2, false, 0);
        marks("Waistband", 1, false, 0);
        grain("Back");
        grain("Wrap front");
        roles("Back", EdgeRole.WAIST, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.FOLD);
        roles("Wrap front", EdgeRole.WAIST, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.OPENING);
        girth("hip", 2 * (9.5 + 11.5) * 25.4, 0.5);
        sewn("side seam");
        allRight("inches");
    }

    private static Suggestion cut(String svg) throws SvgProblem {
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "inches.svg");
        Pattern bare = file.pattern();
        return Suggestions.of(new Sheet(bare, file.loose(bare), file.texts(), file.layerNames(bare)), Set.of())
                .all()
                .stream()
                .filter(s -> s.kind() == Suggestion.Kind.CUT && s.key().contains("front"))
                .findFirst()
                .orElseThrow();
    }

    /** The fewer signs there are that a front wraps over, the less sure is what is suggested, and it says what else may be. */
    @Test
    void aWrapIsWeighedByWhatSpeaksForIt() throws Exception {
        String all = Files.readString(Path.of("src/test/resources/bare/hand-inches.svg"));
        assertThat(cut(all).reason()).isEqualTo(Reason.of("overlap-at-centre", 0.7));
        String noLine = all.replaceAll("<line [^>]*stroke-dasharray[^>]*>", "");
        assertThat(cut(noLine).reason()).isEqualTo(Reason.of("wrap-written", 0.7));
        String plain = noLine.replaceAll("(?i)wrap-?\\s*front", "front");
        String titled = plain.replace("</svg>", "<text x='36' y='15'>Wrap skirt</text></svg>");
        assertThat(cut(titled).reason()).isEqualTo(Reason.of("wrap-of-garment", 0.6));
        Suggestion wide = cut(plain);
        assertThat(wide.reason().code()).isEqualTo("wide-beside-fold");
        assertThat(wide.reason().isLikely()).isFalse();
        assertThat(wide.values()).containsEntry("times", 2).containsEntry("fold", false);
        Suggestion unsaid = cut(plain.replaceAll("Cut 1 on fold", ""));
        assertThat(unsaid.reason().code()).isEqualTo("straight-centre-wide");
        assertThat(unsaid.values()).containsEntry("fold", true);
    }
}
