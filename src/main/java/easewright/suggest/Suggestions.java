package easewright.suggest;

import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The one door: everything that is suggested for a sheet, and the pattern as it would be with all of it but what is left
 * out. Later suggestions build on earlier ones: edges are those of the line that is sewn, mates those of the edges. So
 * whoever leaves one out gets others instead. Thinking stops between two stages when its thread is interrupted.
 *
 * @param all     in the order in which they build on each other, those left out among them
 * @param outcome the sheet's pattern with all but those left out
 */
public record Suggestions(List<Suggestion> all, Pattern outcome) {
    private static final List<Function<Sheet, List<Suggestion>>> STAGES = List.of(
            NoPiece::find,
            OwnSize::find,
            StitchingLines::find,
            WordsOnPieces::find,
            PieceSize::find,
            GrainLines::find,
            HalfPieces::find,
            EdgeRuns::find,
            sheet -> together(DartSuggestion.find(sheet), PieceNotches.find(sheet)),
            LevelLines::find,
            MatesOfSizes::find);

    public Suggestions {
        all = List.copyOf(all);
    }

    /**
     * @param leftOut keys of suggestions that are not to be applied
     */
    public static Suggestions of(Sheet sheet, Set<String> leftOut) {
        return of(sheet, suggestion -> !leftOut.contains(suggestion.key()));
    }

    /**
     * @param taken keys of suggestions that are to be applied, and no others
     */
    public static Suggestions only(Sheet sheet, Set<String> taken) {
        return of(sheet, suggestion -> taken.contains(suggestion.key()));
    }

    /** The pattern with nothing but the names of its pieces, for whoever has to speak of them before they are marked. */
    public static Pattern named(Sheet sheet) {
        Pattern pattern = sheet.pattern();
        for (Suggestion suggestion : WordsOnPieces.find(sheet)) {
            pattern = suggestion.kind() == Suggestion.Kind.NAME ? suggestion.apply(pattern) : pattern;
        }
        return pattern;
    }

    private static Suggestions of(Sheet sheet, Predicate<Suggestion> taken) {
        List<Suggestion> all = new ArrayList<>();
        Sheet now = sheet;
        for (Function<Sheet, List<Suggestion>> stage : STAGES) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("Nobody waits for suggestions any more");
            }
            Pattern pattern = now.pattern();
            for (Suggestion suggestion : stage.apply(now)) {
                all.add(suggestion);
                Optional<Suggestion> taking = taken.test(suggestion) ? Optional.of(suggestion) : suggestion.otherwise();
                if (taking.isPresent() && taking.get() != suggestion) {
                    all.add(taking.get());
                    taking = taking.filter(taken);
                }
                pattern = taking.isPresent() ? taking.get().apply(pattern) : pattern;
            }
            now = now.with(pattern);
        }
        return new Suggestions(all, now.pattern());
    }

    private static List<Suggestion> together(List<Suggestion> one, List<Suggestion> two) {
        List<Suggestion> both = new ArrayList<>(one);
        both.addAll(two);
        return both;
    }
}
