package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.TableScenes;
import easewright.editor.paint.TableScene;
import easewright.geom.Point;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class LevelsViewTest {
    private static List<String> others(Bare bare, String level) {
        return LevelsView.of(bare.session.desk()).levels().stream()
                .filter(r -> r.name().equals(level))
                .findFirst()
                .orElseThrow()
                .others();
    }

    /** From a wrist no bust is measured, nor an upper arm down from it. */
    @Test
    void aLevelIsMeasuredFromWhatLiesAboveItOnTheSamePartOfTheBody() throws Exception {
        Bare bare = Bare.of(Files.readString(Path.of("src/test/resources/bare/yoke-blouse.svg")));
        bare.marker.suggesting().accept();
        bare.session.edit(LevelEdits.add(bare.session.desk().pattern(), "bust", LevelKind.BUST));
        bare.session.edit(LevelEdits.add(bare.session.desk().pattern(), "upper arm", LevelKind.UPPER_ARM));
        assertThat(others(bare, "bust")).isEmpty();
        assertThat(others(bare, "upper arm")).isEmpty();
        Pattern now = bare.session.desk().pattern();
        bare.session.edit(LevelEdits.place(now, bare.piece("Sleeve").id(), "upper arm", new Point(885, 300)));
        assertThat(others(bare, "upper arm")).isEmpty();
        assertThat(others(bare, "wrist")).containsExactly("upper arm");

        bare.session.edit(LevelEdits.add(bare.session.desk().pattern(), "waist", LevelKind.WAIST));
        now = bare.session.desk().pattern();
        String back = bare.piece("Blouse back").id();
        bare.session.edit(LevelEdits.place(now, back, "waist", new Point(500, 454)));
        assertThat(others(bare, "bust")).containsExactly("waist");
        assertThat(others(bare, "wrist")).containsExactly("upper arm");
    }

    /** A knee lies below the waist or the hip, but no hip below a knee. */
    @Test
    void aHipIsNotMeasuredFromTheKnee() throws Exception {
        Bare bare = Bare.skirt();
        bare.marker.suggesting().accept();
        bare.session.edit(LevelEdits.add(bare.session.desk().pattern(), "knee", LevelKind.KNEE));
        assertThat(others(bare, "knee")).contains("waist", "hip");
        Pattern now = bare.session.desk().pattern();
        bare.session.edit(LevelEdits.below(now, "knee", "waist", 500));
        assertThat(others(bare, "hip")).containsExactly("waist");
    }

    /** A piece is as wide here as its label on the table says, and as often. */
    @Test
    void widthsAreToldAsOnTheTable() throws Exception {
        Bare bare = Bare.skirt();
        bare.marker.suggesting().accept();
        TableScene scene = new TableScenes().of(bare.session.desk());
        int compared = 0;
        for (LevelsView.Row row : LevelsView.of(bare.session.desk()).levels()) {
            for (LevelsView.Place place : row.places()) {
                TableScene.PieceSight piece = scene.pieces().stream()
                        .filter(p -> p.piece().id().equals(place.piece()))
                        .findFirst()
                        .orElseThrow();
                TableScene.LevelSight level = piece.levels().stream()
                        .filter(l -> l.level().equals(row.name()))
                        .findFirst()
                        .orElseThrow();
                assertThat(level.figures()).isEqualTo(place.width());
                assertThat(place.width()).contains("2 \u00d7");
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(3);
    }
}
