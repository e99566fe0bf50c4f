package easewright.editor.file;

import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.OwnTables;
import easewright.editor.model.Sample;
import easewright.editor.model.SavingDoes;
import easewright.editor.model.Session;
import easewright.editor.model.Settings;
import easewright.svg.SvgFile;
import easewright.svg.disk.KeptWork;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;

/** Opening and saving. Reading and writing happen away from the window's thread; a failure leaves the desk as it was. */
public final class FileWork {
    private final Session session;
    private final Asking asking;
    private final Background background = new Background();
    private final SafeKeeping safe;
    private final OwnClaim claim;
    private final Remembered remembered;
    private final Failures failures;
    private final Saving saving;
    private final Beside beside;
    private final Several several;
    private final Restoring restoring;
    private final Outside outside;
    private final Layers layers;

    /**
     * @param folder where settings and unsaved work are kept
     */
    public FileWork(Session session, Asking asking, Settings settings, Path folder) {
        this.session = session;
        this.asking = asking;
        this.remembered = new Remembered(settings, folder, background::inOrder);
        this.safe = new SafeKeeping(session, background, folder);
        this.claim = new OwnClaim(folder);
        this.failures = new Failures(session);
        this.saving = new Saving(session, asking, background, claim, remembered, failures);
        this.beside = new Beside(session, background);
        this.outside = new Outside(session, background, saving::isGoing);
        this.several = new Several(this, beside, failures);
        this.layers = new Layers(session, background, failures);
        this.restoring = new Restoring(this, session, safe, claim, outside, failures);
        session.deskProperty().addListener((o, before, now) -> remembered.see(before, now));
        remembered.look(background);
        session.ownTablesProperty().addListener((o, before, now) -> remembered.tables(before.files(), now.files()));
    }

    /** Where the user's files are most likely to be. */
    public Path folder() {
        return remembered.folder();
    }

    /** Where the user is asked about files. */
    public Asking asking() {
        return asking;
    }

    /** What is going on away from the window's thread. */
    public Background background() {
        return background;
    }

    public Words words() {
        return session.desk().words();
    }

    /** Files opened lately that are still there. */
    public List<Path> recent() {
        return remembered.recent();
    }

    /** Begins to keep safe what is half typed and half marked in the window. */
    public void follow(InHand window) {
        safe.follow(window);
    }

    /** Something may have been typed or marked that is to be kept safe. */
    public void begun() {
        safe.touched();
    }

    /** Takes what is being typed: what is done next is to have it. */
    public void takeTyped() {
        safe.window().take();
    }

    /** Whether there is unsaved work that cannot be kept safe for now. */
    public ReadOnlyBooleanProperty unsafeProperty() {
        return safe.unsafeProperty();
    }

    /** What saving would do to the drawing, a moment after each step. */
    public ReadOnlyObjectProperty<Optional<SavingDoes>> savingProperty() {
        return safe.savingProperty();
    }

    /** Looks for work that a crash left behind. */
    public void leftBehind(Consumer<LeftBehind> found) {
        safe.leftBehind(found);
    }

    /** Asks which file to open, beginning where the present one or the last one lies; whether one was chosen. */
    public boolean choose() {
        Optional<Path> now = session.desk().file().flatMap(OpenFile::path).map(Path::getParent);
        Optional<Path> chosen = asking.whichToOpen(now.orElseGet(remembered::folder));
        chosen.ifPresent(this::open);
        return chosen.isPresent();
    }

    /** Opens a file, after asking about unsaved changes. */
    public void open(Path path) {
        openOneOf(List.of(path));
    }

    /**
     * Opens the first among some files that is a drawing, and takes tables of ease and measurements that come with it
     * for what they are. Says what was passed over, and that one drawing lies on the table at a time; or if there is
     * none, why not.
     */
    public void openOneOf(List<Path> files) {
        several.open(files);
    }

    /** Opens one of the samples that come with the program. */
    public void openSample(Sample sample) {
        String name = sample.fileName();
        read(sample::read, Optional.empty(), name, () -> {}, problem -> failures.tell(problem, name));
    }

    /** Only what can be opened is worth a question: until it is read, what lies on the table stays. */
    void read(Callable<SvgFile> reading, Optional<Path> path, String name, Runnable done, Consumer<Throwable> failed) {
        background.onceMade(() -> readNow(reading, path, name, done, failed));
    }

    private void readNow(
            Callable<SvgFile> reading, Optional<Path> path, String name, Runnable done, Consumer<Throwable> failed) {
        session.hush();
        OwnTables tables = session.ownTables();
        background.whileWaiting(
                "reading",
                name,
                () -> Opened.of(new OpenFile(reading.call(), path, name), tables.all()),
                opened -> leaving(
                        () -> laid(opened, done),
                        // Saved over what was just read, perhaps.
                        () -> read(reading, path, name, done, failed)),
                failed);
    }

    /** Reads other layers of the file on the table, of which the pieces then lie there. */
    public void readLayers(Set<String> keys) {
        layers.read(keys);
    }

    private void laid(Opened opened, Runnable done) {
        OpenFile file = opened.file();
        safe.settled();
        outside.seen(file.seen());
        session.open(opened);
        file.path().ifPresent(remembered::used);
        done.run();
        if (!claim.take(file.path())) {
            session.say(true, "editor.said.open-elsewhere", Map.of("file", file.name()));
        }
    }

    /**
     * Puts work that a crash left behind back on the table.
     *
     * @param done called once it lies there
     */
    public void restore(KeptWork work, Runnable done) {
        restoring.restore(work, done);
    }

    /** Throws away work that a crash left behind. */
    public void discard(KeptWork work) {
        safe.discard(work);
    }

    /** Saves to the same file, or asks for one where there is none yet. */
    public void save() {
        takeTyped();
        background.onceMade(() -> saving.save(() -> {}));
    }

    /** Saves once more to where that failed last. */
    public void saveAgain() {
        takeTyped();
        background.onceMade(saving::again);
    }

    /** Asks where to save. */
    public void saveAs() {
        takeTyped();
        background.onceMade(() -> saving.saveAs(() -> {}));
    }

    /** Writes the present pattern, trial left out, to the path. */
    public void save(Path path) {
        background.onceMade(() -> saving.save(path, () -> {}));
    }

    /** Reads the tables of ease that are known and still to be read; each is there as soon as its disk gives it. */
    public void readTables() {
        beside.readTables();
    }

    /** Adds a table of ease of the user's own, or reads it again. */
    public void readTable(Path file) {
        beside.readTable(file);
    }

    /**
     * Looks whether another program has changed the file on the table or taken it away, and says so once; and reads
     * tables of ease again that have changed.
     */
    public void lookAgain() {
        beside.lookAgain();
        remembered.look(background);
        outside.lookAgain();
    }

    /** Does the next thing at once if all is saved; else asks whether to save first, to go without, or to stay. */
    public void leaving(Runnable next) {
        leaving(next, next);
    }

    void leaving(Runnable next, Runnable onceSaved) {
        takeTyped();
        background.onceMade(() -> leave(next, onceSaved));
    }

    private void leave(Runnable next, Runnable onceSaved) {
        if (session.desk().isSaved()) {
            next.run();
            return;
        }
        safe.atOnce();
        String file = session.desk().file().map(OpenFile::name).orElse("");
        switch (asking.leaving(file)) {
            case SAVE_FIRST -> saving.save(onceSaved);
            case WITHOUT_SAVING -> next.run();
            case STAY -> {}
        }
    }

    /** The window ends in good order. */
    public void close() {
        safe.close();
        claim.close();
    }
}
