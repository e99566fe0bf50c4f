package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Box;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.suggest.Sheet;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The scales at which drawing programs usually write, offered where nothing in the drawing proves one: how large each would
 * make the largest piece is what a person can judge them by.
 *
 * @param largest piece of the drawing
 * @param present mm per unit of the drawing as it was read
 */
record UsualScales(Piece largest, double present, Words words) {
    private static final int[] UNITS_PER_INCH = {72, 90, 96};
    private static final double ASSUMED_PER_INCH = 96;

    /** The largest piece of a garment is so long, mm, if a unit may be a millimetre. */
    private static final double SHORTEST = 100;

    private static final double LONGEST = 1700;

    /** Whether the drawing shows which of them it is. */
    static boolean isLikely(Desk desk) {
        return proposed(desk).isPresent();
    }

    /** The likely one first; none where there is no piece to judge by. */
    static List<ScaleView.Offer> of(Desk desk, Sheet sheet) {
        double present = sheet.pattern().scale().mmPerUnitX();
        return largest(sheet)
                .map(piece -> new UsualScales(piece, present, desk.words()).offers(proposed(desk)))
                .orElse(List.of());
    }

    static Optional<Piece> largest(Sheet sheet) {
        return sheet.pattern().pieces().stream()
                .max(Comparator.comparingDouble(p -> Math.abs(p.outline().signedArea())));
    }

    private static Optional<Finding> proposed(Desk desk) {
        return desk.file().stream()
                .flatMap(f -> f.svg().findings().stream())
                .filter(f -> f.code().startsWith("scale-proposed"))
                .findFirst();
    }

    private List<ScaleView.Offer> offers(Optional<Finding> likely) {
        List<ScaleView.Offer> usual = new ArrayList<>();
        Box box = largest.outline().box();
        double likelyUnit = likely.map(UsualScales::unit).orElse(0.0);
        for (int perInch : UNITS_PER_INCH) {
            // Without a proof the reader assumes a pixel of 1/96 inch.
            double unit = present * ASSUMED_PER_INCH / perInch;
            if (!isSame(unit, 1) && !isSame(unit, likelyUnit)) {
                usual.add(offer("editor.scale.usual", perInch, unit));
            }
        }
        double tall = Math.max(box.width(), box.height()) / present;
        if (!isSame(1, likelyUnit) && tall >= SHORTEST && tall <= LONGEST) {
            usual.add(offer("editor.scale.usual.mm", 0, 1));
        }
        likely.ifPresent(finding -> usual.add(
                0,
                finding.values().get("perInch") instanceof Integer count && !isSame(likelyUnit, 1)
                        ? offer("editor.scale.usual.likely", count, likelyUnit)
                        : offer("editor.scale.usual.mm.likely", 0, likelyUnit)));
        return usual;
    }

    private static double unit(Finding proposed) {
        return proposed.values().get("unit.number") instanceof Double unit ? unit : 0;
    }

    private static boolean isSame(double unit, double other) {
        return Math.abs(unit - other) < 1e-6 * unit;
    }

    private ScaleView.Offer offer(String key, int count, double unit) {
        Box box = largest.outline().box();
        Map<String, Object> values = Map.of(
                "count",
                count,
                "piece",
                largest.name(),
                "wide",
                box.width() * unit / present,
                "tall",
                box.height() * unit / present);
        return new ScaleView.Offer(
                words.of(key, values), words.of("editor.scale.usual.take", values), unit, Optional.empty());
    }
}
