package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.EdgeLength;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A facing that is sewn to a waist is named as soon as it fits that waist no longer. */
class FacedWaistTest {
    private static final String DRAWN = """
            <svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='800mm' viewBox='0 0 900 800'>
            <path id='front' d='M50,100 H250 L280,300 V700 H50 Z'/>
            <path id='facing' d='M400,100 H600 L606,150 H400 Z'/>
            <metadata><marks xmlns='urn:easewright:marks:1'>
            <scale across='1' down='1' proof='physical-size'/>
            <level name='waist' kind='waist'/>
            <piece ref='front' name='Front skirt' line='stitching' allowance='0' cut='1' fold='yes'>
              <edge name='waist' role='waist' from='50 100' via='150 100' to='250 100'/>
              <edge name='side' role='seam' from='250 100' via='280 300' to='280 700'/>
              <edge name='hem' role='hem' from='280 700' via='150 700' to='50 700'/>
              <edge name='fold' role='fold' from='50 700' via='50 400' to='50 100'/>
              <at level='waist' along='waist'/>
            </piece>
            <piece ref='facing' name='Front facing' line='stitching' allowance='0' cut='1' fold='yes'>
              <edge name='seam' role='seam' from='400 100' via='500 100' to='600 100'/>
              <edge name='end' role='opening' from='600 100' via='603 125' to='606 150'/>
              <edge name='free edge' role='other' from='606 150' via='500 150' to='400 150'/>
              <edge name='fold' role='fold' from='400 150' via='400 125' to='400 100'/>
            </piece>
            <mate name='waist facing'>
              <first piece='front' edge='waist'/><second piece='facing' edge='seam'/>
            </mate>
            </marks></metadata></svg>
            """;

    private final Session session = new Session(LengthUnit.CM, false);

    @Test
    void aFacingThatNoLongerFitsItsWaistIsNamed() throws Exception {
        SvgFile svg = SvgFile.read(DRAWN.getBytes(StandardCharsets.UTF_8), "faced.svg");
        session.open(Opened.of(new OpenFile(svg, Optional.empty(), "faced.svg")));
        assertThat(FollowUp.of(session.desk())).isEmpty();
        for (double by : new double[] {6, -9}) {
            Pattern wider = new EdgeLength(EdgeRef.of("front", "waist"), by, EdgeLength.Manner.AT_ENDS, false)
                    .apply(session.desk().pattern())
                    .pattern();
            session.edit(wider);
            List<FollowUp> asked = FollowUp.of(session.desk());
            assertThat(asked).hasSize(1);
            assertThat(NoLongerFits.words(session.desk(), asked).replace('\u00a0', ' '))
                    .isEqualTo(
                            by > 0
                                    ? "Front facing no longer fits: 0.6 cm too short."
                                    : "Front facing no longer fits: 0.9 cm too long.");
            session.edit(asked.get(0).presses().get(0).result());
            List<Double> off = new ArrayList<>();
            session.desk().reading().measures().mates().forEach(w -> off.add(Math.abs(w.drift())));
            assertThat(off).allMatch(mm -> mm < 0.01);
            assertThat(session.desk().pattern().mates()).extracting(Mate::name).containsExactly("waist facing");
            session.undo();
            session.undo();
        }
    }
}
