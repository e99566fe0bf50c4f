package easewright.editor.model;

import easewright.alter.Way;
import easewright.check.Proportion;
import easewright.measure.Girth;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Words;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A question about an amount that was typed and that hardly anybody means, before it is tried.
 *
 * @param amount as it was typed, mm
 * @param words  the question
 * @param rather what may have been meant, mm; empty where nothing suggests itself
 */
public record Doubt(double amount, String words, OptionalDouble rather) {
    /** More than this is seldom put into a length at one line, mm; common practice. */
    private static final double LENGTH = 300;

    /** Less is not put in or taken out, mm. */
    private static final double LEAST = 1;

    /** The question about an amount for what is wanted now; empty where there is none. */
    public static Optional<Doubt> of(Desk desk, double mm) {
        Optional<Wanted> wanted = desk.wanted();
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        boolean girth =
                wanted.get().other().map(o -> o.way().aim() == Way.Aim.GIRTH).orElse(true);
        String level = wanted.get().level();
        OptionalDouble finished = desk.reading().measures().girths().stream()
                .filter(g -> girth && g.level().name().equals(level))
                .filter(g -> !g.parts().isEmpty())
                .mapToDouble(Girth::finished)
                .findFirst();
        double most = finished.isPresent() ? Proportion.OF_GIRTH * finished.getAsDouble() : LENGTH;
        if (Math.abs(mm) <= most) {
            return Optional.empty();
        }
        Words words = desk.words();
        String question = finished.isPresent()
                ? words.of(
                        "editor.doubt.girth",
                        Map.of(
                                "amount.signed",
                                mm,
                                "level",
                                level,
                                "finished",
                                finished.getAsDouble(),
                                "share",
                                Math.round(100 * Math.abs(mm) / finished.getAsDouble())))
                : words.of("editor.doubt.length", Map.of("amount.signed", mm));
        return Optional.of(new Doubt(mm, question, rather(mm, most, desk.unit())));
    }

    /**
     * What may have been meant, as an answer. Millimetres are read off centimetres; beside inches they are told as such.
     *
     * @param mm    what may have been meant
     * @param words in whose unit it was typed
     */
    public static String no(double mm, Words words) {
        return words.unit() == LengthUnit.INCH
                ? words.of(
                        "editor.doubt.rather.inch",
                        Map.of("typed", Lengths.format(mm, LengthUnit.MM), "amount", words.length(mm)))
                : words.of("editor.doubt.rather", Map.of("amount.signed", mm));
    }

    /** The same figure in millimetres, which is the usual slip. */
    private static OptionalDouble rather(double mm, double most, LengthUnit unit) {
        double slip = mm / unit.mm();
        return Math.abs(slip) >= LEAST && Math.abs(slip) <= most && slip != mm
                ? OptionalDouble.of(slip)
                : OptionalDouble.empty();
    }
}
