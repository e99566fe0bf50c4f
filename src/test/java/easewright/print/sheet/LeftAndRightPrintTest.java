package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Within;
import easewright.geom.Outline;
import easewright.pattern.ChangeNote;
import easewright.pattern.Finding;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.pattern.SidePair;
import easewright.print.MovedBy;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A skirt made wider on one side: what is printed of pieces that were one and are a left and a right one now. */
class LeftAndRightPrintTest {
    private static final Pattern SKIRT = Prints.sample("skirt");

    private static Pattern on(Side side, Pattern pattern, double mm) {
        return Prints.changed(pattern, Within.of(new Scope(Optional.empty(), side), SeamChange.at("hip", mm)));
    }

    /** As it is read again from the file into which it was saved. */
    private static Pattern reopened(Pattern pattern) throws Exception {
        SvgFile file = SvgFile.read(Path.of("sample-pieces", "skirt.svg"));
        return SvgFile.read(file.write(pattern), "skirt.svg").pattern();
    }

    private static String text(Pattern pattern) throws Exception {
        return PdfLines.text(Prints.pdf(Prints.of(pattern, Prints.on(Paper.A4))))
                .replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void theSheetsSayHowTheyAreCutAlsoAfterReopening() throws Exception {
        Pattern changed = on(Side.RIGHT, SKIRT, 20);
        for (Pattern pattern : List.of(changed, reopened(changed))) {
            // Words that stand on end come out of the file letter by letter.
            assertThat(text(pattern).replace(" ", ""))
                    .contains("tapetoFrontrighthere:noseam,noallowance")
                    .contains("tapetoFrontlefthere:noseam,noallowance");
            assertThat(text(pattern))
                    .contains("cut 1 with Front right, printed side up")
                    .contains("cut 1 with Front left, printed side up")
                    .contains("For the wearer’s left", "For the wearer’s right")
                    .contains("Back left and Back right differ: cut each once, printed side up")
                    .contains("Tape Front left and Front right together where the fold was, without a seam")
                    .doesNotContain("Every pair of pieces is cut mirrored")
                    .doesNotContain("on the fold");
        }
        assertThat(text(SKIRT))
                .contains("Every pair of pieces is cut mirrored")
                .doesNotContain("printed side up", "For the wearer", "tape to");
    }

    @Test
    void theNotesSayItAsLongAsTheyAreLeftAndRight() throws Exception {
        Pattern changed = reopened(on(Side.LEFT, SKIRT, 20));
        assertThat(codes(changed)).contains("sides-parted", "sides-parted-fold").doesNotContain("side-assumed");
        assertThat(codes(SKIRT)).doesNotContain("sides-parted", "sides-parted-fold");
        SidePair front = SidePair.with(changed, named(changed, "Front left")).orElseThrow();
        assertThat(front.halves()).isTrue();
        assertThat(front.wholeName()).isEqualTo("Front");
        assertThat(SidePair.with(changed, named(changed, "Back left"))
                        .orElseThrow()
                        .halves())
                .isFalse();
        assertThat(changed.mates().stream().filter(m -> SidePair.isFold(changed, m)))
                .hasSize(1);
    }

    private static List<String> codes(Pattern pattern) {
        return Reading.of(pattern, Prints.TABLES).findings().stream()
                .map(Finding::code)
                .toList();
    }

    private static Piece named(Pattern pattern, String name) {
        return pattern.pieces().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Of changes now here and now there, each label names those that moved its piece, in their order. */
    @Test
    void labelsNameTheChangesThatMovedThePiece() throws Exception {
        Random random = new Random(20);
        for (int i = 0; i < 6; i++) {
            Pattern pattern = SKIRT;
            for (int k = 0; k < 3; k++) {
                Side side = Side.values()[random.nextInt(3)];
                pattern = on(side, pattern, 4 + 8 * random.nextDouble());
            }
            Pattern now = i % 2 == 0 ? pattern : reopened(pattern);
            MovedBy moved = MovedBy.of(Past.of(now).orElseThrow(), now);
            for (Piece piece : now.pieces()) {
                boolean band = piece.name().equals("Waistband");
                List<ChangeNote> wanted = now.changes().stream()
                        .filter(n -> !band && Scope.of(n).side().belongsTo(piece.side()))
                        .toList();
                assertThat(moved.piece(piece)).as(i + " " + piece.name()).isEqualTo(wanted);
            }
        }
    }

    @Test
    void aPieceThatOnlyItsTwinsChangeConcernsIsNotChanged() throws Exception {
        Pattern changed = on(Side.RIGHT, SKIRT, 20);
        assertThat(text(changed)).contains("Not changed").contains("Changed: On the right: hip: +2 cm");
        Job job = job(changed);
        for (PaperPiece paper : job.pieces()) {
            List<String> lines =
                    paper.label().stream().map(PieceLabel.Line::text).toList();
            assertThat(lines.contains("Not changed"))
                    .as(paper.piece().name())
                    .isEqualTo(paper.piece().side() != Side.RIGHT);
        }
    }

    @Test
    void theEaseOnASideIsSaidToBeThatOfTheWholeGirth() throws Exception {
        for (PaperPiece paper : job(on(Side.LEFT, SKIRT, 20)).pieces()) {
            List<String> ease = paper.label().stream()
                    .map(PieceLabel.Line::text)
                    .filter(t -> t.startsWith("hip"))
                    .toList();
            assertThat(ease).allMatch(t -> t.startsWith("hip, whole girth: "));
        }
        assertThat(job(SKIRT).pieces())
                .allMatch(p -> p.label().stream().noneMatch(l -> l.text().contains("whole girth")));
    }

    private static Job job(Pattern pattern) throws PrintProblem {
        return Job.of(
                Prints.on(Paper.ROLL),
                Past.of(pattern).map(p -> Reading.of(p, Prints.TABLES)),
                Reading.of(pattern, Prints.TABLES),
                List.of(),
                easewright.text.Words.english(easewright.text.LengthUnit.CM));
    }

    /** Their area is that of both, and they are as wide as the whole front was, and what was added. */
    @Test
    void onTheClothHalvesLieAsTheOnePieceThatTheyAreCutAs() {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Pattern changed = on(side, SKIRT, 20);
            ClothPlan plan = ClothPlan.of(changed, 1400, false).orElseThrow();
            assertThat(plan.pieces()).extracting(ClothPlan.OnCloth::name).contains("Front", "Back left", "Back right");
            assertThat(plan.pieces()).extracting(ClothPlan.OnCloth::name).doesNotContain("Front left", "Front right");
            Outline whole = plan.pieces().stream()
                    .filter(p -> p.name().equals("Front"))
                    .findFirst()
                    .orElseThrow()
                    .outline();
            double halves = changed.pieces().stream()
                    .filter(p -> p.name().startsWith("Front "))
                    .mapToDouble(p -> Math.abs(CutLine.of(p).outline().signedArea()))
                    .sum();
            assertThat(Math.abs(whole.signedArea())).isCloseTo(halves, within(halves / 1000));
        }
    }

    @Test
    void whereNoAllowanceIsKnownNoneIsSaidToBeCounted() {
        Pattern bare = SKIRT.withPieces(SKIRT.pieces().stream()
                .map(p -> p.toBuilder()
                        .drawn(LineKind.STITCHING, 0)
                        .riders(List.of())
                        .edges(List.of())
                        .build())
                .toList());
        assertThat(ClothPlan.withoutAllowance(bare))
                .containsExactlyElementsOf(
                        bare.pieces().stream().map(Piece::name).toList());
        assertThat(ClothPlan.withoutAllowance(SKIRT)).isEmpty();
    }
}
