package easewright.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths as people write them. Showing rounds, reading does not. Inches are shown to 1/16 in. Centimetres are shown as a
 * tape is read: to half a millimetre; less than 1 cm, of which a tape shows little, to 0.1 mm.
 */
public final class Lengths {
    private static final double LARGEST_MM = 100_000;
    static final int SIXTEENTHS = 16;
    static final int FINEST = 64;

    /** What is shown of lengths that are compared, or that are less than 1 cm, mm. */
    static final double TENTH = 0.1;

    /** What is shown of other lengths, mm. */
    private static final double HALF = 0.5;

    /** Places beyond those shown that are trusted. */
    private static final int CLEARED = 6;

    private static final Pattern FORM = Pattern.compile("(?<sign>[+-]?)\\s*"
            + "(?:(?<whole>\\d+)(?:\\s+|\\s*-\\s*))??"
            + "(?:(?<top>\\d+)\\s*/\\s*(?<bottom>\\d+)|(?<number>\\d+(?:[.,]\\d*)?|[.,]\\d+))"
            + "\\s*(?<unit>[^\\d\\s.,/+-][^\\d,/+-]*)?");

    /** The spaces within a length as it is written in a sentence. */
    private static final Pattern WITHIN = Pattern.compile("(?<=\\d) (?=\\d+/\\d|(?:mm|cm|m|in|%)\\b|%)");

    private Lengths() {}

    /** The text with no-break spaces within its lengths: number, fraction and unit stay on one line. */
    public static String together(String text) {
        return WITHIN.matcher(text).replaceAll("\u00a0");
    }

    /**
     * The length in the unit, rounded as it is shown, such as {@code 2.4 cm} or {@code −1 1/2 in}. Small lengths
     * are in the same unit as large ones: they mostly stand in one sentence, to be compared.
     */
    public static String format(double mm, LengthUnit unit) {
        String digits = digits(Math.abs(mm), unit);
        boolean minus = mm < 0 && !digits.equals("0");
        return (minus ? "\u2212" : "") + inOne(digits, unit);
    }

    /** Number, fraction and unit, which stay on one line. */
    private static String inOne(String digits, LengthUnit unit) {
        return digits.replace(' ', '\u00a0') + "\u00a0" + unit.symbol();
    }

    /** The same rounded to a step of its own, mm: 0.1 or, of inches, 25.4 by 16 or by a finer part. */
    static String format(double mm, LengthUnit unit, double step) {
        String digits = switch (unit) {
            case MM -> digits(Math.abs(mm), unit);
            case CM -> decimal(steps(Math.abs(mm), step) * step / 10, 2);
            case INCH -> fraction(steps(Math.abs(mm), step), (int) Math.round(25.4 / step));
        };
        return (mm < 0 && !digits.equals("0") ? "\u2212" : "") + inOne(digits, unit);
    }

    /** The same with a plus before what is added. */
    public static String signed(double mm, LengthUnit unit) {
        String text = format(mm, unit);
        boolean plus = mm > 0 && !digits(mm, unit).equals("0");
        return plus ? "+" + text : text;
    }

    /** The same as {@link #format} without the unit. */
    static String figure(double mm, LengthUnit unit) {
        String digits = digits(Math.abs(mm), unit);
        return mm < 0 && !digits.equals("0") ? "\u2212" + digits : digits;
    }

    /** The length as it is after being rounded for showing, mm. */
    static double shown(double mm, LengthUnit unit) {
        double step = step(Math.abs(mm), unit);
        return steps(Math.abs(mm), step) * step * Math.signum(mm);
    }

    /** What a length is rounded to when it is shown, mm. */
    static double step(double mm, LengthUnit unit) {
        return switch (unit) {
            case MM -> TENTH;
            case CM -> mm < 10 ? TENTH : HALF;
            case INCH -> 25.4 / SIXTEENTHS;
        };
    }

    /** Less than this is shown as nothing, or as less than 1/16 in, mm. */
    static double nothing(LengthUnit unit) {
        return unit == LengthUnit.INCH ? 25.4 / SIXTEENTHS / 2 : 0.05;
    }

    static String signedFigure(double mm, LengthUnit unit) {
        String digits = figure(mm, unit);
        return mm > 0 && !digits.equals("0") ? "+" + digits : digits;
    }

    /** Less than a sixteenth that somebody typed, who may type over it: to 1/64 in. */
    static String fine(double mm) {
        return format(mm, LengthUnit.INCH, 25.4 / FINEST);
    }

    /** Whether a length is one that inches are read in, to 1/16 in. */
    public static boolean isInches(double mm) {
        double parts = mm / 25.4 * SIXTEENTHS;
        return Math.abs(parts - Math.rint(parts)) < 1e-6;
    }

    /** To the millimetre, or to 1/16 in: for printed figures that were rounded before they were converted. */
    static String coarse(double mm, LengthUnit unit) {
        return unit == LengthUnit.INCH ? format(mm, unit) : format(Math.rint(mm), unit);
    }

    /**
     * One of several equal parts, signed, with as many places as it takes for the parts shown to add up: hundredths of
     * a millimetre, or 1/64 in. Empty where that is not enough.
     */
    static Optional<String> part(double mm, LengthUnit unit) {
        double step = unit == LengthUnit.INCH ? 25.4 / FINEST : 0.01;
        double steps = Math.abs(mm) / step;
        if (Math.abs(steps - Math.rint(steps)) > 1e-4) {
            return Optional.empty();
        }
        String digits = unit == LengthUnit.INCH
                ? fraction(Math.round(steps), FINEST)
                : decimal(Math.abs(mm) / unit.mm(), unit == LengthUnit.CM ? 3 : 2);
        String sign = digits.equals("0") ? "" : mm < 0 ? "\u2212" : "+";
        return Optional.of(sign + inOne(digits, unit));
    }

    /** With all the places that a length in parts of a tape's has: quarters of a millimetre. */
    static String exactly(double mm, LengthUnit unit) {
        return inOne(decimal(mm / unit.mm(), unit == LengthUnit.CM ? 3 : 2), unit);
    }

    /** A limit rounded towards 0 to what is shown in the unit, so that it holds when it is typed as it stands. */
    static double within(double mm, LengthUnit unit) {
        double step = step(Math.abs(mm), unit);
        double down = Math.floor(Math.abs(mm) / step + 1e-9) * step;
        return down == 0 ? mm : Math.copySign(down, mm);
    }

    private static String digits(double mm, LengthUnit unit) {
        if (!Double.isFinite(mm)) {
            return "?";
        }
        return switch (unit) {
            case MM -> decimal(mm, 1);
            case CM -> decimal(shown(mm, unit) / 10, 2);
            case INCH -> fraction(steps(mm, 25.4 / SIXTEENTHS), SIXTEENTHS);
        };
    }

    private static String fraction(long parts, long ofWhole) {
        long whole = parts / ofWhole;
        long top = parts % ofWhole;
        long bottom = ofWhole;
        if (top == 0) {
            return Long.toString(whole);
        }
        while (top % 2 == 0) {
            top /= 2;
            bottom /= 2;
        }
        return (whole == 0 ? "" : whole + " ") + top + "/" + bottom;
    }

    /** What is left of a number once the noise of reckoning is cleared away: a half must not be rounded down for it. */
    private static BigDecimal exact(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places + CLEARED, RoundingMode.HALF_UP);
    }

    /** How many steps a length comes to, halves away from nothing; none for what is no number. */
    static long steps(double length, double step) {
        double all = length / step;
        return Double.isFinite(all)
                ? exact(all, 0).setScale(0, RoundingMode.HALF_UP).longValue()
                : 0;
    }

    /** A number rounded to so many places, without trailing zeros and without an exponent. */
    static String decimal(double value, int places) {
        BigDecimal rounded =
                exact(value, places).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /**
     * Reads a length such as {@code 24 mm}, {@code 3,5 cm}, {@code 1 1/2 in}, {@code 5/8}, {@code 1½"}, {@code −15mm}.
     *
     * @param assumed the unit where none is written
     * @return mm
     * @throws Unreadable if it is no length, or can be read in two ways
     */
    public static double parse(String text, LengthUnit assumed) throws Unreadable {
        String shown = text == null ? "" : text.strip();
        if (shown.isEmpty()) {
            throw new Unreadable("length-empty", Map.of());
        }
        Matcher form = FORM.matcher(plain(shown));
        if (!form.matches()) {
            throw new Unreadable("length-not-a-number", Map.of("text", shown));
        }
        double size = size(form, shown) * mmOf(form.group("unit"), assumed, shown);
        if (size > LARGEST_MM) {
            throw new Unreadable("length-too-large", Map.of("text", shown));
        }
        return form.group("sign").equals("-") ? -size : size;
    }

    /**
     * Whether a length says its unit itself. Nothing at all needs none; what cannot be read counts as having one, since
     * reading it says what is wrong.
     */
    public static boolean saysItsUnit(String text) {
        Matcher form = FORM.matcher(plain(text.strip()));
        if (!form.matches()) {
            return true;
        }
        String unit = form.group("unit");
        return unit != null && !unit.isBlank() || text.chars().noneMatch(c -> c >= '1' && c <= '9' || c > 127);
    }

    /** The same text with one kind of minus, plain spaces, and ½ written as 1/2. */
    static String plain(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            String one = Character.toString(c);
            String apart = Normalizer.normalize(one, Normalizer.Form.NFKC);
            if (apart.indexOf('\u2044') >= 0) {
                out.append(' ').append(apart.replace('\u2044', '/'));
            } else if ("\u2212\u2013\u2010\u2011".contains(one)) {
                out.append('-');
            } else if (c == '\u2044') {
                out.append('/');
            } else if (Character.isSpaceChar(c)) {
                out.append(' ');
            } else {
                out.append(one);
            }
        });
        return out.toString().strip();
    }

    private static double size(Matcher form, String shown) throws Unreadable {
        double whole = form.group("whole") == null ? 0 : Double.parseDouble(form.group("whole"));
        if (form.group("top") != null) {
            double bottom = Double.parseDouble(form.group("bottom"));
            if (bottom == 0) {
                throw new Unreadable("length-fraction-by-zero", Map.of("text", shown));
            }
            return whole + Double.parseDouble(form.group("top")) / bottom;
        }
        if (form.group("whole") != null) {
            throw new Unreadable("length-not-a-number", Map.of("text", shown));
        }
        String number = form.group("number");
        int comma = number.indexOf(',');
        if (comma > 0 && number.length() - comma == 4) {
            throw new Unreadable("length-comma-unclear", Map.of("text", shown));
        }
        return Double.parseDouble(number.replace(',', '.'));
    }

    private static double mmOf(String word, LengthUnit assumed, String shown) throws Unreadable {
        if (word == null || word.isBlank()) {
            return assumed.mm();
        }
        if (word.strip().equalsIgnoreCase("m")) {
            return 1000;
        }
        return LengthUnit.named(word)
                .orElseThrow(() -> new Unreadable("length-unit-unknown", Map.of("unit", word.strip(), "text", shown)))
                .mm();
    }
}
