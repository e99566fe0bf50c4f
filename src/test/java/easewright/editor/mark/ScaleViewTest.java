package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Course;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.OpenedSample;
import easewright.editor.model.Recasting;
import easewright.editor.model.Sample;
import easewright.editor.model.Session;
import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Scale;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ScaleViewTest {
    private static final String BODY = "<path id='front' d='M100 100H300V500H100Z'/>";
    private final Session session = new Session(LengthUnit.CM, false);
    private final Marker marker = new Marker(session);

    private void open(String root, String body) throws SvgProblem {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' " + root + ">" + body + "</svg>";
        session.open(OpenedSample.drawn(text, "bare.svg"));
        marker.open(true);
    }

    private ScaleView view() {
        return ScaleView.of(session.desk(), marker.sheet());
    }

    private void take(int offer) {
        marker.scale(view().offers().get(offer), false);
    }

    private double wide() {
        return session.desk().pattern().pieces().get(0).outline().box().width();
    }

    @Test
    void aPhysicalSizeIsAProofWithALineToCheck() throws SvgProblem {
        open("width='600mm' height='600mm' viewBox='0 0 600 600'", BODY);
        assertThat(view().proved()).isTrue();
        assertThat(view().offers()).isEmpty();
        assertThat(view().checks()).hasSize(1);
        assertThat(view().checks().get(0).line().length()).isCloseTo(400, within(1e-9));
        assertThat(view().checks().get(0).words()).contains("40\u00a0cm").contains("front");
    }

    @Test
    void whereNothingIsDrawnNoLineIsAskedFor() throws SvgProblem {
        open("viewBox='0 0 600 600'", "");
        assertThat(view().headline()).isEqualTo("The drawing shows no outline");
        assertThat(view().offers()).isEmpty();
        assertThat(view().locked()).startsWith("Draw the pieces as paths or shapes");
    }

    /** A file whose size is stated is borne out by a square that was drawn in it; a square that set the scale is not. */
    @Test
    void theLineThatSetTheScaleIsNotTakenForAProofOfIt() throws SvgProblem {
        String square = "<path d='M10 10h40v40h-40z'/><text x='12' y='30' font-size='6'>4 cm</text>";
        open("width='600mm' height='600mm' viewBox='0 0 600 600'", BODY + square);
        assertThat(view().checks())
                .singleElement()
                .satisfies(c -> assertThat(c.words()).contains("4 cm").endsWith("as it should."));
        open("viewBox='0 0 600 600'", BODY + square);
        take(0);
        assertThat(wide()).isCloseTo(200, within(1e-6));
        assertThat(view().headline()).isEqualTo("Set from the square marked \u201c4 cm\u201d");
        assertThat(view().checks())
                .singleElement()
                .satisfies(c -> assertThat(c.words()).contains("another line", "40\u00a0cm", "front"));
        // Whoever clicks a side of the square and types what is written in it has proved no more.
        open("viewBox='0 0 600 600'", BODY + square);
        marker.choose(view().lines().get(0).line());
        marker.prove(40, false);
        assertThat(view().headline()).isEqualTo("Set from the square marked \u201c4 cm\u201d");
        session.undo();
        marker.choose(view().lines().get(1).line());
        marker.prove(400, false);
        assertThat(view().headline()).isEqualTo("Set from the line you measured");
        assertThat(view().checks())
                .singleElement()
                .satisfies(c -> assertThat(c.words()).contains("4 cm").endsWith("as it should."));
        // Files that were saved before that was written do not say from what it was set.
        String saved = new String(saved(), StandardCharsets.UTF_8);
        assertThat(saved).contains(" set-by=\"line\"");
        reopen(saved.replace(" set-by=\"line\"", ""));
        assertThat(view().headline()).isEqualTo("The scale was set by hand");
        assertThat(view().checks()).hasSize(2);
        assertThat(view().checks().get(0).words()).contains("If the scale was set from it, that proves nothing");
        String ruler = "<path d='M10 60h30'/><text x='12' y='62' font-size='3'>3 cm</text>";
        open("viewBox='0 0 600 600'", BODY + square + ruler);
        take(0);
        assertThat(view().checks())
                .singleElement()
                .satisfies(c -> assertThat(c.words()).contains("3 cm").endsWith("as it should."));
    }

    private byte[] saved() throws SvgProblem {
        return session.desk().file().orElseThrow().svg().write(session.desk().pattern());
    }

    private void reopen(String text) throws SvgProblem {
        session.open(OpenedSample.drawn(text, "saved.svg"));
        marker.open(true);
    }

    /** What proved the scale is still told when the file is opened again, and is no second proof of it then. */
    @Test
    void fromWhatTheScaleWasSetIsKeptInTheFile() throws SvgProblem {
        String square = "<path d='M10 10h40v40h-40z'/><text x='12' y='30' font-size='6'>4 cm</text>";
        open("viewBox='0 0 600 600'", BODY + square);
        take(0);
        reopen(new String(saved(), StandardCharsets.UTF_8));
        assertThat(view().headline()).isEqualTo("Set from the square marked \u201c4 cm\u201d");
        assertThat(view().checks())
                .singleElement()
                .satisfies(c -> assertThat(c.words()).contains("another line", "40\u00a0cm", "front"));
        open("viewBox='0 0 600 600'", BODY + square);
        marker.choose(view().lines().get(1).line());
        marker.prove(800, false);
        reopen(new String(saved(), StandardCharsets.UTF_8));
        assertThat(session.desk().pattern().scale().from()).hasValue(new Scale.From(Scale.From.What.LINE, ""));
        byte[] again = saved();
        assertThat(again)
                .as("nothing was changed")
                .isEqualTo(session.desk().file().orElseThrow().svg().bytes());
        // Another scale was set from something else.
        marker.choose(view().lines().get(0).line());
        marker.prove(40, false);
        session.undo();
        assertThat(session.desk().pattern().scale().from()).hasValue(new Scale.From(Scale.From.What.LINE, ""));
        session.redo();
        assertThat(view().headline()).isEqualTo("Set from the square marked \u201c4 cm\u201d");
    }

    /** 600 mm and 400 mm: 23.62 in and 15.75 in. */
    @Test
    void theScaleIsToldInTheUnitThatWasChosen() throws SvgProblem {
        open("width='600mm' height='600mm' viewBox='0 0 600 600'", BODY);
        assertThat(view().size()).isEqualTo("The page is 60\u00a0cm wide; front is 40\u00a0cm tall.");
        session.setUnit(LengthUnit.INCH);
        assertThat(view().size()).isEqualTo("The page is 23\u00a05/8\u00a0in wide; front is 15\u00a03/4\u00a0in tall.");
    }

    @Test
    void aSquareThatDisagreesCastsDoubtAndIsOffered() throws SvgProblem {
        open(
                "width='600mm' height='600mm' viewBox='0 0 600 600'",
                BODY + "<path d='M10 10h40v40h-40z'/><text x='12' y='30' font-size='6'>5 cm</text>");
        assertThat(view().proved()).isFalse();
        assertThat(view().offers())
                .singleElement()
                .satisfies(offer -> assertThat(offer.words())
                        .contains("measures 4\u00a0cm", "If it is 5\u00a0cm, front is 50\u00a0cm tall."));
        session.setUnit(LengthUnit.INCH);
        assertThat(view().offers().get(0).take()).isEqualTo("It is 5\u00a0cm");
        take(0);
        assertThat(wide()).isCloseTo(250, within(1e-6));
        assertThat(view().proved()).isTrue();
        assertThat(view().offers()).isEmpty();

        // Ten times too large, as when millimetres are typed where centimetres are meant.
        marker.choose(view().lines().get(0).line());
        marker.prove(500, false);
        assertThat(view().proved()).isFalse();
        assertThat(view().offers()).hasSize(1);
    }

    @Test
    void withoutASizeTheUsualUnitsAreOfferedWithWhatTheyMean() throws SvgProblem {
        open("viewBox='0 0 595.28 841.89' width='595.28' height='841.89'", BODY);
        assertThat(view().proved()).isFalse();
        // A page of 595.28 by 841.89 is A4 at 72 to the inch, so that goes first.
        assertThat(view().size()).startsWith("front is taken to be ").endsWith(" tall until you set the scale.");
        assertThat(view().offers()).hasSize(4);
        assertThat(view().offers().get(0).mmPerUnit()).isCloseTo(25.4 / 72, within(1e-12));
        take(0);
        assertThat(wide()).isCloseTo(200 * 25.4 / 72, within(1e-9));
        assertThat(session.desk().pattern().scale().proof()).isEqualTo(Scale.Proof.KNOWN_LINE);
        session.undo();
        assertThat(session.desk().pattern().scale().proof()).isEqualTo(Scale.Proof.UNPROVED);
    }

    /** A square that says what a usual unit says as well is one answer with it, and goes first. */
    @Test
    void whatASquareSaysIsOfferedOnce() throws SvgProblem {
        String square = "<path d='M10 10h113.386v113.386h-113.386z'/><text x='12' y='30' font-size='6'>4 cm</text>";
        String sewn = "<path d='M110 110H290V490H110Z'/>";
        open("viewBox='0 0 700 700'", BODY + sewn + square);
        assertThat(view().leads()).isTrue();
        assertThat(view().offers()).extracting(ScaleView.Offer::mmPerUnit).doesNotHaveDuplicates();
        double marked = 40 / 113.386;
        assertThat(view().offers().get(0).mmPerUnit()).isCloseTo(marked, within(1e-9));
        assertThat(view().offers())
                .filteredOn(o -> Math.abs(o.mmPerUnit() / marked - 1) < 0.01)
                .hasSize(1);
        assertThat(view().offers().get(0).words()).endsWith("front is 14.1\u00a0cm tall, allowances included.");
    }

    /** A page of A4 in millimetres without saying so: the millimetre goes first, each reading is offered once. */
    @Test
    void aPageThatIsASheetInMillimetresOffersThatFirst() throws SvgProblem {
        open("viewBox='0 0 210 297' width='100%' height='100%'", "<path id='front' d='M10,10h100v200h-100z'/>");
        assertThat(view().proved()).isFalse();
        assertThat(view().offers()).hasSize(4);
        assertThat(view().offers().get(0).mmPerUnit()).isEqualTo(1);
        assertThat(view().offers().get(0).words()).contains("in millimetres").contains("10\u00a0cm wide");
        assertThat(view().offers()).extracting(ScaleView.Offer::mmPerUnit).doesNotHaveDuplicates();
    }

    @Test
    void oneLineOfKnownLengthClickedOnTheTable() throws SvgProblem {
        open("viewBox='0 0 600 600'", BODY);
        double px = 25.4 / 96;
        marker.take(Tool.KNOWN_LINE);
        marker.click(new Point(100 * px, 320 * px), 1);
        assertThat(marker.state().line().orElseThrow().length()).isCloseTo(400 * px, within(1e-9));
        marker.prove(600, false);
        assertThat(wide()).isCloseTo(300, within(1e-9));
        assertThat(marker.state().tool()).isEqualTo(Tool.NONE);
    }

    @Test
    void twoPlacesOfKnownDistance() throws SvgProblem {
        open("viewBox='0 0 600 600'", BODY);
        double px = 25.4 / 96;
        marker.take(Tool.KNOWN_LINE);
        marker.click(new Point(100 * px, 100 * px + 0.5), 1);
        marker.hover(new Point(200 * px, 300 * px), 1);
        assertThat(MarkScenes.of(session.desk(), marker.sheet(), marker.lines(), marker.state(), Optional.empty())
                        .tape())
                .isPresent();
        marker.click(new Point(300 * px - 0.5, 500 * px), 1);
        assertThat(marker.state().line().orElseThrow().length()).isCloseTo(Math.hypot(200, 400) * px, within(1e-9));
        assertThatThrownBy(() -> marker.prove(-5, false)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> marker.prove(1e9, false)).isInstanceOf(IllegalArgumentException.class);
        marker.prove(Math.hypot(20, 40), false);
        assertThat(wide()).isCloseTo(20, within(1e-9));
    }

    @Test
    void theKeyboardGoesFromPlaceToPlace() throws SvgProblem {
        open("viewBox='0 0 600 600'", BODY);
        marker.take(Tool.TAPE);
        marker.step(1);
        marker.click();
        marker.step(1);
        marker.step(1);
        marker.click();
        double px = 25.4 / 96;
        assertThat(marker.state().line().orElseThrow().length()).isCloseTo(Math.hypot(200, 400) * px, within(1e-9));
        marker.back();
        assertThat(marker.state().tool()).isEqualTo(Tool.NONE);
        assertThat(marker.state().line()).isEmpty();
    }

    @Test
    void afterChangesTheScaleStays() throws SvgProblem {
        open("viewBox='0 0 600 600'", BODY);
        session.edit(session.desk().pattern().withChange(new ChangeNote("seam", Map.of())));
        assertThat(view().locked()).isNotEmpty();
        assertThat(view().offers()).isEmpty();
    }

    /** Work that comes back has nothing to undo: what is said to be the way out is there as well. */
    @Test
    void theWayOutIsThereWhereNothingCanBeUndone() throws Exception {
        Sample sample = Sample.all().get(0);
        session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        session.keep();
        byte[] kept =
                session.desk().file().orElseThrow().svg().write(session.desk().pattern());
        session.open(Opened.of(new OpenFile(SvgFile.read(kept, "kept.svg"), Optional.empty(), "kept.svg")));
        marker.open(true);
        assertThat(session.desk().canUndo()).isFalse();
        assertThat(view().locked()).contains("Remove them on the page Changes");
        Recasting.on(session, Course.of(session.desk()).without(0));
        assertThat(view().locked()).isEmpty();
    }
}
