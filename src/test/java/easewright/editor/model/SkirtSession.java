package easewright.editor.model;

import easewright.ease.EaseLine;
import easewright.text.LengthUnit;
import org.junit.jupiter.api.BeforeEach;

/** The sample skirt on the table, with its hip at work. */
abstract class SkirtSession {
    final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openTheSkirt() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
    }

    EaseLine hip() {
        return session.desk().shownReading().sheet().lines().stream()
                .filter(l -> l.level().name().equals("hip"))
                .findFirst()
                .orElseThrow();
    }

    Wanted wanted() {
        return session.desk().wanted().orElseThrow();
    }
}
