package easewright.editor.panel;

import easewright.editor.mark.LevelEdits;
import easewright.editor.mark.LevelLeftOut;
import easewright.editor.mark.PieceEdits;
import easewright.editor.model.Desk;
import easewright.editor.model.Notes;
import easewright.editor.model.Pointed;
import easewright.editor.model.Session;
import easewright.editor.model.TrueBench;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is to be noticed, in plain words; each note shows its place. */
public final class NotesPanel extends SheetPage {
    private final Consumer<String> shower;
    private final Consumer<String> gaps;
    private final Consumer<Pointed> places;
    private final TrueBench bench;
    private final Consumer<String> leader;
    private final Consumer<String> asker;
    private final BiConsumer<String, String> levels;
    private final Label intro = new Label();
    private final VBox list = new VBox();
    /** The notes of which more is told: the list is made anew with every change. */
    private final Set<String> asked = new HashSet<>();

    /**
     * @param shower brings a piece into sight
     * @param places brings a place into sight
     * @param gaps   shows the gap of a line that does not close
     * @param leader leads to what is offered for a seam
     * @param asker  asks what a closed line is
     * @param levels leads to where a piece lies at a level: the piece, and the level
     */
    public NotesPanel(
            Session session,
            Consumer<String> shower,
            Consumer<Pointed> places,
            Consumer<String> gaps,
            TrueBench bench,
            Consumer<String> leader,
            Consumer<String> asker,
            BiConsumer<String, String> levels) {
        super(session, "notes");
        this.shower = shower;
        this.places = places;
        this.gaps = gaps;
        this.bench = bench;
        this.leader = leader;
        this.asker = asker;
        this.levels = levels;
        bench.workProperty().addListener(o -> showIfSeen());
        intro.getStyleClass().add("page-intro");
        intro.setWrapText(true);
        begin(new VBox(12, intro, list));
    }

    @Override
    void show(Desk desk) {
        Words words = desk.words();
        List<Notes.Note> notes = Notes.of(desk);
        intro.setText(words.of(Notes.intro(desk, bench.work())));
        list.getChildren().clear();
        for (Notes.Note note : notes) {
            list.getChildren().add(row(note, words));
        }
    }

    private HBox row(Notes.Note note, Words words) {
        SeveritySign sign = new SeveritySign(note.severity(), words);
        VBox text = new VBox(4, label(note.words()));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(10, sign, text);
        row.getStyleClass().add("list-row");
        List<Button> acts = acts(note, words);
        note.why().ifPresent(why -> {
            Label more = label(why);
            more.getStyleClass().add("quiet");
            text.getChildren().add(more);
            acts.add(why(note, more, words));
        });
        if (acts.size() == 1) {
            row.getChildren().addAll(acts);
        } else if (!acts.isEmpty()) {
            // Beside several there would be little room for the words.
            text.getChildren().add(1, new HBox(6, acts.toArray(new Button[0])));
        }
        return row;
    }

    private List<Button> acts(Notes.Note note, Words words) {
        List<Button> acts = new ArrayList<>();
        if (note.open().isPresent()) {
            String id = note.open().get();
            acts.add(show(note, "editor.open.show.hint", words, () -> gaps.accept(id)));
        } else if (seam(note).isPresent()) {
            String name = note.seam().orElseThrow();
            acts.add(show(note, "editor.notes.show-seam.hint", words, () -> point(seam(note))));
            if (isOffered(name)) {
                acts.add(
                        press(note, "editor.follow.look", "editor.follow.look.hint", words, () -> leader.accept(name)));
            }
        } else if (line(note).isPresent()) {
            String line = note.line().orElseThrow();
            acts.add(show(note, "editor.notes.show-line.hint", words, () -> point(line(note))));
            acts.add(press(note, "editor.notes.say", "editor.notes.say.hint", words, () -> asker.accept(line)));
        } else if (note.piece().isPresent()) {
            String id = note.piece().get();
            acts.add(show(note, "editor.notes.show.hint", words, () -> {
                session.point(Optional.of(Pointed.at(id)));
                shower.accept(id);
            }));
            note.overlapAt()
                    .ifPresent(level -> acts.add(press(
                            note,
                            "editor.notes.overlap",
                            "editor.notes.overlap.hint",
                            words,
                            () -> levels.accept(id, level))));
            if (!note.layerAt().isEmpty()) {
                acts.add(press(
                        note,
                        "editor.notes.leave-out",
                        "editor.notes.leave-out.hint",
                        words,
                        () -> session.edit(LevelEdits.leftOut(session.desk().pattern(), id, note.layerAt()))));
            }
            if (note.onItself()) {
                acts.add(press(
                        note,
                        "editor.notes.one-layer",
                        "editor.notes.one-layer.hint",
                        words,
                        () -> session.edit(PieceEdits.layers(session.desk().pattern(), id, 2))));
            }
            note.level()
                    .ifPresent(level -> acts.add(press(
                            note,
                            "editor.notes.put-there",
                            "editor.notes.put-there.hint",
                            words,
                            () -> session.edit(
                                    LevelLeftOut.filled(session.desk().pattern(), level)))));
        }
        return acts;
    }

    private static Label label(String said) {
        Label text = new Label(said);
        text.setWrapText(true);
        text.setMinHeight(USE_PREF_SIZE);
        return text;
    }

    /** Tells more for who asks. */
    private Button why(Notes.Note note, Label more, Words words) {
        Parts.present(more, asked.contains(note.words()));
        Button ask = new Button();
        Parts.say(ask, words, "editor.notes.why");
        ask.getStyleClass().add("small");
        ask.setMinWidth(USE_PREF_SIZE);
        Parts.about(ask, note.words());
        ask.setOnAction(e -> {
            Parts.present(more, !more.isVisible());
            if (!asked.remove(note.words())) {
                asked.add(note.words());
            }
        });
        return ask;
    }

    private Optional<Pointed> line(Notes.Note note) {
        return note.line().flatMap(id -> Notes.pointedLine(session.desk(), id));
    }

    private Optional<Pointed> seam(Notes.Note note) {
        return note.seam().flatMap(name -> Notes.pointed(session.desk(), name));
    }

    /** What is offered is about the pattern without the trial. */
    private boolean isOffered(String seam) {
        return session.desk().trial().isEmpty()
                && bench.work().stream()
                        .flatMap(w -> w.offers().stream())
                        .anyMatch(o -> o.seam().equals(seam));
    }

    /** Lights lines on the table and brings them into the view. */
    private void point(Optional<Pointed> lines) {
        session.point(lines);
        lines.ifPresent(places);
    }

    private static Button show(Notes.Note note, String hint, Words words, Runnable act) {
        return press(note, "editor.notes.show", hint, words, act);
    }

    private static Button press(Notes.Note note, String key, String hint, Words words, Runnable act) {
        Button press = new Button(words.of(key));
        press.getStyleClass().add("small");
        press.setMinWidth(USE_PREF_SIZE);
        Parts.about(press, note.words());
        Hints.on(press, words.of(hint));
        press.setOnAction(e -> act.run());
        return press;
    }
}
