package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.mark.LevelsView;
import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.text.LengthUnit;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

class LevelPlaceRowTest {
    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    /** However wide the sheet is, a width stands beside its piece, or beside the distance of that. */
    @ParameterizedTest
    @ValueSource(strings = {"waist", "hip"})
    void theFigureStandsBesideItsName(String level) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        LevelsView.Row told = LevelsView.of(session.desk()).levels().stream()
                .filter(l -> l.name().equals(level))
                .findFirst()
                .orElseThrow();
        WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
            LevelPlaceRow row = new LevelPlaceRow(session);
            row.show(level, told.places().get(0), false, session.desk());
            VBox sheet = new VBox(row);
            new Scene(sheet, 800, 200).getRoot().applyCss();
            sheet.resize(800, 200);
            sheet.layout();
            row.layout();
            row.lookupAll("*").stream().filter(n -> n instanceof Parent).forEach(n -> ((Parent) n).layout());
            String figure = told.places().get(0).width();
            Node width = row.lookupAll(".label").stream()
                    .filter(n -> n instanceof Label l && l.getText().equals(figure))
                    .findFirst()
                    .orElseThrow();
            double before = LevelPlaceRow.PIECE + LeadLine.GAP + (level.equals("waist") ? 0 : 86 + 6);
            assertThat(width.localToScene(0, 0).getX()).isBetween(before - 1, before + 8);
            Node tick = row.lookupAll(".check-box").stream()
                    .filter(CheckBox.class::isInstance)
                    .findFirst()
                    .orElseThrow();
            assertThat(tick.localToScene(0, 0).getX())
                    .as("and its tick not too far away")
                    .isLessThan(LevelPlaceRow.WIDEST);
            return true;
        });
    }
}
