package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Scale;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is written on a drawing, what belongs to no piece, and a drawing brought to another scale. */
class TextsAndScaleTest {
    private static final java.util.regex.Pattern SIZE =
            java.util.regex.Pattern.compile("(?<=<svg[^>]{0,200}(width|height)=\")[^\"]*");

    private static SvgFile read(String svg) throws SvgProblem {
        return SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "test.svg");
    }

    @Test
    void wordsAreReadLineByLineWithTheirPlaceAndSize() throws SvgProblem {
        SvgFile svg = read("<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='100mm' viewBox='0 0 400 200'>"
                + "<style>.big{font-size:40px}</style><g transform='translate(100 50)' style='text-anchor:middle'>"
                + "<text class='big' x='10' y='20'><tspan x='10' y='20'>Skirt</tspan>"
                + "<tspan x='10' dy='1.2em'>cut <tspan font-weight='bold'>2</tspan></tspan></text></g>"
                + "<text x='0' y='0' font-size='10' visibility='hidden'>no</text></svg>");
        assertThat(svg.texts()).hasSize(1);
        Caption caption = svg.texts().get(0);
        assertThat(caption.lines()).containsExactly("Skirt", "cut 2");
        assertThat(caption.height()).isCloseTo(20, within(1e-9));
        assertThat(caption.middle().x()).isCloseTo(55, within(1e-9));
        assertThat(caption.middle().y()).isBetween(25.0, 35.0);
    }

    @Test
    void linesThatBelongToNoPieceAreLoose() throws SvgProblem {
        SvgFile svg = read("<svg xmlns='http://www.w3.org/2000/svg' width='500mm' height='500mm' viewBox='0 0 500 500'>"
                + "<path id='front' d='M50 50H200V300H50Z'/><path id='grain' d='M100 100V200'/>"
                + "<path id='tick' d='M195 150h10'/><path id='ruler' d='M300 10h100M300 20h10'/></svg>");
        assertThat(svg.loose(svg.pattern())).extracting(Rider::id).containsExactly("tick", "ruler#0", "ruler#1");
    }

    @Test
    void anotherScaleMovesAllPlacesAndLeavesTheDrawingUntouched() throws SvgProblem {
        String text = Samples.svg(Samples.drafts().get(0).draft());
        SvgFile svg = read(text);
        Pattern marked = svg.pattern();
        Pattern wide = svg.atScale(marked, 1.25, false);
        assertThat(wide.scale().proof()).isEqualTo(Scale.Proof.KNOWN_LINE);
        assertThat(wide.scale().mmPerUnitX()).isEqualTo(1.25);
        for (int i = 0; i < marked.pieces().size(); i++) {
            Piece before = marked.pieces().get(i);
            Piece after = wide.pieces().get(i);
            assertThat(after.outline().length())
                    .isCloseTo(1.25 * before.outline().length(), within(1e-6));
            assertThat(after.allowance()).isEqualTo(before.allowance());
            for (int k = 0; k < before.notches().size(); k++) {
                assertThat(after.notches()
                                .get(k)
                                .at()
                                .distance(before.notches().get(k).at().times(1.25)))
                        .isLessThan(1e-9);
            }
        }
        String written = new String(svg.write(wide), StandardCharsets.UTF_8);
        // The page states its new size; nothing else is touched.
        assertThat(SIZE.matcher(withoutMarks(written)).replaceAll(""))
                .isEqualTo(SIZE.matcher(withoutMarks(text)).replaceAll(""));
        assertThat(written).startsWith(text.substring(0, text.indexOf("<svg")));
        Pattern again = read(written).pattern();
        assertThat(again.scale()).isEqualTo(wide.scale());
        assertThat(again.pieces()).isEqualTo(wide.pieces());
        // There and back is the very same drawing.
        assertThat(svg.atScale(wide, 1, false).pieces().get(0).outline())
                .isEqualTo(marked.pieces().get(0).outline());
    }

    @Test
    void whatWasChangedOrMarkedByHandIsScaledAlong() throws SvgProblem {
        SvgFile svg = read("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 500 500'>"
                + "<path id='front' d='M50 50H200V300H50Z'/></svg>");
        Piece front = svg.pattern().pieces().get(0);
        Piece marked = front.toBuilder()
                .notches(
                        List.of(new Notch("a", front.outline().segments().get(0).at(0.5))))
                .build();
        Pattern scaled = svg.atScale(svg.pattern().withPiece(marked), 2, false);
        assertThat(scaled.pieces().get(0).notches().get(0).at().distance(new Point(250, 100)))
                .isLessThan(1e-9);
    }

    private static String withoutMarks(String svg) {
        return svg.substring(0, svg.indexOf("<marks")) + svg.substring(svg.indexOf("</marks>"));
    }
}
