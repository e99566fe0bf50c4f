package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** How often pieces are cut of which nobody wrote it, over pieces of random measures. Our own inventions. */
class HalfPiecesTest {
    /** A form of piece, how often it goes round, and what it may be called. */
    private enum Form {
        SKIRT_HALF(2, "Skirt front", "Front", "Skirt back", "BACK", "Front panel"),
        SKIRT_WHOLE(1, "Skirt front", "Front", "Back"),
        SKIRT_SLANTED_CENTRE(2, "Back", "Skirt back"),
        TOP_HALF(2, "Front", "Tee front", "Back", "Dress back", "Top"),
        TOP_WHOLE(1, "Front", "Tee front", "Back", "Top"),
        BUTTON_FRONT(2, "Front", "Shirt front"),
        LEG(2, "Trouser front", "Back leg", "Front", "Leg"),
        SLEEVE(2, "Sleeve", "SLEEVE", "Long sleeve"),
        SIDE_PANEL(2, "Side front", "Side panel", "Side back"),
        POCKET(1, "Pocket", "Front pocket"),
        WAISTBAND(1, "Waistband", "Band"),
        FACING(1, "Front facing", "Back neck facing"),
        LEFT_FRONT(1, "Left front", "Front left");

        private final int shapes;
        private final List<String> names;

        Form(int shapes, String... names) {
            this.shapes = shapes;
            this.names = List.of(names);
        }
    }

    private final Random random = new Random(20260219);

    private double about(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** Its path data with the centre at x = 0, to be mirrored and moved. */
    private String path(Form form) {
        double hip = about(180, 330);
        double waist = hip - about(20, 70);
        double length = about(380, 900);
        double hem = hip + about(-30, 120);
        double neck = about(60, 95);
        double shoulder = neck + about(60, 130);
        double body = about(380, 1100);
        double drop = about(70, 110);
        double side = shoulder + about(30, 70);
        return switch (form) {
            case SKIRT_HALF ->
                data(
                        "M0 0 C%s 0 %s -6 %s -14 C%s 60 %s 130 %s 200 L%s %s C%s %s %s %s 0 %s Z",
                        waist / 3,
                        waist / 1.5,
                        waist,
                        waist + 20,
                        hip,
                        hip,
                        hem,
                        length,
                        hem / 1.5,
                        length + 8,
                        hem / 3,
                        length + 10,
                        length + 10);
            case SKIRT_WHOLE ->
                data(
                        "M%s -14 C%s 4 %s 4 %s -14 C%s 60 %s 130 %s 200 L%s %s L%s %s L%s 200 C%s 130 %s 60 %s -14 Z",
                        -waist,
                        -waist / 3,
                        waist / 3,
                        waist,
                        waist + 20,
                        hip,
                        hip,
                        hem,
                        length,
                        -hem,
                        length,
                        -hip,
                        -hip,
                        -waist - 20,
                        -waist);
            case SKIRT_SLANTED_CENTRE ->
                data(
                        "M%s 0 L%s -14 C%s 60 %s 130 %s 200 L%s %s L0 %s Z",
                        about(35, 60), waist, waist + 20, hip, hip, hem, length, length + 10);
            case TOP_HALF ->
                data(
                        "M0 %s C%s %s %s 50 %s 0 L%s 40 C%s 110 %s 190 %s 230 L%s %s L0 %s Z",
                        drop,
                        neck / 2,
                        drop,
                        neck,
                        neck,
                        shoulder,
                        shoulder - 20,
                        shoulder - 5,
                        side,
                        side + about(-25, 60),
                        body,
                        body);
            case TOP_WHOLE -> {
                double low = side + about(-25, 60);
                yield data(
                        "M%s 0 C%s 50 %s %s 0 %s C%s %s %s 50 %s 0 L%s 40 C%s 110 %s 190 %s 230 L%s %s L%s %s L%s 230"
                                + " C%s 190 %s 110 %s 40 Z",
                        -neck,
                        -neck,
                        -neck / 2,
                        drop,
                        drop,
                        neck / 2,
                        drop,
                        neck,
                        neck,
                        shoulder,
                        shoulder - 20,
                        shoulder - 5,
                        side,
                        low,
                        body,
                        -low,
                        body,
                        -side,
                        -shoulder + 5,
                        -shoulder + 20,
                        -shoulder);
            }
            case BUTTON_FRONT, LEFT_FRONT -> {
                double stand = about(12, 25);
                yield data(
                                "M%s %s L0 %s C%s %s %s 50 %s 0 L%s 40 C%s 110 %s 190 %s 230 L%s %s L%s %s Z",
                                -stand,
                                drop,
                                drop,
                                neck / 2,
                                drop,
                                neck,
                                neck,
                                shoulder,
                                shoulder - 20,
                                shoulder - 5,
                                side,
                                side,
                                body,
                                -stand,
                                body)
                        + data("M0 %s L0 %s", drop, body);
            }
            case LEG -> {
                double crotch = about(50, 110);
                double foot = about(160, 230);
                double leg = about(880, 1080);
                yield data(
                        "M20 0 L%s 0 C%s 80 %s 160 %s 230 L%s %s L%s %s L%s 270 C%s 255 10 200 20 0 Z",
                        waist, waist + 15, hip, hip, hip - 60, leg, hip - 60 - foot, leg, -crotch, -crotch / 2);
            }
            case SLEEVE -> {
                double arm = about(140, 200);
                double cap = about(100, 150);
                double cuff = arm - about(30, 70);
                double long1 = about(250, 620);
                yield data(
                        "M%s %s C%s %s %s 0 0 0 C%s 0 %s %s %s %s L%s %s L%s %s Z",
                        -arm,
                        cap,
                        -arm / 1.6,
                        cap,
                        -arm / 2,
                        arm / 2.3,
                        arm / 1.8,
                        cap,
                        arm,
                        cap,
                        cuff,
                        cap + long1,
                        -cuff,
                        cap + long1);
            }
            case SIDE_PANEL ->
                data(
                        "M0 200 C30 120 40 80 60 0 C%s 90 %s 130 %s 170 L%s %s L%s %s C-20 420 -25 300 0 200 Z",
                        80.0, 110.0, 150.0, 140.0, body, -10.0, body + 5);
            case POCKET -> data("M0 0 L%s 0 L%s 150 L70 190 L0 150 Z", about(130, 170), about(110, 128));
            case WAISTBAND -> data("M0 0 L%s 0 L%s 40 L%s 80 L0 80 Z", 2 * waist, 2 * waist + 25, 2 * waist);
            case FACING -> data("M0 90 C40 90 90 60 95 0 L150 20 C150 110 80 160 0 160 Z");
        };
    }

    private static String data(String form, Object... numbers) {
        return String.format(Locale.ROOT, form.replace("%s", "%.2f"), numbers);
    }

    private Piece outcome(Form form, String name) throws SvgProblem {
        double turn = random.nextInt(3) == 0 ? about(-4, 4) : 0;
        String body = String.format(
                Locale.ROOT,
                "<g transform='translate(1000 300) rotate(%.2f) scale(%d 1)'><path d='%s'/><path d='%s'/></g>",
                turn,
                random.nextBoolean() ? 1 : -1,
                path(form),
                form == Form.WAISTBAND || form == Form.POCKET || form == Form.FACING
                        ? "M0 0"
                        : "M90 100 V270 M86 110 L90 100 L94 110");
        String words = "<text x='0' y='0' font-size='9' text-anchor='middle'>" + name + "</text>";
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='2000mm' height='1800mm' viewBox='0 0 2000 1800'>";
        SvgFile bare = SvgFile.read((svg + body + "</svg>").getBytes(StandardCharsets.UTF_8), "bare.svg");
        var inside = bare.pattern().pieces().get(0).outline().box().centre();
        String placed = words.replace("x='0' y='0'", data("x='%s' y='%s'", inside.x(), inside.y()));
        SvgFile file = SvgFile.read((svg + body + placed + "</svg>").getBytes(StandardCharsets.UTF_8), "bare.svg");
        Pattern drawn = random.nextInt(3) == 0 ? traced(file.pattern()) : file.pattern();
        Sheet sheet = new Sheet(drawn, file.loose(file.pattern()), file.texts());
        return Suggestions.of(sheet, Set.of()).outcome().pieces().get(0);
    }

    /** As from a scan: short lines that shake a little. */
    private Pattern traced(Pattern pattern) {
        return pattern.withPieces(pattern.pieces().stream()
                .map(piece -> {
                    List<Point> corners = new ArrayList<>();
                    for (Segment segment : piece.outline().segments()) {
                        int steps = (int) Math.ceil(segment.length() / 4);
                        for (int i = 0; i < steps; i++) {
                            corners.add(
                                    segment.at((double) i / steps).plus(new Point(about(-0.2, 0.2), about(-0.2, 0.2))));
                        }
                    }
                    return piece.withOutline(Outline.polygon(corners));
                })
                .toList());
    }

    /** With no name at all, letters or the word at the edge have to do. */
    @Test
    void lettersStandForFrontAndBack() throws SvgProblem {
        String half = "<path d='M%d 50 h190 c10 60 40 130 50 200 l20 350 H%d Z'/>"
                + "<text x='%d' y='300' font-size='30'>%s</text>";
        String sheet = half.formatted(0, 0, 100, "F") + half.formatted(500, 500, 600, "B");
        assertThat(pieces(sheet)).extracting(Piece::name).containsExactly("Front", "Back");
        assertThat(pieces(sheet)).allMatch(Piece::onFold);
        String row = sheet + half.formatted(1000, 1000, 1100, "A");
        assertThat(pieces(row))
                .as("one of A, B, ..., F")
                .extracting(Piece::name)
                .doesNotContain("Front", "Back");
        String edge = half.formatted(0, 0, 12, "CF");
        assertThat(pieces(edge)).extracting(Piece::onFold).containsExactly(true);
        assertThat(pieces(edge.replace("CF", "CB seam")))
                .extracting(Piece::times)
                .containsExactly(2);
    }

    private static List<Piece> pieces(String body) throws SvgProblem {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='2000mm' height='1800mm' viewBox='0 0 2000 1800'>";
        SvgFile file = SvgFile.read((svg + body + "</svg>").getBytes(StandardCharsets.UTF_8), "bare.svg");
        Sheet sheet = new Sheet(file.pattern(), file.loose(file.pattern()), file.texts());
        return Suggestions.of(sheet, Set.of()).outcome().pieces();
    }

    @Test
    void goRoundAsOftenAsTheirFormSays() throws SvgProblem {
        TreeMap<Form, HitRates.Tally> rates = new TreeMap<>();
        List<String> missed = new ArrayList<>();
        for (Form form : Form.values()) {
            for (int i = 0; i < 40; i++) {
                String name = form.names.get(random.nextInt(form.names.size()));
                Piece piece = outcome(form, name);
                int shapes = piece.times() * (piece.onFold() ? 2 : 1);
                boolean hit = shapes == form.shapes && !(piece.onFold() && form == Form.BUTTON_FRONT);
                rates.computeIfAbsent(form, f -> new HitRates.Tally()).count(hit);
                if (!hit) {
                    missed.add(form + " " + name + " " + piece.times() + " " + piece.onFold());
                }
            }
        }
        assertThat(rates.values()).as("%s %s", rates, missed).allMatch(tally -> tally.rate() >= 0.95);
    }
}
