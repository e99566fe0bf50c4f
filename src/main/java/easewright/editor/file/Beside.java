package easewright.editor.file;

import easewright.ease.EaseTableProblem;
import easewright.ease.TableFile;
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

/** Files beside the drawing: ease tables of the user's own, and measurements of a wearer. */
final class Beside {
    private final Session session;
    private final Background background;

    Beside(Session session, Background background) {
        this.session = session;
        this.background = background;
    }

    /**
     * What a file is.
     *
     * @param table    whether it is an ease table
     * @param bodies   the measurements it holds, if it does
     * @param why      why it is neither, a code with its values
     */
    private record Found(Path file, boolean table, Optional<Bodies> bodies, Optional<Why> why) {
        /** Nobody writes such lines into a list of measurements. */
        private static final java.util.regex.Pattern OF_A_TABLE =
                java.util.regex.Pattern.compile("(?m)^\\s*(id|garment|band)\\s*:");

        /** A problem in the bundle. */
        private record Why(String code, Map<String, Object> values) {}

        static Found of(Path file) {
            if (!Files.isRegularFile(file)) {
                // A pipe might never come to its end.
                Why why = new Why("file-unreadable", Map.of("file", Failures.name(file)));
                return new Found(file, false, Optional.empty(), Optional.of(why));
            }
            try {
                TableFile.read(file, Failures.name(file));
                return new Found(file, true, Optional.empty(), Optional.empty());
            } catch (EaseTableProblem noTable) {
                return meantAsTable(file)
                        ? new Found(
                                file, false, Optional.empty(), Optional.of(new Why(noTable.code(), noTable.values())))
                        : measures(file);
            }
        }

        private static Found measures(Path file) {
            try {
                return new Found(file, false, Optional.of(BodyFile.readAll(file)), Optional.empty());
            } catch (Unreadable noMeasures) {
                return new Found(
                        file, false, Optional.empty(), Optional.of(new Why(noMeasures.code(), noMeasures.values())));
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
                    found.forEach(f -> all.add(taken(f)));
                    say(all, found.stream().anyMatch(f -> f.why().isPresent()));
                },
                unreadable -> other.run());
    }

    private void say(List<String> said, boolean bad) {
        if (!said.isEmpty()) {
            session.say(bad, "editor.said.several", Map.of("said", String.join(" ", said)));
        }
    }

    private String taken(Found found) {
        Words words = session.desk().words();
        String file = ShortName.of(Failures.name(found.file()));
        if (found.table()) {
            session.setOwnTables(session.ownTables().with(found.file()));
            return words.of("editor.said.table-added", Map.of("file", file));
        }
        if (found.bodies().isPresent()) {
            return entered(found.bodies().get(), file, words);
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

    /** Reads the user's own ease tables again where they have changed, and says so; also of what has become useless. */
    void lookAgain() {
        OwnTables before = session.ownTables();
        if (!before.entries().isEmpty()) {
            background.quietly(before::again, now -> changed(before, now), unreadable -> {});
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
