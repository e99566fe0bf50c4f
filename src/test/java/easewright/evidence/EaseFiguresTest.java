package easewright.evidence;

import static easewright.alter.Cloths.INCH;

import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.ease.Minimum;
import easewright.ease.Tubes;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.LevelWidth;
import easewright.measure.Measures;
import easewright.pattern.Cloth;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;

/** Ease, its classes and its least amounts, and measuring without the allowance. */
class EaseFiguresTest extends Topic {
    private static final Source W1 = Source.calculated("worked example W1, docs/sources.md 4.6");
    private static final Source W2 = Source.calculated("worked example W2, docs/sources.md 4.6");
    private static final Source DRESS =
            Source.secondHand("US home-pattern publishers, misses' dress table, docs/sources.md 1.1");
    private static final Source JACKET =
            Source.fromMemory("US home-pattern publishers, jacket and coat tables, docs/sources.md 1.1");
    private static final Source HIP = Source.secondHand("US home-pattern publishers, skirt table, docs/sources.md 1.1");
    private static final EaseTables TABLES = EaseTables.standard();
    private static final double CLOSE = 1e-6;

    private final List<Check> checks = new ArrayList<>();

    @Override
    String title() {
        return "Ease and its classes";
    }

    @Override
    String words() {
        return "Ease is finished girth minus body girth. Class words by the tables that are shipped as data; least"
                + " wearing ease as each source gives it; girths of pieces drawn with their allowance.";
    }

    @Override
    List<Check> checks() {
        checks.clear();
        EaseLine w1 = line(LevelKind.BUST, 40, 36);
        number("body 36 in, garment 40 in", W1, "in", 4, w1.ease().getAsDouble() / INCH, CLOSE);
        number("the same in percent", W1, "%", 11.11, w1.percent().getAsDouble(), 0.005);
        words("4 in of ease in a dress", DRESS, "fitted", word(w1, "us-publishers-dress-bust"));
        words("4 in of ease in a jacket", JACKET, "fitted", word(w1, "us-publishers-jacket-bust"));
        words("4 in of ease in a coat", JACKET, "below the lowest class", word(w1, "us-publishers-coat-bust"));
        number(
                "body 36 in, 2 1/2 in of ease: pattern",
                Source.secondHand("NMSU Guide C-228, note to its table"),
                "in",
                38.5,
                Measures.of(Tubes.tube(LevelKind.BUST, (36 + 2.5) * INCH, 36 * INCH, Cloth.WOVEN))
                                .girths()
                                .get(0)
                                .finished()
                        / INCH,
                CLOSE);
        number(
                "body 36 in, garment 38 in",
                Source.published("sewingplums.com/2013/10/12/ease-levels"),
                "in",
                2,
                line(LevelKind.BUST, 38, 36).ease().getAsDouble() / INCH,
                CLOSE);
        Pattern skirt =
                Tubes.tube(LevelKind.HIP, 39 * INCH, 38 * INCH, Cloth.WOVEN).withWish("L", 3 * INCH);
        number(
                "body 38 in, garment 39 in, 3 in wanted: to add",
                Source.calculated("worked example W3, docs/sources.md 4.6"),
                "in",
                2,
                sheet(skirt).missing().getAsDouble() / INCH,
                CLOSE);
        bands();
        leasts();
        allowances();
        return List.copyOf(checks);
    }

    private void bands() {
        String[][] bust = {
            {"2.875", "close-fitting"},
            {"2.9", "fitted"},
            {"4", "fitted"},
            {"4.0625", "semi-fitted"},
            {"5", "semi-fitted"},
            {"5.125", "loose-fitting"},
            {"8", "loose-fitting"},
            {"8.01", "very loose-fitting"}
        };
        for (String[] row : bust) {
            words(
                    row[0] + " in at the bust of a dress",
                    DRESS,
                    row[1],
                    word(line(LevelKind.BUST, 36 + Double.parseDouble(row[0]), 36), "us-publishers-dress-bust"));
        }
        String[][] hip = {{"1.875", "close-fitting"}, {"3", "fitted"}, {"4", "semi-fitted"}, {"6", "loose-fitting"}};
        for (String[] row : hip) {
            words(
                    row[0] + " in at the hip of a skirt",
                    HIP,
                    row[1],
                    word(line(LevelKind.HIP, 38 + Double.parseDouble(row[0]), 38), "us-publishers-skirt-hip"));
        }
        words(
                "7 cm at the hip of a skirt, by another house",
                Source.published("studiocalicot.com/blogs/theblog/ease-allowances"),
                "semi-fitted",
                word(line(LevelKind.HIP, 38 + 7 / 2.54, 38), "studio-calicot-hip"));
    }

    private void leasts() {
        least("bust", LevelKind.BUST, Source.published("NMSU Guide C-228, Table 1"), "C-228", 3);
        least("hip", LevelKind.HIP, Source.secondHand("NMSU Guide C-228, Table 1"), "C-228", 2);
        least("upper arm", LevelKind.UPPER_ARM, Source.secondHand("NMSU Guide C-228, Table 1"), "C-228", 0.5);
        least("thigh", LevelKind.THIGH, Source.secondHand("NMSU Guide C-228, Table 1"), "C-228", 1);
        least("waist", LevelKind.WAIST, Source.secondHand("NMSU Guide C-227"), "C-227", 0.5);
        least("high hip", LevelKind.HIGH_HIP, Source.secondHand("NMSU Guide C-227"), "C-227", 0.25);
        least("bust", LevelKind.BUST, Source.secondHand("Threads 221, pp. 70-71"), "221", 2.5);
        least("waist", LevelKind.WAIST, Source.published("Palmer, Alto, Fit for Real People, ch. 3"), "Palmer", 1);
        least("hip", LevelKind.HIP, Source.published("Palmer, Alto, Fit for Real People, ch. 3"), "Palmer", 2);
    }

    private void least(String region, LevelKind kind, Source source, String named, double inches) {
        double got = TABLES.minimumsAt(Level.of(region, kind)).stream()
                .filter(m -> m.source().contains(named))
                .mapToDouble(Minimum::low)
                .min()
                .orElseThrow();
        number("least wearing ease, " + region, source, "in", inches, got / INCH, CLOSE);
    }

    /** Front half on the fold with the allowance at its side only, back half with a centre seam. */
    private void allowances() {
        List<LevelWidth> parts = parts(0.625);
        number(
                "front half, cut 10 7/8 in, one allowance of 5/8",
                W2,
                "in",
                10.25,
                parts.get(0).net() / INCH,
                CLOSE);
        number(
                "back half, cut 11 in, two allowances of 5/8",
                W2,
                "in",
                9.75,
                parts.get(1).net() / INCH,
                CLOSE);
        number("girth of both, each counted twice", W2, "in", 40, girth(parts), CLOSE);
        number("false ease if 3/8 is taken for 5/8", W2, "in", 1.5, girth(parts(0.375)) - girth(parts), CLOSE);
        double off = 4 * 2 * 6 / INCH;
        number(
                "four seams sewn 6 mm off, two pairs of pieces",
                W2,
                "in",
                off,
                2 * (girth(List.of(pair(9))) - girth(List.of(pair(15)))),
                CLOSE);
    }

    private static LevelWidth pair(double allowance) {
        return width(rectangle("pair", 10, false).toBuilder()
                .drawn(LineKind.CUTTING, allowance)
                .build());
    }

    private static List<LevelWidth> parts(double allowance) {
        return List.of(
                width(rectangle("front", 10.875, true).toBuilder()
                        .drawn(LineKind.CUTTING, allowance * INCH)
                        .build()),
                width(rectangle("back", 11, false).toBuilder()
                        .drawn(LineKind.CUTTING, allowance * INCH)
                        .build()));
    }

    private static double girth(List<LevelWidth> parts) {
        return parts.stream().mapToDouble(LevelWidth::counted).sum() / INCH;
    }

    private static LevelWidth width(Piece piece) {
        Level bust = Level.of("bust", LevelKind.BUST);
        return Measures.of(Pattern.bare(List.of(piece), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                        .withLevels(List.of(bust)))
                .girths()
                .get(0)
                .parts()
                .get(0);
    }

    private static Piece rectangle(String id, double inches, boolean fold) {
        double w = inches * INCH;
        Outline outline =
                Outline.polygon(List.of(new Point(0, 0), new Point(w, 0), new Point(w, 500), new Point(0, 500)));
        return Piece.bare(id, outline).toBuilder()
                .cut(fold ? 1 : 2, fold)
                .edges(List.of(
                        Edge.of("side", EdgeRole.SEAM, new Point(w, 0), new Point(w, 500)),
                        Edge.of("centre", fold ? EdgeRole.FOLD : EdgeRole.CENTRE, new Point(0, 500), new Point(0, 0))))
                .levels(List.of(LevelMark.through("bust", new Point(30, 200))))
                .build();
    }

    private static EaseLine line(LevelKind kind, double garment, double body) {
        return sheet(Tubes.tube(kind, garment * INCH, body * INCH, Cloth.WOVEN));
    }

    private static EaseLine sheet(Pattern pattern) {
        return EaseSheet.of(pattern, Measures.of(pattern), TABLES).lines().get(0);
    }

    private static String word(EaseLine line, String table) {
        Classed classed = line.classes().stream()
                .filter(c -> c.table().id().equals(table))
                .findFirst()
                .orElseThrow();
        return classed.where() == Classed.Where.BELOW ? "below the lowest class" : classed.word();
    }

    private void number(String subject, Source source, String unit, double expected, double got, double allowed) {
        checks.add(Check.number(subject, source, unit, expected, got, allowed));
    }

    private void words(String subject, Source source, String expected, String got) {
        checks.add(Check.words(subject, source, expected, got));
    }
}
