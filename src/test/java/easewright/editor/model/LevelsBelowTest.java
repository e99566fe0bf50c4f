package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is carried down to the hem unless something else is chosen. */
class LevelsBelowTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private void open(String file) throws Exception {
        Sample sample = Sample.all().stream()
                .filter(s -> s.fileName().equals(file))
                .findFirst()
                .orElseThrow();
        session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
    }

    private Wanted at(String level) {
        session.chooseLevel(level);
        return session.desk().wanted().orElseThrow();
    }

    /** The hip line of a skirt with one more level so far below it, mm. */
    private Pattern withLevelBelow(double mm) {
        Pattern pattern = session.desk().pattern();
        List<Level> levels = new ArrayList<>(pattern.levels());
        levels.add(new Level("lower", LevelKind.OTHER, false));
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            List<LevelMark> marks = new ArrayList<>(piece.levels());
            piece.level("hip")
                    .flatMap(LevelMark::through)
                    .ifPresent(p -> marks.add(LevelMark.through("lower", new Point(p.x(), p.y() + mm))));
            pieces.add(piece.toBuilder().levels(marks).build());
        }
        return pattern.withLevels(levels).withPieces(pieces);
    }

    @Test
    void aSkirtIsCarriedToTheHemFromTheHip() throws Exception {
        open("skirt.svg");
        assertThat(at("hip").carry()).isTrue();
        session.want(at("hip").withAmount(20));
        assertThat(HereWords.outcome(session.desk())).contains("hem");
        session.want(at("hip").withCarry(false));
        assertThat(HereWords.outcome(session.desk())).doesNotContain("hem");
    }

    @Test
    void noLevelOfTrousersThatLiesAboveAnother() throws Exception {
        open("trousers.svg");
        for (String level : List.of("hip", "thigh")) {
            assertThat(at(level).carry()).as(level).isFalse();
            session.want(at(level).withAmount(12));
            assertThat(HereWords.outcome(session.desk())).doesNotContain("hem");
            session.leave();
        }
        double knee = knee();
        session.want(at("hip").withAmount(12));
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(knee()).as("what lies below stays").isEqualTo(knee);
    }

    private double knee() {
        return session.desk().shownReading().measures().girths().stream()
                .filter(g -> g.level().name().equals("knee"))
                .findFirst()
                .orElseThrow()
                .finished();
    }

    /** Who marks the hip first and the levels below it afterwards had nothing below it when the hip was put to work. */
    @Test
    void aLevelMarkedLaterIsNotRunOver() throws Exception {
        open("skirt.svg");
        assertThat(at("hip").carry()).isTrue();
        session.edit(withLevelBelow(150));
        assertThat(session.desk().wanted().orElseThrow().carry()).isFalse();
        session.want(session.desk().wanted().orElseThrow().withCarry(true));
        session.setWish("hip", OptionalDouble.of(50));
        assertThat(session.desk().wanted().orElseThrow().carry()).as("chosen").isTrue();
    }

    @Test
    void theLevelOfTheHemItselfIsNotBetween() throws Exception {
        open("skirt.svg");
        Piece front = session.desk().pattern().pieces().stream()
                .filter(p -> p.level("hip").isPresent())
                .findFirst()
                .orElseThrow();
        double hem = front.edge("hem").orElseThrow().from().y()
                - front.level("hip").orElseThrow().through().orElseThrow().y();
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        assertThat(LevelsBelow.isCarried(withLevelBelow(hem), hip)).isTrue();
        assertThat(LevelsBelow.isCarried(withLevelBelow(hem - 20), hip)).isFalse();
    }
}
