package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.ease.EaseTables;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ease tables of one's own in the window. */
class OwnTablesSessionTest {
    private static final String MINE = """
            id: mine
            garment: skirt, kilt
            level: hip
            unit: cm
            source: my notebook
            standing: common practice
            band: as I like it | 4 | 6
            """;

    @TempDir
    private Path folder;

    private final Session session = new Session(LengthUnit.CM, false);
    private Path file;

    @BeforeEach
    void openTheSkirt() throws Exception {
        file = Files.writeString(folder.resolve("mine.txt"), MINE);
        open();
    }

    private void open() throws Exception {
        session.open(OpenedSample.skirt());
    }

    private boolean speaks() {
        return EasePage.of(session.desk()).rows().stream()
                .flatMap(row -> row.classes().stream())
                .anyMatch(said -> said.startsWith("\u201cas I like it\u201d"));
    }

    private String said() {
        return OwnTableWords.of(session.ownTables().entries().get(0), session.desk());
    }

    /** The sample skirt has 5 cm at the hip. */
    @Test
    void speakBesideTheOthersUntilTheyAreRemoved() throws Exception {
        session.setOwnTables(session.ownTables().with(OwnTables.Entry.read(file)));
        assertThat(speaks()).isTrue();
        assertThat(said()).contains("classes at hip (skirt, kilt)").doesNotContain("Nothing");
        assertThat(Garments.of(
                                session.desk().pattern(),
                                session.desk().reading().tables())
                        .choices())
                .contains("kilt");
        assertThat(session.desk().history().canUndo()).isFalse();
        open();
        assertThat(speaks()).as("on the next file too").isTrue();
        session.setGarment("coat");
        assertThat(said()).contains("Nothing in it is for this garment");
        session.undo();
        session.setOwnTables(
                session.ownTables().without(session.ownTables().files().get(0)));
        assertThat(speaks()).isFalse();
        assertThat(session.desk().reading().tables()).isSameAs(EaseTables.standard());
    }

    @Test
    void holdWhileAChangeIsTried() throws Exception {
        session.setOwnTables(session.ownTables().with(OwnTables.Entry.read(file)));
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAmount(5));
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(EasePage.of(session.desk()).rows().get(1).called())
                .startsWith("5.5\u00a0cm is ")
                .contains("\u201cas I like it\u201d");
        session.setOwnTables(OwnTables.NONE);
        assertThat(session.desk().shownTrial()).as("what is tried stays").isPresent();
        assertThat(speaks()).isFalse();
    }

    @Test
    void holdWhileAnOfferIsTried() throws Exception {
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        session.keep();
        FollowUp.Press press = FollowUp.of(session.desk()).get(0).presses().get(0);
        session.tryOut(press);
        session.setOwnTables(session.ownTables().with(OwnTables.Entry.read(file)));
        assertThat(session.desk().shownTrial().flatMap(Trial.Shown::offer))
                .as("what is tried stays")
                .contains(press);
        assertThat(session.desk().shown()).isEqualTo(press.result());
        assertThat(speaks()).isTrue();
    }

    /** A disk may be so slow that a table is removed while it is read again. */
    @Test
    void stayAwayWhereTheyWereRemovedWhileTheyWereReadAgain() {
        OwnTables.Entry read = OwnTables.Entry.read(file);
        OwnTables with = OwnTables.NONE.with(OwnTables.Entry.unreadable(file));
        assertThat(with.renewed(read).entries()).containsExactly(read);
        OwnTables without = with.without(read.file());
        assertThat(without.renewed(read)).isSameAs(without);
    }

    @Test
    void areNotWaitedForWhereReadingFailedAltogether() {
        session.setOwnTables(OwnTables.unread(List.of(file)).filled(OwnTables.Entry.unreadable(file)));
        assertThat(said()).contains("mine.txt cannot be read");
    }

    /** The first to be read is there while the other is waited for; what was removed meanwhile stays away. */
    @Test
    void areThereBeforeTheyAreReadAndThenEachForItself() throws Exception {
        Path slow = Files.writeString(folder.resolve("slow.txt"), MINE.replace("as I like it", "slowly"));
        session.setOwnTables(OwnTables.unread(List.of(slow, file)));
        assertThat(session.ownTables().files()).containsExactly(slow, file);
        assertThat(said()).contains("being read");
        assertThat(session.desk().reading().tables()).isSameAs(EaseTables.standard());
        assertThat(session.ownTables().again()).isSameAs(session.ownTables());
        session.setOwnTables(session.ownTables().filled(OwnTables.Entry.read(file)));
        assertThat(speaks()).isTrue();
        assertThat(said()).contains("being read");
        OwnTables without = session.ownTables().without(slow);
        assertThat(without.filled(OwnTables.Entry.read(slow))).isSameAs(without);
        session.setOwnTables(session.ownTables().filled(OwnTables.Entry.read(slow)));
        assertThat(said()).contains("classes at hip");
        assertThat(session.ownTables().files()).containsExactly(slow, file);
    }

    @Test
    void areThereWithTheirFaultAndCanBeReadAgain() throws Exception {
        Files.writeString(file, MINE.replace("cm", "ell"));
        OwnTables.Entry lost = OwnTables.Entry.read(folder.resolve("lost.txt"));
        session.setOwnTables(OwnTables.NONE.with(OwnTables.Entry.read(file)).with(lost));
        assertThat(session.ownTables().entries()).hasSize(2);
        assertThat(said())
                .contains("Line 4")
                .contains("mine.txt")
                .contains("\u201cell\u201d")
                .contains("cm, in");
        assertThat(OwnTableWords.of(session.ownTables().entries().get(1), session.desk()))
                .contains("lost.txt");
        Files.writeString(file, MINE);
        session.setOwnTables(session.ownTables().with(OwnTables.Entry.read(file)));
        assertThat(session.ownTables().entries()).hasSize(2);
        assertThat(speaks()).isTrue();
    }
}
