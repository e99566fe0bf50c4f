package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LastPlacedTest {
    @ParameterizedTest
    @ValueSource(strings = {"front", "back"})
    void aLevelMeetsWhereItWasLastPut(String last) throws Exception {
        Pattern laid = LevelEdits.below(LevelEditsTest.slanted(), "hip", "waist", 127);
        Point there = new Point(last.equals("front") ? 180 : 500, 280);
        Pattern dragged = LevelEdits.place(laid, last, "hip", there);

        var put = LastPlaced.on(List.of(LevelEditsTest.slanted(), laid, dragged), "hip");
        assertThat(put).containsExactly(last);

        Pattern met = LevelMeetings.meet(dragged, "hip", put);
        assertThat(LevelEditsTest.height(met, last)).isCloseTo(280, within(1e-9));
        assertThat(LevelMeetings.meetings(met, Measures.of(met), "hip"))
                .allSatisfy(m -> assertThat(m.isApart()).isFalse());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void putOnAllPiecesAtOnceItWasPutOnNoneByItself(int states) throws Exception {
        Pattern laid = LevelEdits.below(LevelEditsTest.slanted(), "hip", "waist", 127);
        assertThat(LastPlaced.on(List.of(LevelEditsTest.slanted(), laid).subList(0, states), "hip"))
                .isEmpty();
    }
}
