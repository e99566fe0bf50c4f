package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Several outlines drawn by one path. */
class CompoundPathTest {
    private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' height='400mm'"
            + " viewBox='0 0 600 400'>\n%s\n</svg>\n";

    private static SvgFile open(String body) throws SvgProblem {
        return SvgFile.read(SVG.formatted(body).getBytes(StandardCharsets.UTF_8), "compound.svg");
    }

    private static double area(Piece piece) {
        return Math.abs(piece.outline().signedArea());
    }

    private static Piece narrowed(Piece piece, double factor) {
        Point at = piece.outline().segments().get(0).start();
        Affine map = Affine.translation(at).after(Affine.scaling(factor, 1)).after(Affine.translation(at.times(-1)));
        return piece.withOutline(piece.outline().transformed(map));
    }

    @Test
    void outlinesBesideEachOtherAreSeveralPieces() throws SvgProblem {
        SvgFile file = open("<path id='both' d='M10 10h200v300h-200z M30 30h20v30h-20z M300 10h199v300h-199z'/>");
        assertThat(file.pattern().pieces()).extracting(Piece::id).containsExactly("both#0", "both#2");
        assertThat(file.pattern().pieces().get(0).riders()).hasSize(1);
        assertThat(file.pattern().pieces().get(1).riders()).isEmpty();
        assertThat(file.loose(file.pattern())).isEmpty();
    }

    /** Made narrower, the one that was larger stays the piece that was made narrower. */
    @Test
    void aPieceThatShrinksBelowItsNeighbourIsReadBackAsItself() throws SvgProblem {
        for (String second : List.of("M300 10h199v300h-199z", "M300 10h40v55h-40z")) {
            String first = second.contains("199") ? "M10 10h200v300h-200z" : "M10 10h40v56h-40z";
            SvgFile file = open("<path id='both' d='" + first + second + "'/>");
            Piece left = file.pattern().pieces().get(0);
            Piece narrow = narrowed(left, 0.9);
            Pattern changed = file.pattern().withPiece(narrow);
            SvgFile again = SvgFile.read(file.write(changed), "again.svg");
            Piece back = again.pattern().piece(left.id()).orElseThrow();
            assertThat(back.outline().box().minX()).isCloseTo(10, within(1e-6));
            assertThat(area(back)).isCloseTo(area(narrow), within(1e-3));
            assertThat(again.write(again.pattern())).isEqualTo(again.bytes());
            assertThat(again.findings()).isEmpty();
        }
    }

    /** An outline with lines inside it is as before called by its shape alone. */
    @Test
    void ringsInsideAndSmallOnesBesideGoAlong() throws SvgProblem {
        SvgFile file = open("<path id='one' d='M10 10h200v300h-200z M20 20h180v280h-180z M230 10h30v30h-30z'/>");
        assertThat(file.pattern().pieces()).extracting(Piece::id).containsExactly("one");
        assertThat(file.pattern().pieces().get(0).riders()).hasSize(2);
    }

    /** Marks made when only the largest outline of a path could be meant: what they cannot say is not written. */
    @Test
    void marksThatNameThePathAloneAreNotWrittenSoThatTheyNameAnotherOutline() throws SvgProblem {
        SvgFile file = open(
                "<path id='both' d='M10 10h200v300h-200z M300 10h199v300h-199z'/>"
                        + "<metadata><marks xmlns='urn:easewright:marks:1'><piece ref='both' name='Front'/></marks></metadata>");
        Piece front = file.pattern().piece("Front").orElseThrow();
        Outline before = front.outline();
        assertThat(before.box().minX()).isCloseTo(10, within(1e-9));
        Pattern changed = file.pattern().withPiece(narrowed(front, 0.9));
        assertThat(org.assertj.core.api.Assertions.catchThrowableOfType(SvgProblem.class, () -> file.write(changed))
                        .code())
                .isEqualTo("write-unproved");
        assertThat(file.write(file.pattern().withPiece(narrowed(front, 1.05)))).isNotEmpty();
    }
}
