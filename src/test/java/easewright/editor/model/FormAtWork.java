package easewright.editor.model;

import easewright.alter.Ways;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;

/** A skirt on the table at its hip, to be changed in any way by its form. */
abstract class FormAtWork {
    final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openTheSkirt() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
    }

    void want(String method, double mm) {
        OtherWay way = OtherWay.of(Ways.of(method).orElseThrow());
        session.want(session.desk()
                .wanted()
                .orElseThrow()
                .withOther(Optional.of(way))
                .withAmount(mm));
    }

    void set(String key, String... texts) {
        Wanted wanted = session.desk().wanted().orElseThrow();
        session.want(wanted.withOther(wanted.other().map(o -> o.with(key, List.of(texts)))));
    }

    double hip() {
        return session.desk()
                .shownReading()
                .measures()
                .girth("hip")
                .orElseThrow()
                .finished();
    }

    void go(String method) {
        Desk desk = session.desk();
        session.want(SeamsInFull.to(method, desk.wanted().orElseThrow(), desk));
    }

    WayForm.Field field(String key) {
        OtherWay way = session.desk().wanted().orElseThrow().other().orElseThrow();
        return WayForm.of(way, session.desk()).fields().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
