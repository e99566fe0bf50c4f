package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class UsualScalesTest {
    private final Session session = new Session(LengthUnit.CM, false);
    private final Marker marker = new Marker(session);

    private List<ScaleView.Offer> offers(String drawn) throws SvgProblem {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 3100 3100'>" + drawn + "</svg>";
        session.open(OpenedSample.drawn(text, "bare.svg"));
        marker.open(true);
        return UsualScales.of(session.desk(), marker.sheet());
    }

    private static String piece(int tall) {
        return "<path id='front' d='M100 100H180V" + (100 + tall) + "H100Z'/>";
    }

    /** A px is 1/96 in (CSS Values and Units Level 3, 5.2); 72 and 90 to the inch are from memory. */
    @Test
    void eachUnitIsOfferedWithTheSizeItWouldMakeOfThePiece() throws SvgProblem {
        List<ScaleView.Offer> offers = offers(piece(400));
        assertThat(offers)
                .extracting(ScaleView.Offer::mmPerUnit)
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : Double.compare(a, b))
                .containsExactly(25.4 / 72, 25.4 / 90, 25.4 / 96, 1.0);
        assertThat(offers.get(0).words()).contains("14.1\u00a0cm");
        assertThat(offers.get(3).words()).contains("40\u00a0cm");
    }

    /** The largest piece of a garment is 10 cm to 1.7 m long. */
    @Test
    void aMillimetreIsNotOfferedWhereNobodyCouldWearThePiece() throws SvgProblem {
        for (int tall : new int[] {99, 1701}) {
            assertThat(offers(piece(tall)))
                    .as("%s", tall)
                    .hasSize(3)
                    .noneMatch(offer -> Math.abs(offer.mmPerUnit() - 1) < 1e-9);
        }
        for (int tall : new int[] {100, 1700}) {
            assertThat(offers(piece(tall))).as("%s", tall).hasSize(4);
        }
    }

    @Test
    void withoutAPieceThereIsNothingToJudgeBy() throws SvgProblem {
        assertThat(offers("<path d='M10 10H500'/>")).isEmpty();
    }
}
