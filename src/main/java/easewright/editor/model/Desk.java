package easewright.editor.model;

import easewright.alter.OtherSize;
import easewright.ease.EaseTables;
import easewright.history.History;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Scale;
import easewright.text.LengthUnit;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The whole state of the editor at one moment. Immutable.
 *
 * @param reading of the present pattern, without the trial
 * @param wanted  what stands in "this much, here"; empty while there is no level
 * @param pointed what a list beside the table points at
 * @param notice  something to tell the user once
 */
public record Desk(
        Optional<OpenFile> file,
        History<Pattern> history,
        Reading reading,
        Optional<Wanted> wanted,
        Optional<Trial> trial,
        Optional<Pointed> pointed,
        Optional<Notice> notice,
        LengthUnit unit,
        boolean dark) {
    /** Its keys have other names. */
    private static final boolean ON_MAC = System.getProperty("os.name", "").startsWith("Mac");

    /**
     * Something to tell the user.
     *
     * @param unsaved whether it says why work could not be saved, which can be tried again
     */
    public record Notice(boolean bad, String key, Map<String, Object> values, boolean unsaved) {
        public Notice {
            values = Map.copyOf(values);
        }
    }

    /** An empty table. */
    public static Desk empty(LengthUnit unit, boolean dark) {
        Pattern nothing = Pattern.bare(List.of(), new Scale(1, 1, Scale.Proof.UNPROVED));
        return new Desk(
                Optional.empty(),
                History.of(nothing),
                Reading.ofNothing(nothing),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                unit,
                dark);
    }

    /** A file as it was opened. */
    static Desk of(Opened opened, LengthUnit unit, boolean dark) {
        return new Desk(
                        Optional.of(opened.file()),
                        opened.file().history(),
                        opened.reading(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        unit,
                        dark)
                .withWanted(Wanted.first(opened.file().svg().pattern()));
    }

    public Pattern pattern() {
        return history.present();
    }

    /** The pieces of the garment at work: those of one size, where the pattern comes in several. */
    Pattern garment() {
        return size().map(this::pieces).orElse(pattern());
    }

    /** The size at work, where the pattern comes in several. */
    public Optional<String> size() {
        return reading.size();
    }

    /**
     * The sizes in which what is wanted is done, or would be, in the order of the pattern; none where it comes in one.
     */
    public List<String> sizesTaking() {
        return shownTrial()
                .map(Trial.Shown::sizes)
                .or(() -> wanted.map(w -> AlsoIn.taking(pattern(), size(), w)))
                .orElse(size().stream().toList());
    }

    /** The pattern to be seen: the trial's where there is one. */
    public Pattern shown() {
        return shownTrial().map(t -> t.altered().pattern()).orElse(pattern());
    }

    /** The reading to be seen: the trial's where there is one. */
    public Reading shownReading() {
        return shownTrial().map(Trial.Shown::reading).orElse(reading);
    }

    public Optional<Trial.Shown> shownTrial() {
        return trial.filter(Trial.Shown.class::isInstance).map(Trial.Shown.class::cast);
    }

    public Optional<Trial.Refused> refusedTrial() {
        return trial.filter(Trial.Refused.class::isInstance).map(Trial.Refused.class::cast);
    }

    public Optional<Level> level() {
        return wanted.flatMap(w -> pattern().level(w.level()));
    }

    /**
     * The girth of the body at a level, in the size at work, mm.
     *
     * @param typed the part of it that is asked for
     * @throws Unreadable if it is not known
     */
    public double bodyAt(String level, String typed) throws Unreadable {
        return pattern()
                .body(size())
                .girth(level)
                .orElseThrow(() -> new Unreadable("percent-without-body", Map.of("text", typed, "level", level)));
    }

    /** Where the seams at the level at work can be taken hold of, on the pattern to be seen. */
    public List<Hold> holds() {
        return wanted.filter(Wanted::atSeams)
                .flatMap(w -> shownReading().measures().girths().stream()
                        .filter(g ->
                                g.level().name().equals(w.level()) && g.side().belongsTo(w.side()))
                        .findFirst())
                .map(g -> Hold.on(wanted.get().side(), shown(), g))
                .orElse(List.of());
    }

    /** Those of the holds at which a seam takes part in what is wanted. */
    public List<Hold> takingHolds() {
        Set<EdgeRef> out = wanted.map(Wanted::leftOut).orElse(Set.of());
        return out.isEmpty()
                ? holds()
                : holds().stream().filter(h -> !out.contains(h.edge())).toList();
    }

    public boolean canUndo() {
        return trial.isPresent() || history.canUndo();
    }

    public boolean isOpen() {
        return file.isPresent();
    }

    /** Whether another file lies on the table than before, or the same opened anew. */
    public boolean isOtherWork(Desk before) {
        return !file.map(OpenFile::work).equals(before.file.map(OpenFile::work));
    }

    public boolean isSaved() {
        return history.isSaved();
    }

    public Words words() {
        Words words = Words.english(unit);
        return ON_MAC ? words.onMac() : words;
    }

    /** The same desk with another pattern to be seen on it, without a trial. */
    public Desk seeing(Pattern other) {
        return seeing(other, Reading.quick(other));
    }

    /** The same with what was read off the pattern. */
    public Desk seeing(Pattern other, Reading read) {
        return new Desk(file, History.of(other), read, Optional.empty(), Optional.empty(), pointed, notice, unit, dark);
    }

    /** The same without a trial. */
    Desk untried() {
        return new Desk(file, history, reading, wanted, Optional.empty(), pointed, notice, unit, dark);
    }

    Desk withFile(OpenFile changed) {
        return new Desk(Optional.of(changed), history, reading, wanted, trial, pointed, notice, unit, dark);
    }

    /** With a state of the history counted as saved: the very pattern that was written. */
    Desk withSaved(Pattern written) {
        int at = -1;
        for (int i = 0; i < history.states().size(); i++) {
            at = history.states().get(i) == written ? i : at;
        }
        return withSavedAt(at);
    }

    /** The same with another state, or with −1 none, counted as saved. */
    Desk withSavedAt(int state) {
        return new Desk(file, history.withSavedAt(state), reading, wanted, trial, pointed, notice, unit, dark);
    }

    /** Another state of the pattern; the trial is dropped. */
    Desk withHistory(History<Pattern> changed) {
        Reading now =
                changed.present().equals(pattern()) ? reading : Reading.of(changed.present(), reading.tables(), size());
        Optional<Wanted> kept = wanted.filter(
                        w -> changed.present().level(w.level()).isPresent())
                .map(Wanted::done);
        return new Desk(
                file.map(f -> f.at(changed, history)),
                changed,
                now,
                kept,
                Optional.empty(),
                Optional.empty(),
                notice,
                unit,
                dark);
    }

    Desk withWanted(Optional<Wanted> changed) {
        return new Desk(
                file,
                history,
                reading,
                changed,
                changed.flatMap(w -> Trial.of(pattern(), reading, w, trial)),
                pointed,
                Optional.empty(),
                unit,
                dark);
    }

    /** With something tried that is offered; of what was wanted there is nothing any more. */
    Desk withOffer(FollowUp.Press offer) {
        Optional<Wanted> nothing = wanted.map(w -> w.withAmount(0));
        return new Desk(
                file,
                history,
                reading,
                nothing,
                nothing.map(w -> Trial.of(pattern(), reading, w, offer)),
                pointed,
                Optional.empty(),
                unit,
                dark);
    }

    /** With another size at work; what was wanted is tried there. */
    Desk withSize(String size) {
        Reading other = Reading.of(pattern(), reading.tables(), Optional.of(size));
        Optional<Wanted> there =
                wanted.map(w -> size().map(was -> w.atWork(was, size, new OtherSize(pieces(was), pieces(size))))
                        .orElse(w));
        return new Desk(file, history, other, there, Optional.empty(), pointed, notice, unit, dark).withWanted(there);
    }

    private Pattern pieces(String size) {
        return PatternPart.ofSize(pattern(), size).alone();
    }

    /** Judged by other ease tables; a wish is tried anew, and so is what was offered. */
    Desk withTables(EaseTables tables) {
        if (tables == reading.tables()) {
            return this;
        }
        Reading other = Reading.of(pattern(), tables, size());
        Desk fresh = new Desk(file, history, other, wanted, Optional.empty(), pointed, notice, unit, dark);
        return shownTrial().flatMap(Trial.Shown::offer).map(fresh::withOffer).orElseGet(() -> fresh.withWanted(wanted));
    }

    Desk withPointed(Optional<Pointed> piece) {
        return new Desk(file, history, reading, wanted, trial, piece, notice, unit, dark);
    }

    Desk withNotice(Optional<Notice> said) {
        return new Desk(file, history, reading, wanted, trial, pointed, said, unit, dark);
    }

    Desk withUnit(LengthUnit changed) {
        return new Desk(file, history, reading, wanted, trial, pointed, notice, changed, dark);
    }

    Desk withDark(boolean lamp) {
        return new Desk(file, history, reading, wanted, trial, pointed, notice, unit, lamp);
    }
}
