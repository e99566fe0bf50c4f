package easewright.editor.mark;

import easewright.editor.model.Session;
import easewright.pattern.Pattern;
import easewright.suggest.Sheet;
import easewright.suggest.Suggestions;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What is suggested for the drawing on the table, and what is done with it. A large drawing takes seconds to think
 * about, so that is left to a {@link Thinker}; what came out stands in the {@link MarkState}. For the window's thread only.
 */
public final class Suggesting {
    private final Session session;
    private final Thinker thinker;
    private final Supplier<Sheet> sheets;
    private final Supplier<MarkState> states;
    private final Consumer<UnaryOperator<MarkState>> changer;
    private Sheet askedFor;
    private Set<String> askedWithout = Set.of();
    private Sheet namedSheet;
    private Pattern named;

    Suggesting(
            Session session,
            Thinker thinker,
            Supplier<Sheet> sheets,
            Supplier<MarkState> states,
            Consumer<UnaryOperator<MarkState>> changer) {
        this.session = session;
        this.thinker = thinker;
        this.sheets = sheets;
        this.states = states;
        this.changer = changer;
    }

    /** Thinks again if suggestions are looked at and something else lies on the table, or other ones are left out. */
    void follow() {
        MarkState state = states.get();
        if (!state.on() || state.step() != MarkState.Step.SUGGESTED) {
            return;
        }
        Sheet sheet = sheets.get();
        if (sheet != askedFor || !state.leftOut().equals(askedWithout)) {
            think(sheet, state.leftOut(), () -> Thought.without(sheet, state.leftOut()));
        }
    }

    private void think(Sheet sheet, Set<String> without, Callable<Thought> thought) {
        boolean other = sheet != askedFor;
        askedFor = sheet;
        askedWithout = without;
        // What was suggested for something else is of no use any more.
        Thoughts before = other ? Thoughts.NONE : states.get().thoughts();
        changer.accept(s -> s.withThoughts(before.on(Thoughts.Way.THINKING)));
        thinker.think(thought, this::came, this::stopped);
    }

    private void came(Thought thought) {
        // Another file may lie there by now, while nobody looks at what is suggested for it.
        if (thought.sheet() == askedFor && askedFor == sheets.get()) {
            askedWithout = thought.leftOut();
            changer.accept(s -> s.withLeftOut(thought.leftOut())
                    .withThoughts(new Thoughts(Optional.of(thought), Thoughts.Way.DONE)));
        }
    }

    private void stopped() {
        changer.accept(s -> s.withThoughts(s.thoughts().on(Thoughts.Way.STOPPED)));
    }

    /** Thinks again after it was given up. */
    public void again() {
        askedFor = null;
        follow();
    }

    /** What is suggested for what lies on the table; empty while that is still thought about. */
    public Optional<Suggestions> ready() {
        return states.get().thoughts().ready().map(Thought::suggestions);
    }

    /** How many suggestions for what lies on the table are ticked and not made yet, as far as it was thought about. */
    public int waiting() {
        MarkState state = states.get();
        return askedFor != sheets.get()
                ? 0
                : (int) state.thoughts().last().stream()
                        .flatMap(t -> t.suggestions().all().stream())
                        .filter(s -> !state.leftOut().contains(s.key()))
                        .count();
    }

    /** The pattern with its pieces called what is written on them. */
    public Pattern named() {
        Sheet sheet = sheets.get();
        if (sheet != namedSheet) {
            namedSheet = sheet;
            named = Suggestions.named(sheet);
        }
        return named;
    }

    /** Ticks a suggestion, or leaves it out. */
    public void tick(String key, boolean taken) {
        changer.accept(s -> s.withTaken(key, taken));
    }

    /** Ticks all suggestions, or none. */
    public void tickAll(boolean taken) {
        if (taken) {
            changer.accept(s -> s.withLeftOut(Set.of()));
        } else {
            Sheet sheet = sheets.get();
            think(sheet, states.get().leftOut(), () -> Thought.withNone(sheet));
        }
    }

    /** Shows on the table what a suggestion speaks of. */
    public void light(String key) {
        states.get().thoughts().last().stream()
                .flatMap(t -> t.suggestions().all().stream())
                .filter(s -> s.key().equals(key))
                .findFirst()
                .ifPresent(found -> changer.accept(s -> s.withLit(found.shown())));
    }

    /**
     * Makes all the marks that are ticked; one step that can be undone. Nothing while they are still thought about.
     *
     * @return what was made
     */
    public Optional<Made> accept() {
        Pattern before = session.desk().pattern();
        return ready().map(suggestions -> {
            session.edit(suggestions.outcome());
            return new Made(before, session.desk().pattern());
        });
    }

    /**
     * Makes the ticked marks of one group of the list, and of nothing else. What was still thought about is forgotten
     * thereby, and thought again.
     */
    public void accept(SuggestView.Group group) {
        Sheet sheet = sheets.get();
        Set<String> mine = new HashSet<>();
        group.rows().stream().filter(SuggestView.Row::taken).forEach(row -> mine.add(row.key()));
        Thoughts now = states.get().thoughts();
        boolean cutShort = now.way() == Thoughts.Way.THINKING;
        Thoughts before = cutShort ? now.on(Thoughts.Way.STOPPED) : now;
        changer.accept(s -> s.withThoughts(before.on(Thoughts.Way.THINKING)));
        thinker.think(
                () -> Thought.only(sheet, mine),
                thought -> {
                    changer.accept(s -> s.withThoughts(before));
                    if (sheet == sheets.get()) {
                        session.edit(thought.suggestions().outcome());
                    }
                    if (states.get().thoughts().equals(before) && cutShort) {
                        again();
                    }
                },
                () -> changer.accept(s -> s.withThoughts(before)));
    }
}
