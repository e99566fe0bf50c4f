package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.CentreChange;
import easewright.alter.Replay;
import easewright.editor.mark.LevelEdits;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class NotesTest {
    /** What the reader and a check both notice is one note, the weightier one. */
    /** In a nest the pieces of every size are called alike by the seam. */
    @Test
    void aSeamIsShownOnThePiecesOfTheSizeAtWork() throws Exception {
        Path nest = Path.of("sample-pieces/skirt-sizes.svg");
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(SvgFile.read(nest), Optional.of(nest), "skirt-sizes.svg")));
        for (String size : List.of("10", "12", "14")) {
            session.chooseSize(size);
            Pointed seam = Notes.pointed(session.desk(), "side seam").orElseThrow();
            assertThat(session.desk()
                            .pattern()
                            .piece(seam.piece())
                            .orElseThrow()
                            .size())
                    .contains(size);
            assertThat(seam.places())
                    .as("a ring on every piece that it is on")
                    .allSatisfy(at -> assertThat(seam.lines())
                            .anyMatch(l -> l.at(l.nearest(at)).distance(at) < 1e-6))
                    .hasSize(2);
            for (var line : seam.lines()) {
                assertThat(session.desk().pattern().pieces())
                        .filteredOn(p -> p.outline().nearest(line.at(0.5)).distance() < 1e-6)
                        .isNotEmpty()
                        .allMatch(p -> p.size().equals(Optional.of(size)));
            }
        }
    }

    /** A facing is in no drawing: that the neck it is sewn to is longer is told for as long as it is. */
    @Test
    void aProtectedEdgeThatWasKeptIsToldUntilItIsTakenBack() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.of("bodice"));
        Pattern drawn = session.desk().pattern();
        Piece front = drawn.pieces().stream()
                .filter(p -> p.edge("neck").isPresent())
                .filter(p -> p.edges().stream().anyMatch(e -> e.role() == EdgeRole.FOLD))
                .findFirst()
                .orElseThrow();
        Edge fold = front.edges().stream()
                .filter(e -> e.role() == EdgeRole.FOLD)
                .findFirst()
                .orElseThrow();
        CentreChange wide = CentreChange.parallel("bust", 20, EdgeRef.of(front.id(), fold.name()));
        session.edit(wide.acceptingProtected().apply(drawn).pattern());
        assertThat(Notes.of(session.desk()))
                .filteredOn(n -> n.words().startsWith("The protected edge \u201cneck\u201d of " + front.name()))
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.words())
                            .containsPattern("its length by \\+0\\.\\d+\u00a0cm")
                            .endsWith("Change what is sewn to it likewise.");
                    assertThat(n.piece()).hasValue(front.id());
                });
        assertThat(Notes.of(session.desk()))
                .as("of what is sewn in the pattern it is told whether it fits")
                .noneMatch(n -> n.words().startsWith("The protected edge \u201cshoulder"));
        session.edit(new Replay(session.desk().pattern(), List.of()).to(List.of()));
        assertThat(Notes.of(session.desk())).noneMatch(n -> n.words().startsWith("The protected edge"));
    }

    @Test
    void whatIsNoticedTwiceIsToldOnce() throws Exception {
        Path bare = Path.of("src/test/resources/marking/four-pieces.svg");
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(SvgFile.read(bare), Optional.of(bare), "four-pieces.svg")));
        List<Notes.Note> notes = Notes.of(session.desk());
        assertThat(notes).extracting(Notes.Note::words).doesNotHaveDuplicates().hasSizeGreaterThan(3);
        assertThat(notes.get(0).words()).contains("does not say how large it is");
        assertThat(notes.get(0).severity()).isEqualTo(Severity.FAULT);
        assertThat(notes).as("some are of little weight").anyMatch(n -> n.severity() == Severity.NOTE);
        assertThat(Notes.count(session.desk()))
                .as("the number at the head of the list is of what is trouble")
                .isEqualTo((int) notes.stream()
                        .filter(n -> n.severity() != Severity.NOTE)
                        .count())
                .isPositive();
    }

    /** Of an ease that is being changed only what it is now is told. */
    @Test
    void whatIsTriedOvertakesWhatWas() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        session.setBody(session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(1040), "Hip girth");
        session.chooseLevel("hip");
        assertThat(eases(session)).containsExactly("The ease at hip is 1\u00a0cm.");
        session.want(session.desk().wanted().orElseThrow().withAmount(5));
        assertThat(eases(session)).containsExactly("The ease at hip is 1.5\u00a0cm.");
        session.want(session.desk().wanted().orElseThrow().withAmount(60));
        assertThat(eases(session)).isEmpty();
        session.leave();
        assertThat(eases(session)).containsExactly("The ease at hip is 1\u00a0cm.");
    }

    /** The same of one of several sizes, which is named beside its level. */
    @Test
    void whatIsTriedOvertakesWhatWasInItsSize() throws Exception {
        Path nest = Path.of("sample-pieces/skirt-sizes.svg");
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(SvgFile.read(nest), Optional.of(nest), "skirt-sizes.svg")));
        double hip =
                session.desk().reading().measures().girth("hip").orElseThrow().finished();
        session.setBody(session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(hip - 10), "Hip girth");
        session.chooseLevel("hip");
        assertThat(eases(session)).contains("The ease at hip (10) is 1\u00a0cm.");
        session.want(session.desk().wanted().orElseThrow().withAmount(60));
        assertThat(eases(session)).noneMatch(e -> e.contains("(10)"));
        session.leave();
        assertThat(eases(session)).contains("The ease at hip (10) is 1\u00a0cm.");
    }

    /** A seam that a change on one side makes into a left and a right one is off as before, where it was off. */
    @Test
    void aSeamThatIsTriedOnOneSideIsToldAsLongAsItIsOff() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.of("knit-top"));
        Pattern pattern = session.desk().pattern();
        session.edit(pattern.withMates(pattern.mates().stream()
                .map(m -> m.name().equals("side seam") ? new Mate(m.name(), m.first(), m.second(), 20) : m)
                .toList()));
        session.chooseLevel("hip");
        assertThat(seams(session)).contains("side seam");
        session.want(session.desk()
                .wanted()
                .orElseThrow()
                .withSide(Side.LEFT)
                .withEven(true)
                .withAmount(20));
        assertThat(seams(session)).contains("side seam left", "side seam right").doesNotContain("side seam");
        session.leave();
        assertThat(seams(session)).contains("side seam").doesNotContain("side seam left");
    }

    /** Levels that do not meet at a seam are told of once: by how much they are off now, as long as a change is tried. */
    @Test
    void levelsThatStayApartAreToldAsTheyAreTried() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.of("trousers"));
        Pattern drawn = session.desk().pattern();
        session.edit(LevelEdits.place(drawn, "trousers-back", "thigh", new Point(253, 495)));
        session.chooseLevel("thigh");
        List<String> before = apart(session);
        assertThat(before).isNotEmpty();
        session.want(session.desk().wanted().orElseThrow().withAmount(40));
        List<String> tried = apart(session);
        assertThat(tried).hasSameSizeAs(before).isNotEqualTo(before);
        session.leave();
        assertThat(apart(session)).isEqualTo(before);
    }

    private static List<String> apart(Session session) {
        return Notes.of(session.desk()).stream()
                .map(Notes.Note::words)
                .filter(w -> w.startsWith("At seam") && w.contains("level \u201cthigh\u201d"))
                .toList();
    }

    private static List<String> seams(Session session) {
        return Notes.of(session.desk()).stream().flatMap(n -> n.seam().stream()).toList();
    }

    private static List<String> eases(Session session) {
        return Notes.of(session.desk()).stream()
                .map(Notes.Note::words)
                .filter(w -> w.startsWith("The ease at hip"))
                .map(w -> w.substring(0, w.indexOf(". ") + 1))
                .toList();
    }

    /** What is put right on the page True counts there, and among the notes no more. */
    @Test
    void aSeamThatIsPutRightElsewhereCountsThere() throws Exception {
        Path file = Path.of("sample-pieces/skirt.svg");
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(SvgFile.read(file), Optional.of(file), "skirt.svg")));
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        Desk tried = session.desk();
        long before = Notes.open(tried, Optional.of(TrueWork.of(tried.untried())));
        assertThat(Notes.count(tried, Optional.of(TrueWork.of(tried.untried()))))
                .as("nothing is offered of what is only tried")
                .isEqualTo(Notes.count(tried))
                .isPositive();
        assertThat(Notes.intro(tried, Optional.of(TrueWork.of(tried.untried()))))
                .isEqualTo("editor.notes.intro");
        session.keep();
        Desk desk = session.desk();
        TrueWork work = TrueWork.of(desk);
        assertThat(work.offers()).extracting(FollowUp::seam).contains("waistband");
        assertThat(Notes.open(desk, Optional.of(work)))
                .isEqualTo(work.offers().size() + work.places().size())
                .isGreaterThan(before);
        assertThat(Notes.count(desk, Optional.of(work))).isEqualTo(Notes.count(desk) - 1);
        assertThat(Notes.intro(desk, Optional.of(work)))
                .as("a page without a number has a sign of trouble on it")
                .isEqualTo("editor.notes.intro.true");
        assertThat(Notes.open(desk, Optional.empty()))
                .as("no other number while it is looked for")
                .isEqualTo(Notes.open(desk, Optional.of(work)));
        // A way out is tried: the page goes on listing what was before, and its number counts that.
        session.tryOut(work.offers().stream()
                .filter(o -> o.seam().equals("waistband"))
                .findFirst()
                .orElseThrow()
                .presses()
                .get(0));
        assertThat(session.desk().trial()).isPresent();
        assertThat(Notes.open(session.desk(), Optional.of(work)))
                .isEqualTo(work.offers().size() + work.places().size());
        assertThat(Notes.open(session.desk(), Optional.empty()))
                .as("no other number while it is looked for")
                .isEqualTo(Notes.open(session.desk(), Optional.of(work)));
        // The seam made worse is the same one seam.
        session.leave();
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        assertThat(Notes.open(session.desk(), Optional.of(work)))
                .isEqualTo(work.offers().size() + work.places().size());
        assertThat(Notes.of(session.desk())).extracting(Notes.Note::seam).contains(Optional.of("waistband"));
        assertThat(Notes.count(session.desk(), Optional.of(work))).isEqualTo(Notes.count(session.desk()) - 1);
    }
}
