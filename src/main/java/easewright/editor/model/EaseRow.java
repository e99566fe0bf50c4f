package easewright.editor.model;

import easewright.pattern.Level;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One level of the ease sheet as it is shown, all in words.
 *
 * @param body    empty where not known
 * @param finished empty where the level lies on no piece
 * @param name    of the level, with the limb where left and right have each their own
 * @param classes  each with the mark of its source; empty where no table speaks of the level
 * @param called   the classes after the number that they are for; empty likewise
 * @param brief    of all that is said the one line that tells most: what the ease is called, or what it asks of a knit
 * @param minimums likewise, the least ease for wearing
 * @param smallest which of those figures the bar shows; empty where they are alike
 * @param near     that the ease is a little less than a figure among those and yet counts as met; empty where not
 * @param stretch  what the ease asks of a knit, a sentence each, likewise
 * @param sizes   how every size stands to the wish, where there is one and the pattern comes in several
 * @param others  how it stands in the sizes in which the same is done
 * @param verdict how the ease stands to the wish and the minimum, in a short sentence
 */
public record EaseRow(
        Level level,
        String name,
        String body,
        String finished,
        String ease,
        String percent,
        String wish,
        List<String> classes,
        String called,
        String brief,
        List<String> minimums,
        String smallest,
        String near,
        List<String> stretch,
        Standing standing,
        String verdict,
        OptionalDouble missing,
        EaseScale scale,
        Optional<SizeWishes.Said> sizes,
        Optional<OtherSizes> others) {
    /** How the ease stands. */
    public enum Standing {
        /** No body girth, or none of the garment, so no ease. */
        UNKNOWN,
        /** Below the smallest ease any source allows for wearing. */
        TIGHT,
        /** Below the smallest ease that is asked for wearing, and yet a table of classes has a word for it. */
        DISPUTED,
        /** Body and garment are so far apart that a unit is likely wrong. */
        UNLIKELY,
        /** More than the wish, or less. */
        AWAY,
        /** As wished. */
        MET,
        /** There is ease, and no wish. */
        NO_WISH
    }

    /** So many letters of what tables call it have room in the row. */
    private static final int ROOM = 64;

    /** Nearer to the wish than this is met: half of what a tape shows, mm. */
    static final double MET_WITHIN = 0.5;

    EaseRow withSizes(Optional<SizeWishes.Said> wishes, Optional<OtherSizes> also) {
        return new EaseRow(
                level, name, body, finished, ease, percent, wish, classes, called, brief, minimums, smallest, near,
                stretch, standing, verdict, missing, scale, wishes, also);
    }

    /** With the zero of its bar in one line with those of other rows. */
    EaseRow aligned(double below, LengthUnit unit) {
        return new EaseRow(
                level,
                name,
                body,
                finished,
                ease,
                percent,
                wish,
                classes,
                called,
                brief,
                minimums,
                smallest,
                near,
                stretch,
                standing,
                verdict,
                missing,
                scale.aligned(below, unit),
                sizes,
                others);
    }

    /** Says of a girth with which no body is compared yet that it looks like that of one half. */
    EaseRow asHalf(Words words) {
        return saying(words.of("editor.ease.half"), standing, missing);
    }

    /** Says of a girth which pieces it leaves out, so that its ease cannot be judged. */
    EaseRow without(List<String> pieces, Words words) {
        return saying(
                words.of("editor.ease.left-out", Map.of("pieces", pieces)), Standing.UNKNOWN, OptionalDouble.empty());
    }

    /**
     * Asks of a girth whether pieces count in it that lie over others; until then nothing is to be taken in.
     *
     * @param question its key
     */
    EaseRow withLayers(String question, List<String> pieces, Words words) {
        return saying(words.of(question, Map.of("pieces", pieces)), standing, OptionalDouble.empty());
    }

    private EaseRow saying(String said, Standing stands, OptionalDouble lacks) {
        return new EaseRow(
                level, name, body, finished, ease, percent, wish, classes, called, brief, minimums, smallest, near,
                stretch, stands, said, lacks, scale, sizes, others);
    }

    /**
     * What sources say of the ease there is beyond what stands in its row, and how every size stands to the wish: a line
     * each.
     */
    public List<String> told(Words words) {
        List<String> told = new ArrayList<>();
        if (standing != Standing.UNKNOWN) {
            if (called.length() > ROOM || !brief(words).startsWith(brief)) {
                told.add(called);
            }
            if (!minimums.isEmpty()) {
                String asked = String.join(words.of("editor.ease.between"), minimums);
                told.add(words.of("editor.ease.minimums", Map.of("asked", asked)));
                told.add(smallest);
                told.add(near);
            }
            told.addAll(stretch);
        }
        told.addAll(others.map(OtherSizes::told).orElse(List.of()));
        told.add(sizes.map(SizeWishes.Said::words).orElse(""));
        told.removeIf(String::isEmpty);
        return told;
    }

    /** The sizes for which the verdict holds word for word; none but where it is told of them. */
    private List<String> alike() {
        boolean told = standing == Standing.AWAY && missing.isPresent();
        return told ? sizes.map(SizeWishes.Said::alike).orElse(List.of()) : List.of();
    }

    /**
     * Which other sizes do not meet the one wish while others do, in a sentence; empty where all are alike, or where the
     * verdict tells of them.
     */
    public String unmet(Words words) {
        List<String> unmet = sizes.map(SizeWishes.Said::unmet).orElse(List.of()).stream()
                .filter(s -> !alike().contains(s))
                .toList();
        return unmet.isEmpty()
                ? ""
                : words.of(
                        unmet.size() == 1 ? "editor.ease.sizes.differ.one" : "editor.ease.sizes.differ",
                        Map.of("sizes", unmet));
    }

    /** How it stands to the wish, with the sizes that do not meet it while others do. */
    public String verdict(Words words) {
        String first = alike().isEmpty()
                ? verdict
                : words.of("editor.ease.sizes.alike", Map.of("verdict", verdict, "sizes", alike()));
        return after(first, unmet(words));
    }

    /**
     * What it is called, with its source, and then how it is in the other sizes in which the same is done; that alone where
     * there is no room for both.
     */
    public String brief(Words words) {
        // Where the verdict is told of other sizes there is little room, and it says the same.
        String also = alike().isEmpty() ? others.map(OtherSizes::brief).orElse("") : "";
        String both = after(brief, also);
        return also.isEmpty() || both.length() <= ROOM ? both : also;
    }

    /** What is heard of it: how it stands, and how it is in the other sizes in which the same is done. */
    public String heard(Words words) {
        return after(verdict(words), others.map(OtherSizes::brief).orElse(""));
    }

    private static String after(String first, String second) {
        boolean stops = first.isEmpty() || first.endsWith(".") || first.endsWith("?");
        return second.isEmpty() ? first : first.isEmpty() ? second : first + (stops ? " " : ". ") + second;
    }
}
