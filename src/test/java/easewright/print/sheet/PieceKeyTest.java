package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Edge;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;

/** What a print says of its lines is true of the pieces on it. */
class PieceKeyTest {
    private static final java.util.regex.Pattern SOME = java.util.regex.Pattern.compile(
            "sheets: (\\d+) of (\\d+) \\((\\d+) across, (\\d+) down; empty ones are left out\\)");
    private static final java.util.regex.Pattern ALL =
            java.util.regex.Pattern.compile("sheets: (\\d+) \\((\\d+) across, (\\d+) down\\)");
    private static final String CUT = "Solid outline: cut. Dashed line: stitch.";

    private static Pattern with(Pattern pattern, List<String> ids, UnaryOperator<Piece> change) {
        Pattern now = pattern;
        for (Piece piece : pattern.pieces()) {
            now = ids.contains(piece.id()) ? now.withPiece(change.apply(piece)) : now;
        }
        return now;
    }

    private static Piece bare(Piece piece) {
        return sewn(piece, 0);
    }

    /** Drawn at the stitching line, with one allowance all round, mm. */
    private static Piece sewn(Piece piece, double allowance) {
        List<Rider> riders = piece.riders().stream()
                .filter(r -> r.kind() != Rider.Kind.PARALLEL)
                .toList();
        return piece.toBuilder()
                .drawn(LineKind.STITCHING, allowance)
                .edges(piece.edges().stream()
                        .map(e ->
                                new Edge(e.name(), e.role(), e.from(), e.to(), e.isProtected(), OptionalDouble.empty()))
                        .toList())
                .riders(riders)
                .build();
    }

    private static Piece unmarked(Piece piece) {
        return piece.toBuilder().grain(Optional.empty()).build();
    }

    private static List<String> ids(Pattern pattern) {
        return pattern.pieces().stream().map(Piece::id).toList();
    }

    private static String text(Pattern pattern, Paper paper) throws Exception {
        return PdfLines.text(Prints.pdf(Prints.of(pattern, Prints.on(paper)))).replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void whereEveryPieceHasAnAllowanceTheOutlineIsCut() throws Exception {
        Pattern skirt = Prints.sample("skirt");
        Pattern sewn = with(skirt, ids(skirt), p -> sewn(p, 15));
        for (Paper paper : List.of(Paper.A4, Paper.ROLL)) {
            assertThat(text(sewn, paper)).contains(CUT).doesNotContain("no allowance", "No allowance");
        }
    }

    /** On these the only line is for the needle: told to cut on it, one would cut the garment too small. */
    @Test
    void whereNoPieceHasOneTheOutlineIsStitched() throws Exception {
        Pattern skirt = Prints.sample("skirt");
        Pattern plain = with(skirt, ids(skirt), PieceKeyTest::bare);
        for (Paper paper : List.of(Paper.A4, Paper.ROLL)) {
            assertThat(text(plain, paper))
                    .contains("Solid outline: stitch. No allowance is drawn: add it when you cut.")
                    .doesNotContain("Solid outline: cut", "Dashed line: stitch");
        }
    }

    @Test
    void whereSomeHaveOneTheOthersAreNamed() throws Exception {
        Pattern skirt = Prints.sample("skirt");
        Pattern sewn = with(skirt, ids(skirt), p -> sewn(p, 15));
        Pattern mixed = with(sewn, List.of("skirt-front", "skirt-band"), PieceKeyTest::bare);
        for (Paper paper : List.of(Paper.A4, Paper.ROLL)) {
            assertThat(text(mixed, paper))
                    .contains(CUT)
                    .contains(
                            "But on Front and Waistband no allowance is drawn: there the solid outline is where you stitch");
        }
        List<Piece> many = new ArrayList<>(sewn.pieces());
        for (int i = 0; i < 7; i++) {
            many.add(bare(sewn.piece("skirt-band").orElseThrow()).toBuilder()
                    .id("band" + i)
                    .name("Band " + i)
                    .build());
        }
        assertThat(text(Pattern.bare(many, sewn.scale()), Paper.A4))
                .contains(CUT)
                .contains(
                        "But on pieces that are marked as having no allowance, the solid outline is where you stitch");
    }

    @Test
    void grainArrowsAreSpokenOfOnlyWhereThereAreSome() throws Exception {
        Pattern skirt = Prints.sample("skirt");
        String arrows = "Keep the grain arrows along the selvedge.";
        assertThat(skirt.pieces()).allMatch(p -> p.grain().isPresent());
        assertThat(text(skirt, Paper.A4)).contains(arrows).doesNotContain("no grain is marked");
        assertThat(text(with(skirt, ids(skirt), PieceKeyTest::unmarked), Paper.A4))
                .contains("No grain is marked: it is taken as upright on the page.")
                .doesNotContain("grain arrows");
        assertThat(text(with(skirt, List.of("skirt-back"), PieceKeyTest::unmarked), Paper.A4))
                .contains(arrows)
                .contains("On Back no grain is marked: it is taken as upright on the page");
    }

    /** The waistband is drawn with its grain across: what is said of how the pieces lie has room for it. */
    @Test
    void whereSomeAreTurnedForTheirGrainNotAllAreSaidToLieAsTheyWereDrawn() throws Exception {
        String turned = "turned until it runs up the page";
        for (String sample : List.of("skirt", "bodice", "trousers", "knit-top")) {
            for (Paper paper : List.of(Paper.A4, Paper.ROLL)) {
                String said = text(Prints.sample(sample), paper);
                assertThat(said.contains(turned)
                                && said.contains("All")
                                && said.contains("lie as they were drawn, the same way up"))
                        .as("%s on %s", sample, paper)
                        .isFalse();
            }
        }
        assertThat(text(Prints.sample("skirt"), Paper.A4)).contains(turned);
    }

    /** Sheets across times sheets down are told only where so many are printed. */
    @Test
    void sheetsThatAreLeftOutAreSaidToBe() throws Exception {
        for (String sample : List.of("skirt", "bodice", "trousers", "knit-top")) {
            String said = text(Prints.sample(sample), Paper.A4);
            Matcher some = SOME.matcher(said);
            Matcher all = ALL.matcher(said);
            if (some.find()) {
                int of = Integer.parseInt(some.group(2));
                assertThat(Integer.parseInt(some.group(1))).as(sample).isLessThan(of);
                assertThat(Integer.parseInt(some.group(3)) * Integer.parseInt(some.group(4)))
                        .as(sample)
                        .isEqualTo(of);
            } else {
                assertThat(all.find()).as(said).isTrue();
                assertThat(Integer.parseInt(all.group(2)) * Integer.parseInt(all.group(3)))
                        .as(sample)
                        .isEqualTo(Integer.parseInt(all.group(1)));
            }
        }
        assertThat(text(Prints.sample("skirt"), Paper.A4)).containsPattern(SOME);
    }
}
