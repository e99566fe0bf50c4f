package easewright.editor.file;

import easewright.editor.model.OpenFile;
import easewright.editor.model.OwnTableWords;
import easewright.editor.model.OwnTables;
import easewright.editor.model.Session;
import easewright.editor.model.ShortName;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.text.Bodies;
import easewright.text.BodyFile;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Files beside the drawing: ease tables of the user's own, and measurements of a wearer. */
final class Beside {
    private final Session session;
    private final Background background;
    /** A slow disk is not asked again before it has answered. */
    private boolean looking;

    Beside(Session session, Background background) {
        this.session = session;
        this.background = background;
    }

    /**
     * What a file is.
     *
     * @param table    the ease table it holds, if it does
     * @param bodies   the measurements it holds, if it does
     * @param why      why it is neither, a code with its values
     */
    private record Found(Path file, Optional<OwnTables.Entry> table, Optional<Bodies> bodies, Optional<Why> why) {
        /** Nobody writes such lines into a list of measurements. */
        private static final java.util.regex.Pattern OF_A_TABLE =
                java.util.regex.Pattern.compile("(?m)^\\s*(id|garment|band)\\s*:");

        /** A problem in the bundle. */
        private record Why(String code, Map<String, Object> values) {}

        static Found of(Path file) {
            if (!Files.isRegularFile(file)) {
                // A pipe might never come to its end.
                String code = Files.isDirectory(file) ? "file-is-folder" : "file-unreadable";
                Why why = new Why(code, Map.of("file", Failures.name(file)));
                return new Found(file, Optional.empty(), Optional.empty(), Optional.of(why));
            }
            OwnTables.Entry table = OwnTables.Entry.read(file);
            if (table.tables().isPresent()) {
                return new Found(file, Optional.of(table), Optional.empty(), Optional.empty());
            }
            Optional<Why> why = table.problem().map(p -> new Why(p.code(), p.values()));
            return meantAsTable(file) ? new Found(file, Optional.empty(), Optional.empty(), why) : measures(file);
        }

        private static Found measures(Path file) {
            try {
                return new Found(file, Optional.empty(), Optional.of(BodyFile.readAll(file)), Optional.empty());
            } catch (Unreadable noMeasures) {
                Map<String, Object> values = new TreeMap<>(noMeasures.values());
                values.put("file", Failures.name(file));
                Why why = new Why(noMeasures.code(), values);
                return new Found(file, Optional.empty(), Optional.empty(), Optional.of(why));
            }
        }

        private static boolean meantAsTable(Path file) {
            try (InputStream in = Files.newInputStream(file)) {
                return OF_A_TABLE
                        .matcher(new String(in.readNBytes(1 << 14), StandardCharsets.UTF_8))
                        .find();
            } catch (IOException unreadable) {
                return false;
            }
        }

        boolean isText() {
            return Files.isRegularFile(file)
                    && Failures.name(file).toLowerCase(Locale.ROOT).endsWith(".txt");
        }
    }

    /**
     * Takes each file for what it is, and says so.
     *
     * @param said  what else is to be said
     * @param other what to do where there is one file and it is none of these
     */
    void take(List<Path> files, List<String> said, Runnable other) {
        if (files.isEmpty()) {
            say(said, false);
            return;
        }
        Optional<Object> under = work();
        background.quietly(
                () -> files.stream().map(Found::of).toList(),
                found -> {
                    List<Found> unknown = found.stream()
                            .filter(f -> f.why().isPresent() && !f.isText())
                            .toList();
                    if (unknown.size() == files.size()) {
                        say(said, false);
                        other.run();
                        return;
                    }
                    List<String> all = new ArrayList<>(said);
                    found.forEach(f -> all.add(taken(f, under)));
                    say(all, found.stream().anyMatch(f -> f.why().isPresent()));
                },
                unreadable -> other.run());
    }

    /** What lies on the table. */
    private Optional<Object> work() {
        return session.desk().file().map(OpenFile::work);
    }

    private void say(List<String> said, boolean bad) {
        if (!said.isEmpty()) {
            session.say(bad, "editor.said.several", Map.of("said", String.join(" ", said)));
        }
    }

    private String taken(Found found, Optional<Object> under) {
        Words words = session.desk().words();
        String file = ShortName.of(Failures.name(found.file()));
        if (found.table().isPresent()) {
            session.setOwnTables(session.ownTables().with(found.table().get()));
            return words.of("editor.said.table-added", Map.of("file", file));
        }
        if (found.bodies().isPresent()) {
            // Another file may have been opened while a slow disk gave these.
            boolean gone = under.isPresent() && !under.equals(work());
            return gone
                    ? words.of("editor.said.measures-later", Map.of("file", file))
                    : entered(found.bodies().get(), file, words);
        }
        Found.Why why = found.why().orElseThrow();
        return words.of(
                "editor.said.dropped-text", Map.of("file", file, "problem", words.problem(why.code(), why.values())));
    }

    private String entered(Bodies bodies, String file, Words words) {
        if (!session.desk().isOpen()) {
            return words.of("editor.said.measures-later", Map.of("file", file));
        }
        Pattern pattern = session.desk().pattern();
        List<String> sizes = PatternPart.sizes(pattern);
        boolean forIt = !bodies.one().measures().isEmpty() || sizes.stream().anyMatch(bodies.bySize()::containsKey);
        if (!forIt) {
            List<String> known = bodies.bySize().keySet().stream().sorted().toList();
            return words.of("editor.said.measures-of-sizes", Map.of("file", file, "known", known));
        }
        session.edit(bodies.on(pattern));
        return words.of("editor.said.measures-entered", Map.of("file", file));
    }

    /** Reads those of the user's own ease tables that are still to be read, each for itself: one disk may be slow. */
    void readTables() {
        for (OwnTables.Entry entry : session.ownTables().entries()) {
            if (entry.isUnread()) {
                background.quietly(
                        () -> OwnTables.Entry.read(entry.file()),
                        read -> session.setOwnTables(session.ownTables().filled(read)),
                        failed -> session.setOwnTables(
                                session.ownTables().filled(OwnTables.Entry.unreadable(entry.file()))));
            }
        }
    }

    /** Reads an ease table, which from then on is among the user's own. */
    void readTable(Path file) {
        boolean again = session.ownTables().has(file);
        // One that is removed while it is read again stays removed.
        Consumer<OwnTables.Entry> put = read -> {
            OwnTables now = session.ownTables();
            session.setOwnTables(again ? now.renewed(read) : now.with(read));
        };
        background.quietly(
                () -> OwnTables.Entry.read(file), put, failed -> put.accept(OwnTables.Entry.unreadable(file)));
    }

    /** Reads the user's own ease tables again where they have changed, and says so; also of what has become useless. */
    void lookAgain() {
        OwnTables before = session.ownTables();
        if (!before.entries().isEmpty() && !looking) {
            looking = true;
            background.quietly(
                    before::again,
                    now -> {
                        looking = false;
                        changed(before, now);
                    },
                    unreadable -> looking = false);
        }
    }

    private void changed(OwnTables before, OwnTables now) {
        if (now == before || session.ownTables() != before) {
            return;
        }
        session.setOwnTables(now);
        for (OwnTables.Entry entry : now.entries()) {
            if (!before.entries().contains(entry)) {
                boolean bad = entry.problem().isPresent();
                Map<String, Object> values =
                        Map.of("file", Failures.name(entry.file()), "said", OwnTableWords.of(entry, session.desk()));
                session.say(bad, bad ? "editor.said.table-spoilt" : "editor.said.table-again", values);
                if (bad) {
                    // The others work, which needs no word beside this.
                    return;
                }
            }
        }
    }
}
