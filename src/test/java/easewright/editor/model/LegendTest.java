package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.paint.TableScene;
import easewright.pattern.EdgeRef;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LegendTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private void open(String id) throws Exception {
        session.open(OpenedSample.of(id));
    }

    private void agreesWithTheTable() {
        Legend legend = legend();
        boolean tried = session.desk().shownTrial().isPresent();
        holds(legend, Legend.Sign.MOVED, p -> tried && !p.moved().isEmpty());
        holds(legend, Legend.Sign.DONE, p -> !tried && !p.moved().isEmpty());
        holds(legend, Legend.Sign.BEFORE, p -> p.ghost().isPresent());
        holds(legend, Legend.Sign.KEPT, p -> !p.trial().kept().isEmpty());
        holds(legend, Legend.Sign.DRIFTED, p -> !p.trial().drifts().isEmpty());
    }

    private Legend legend() {
        return Legend.of(new TableScenes().of(session.desk()), session.desk().pointed());
    }

    private void holds(Legend legend, Legend.Sign sign, Predicate<TableScene.PieceSight> painted) {
        TableScene scene = new TableScenes().of(session.desk());
        assertThat(legend.signs().contains(sign))
                .as("%s at %s", sign, session.desk().wanted())
                .isEqualTo(scene.pieces().stream().anyMatch(painted));
    }

    /** What is painted is explained, and nothing else. */
    @ParameterizedTest
    @CsvSource({"skirt", "trousers", "bodice", "knit-top"})
    void theLinesOnTheTableAreExplained(String sample) throws Exception {
        open(sample);
        agreesWithTheTable();
        for (var level : session.desk().pattern().levels()) {
            session.chooseLevel(level.name());
            for (double amount : new double[] {12, -12}) {
                for (Side side : Side.values()) {
                    session.want(
                            session.desk().wanted().orElseThrow().withSide(side).withAmount(amount));
                    agreesWithTheTable();
                }
            }
        }
    }

    /** Of a piece that stays as it is nothing is painted as moved while something is tried, whatever was kept before. */
    @Test
    void whileSomethingIsTriedOnlyThatIsPaintedAsMoved() throws Exception {
        open("skirt");
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        session.keep();
        EdgeRef front = EdgeRef.of("skirt-front", "side");
        Wanted again = session.desk().wanted().orElseThrow().withLeftOut(Set.of(front));
        for (Side side : Side.values()) {
            session.want(again.withSide(side).withAmount(10));
            assertThat(session.desk().shownTrial()).isPresent();
            assertThat(moved()).as("%s", side).isNotEmpty().noneMatch(id -> id.startsWith("skirt-front"));
            assertThat(session.desk().takingHolds())
                    .isNotEmpty()
                    .noneMatch(h -> h.edge().equals(front));
            agreesWithTheTable();
        }
        session.leave();
        assertThat(moved()).contains("skirt-front", "skirt-back");
    }

    /** Pins of protected edges are on the table whether anything is tried or not; a fold alone has none. */
    @Test
    void protectedEdgesAreExplainedWheneverTheyAreDrawn() throws Exception {
        open("skirt");
        assertThat(legend().signs()).isEmpty();
        for (String sample : List.of("bodice", "trousers", "knit-top")) {
            open(sample);
            assertThat(legend().signs()).as(sample).containsExactly(Legend.Sign.GUARDED);
        }
    }

    /** What would be redrawn is drawn over what is there: both are explained, with the ring around the place. */
    @Test
    void whatWouldBeRedrawnIsExplained() throws Exception {
        SvgFile untrue = SvgFile.read(Path.of("src/test/resources/command/untrue-bodice.svg"));
        session.open(Opened.of(new OpenFile(untrue, Optional.empty(), "untrue-bodice.svg")));
        session.point(TrueWork.of(session.desk()).places().get(0).pointed());
        assertThat(legend().signs()).contains(Legend.Sign.REDRAWN, Legend.Sign.PLACE, Legend.Sign.STITCHED);
        assertThat(pieces()).as("no band that nothing explains").noneMatch(TableScene.PieceSight::pointed);
        session.point(Notes.pointed(session.desk(), "side seam"));
        assertThat(legend().signs()).doesNotContain(Legend.Sign.REDRAWN, Legend.Sign.PLACE);
        assertThat(pieces()).anyMatch(TableScene.PieceSight::pointed);
    }

    private List<TableScene.PieceSight> pieces() {
        return new TableScenes().of(session.desk()).pieces();
    }

    private List<String> moved() {
        return new TableScenes()
                .of(session.desk()).pieces().stream()
                        .filter(p -> !p.moved().isEmpty())
                        .map(p -> p.piece().id())
                        .toList();
    }

    @Test
    void aKeptChangeIsStillExplainedAndAnUndoneOneNoMore() throws Exception {
        open("skirt");
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        assertThat(legend().signs()).containsExactly(Legend.Sign.MOVED, Legend.Sign.BEFORE, Legend.Sign.KEPT);
        session.keep();
        agreesWithTheTable();
        assertThat(legend().signs()).containsExactly(Legend.Sign.DONE, Legend.Sign.BEFORE);
        session.undo();
        assertThat(legend().signs()).isEmpty();
    }

    /** Seams that are called alike in all sizes are marked in the one that is worked on. */
    @Test
    void whatNoLongerFitsInOneSizeIsMarkedThere() throws Exception {
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        session.open(
                Opened.of(new OpenFile(SvgFile.read(svg, "skirt-sizes.svg"), Optional.empty(), "skirt-sizes.svg")));
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        assertThat(legend().signs()).contains(Legend.Sign.DRIFTED);
        String size = session.desk().size().orElseThrow();
        assertThat(new TableScenes().of(session.desk()).pieces())
                .filteredOn(p -> !p.trial().drifts().isEmpty())
                .extracting(p -> p.piece().name())
                .containsExactlyInAnyOrder("Back " + size, "Front " + size, "Waistband " + size);
    }
}
