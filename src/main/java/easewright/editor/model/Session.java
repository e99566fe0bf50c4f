package easewright.editor.model;

import easewright.pattern.Cloth;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Wish;
import easewright.svg.SvgFile;
import easewright.svg.disk.Fingerprint;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The one changing thing in the editor: which {@link Desk} is the present one. Everything shown follows the property;
 * everything done goes through a method here. For the window's thread only.
 */
public final class Session {
    private final ReadOnlyObjectWrapper<Desk> desk;
    private final Picking picking = new Picking();
    private Optional<Kept> kept = Optional.empty();
    private final ReadOnlyObjectWrapper<OwnTables> ownTables = new ReadOnlyObjectWrapper<>(OwnTables.NONE);

    private boolean unitByFile;

    private Optional<Runnable> making = Optional.empty();

    public Session(LengthUnit unit, boolean dark) {
        desk = new ReadOnlyObjectWrapper<>(Desk.empty(unit, dark));
    }

    /** Lengths are shown in the unit in which a file states its page, until the person chooses one. */
    public void takeUnitsFromFiles() {
        unitByFile = true;
    }

    private LengthUnit unitFor(Opened opened) {
        Optional<String> stated = opened.file().svg().drawing().pageUnit();
        if (!unitByFile || stated.isEmpty()) {
            return desk().unit();
        }
        return switch (stated.get()) {
            case "in" -> LengthUnit.INCH;
            case "mm", "cm" -> LengthUnit.CM;
            default -> desk().unit();
        };
    }

    public ReadOnlyObjectProperty<Desk> deskProperty() {
        return desk.getReadOnlyProperty();
    }

    public Desk desk() {
        return desk.get();
    }

    /** Places that are asked for on the table. */
    public Picking picking() {
        return picking;
    }

    private void change(UnaryOperator<Desk> step) {
        Desk before = desk.get();
        Desk now = goneOn(before, step.apply(before));
        kept = Kept.after(kept, before, now);
        desk.set(now);
    }

    /** What failed before is not said any more beside something that was done since. */
    private static Desk goneOn(Desk before, Desk now) {
        boolean done = now.pattern() != before.pattern()
                || now.unit() != before.unit()
                || now.dark() != before.dark()
                || !now.size().equals(before.size());
        boolean stale = now.notice().filter(Desk.Notice::bad).isPresent()
                && now.notice().equals(before.notice());
        return done && stale ? now.withNotice(Optional.empty()) : now;
    }

    /** Something was done that leaves the desk as it is, such as turning a page: what failed before is not said any more. */
    public void goOn() {
        if (desk().notice().filter(Desk.Notice::bad).isPresent()) {
            hush();
        }
    }

    /** The change that was just kept, until something new is begun. */
    public Optional<Kept> kept() {
        return kept;
    }

    /** The user's own ease tables. */
    public ReadOnlyObjectProperty<OwnTables> ownTablesProperty() {
        return ownTables.getReadOnlyProperty();
    }

    public OwnTables ownTables() {
        return ownTables.get();
    }

    /** Goes by these tables of the user's own from now on, and judges what lies on the table by them. */
    public void setOwnTables(OwnTables changed) {
        ownTables.set(changed);
        if (desk().isOpen()) {
            change(d -> d.withTables(changed.all()));
        }
    }

    /** Puts a file on the table in place of what lies there, with its first level at work. */
    public void open(Opened opened) {
        change(d -> Desk.of(opened, unitFor(opened), d.dark())
                .withTables(ownTables().all()));
    }

    /**
     * Puts what a crash left behind on the table.
     *
     * @param saved the number of the state, of those to which can be undone and then the present one, that its file
     *              holds just so; −1 for none
     * @param hand  what was tried then, and is tried again
     */
    public void restore(Opened opened, int saved, Unfinished hand) {
        change(d -> hand.laidOn(Desk.of(opened, unitFor(opened), d.dark())
                .withTables(ownTables().all())
                .withSavedAt(saved)));
    }

    /** Puts the level to work: highlighted on the table and ready in "this much, here". */
    public void chooseLevel(String name) {
        Optional<Level> level = desk().pattern().level(name);
        boolean already = desk().wanted().map(w -> w.level().equals(name)).orElse(false);
        if (level.isPresent() && !already) {
            Wanted fresh = Wanted.at(level.get(), desk().pattern());
            change(d -> d.withWanted(Optional.of(d.wanted()
                    .map(w -> SeamsInFull.at(fresh, w).withAlsoIn(w.alsoIn()))
                    .orElse(fresh))));
        }
    }

    /** Puts a size to work, where the pattern comes in several. */
    public void chooseSize(String size) {
        if (!desk().size().equals(Optional.of(size))) {
            change(d -> d.withSize(size));
        }
    }

    /** Tries what is wanted, without doing it. */
    public void want(Wanted wanted) {
        change(d -> d.withWanted(Optional.of(wanted)));
    }

    /** Tries what is offered, without doing it; without any level there is no place to try at, and it is done. */
    public void tryOut(FollowUp.Press offer) {
        if (desk().wanted().isPresent()) {
            change(d -> d.withOffer(offer));
        } else {
            edit(offer.result());
        }
    }

    /** Tries no longer what is wanted, which goes on standing there: some of it is being written anew. */
    public void untry() {
        if (desk().trial().isPresent()) {
            change(Desk::untried);
        }
    }

    /** Does what was tried; nothing if nothing was, or it was refused. */
    public void keep() {
        // A place still asked for would be one of the change that is done.
        picking.stop();
        desk().shownTrial()
                .ifPresent(t ->
                        change(d -> d.withHistory(d.history().to(t.altered().pattern()))));
    }

    /** Leaves everything as it was before the trial. */
    public void leave() {
        change(d -> d.withWanted(d.wanted().map(Wanted::done)));
    }

    /** Another pattern with other marks, body or wishes; one step that can be undone. */
    public void edit(Pattern pattern) {
        change(d -> {
            Optional<Wanted> wanted = d.wanted()
                    .filter(w -> pattern.level(w.level()).isPresent())
                    .map(w -> w.remarked(pattern, d.pattern()))
                    .or(() -> Wanted.first(pattern));
            return d.withHistory(d.history().to(pattern)).withWanted(wanted);
        });
    }

    /**
     * Another pattern is being made away from the window's thread, which will be a step of its own.
     *
     * @param stop gives it up; empty once it is made or given up
     */
    public void making(Optional<Runnable> stop) {
        making = stop;
    }

    /** The same file with other of its layers read; one step that can be undone. */
    public void reread(SvgFile otherwise, Pattern pattern) {
        change(d -> d.withFile(d.file().orElseThrow().reread(otherwise, d.history())));
        edit(pattern);
    }

    /** Gives up what is being made, else takes back what is being tried, else the last step. */
    public void undo() {
        if (making.isPresent()) {
            making.get().run();
        } else if (desk().trial().isPresent()) {
            leave();
        } else if (desk().history().canUndo()) {
            change(d -> d.withHistory(d.history().undone()));
        }
    }

    public void redo() {
        if (desk().history().canRedo()) {
            change(d -> d.withHistory(d.history().redone()));
        }
    }

    /**
     * The work on the table is now kept in a file.
     *
     * @param fingerprint what the file holds
     */
    public void placed(Path path, Fingerprint fingerprint) {
        change(d -> d.withFile(d.file().orElseThrow().savedAt(path, fingerprint)));
    }

    /**
     * A state has been saved; others may have been gone to since.
     *
     * @param written the very pattern that was written
     */
    public void saved(Pattern written) {
        change(d -> d.withSaved(written));
    }

    /** Enters, or with empty takes away, the body girth at a level. */
    public void setBody(Level level, OptionalDouble mm, String measureName) {
        edit(WearerEdits.measure(desk().pattern(), desk().size(), level, mm, measureName));
    }

    /**
     * Whether the size at work has a wearer of its own: at first one with the measurements that count for all sizes.
     * Those of the wearer that it had are forgotten when it has none any more.
     */
    public void setOwnWearer(boolean own) {
        desk().size().ifPresent(size -> edit(WearerEdits.own(desk().pattern(), size, own)));
    }

    /** Enters, or with empty takes away, the wished ease at a level. */
    public void setWish(String level, OptionalDouble mm) {
        setWish(level, mm, OptionalDouble.empty());
    }

    /**
     * @param mm      the wanted ease; empty for none
     * @param percent of the girth of the body, where it was said so
     */
    public void setWish(String level, OptionalDouble mm, OptionalDouble percent) {
        edit(WearerEdits.wish(
                desk().pattern(),
                level,
                mm.stream().mapToObj(v -> new Wish(v, percent)).findFirst()));
    }

    public void setCloth(Cloth cloth) {
        edit(desk().pattern().withCloth(cloth));
    }

    /** Says what the garment is, in words of the ease tables; with an empty text its marks show it again. */
    public void setGarment(String said) {
        if (!desk().pattern().garment().equals(said)) {
            edit(desk().pattern().withGarment(said));
        }
    }

    /** Points at something on the table, or with empty at nothing. */
    public void point(Optional<Pointed> what) {
        if (!desk().pointed().equals(what)) {
            change(d -> d.withPointed(what));
        }
    }

    public void say(boolean bad, String key, Map<String, Object> values) {
        say(new Desk.Notice(bad, key, values, false));
    }

    public void say(Desk.Notice notice) {
        change(d -> d.withNotice(Optional.of(notice)));
    }

    public void hush() {
        change(d -> d.withNotice(Optional.empty()));
    }

    public void setUnit(LengthUnit unit) {
        unitByFile = false;
        change(d -> d.withUnit(unit));
    }

    public void setDark(boolean dark) {
        change(d -> d.withDark(dark));
    }
}
