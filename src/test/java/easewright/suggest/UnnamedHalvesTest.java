package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Piece;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * How often pieces are cut that have neither name nor dart, with small ones beside them that are of a like form, and of
 * pieces that are meant to differ left and right. Our own inventions.
 */
class UnnamedHalvesTest {
    /** How a piece is shaped, its centre at x = 0 and its waist about y = 0, and how often it goes round. */
    private enum Form {
        PLAIN(2),
        SHORT(2),
        POCKET_CUT(2),
        VENT(2),
        ROUND_HEM(2),
        PEGGED(2),
        FLARED(2),
        HEM_ASLANT(1),
        ONE_SHOULDER(1),
        CLOSED_ASLANT(1);

        private final int shapes;

        Form(int shapes) {
            this.shapes = shapes;
        }

        boolean isHalfSkirt() {
            return ordinal() <= FLARED.ordinal();
        }
    }

    private final Random random = new Random(20261126);

    private double about(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** Of a skirt of that length and that half waist; a front and a back share them. */
    private String path(Form form, double waist, double length) {
        double hip = waist + about(18, 60);
        double down = Math.min(200, 0.5 * length);
        double hem = hip + about(0, 60);
        double dip = about(0, 14);
        String top = data("M0 %s C%s %s %s 4 %s 0 ", dip, waist / 3, dip, waist / 1.5, waist);
        String side = data("C%s %s %s %s %s %s ", waist + 12, down * 0.35, hip, down * 0.6, hip, down);
        return switch (form) {
            case PLAIN, SHORT -> top + side + data("L%s %s L0 %s Z", hem, length, length + dip / 2);
            case POCKET_CUT -> {
                double cut = about(40, 70);
                double deep = Math.min(about(90, 160), 0.6 * length);
                yield data("M0 %s C%s %s %s 4 %s 2 ", dip, waist / 3, dip, waist / 2, waist - cut)
                        + data("Q%s %s %s %s ", waist - cut + 12, deep * 0.8, waist + 14, deep)
                        + data("L%s %s L%s %s L0 %s Z", hip, down + 20, hem, length, length);
            }
            case VENT -> {
                double foot = length * about(0.65, 0.8);
                double out = about(25, 50);
                yield top + side + data("L%s %s L%s %s L%s %s L0 %s Z", hem, length, -out, length, -out, foot, foot);
            }
            case ROUND_HEM ->
                top
                        + side
                        + data("L%s %s C%s %s %s %s 0 %s Z", hip, 0.7 * length, hip, length, hip / 2, length, length);
            case PEGGED -> top + side + data("L%s %s L0 %s Z", waist - about(0, 15), length, length);
            case FLARED ->
                top + data("L%s %s Q%s %s 0 %s Z", waist * about(1.5, 2.4), length, waist, length + 40, length + 30);
            case HEM_ASLANT -> {
                double low = length + about(60, 220);
                yield data("M%s -8 C%s %s %s %s %s -8 ", -waist, -waist / 3, dip, waist / 3, dip, waist)
                        + data("C%s 60 %s 130 %s 200 L%s %s ", waist + 12, hip, hip, hem, length + 200)
                        + data(
                                "L%s %s L%s 200 C%s 130 %s 60 %s -8 Z",
                                -hem, low + 200, -hip, -hip, -waist - 12, -waist);
            }
            case ONE_SHOULDER -> {
                double bust = about(220, 270);
                double tall = about(430, 700);
                yield data("M60 0 L170 25 C150 90 160 170 %s 210 ", bust)
                        + data("C%s 300 %s 340 %s 390 L%s %s ", bust - 12, bust - 25, bust - 20, bust, tall)
                        + data(
                                "L%s %s L%s 390 C%s 340 %s 300 %s 210 ",
                                -bust, tall, -bust + 20, -bust + 25, -bust + 12, -bust)
                        + "C-80 190 40 120 60 0 Z";
            }
            case CLOSED_ASLANT -> {
                double bust = about(220, 270);
                double tall = about(430, 700);
                double low = about(-40, 60);
                yield data("M-80 0 C-70 60 %s 100 %s 130 C60 100 75 40 80 0 ", low - 30, low)
                        + data("L190 40 C175 100 180 180 %s 225 L%s %s ", bust, bust - about(0, 20), tall)
                        + data("L%s %s L%s 225 C-180 180 -175 100 -190 40 Z", -bust, tall + about(40, 120), -bust);
            }
        };
    }

    private static String data(String form, Object... numbers) {
        return String.format(Locale.ROOT, form.replace("%s", "%.2f"), numbers);
    }

    private String placed(String path, double x, String inside) {
        boolean turned = random.nextInt(3) == 0;
        String grain = turned || random.nextBoolean() ? "<path d='M60 70 V170 M56 80 L60 70 L64 80'/>" : "";
        return String.format(
                Locale.ROOT,
                "<g transform='translate(%.1f 400) rotate(%.2f) scale(%d 1)'><path d='%s'/>%s%s</g>",
                x,
                turned ? about(-3, 3) : 0,
                random.nextBoolean() ? 1 : -1,
                path,
                grain,
                inside);
    }

    private static String name(String name) {
        return "<text x='-20' y='260' font-size='14'>" + name + "</text>";
    }

    /** A pocket bag, a flap and a band, unnamed as well; each is one piece. */
    private String small(double waist) {
        double deep = about(110, 200);
        return placed(data("M0 0 L%s 0 L%s %s L0 %s Z", 70.0, about(90, 120), deep, deep), 2600, "")
                + placed(data("M0 0 L%s 0 L%s 60 L0 60 Z", 110.0, 125.0), 3000, "")
                + placed(data("M0 0 L%s 0 L%s 40 L0 40 Z", 4 * waist, 4 * waist + 25), 3600, "");
    }

    private static List<Piece> outcome(String body) throws SvgProblem {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='6000mm' height='2000mm' viewBox='0 0 6000 2000'>";
        return Suggestions.of(SuggestionsTest.sheet(svg + body + "</svg>"), Set.of())
                .outcome()
                .pieces();
    }

    private static int shapes(Piece piece) {
        return piece.times() * (piece.onFold() ? 2 : 1);
    }

    @Test
    void goRoundAsOftenAsTheirFormSays() throws SvgProblem {
        Map<Form, HitRates.Tally> rates = new EnumMap<>(Form.class);
        HitRates.Tally beside = new HitRates.Tally();
        List<String> missed = new ArrayList<>();
        for (Form form : Form.values()) {
            for (int i = 0; i < 30; i++) {
                double waist = form == Form.SHORT ? about(110, 150) : about(150, 260);
                double length = form == Form.SHORT ? about(160, 270) : about(300, 900);
                Form other = form.isHalfSkirt() ? Form.PLAIN : form;
                String small = form.isHalfSkirt() ? small(waist) : "";
                // A name says which part it is, not how often it is cut.
                boolean named = !form.isHalfSkirt() && random.nextBoolean();
                List<Piece> pieces = outcome(placed(path(form, waist, length), 600, named ? name("Front") : "")
                        + placed(
                                path(other, waist - about(0, 12), length + about(-4, 4)),
                                1600,
                                named ? name("Back") : "")
                        + small);
                for (Piece piece : pieces.subList(0, 2)) {
                    boolean hit = shapes(piece) == form.shapes
                            && !(form == Form.VENT && piece.onFold() && piece == pieces.get(0));
                    rates.computeIfAbsent(form, f -> new HitRates.Tally()).count(hit);
                    if (!hit) {
                        missed.add(form + " " + pieces.indexOf(piece) + " " + piece.times() + " " + piece.onFold() + " "
                                + waist + " " + length);
                    }
                }
                pieces.subList(2, pieces.size()).forEach(piece -> beside.count(shapes(piece) == 1));
            }
        }
        assertThat(rates.values()).as("%s %s", rates, missed).allMatch(tally -> tally.rate() >= 0.95);
        assertThat(beside.rate()).as("%s", beside).isGreaterThan(0.95);
    }

    /** A wrap front drawn whole has a straight edge and a shaped one as a half has; only the other piece shows that it is wide. */
    @Test
    void whatIsMuchWiderThanTheOtherIsAGuessThatSaysSo() throws Exception {
        String back = placed("M0 8 C60 8 120 4 180 0 C195 60 230 130 240 200 L260 600 L0 600 Z", 500, "");
        String front = placed("M0 8 C60 8 240 4 300 0 C315 60 350 130 360 200 L380 600 L0 600 Z", 1500, "");
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='6000mm' height='2000mm' viewBox='0 0 6000 2000'>";
        Suggestions made = Suggestions.of(SuggestionsTest.sheet(svg + back + front + "</svg>"), Set.of());
        List<Reason> cuts = made.all().stream()
                .filter(s -> s.kind() == Suggestion.Kind.CUT)
                .map(Suggestion::reason)
                .toList();
        assertThat(cuts).extracting(Reason::code).containsExactly("straight-centre", "straight-centre-wide");
        assertThat(cuts).noneMatch(Reason::isLikely);
        assertThat(cuts.get(1).confidence()).isLessThan(cuts.get(0).confidence());
        assertThat(Words.english(LengthUnit.CM)
                        .of("reason.straight-centre-wide", cuts.get(1).values()))
                .contains("38")
                .contains("26")
                .contains("wrap front");
    }
}
