package easewright.text;

import easewright.pattern.Finding;
import easewright.pattern.LevelKind;
import easewright.pattern.Side;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.TreeMap;

/**
 * Sentences from the bundle, with values filled in by name. A value of type {@code Double} is a length in mm and is
 * shown in the user's unit, unless its key ends in {@code .percent}, {@code .degrees} or {@code .number}; lists are
 * shown with commas; a key ending in {@code .signed} shows a length with its plus or minus; {@code largest} is a limit,
 * and rounded towards 0; of a {@link Span} both ends are shown, once if they look alike. A line may ask for a value in a form of its own, {@code {amount.part}} for the value
 * {@code amount}: {@code .coarse} to the millimetre, {@code .part} as one of several that must add up, {@code .tape} that
 * it is less than a tape shows, where it is, {@code .at-most} the same with "at most" where it is not,
 * {@code .agreeing} so that two lengths and what they differ by do not contradict each other, {@code .then} and
 * {@code .now} that a seam fitted or fits or how much it is off, {@code .misfit} a sentence that tells on which side a
 * seam is longer, what of that is to be eased in and what is left over, {@code .known} a source with how well its figure
 * is known,
 * {@code .exact} a plain number to be typed again, {@code .and} and {@code .or} a list whose last has that word before it.
 *
 * <p>Some lines are worded otherwise for who types commands ({@code <key>.command}) or who sits before a Mac
 * ({@code <key>.mac}); a line by itself is for the window and for paper. The name of a key on the keyboard is a line
 * too, which any other may ask for: {@code {key.ctrl}}. What would make the line of a finding too long for a glance stands
 * beside it ({@code <key>.why}).
 */
public final class Words {
    private static final String COMMAND = ".command";
    private static final String WHY = ".why";

    /** What a length may move in reckoning without being changed, mm. */
    private static final double UNCHANGED = 0.02;

    private final Lines bundle;
    private final LengthUnit unit;

    /** What a key ends in if its line has a wording of its own for this listener; empty for who sees the window. */
    private final String listener;

    /** Read once, on first use; by itself rather than by search, since there is one language so far. */
    private static final class English {
        static final Lines BUNDLE = new Lines("messages.properties");
    }

    private Words(Lines bundle, LengthUnit unit, String listener) {
        this.bundle = bundle;
        this.unit = unit;
        this.listener = listener;
    }

    /** For who sees the window, or paper. */
    public static Words english(LengthUnit unit) {
        return new Words(English.BUNDLE, unit, "");
    }

    /** For who types commands: what helps is an option, not a button. */
    public Words forCommands() {
        return new Words(bundle, unit, COMMAND);
    }

    /** For who sees the window on a Mac, whose keys have other names. */
    public Words onMac() {
        return new Words(bundle, unit, ".mac");
    }

    /** All lines as they are. */
    public ResourceBundle bundle() {
        return bundle;
    }

    public LengthUnit unit() {
        return unit;
    }

    /** The sentence of a key without values. */
    public String of(String key) {
        return of(key, Map.of());
    }

    /** The sentence of a key; a key that has none is shown as it is with its values, so that nothing is lost. */
    public String of(String key, Map<String, ?> values) {
        String line = line(key);
        if (line == null) {
            return values.isEmpty() ? key : key + " " + new Filling(this, values).listed();
        }
        if (line.indexOf('{') < 0) {
            return line;
        }
        Filling filling = new Filling(this, values);
        return key.startsWith("problem.") || key.startsWith("finding.") ? filling.sayable(line) : filling.of(line);
    }

    /** The line of a key in the listener's own wording, if it has one; null without any. */
    String line(String key) {
        String own = listener.isEmpty() ? null : bundle.line(key + listener);
        String line = own == null ? bundle.line(key) : own;
        return line == null || listener.equals(COMMAND) ? line : printed(line);
    }

    /** With the quotes and apostrophes of printed matter, which not every terminal has, and which nobody types. */
    private static String printed(String line) {
        if (line.indexOf('"') < 0 && line.indexOf('\'') < 0) {
            return line;
        }
        StringBuilder out = new StringBuilder(line.replace('\'', '\u2019'));
        for (int at = 0; at < out.length(); at++) {
            if (out.charAt(at) == '"') {
                boolean opens = at == 0 || " (".indexOf(out.charAt(at - 1)) >= 0;
                out.setCharAt(at, opens ? '\u201c' : '\u201d');
            }
        }
        return out.toString();
    }

    /** One after the other, the last with an "and". */
    public String listed(List<String> each) {
        return listed(each, "and");
    }

    /** @param before the last: "and" or "or" */
    String listed(List<String> each, String before) {
        int last = each.size() - 1;
        return last < 1
                ? String.join("", each)
                : of(
                        "list." + before,
                        Map.of("others", String.join(", ", each.subList(0, last)), "last", each.get(last)));
    }

    /** How a piece is cut, with the side that it is for, if it is for one alone: two such pieces make one garment. */
    public String forSide(String cutting, Side side) {
        return side == Side.BOTH ? cutting : of("piece.side." + side, Map.of("cutting", cutting));
    }

    /** What something known by a constant is called: {@code level.high-hip} for {@code HIGH_HIP} of the levels. */
    public String name(String block, Enum<?> constant) {
        return of(block + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** A source, and how well its figure is known where it was not simply read there. */
    public String known(String source, String standing) {
        String key = "source-known." + standing.replace(' ', '-');
        return bundle.line(key) == null ? source : of(key, Map.of("source", source));
    }

    /** What the girth of the body at a level is called; a level of the user's own gives it its name. */
    public String girth(LevelKind kind, String level) {
        return of("girth." + kind.word().replace(' ', '-'), Map.of("level", level));
    }

    /** A finding in a line; who types commands, and has nowhere to ask why, is told that as well. */
    public String of(Finding finding) {
        String key = "finding." + finding.code();
        String said = of(key, withPiece(finding));
        boolean whole = !listener.equals(COMMAND) || bundle.line(key + COMMAND) != null;
        return whole ? said : why(finding).map(why -> said + " " + why).orElse(said);
    }

    /** What is to be known about a finding beyond its line, if anything: for who asks. */
    public Optional<String> why(Finding finding) {
        String key = "finding." + finding.code() + WHY;
        return Optional.ofNullable(bundle.line(key)).map(line -> of(key, withPiece(finding)));
    }

    /** The words of a problem that some room reported by code. */
    public String problem(String code, Map<String, ?> values) {
        return of("problem." + code, values);
    }

    public String length(double mm) {
        return Lengths.format(mm, unit);
    }

    /** To the millimetre or 1/16 in: for printed figures, which were rounded before they were converted. */
    public String coarse(double mm) {
        return Lengths.coarse(mm, unit);
    }

    /** By how much a length is less than one that is told as it is, as it is told. */
    public String under(double mm, double exactly) {
        return Lengths.format(
                Agreeing.under(mm, exactly, unit),
                unit,
                unit == LengthUnit.INCH ? Lengths.step(mm, unit) : Lengths.TENTH);
    }

    /** A text from elsewhere with its lengths put into the unit, such as "3 in below the waist"; as coarse as they were. */
    public String retold(String text) {
        return Retold.in(unit, text);
    }

    /** A length that somebody typed or may type over, as finely as people type: what was entered is not rounded away. */
    public String entered(double mm) {
        return switch (unit) {
            case CM -> Lengths.format(mm, unit, Lengths.TENTH);
            case INCH -> isLessThanTapeShows(mm) ? Lengths.fine(mm) : length(mm);
            case MM -> length(mm);
        };
    }

    /** A length in a table that is there to be compared, without the unit: centimetres to the tenth of a millimetre. */
    public String compared(double mm) {
        return bare(entered(mm));
    }

    /** What two such lengths differ by, with its plus or minus and as finely as they are told. */
    public String signedCompared(double mm) {
        String digits = compared(mm);
        return mm > 0 && !digits.equals("0") ? "+" + digits : digits;
    }

    /**
     * The two sides of a seam as they are told of it everywhere, so that what they are off is what is left of them: as any
     * length is shown or, in centimetres, as much finer as it takes; in inches in {@link Sixteenths}.
     *
     * @param first  with its unit, as all of them
     * @param second the other side
     * @param meant  what the first is meant to be longer by, with its plus or minus
     * @param off    what the first is longer by beyond that, with its plus or minus
     */
    public record Sides(String first, String second, String meant, String off) {}

    /** @param meant what the first is meant to be longer by, mm */
    public Sides sides(double first, double second, double meant) {
        Agreeing all = new Agreeing(first, second, meant, this);
        return new Sides(
                all.said("first", first),
                all.said("second", second),
                all.said("ease.signed", meant),
                all.said("drift.signed", first - second - meant));
    }

    /** The same before a change after which they are as long as given; what did not change is told alike. */
    public Sides sidesBefore(double first, double second, double meant, double firstAfter, double secondAfter) {
        boolean sameFirst = Math.abs(first - firstAfter) < UNCHANGED;
        if (unit != LengthUnit.INCH || !sameFirst && Math.abs(second - secondAfter) >= UNCHANGED) {
            return sides(first, second, meant);
        }
        Sixteenths told =
                Sixteenths.before(first, second, meant, sameFirst, Sixteenths.of(firstAfter, secondAfter, meant));
        return new Sides(
                length(Sixteenths.mm(told.first())),
                length(Sixteenths.mm(told.second())),
                signed(Sixteenths.mm(told.ease())),
                signed(Sixteenths.mm(told.off())));
    }

    /** The sum of two lengths that stand beside it: of what is told of them, and told as any length is, mm. */
    public double sum(double first, double second) {
        return shown(shown(first) + shown(second));
    }

    /**
     * Lengths of which each is added so and so many times, so told that who does it finds the sum.
     *
     * @param sum as it is told, mm
     */
    public Adding adding(double[] each, int[] times, double sum) {
        return new Adding(each, times, sum, unit);
    }

    /** The unit in words, for what stands above a table. */
    public String unitName() {
        return of("unit." + unit.name().toLowerCase(Locale.ROOT));
    }

    /** The length that is shown for this one, mm: rounded as it is when written. */
    public double shown(double mm) {
        return Lengths.shown(mm, unit);
    }

    /** Whether a length is so little that it is told as less than 1/16 in: what would be rounded to nothing, mm. */
    public boolean isLessThanTapeShows(double mm) {
        return unit == LengthUnit.INCH && Math.abs(mm) < LengthUnit.INCH.mm() / 32;
    }

    /** Without the unit, for a column that has it at its head. */
    public String figure(double mm) {
        return Lengths.figure(mm, unit);
    }

    /** A length that was written in the unit, without it. */
    public String bare(String length) {
        String symbol = "\u00a0" + unit.symbol();
        return length.endsWith(symbol) ? length.substring(0, length.length() - symbol.length()) : length;
    }

    /** The same with its plus or minus. */
    public String signedFigure(double mm) {
        return Lengths.signedFigure(mm, unit);
    }

    /**
     * What two lengths are off by, mm, so that who takes the lengths from each other as they are shown finds it.
     *
     * @param ease what the first is meant to be longer by
     */
    public double off(double first, double second, double ease) {
        return new Agreeing(first, second, ease, this).off();
    }

    public String signed(double mm) {
        return Lengths.signed(mm, unit);
    }

    private static Map<String, Object> withPiece(Finding finding) {
        Map<String, Object> values = new TreeMap<>(finding.values());
        values.putIfAbsent("piece", finding.piece());
        return values;
    }

    /** A plain number with a real minus sign, rounded. */
    public static String number(double value, int places) {
        if (!Double.isFinite(value)) {
            return "?";
        }
        return Lengths.decimal(value, places).replace('-', '\u2212');
    }
}
