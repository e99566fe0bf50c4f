package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.ease.EaseLine;
import easewright.editor.mark.PieceEdits;
import easewright.pattern.Body;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A file with several sizes in the editor: one of them is at work. */
class SizesSessionTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openTheNest() throws Exception {
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "nest.svg"), Optional.empty(), "nest.svg")));
        session.chooseLevel("hip");
    }

    private List<EaseLine> lines() {
        return session.desk().shownReading().sheet().lines();
    }

    @Test
    void theFirstSizeIsAtWorkUntilAnotherIsChosen() {
        assertThat(session.desk().size()).contains("10");
        assertThat(lines()).extracting(EaseLine::name).containsExactly("waist", "hip");
        session.chooseSize("14");
        assertThat(session.desk().size()).contains("14");
        assertThat(lines().get(1).body()).hasValue(41.5 * 25.4);
        session.edit(session.desk().pattern().withWish("hip", 60));
        assertThat(session.desk().size()).contains("14");
    }

    /** Typed as a part of the body it is that part of each body, and comes back so from the file. */
    @Test
    void aWishInPerCentIsOneOfEachBodyAndComesBackFromTheFile() throws Exception {
        session.setWish("hip", OptionalDouble.of(1), OptionalDouble.of(6));
        for (String size : List.of("10", "12", "14")) {
            session.chooseSize(size);
            double body = lines().get(1).body().orElseThrow();
            assertThat(lines().get(1).wish().orElseThrow()).as(size).isCloseTo(0.06 * body, within(1e-9));
            assertThat(lines().get(1).wishPercent()).hasValue(6);
        }
        byte[] written =
                session.desk().file().orElseThrow().svg().write(session.desk().pattern());
        Pattern again = SvgFile.read(written, "again.svg").pattern();
        assertThat(again.wishes()).isEqualTo(session.desk().pattern().wishes());
        assertThat(again.wishes().get("hip").percent()).hasValue(6);
        // As it was written before a part was kept: a length.
        String old = new String(written, StandardCharsets.UTF_8).replaceAll(" percent=\"6\"", "");
        assertThat(SvgFile.read(old.getBytes(StandardCharsets.UTF_8), "old.svg")
                        .pattern()
                        .wishes()
                        .get("hip")
                        .percent())
                .isEmpty();
    }

    @Test
    void aChangeIsMadeInTheSizeAtWork() {
        session.chooseSize("12");
        Pattern before = session.desk().pattern();
        double hip = lines().get(1).finished();
        session.want(session.desk().wanted().orElseThrow().withAmount(24));
        assertThat(lines().get(1).finished()).isCloseTo(hip + 24, within(0.01));
        assertThat(session.desk().holds()).allMatch(h -> h.edge().piece().endsWith("-12"));
        session.keep();
        Pattern after = session.desk().pattern();
        for (int i = 0; i < before.pieces().size(); i++) {
            Piece was = before.pieces().get(i);
            if (!was.size().equals(Optional.of("12"))) {
                assertThat(after.pieces().get(i)).isSameAs(was);
            }
        }
        session.chooseSize("10");
        assertThat(lines().get(1).ease().orElseThrow()).isCloseTo(50, within(0.01));
    }

    /** Two customers, one nest: what is typed for one leaves the other alone. */
    @Test
    void aSizeMayHaveAWearerOfItsOwn() {
        Pattern nobody = session.desk().pattern().withBodies(Map.of()).withBody(Body.UNKNOWN);
        session.edit(nobody);
        type(940);
        session.chooseSize("12");
        assertThat(lines().get(1).body()).as("counts for all").hasValue(940);
        session.setOwnWearer(true);
        assertThat(lines().get(1).body()).as("begins with it").hasValue(940);
        type(1000);
        assertThat(lines().get(1).body()).hasValue(1000);
        session.chooseSize("10");
        assertThat(lines().get(1).body()).hasValue(940);
        session.chooseSize("12");
        session.setOwnWearer(false);
        assertThat(lines().get(1).body()).hasValue(940);
        assertThat(session.desk().pattern().bodies()).isEmpty();

        session.edit(nobody);
        session.setOwnWearer(true);
        type(1010);
        assertThat(lines().get(1).body()).as("also before anybody is measured").hasValue(1010);
        session.chooseSize("14");
        assertThat(lines().get(1).body()).isEmpty();
    }

    /** A field is emptied and typed anew: what is typed then is not the measurement of all sizes. */
    @Test
    void aWearerOfWhomNothingIsMeasuredAnyMoreIsOneStill() {
        session.edit(session.desk().pattern().withBodies(Map.of()).withBody(Body.UNKNOWN));
        type(940);
        session.chooseSize("12");
        session.setOwnWearer(true);
        session.setBody(session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.empty(), "Hip girth");
        assertThat(lines().get(1).body()).isEmpty();
        type(1000);
        assertThat(lines().get(1).body()).hasValue(1000);
        session.chooseSize("10");
        assertThat(lines().get(1).body()).hasValue(940);
    }

    private void type(double hip) {
        session.setBody(session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(hip), "Hip girth");
    }

    @Test
    void theBodyTypedIsThatOfTheSize() {
        session.chooseSize("12");
        session.setBody(session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(1000), "Hip girth");
        assertThat(lines().get(1).body()).hasValue(1000);
        session.chooseSize("14");
        assertThat(lines().get(1).body()).hasValue(41.5 * 25.4);
    }

    private String sizes(String level) {
        return EasePage.of(session.desk()).rows().stream()
                .filter(row -> row.name().equals(level))
                .flatMap(row -> row.sizes().stream())
                .map(SizeWishes.Said::words)
                .findFirst()
                .orElse("");
    }

    /** All sizes of the nest have 5 cm at the hip; then one gets more and one has nobody to be worn by. */
    @Test
    void aWishIsForAllSizesAndEachIsToldHowItStands() {
        assertThat(sizes("hip")).endsWith("10, 12, 14: as wished");
        session.setWish("hip", OptionalDouble.of(60));
        assertThat(sizes("hip")).endsWith("10, 12, 14: 1\u00a0cm missing");
        assertThat(EasePage.of(session.desk())
                        .rows()
                        .get(1)
                        .unmet(session.desk().words()))
                .as("all alike")
                .isEmpty();
        session.chooseSize("12");
        assertThat(lines().get(1).wish()).hasValue(60);
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        assertThat(sizes("hip")).contains("10, 14: 1\u00a0cm missing").contains("12: as wished");
        EaseRow hip = EasePage.of(session.desk()).rows().get(1);
        assertThat(hip.sizes().orElseThrow().unmet()).containsExactly("10", "14");
        assertThat(hip.unmet(session.desk().words())).isEqualTo("Sizes 10 and 14 are not as wished.");
        session.keep();
        session.chooseSize("10");
        EaseRow other = EasePage.of(session.desk()).rows().get(1);
        assertThat(other.verdict(session.desk().words()))
                .as("what holds for both is said once")
                .isEqualTo("1\u00a0cm missing, in 10 and 14");
        session.chooseSize("12");
        session.edit(session.desk().pattern().withBody("14", Body.UNKNOWN).withBody(Body.UNKNOWN));
        assertThat(sizes("hip")).contains("14: no body known");
        session.setWish("hip", OptionalDouble.empty());
        assertThat(sizes("hip")).isEmpty();
    }

    @Test
    void theSizeOfAPieceIsMarked() {
        Pattern pattern = session.desk().pattern();
        String id = pattern.pieces().get(0).id();
        assertThat(PieceEdits.size(pattern, id, " M ").pieces().get(0).size()).contains("M");
        assertThat(PieceEdits.size(pattern, id, " ").pieces().get(0).size()).isEmpty();
    }
}
