package easewright.draft;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The straight skirt in three sizes on one sheet, a row for each. Levels, wishes and seams are those of the garment and
 * hold for every size; each size has its own pieces and its own body.
 */
final class SizedSkirt {
    private static final double INCH = 25.4;
    private static final double ROW_GAP = 60;

    private SizedSkirt() {}

    /**
     * Whom each size is made for. Waist and hip: ASTM D5585-95, misses (docs/sources.md 2.2, from memory); the height of
     * the hip is chosen to go with them.
     */
    static Map<String, Body> bodies() {
        Map<String, Body> bodies = new LinkedHashMap<>();
        bodies.put("10", body("10", 28, 38.5));
        bodies.put("12", body("12", 29.5, 40));
        bodies.put("14", body("14", 31, 41.5));
        return bodies;
    }

    private static Body body(String size, double waist, double hip) {
        return new Body(
                "size " + size,
                List.of(
                        new BodyMeasure("Waist girth", "waist", waist * INCH, ""),
                        new BodyMeasure("Hip girth", "hip", hip * INCH, ""),
                        new BodyMeasure("Side waist to hip", "", 205, "")));
    }

    static Garment draft() {
        List<PieceDraft.Face> faces = new ArrayList<>();
        Map<String, Body> bodies = bodies();
        double down = 0;
        Garment last = null;
        for (Map.Entry<String, Body> each : bodies.entrySet()) {
            last = new SkirtDraft(each.getValue(), 50, 25, 600).draft();
            double bottom = 0;
            for (PieceDraft.Face face : last.faces()) {
                Box box = face.piece().outline().box();
                bottom = Math.max(bottom, box.maxY());
                faces.add(inSize(face, each.getKey(), Affine.translation(0, down)));
            }
            down += Math.ceil(bottom - Layout.HEAD + ROW_GAP);
        }
        Pattern one = last.pattern();
        List<Mate> mates = one.mates().stream()
                .map(m -> new Mate(m.name(), called(m.first(), one), called(m.second(), one), m.declaredEase()))
                .toList();
        Pattern pattern = one.withPieces(
                        faces.stream().map(PieceDraft.Face::piece).toList())
                .withMates(mates)
                .withBody(Body.UNKNOWN)
                .withBodies(bodies);
        List<String> facts = List.of(
                "Sizes 10, 12 and 14. Waist ease 2.5 cm, hip ease 5 cm in each.",
                last.facts().get(1));
        return new Garment("skirt-sizes", "Straight skirt in three sizes", facts, rules(last), pattern, faces);
    }

    private static List<String> rules(Garment skirt) {
        List<String> rules = new ArrayList<>();
        rules.add("Waist and hip girths of sizes 10, 12 and 14: ASTM D5585-95, misses (from memory); hip 20.5 cm below"
                + " the waist: chosen to go with them.");
        rules.addAll(skirt.rules());
        return rules;
    }

    /** Edges by the names of their pieces in every size, not by the id of one. */
    private static List<EdgeRef> called(List<EdgeRef> edges, Pattern one) {
        return edges.stream()
                .map(e -> new EdgeRef(one.piece(e.piece()).orElseThrow().name(), e.edge(), e.times()))
                .toList();
    }

    /** The id of a line with the size behind that of its piece, so that its ending still says what it is. */
    private static String inSize(String line, String piece, String size) {
        return piece + "-" + size + line.substring(piece.length());
    }

    private static PieceDraft.Face inSize(PieceDraft.Face face, String size, Affine map) {
        PieceCopy copy = new PieceCopy(p -> Places.on(map, p), l -> Places.on(map, l), false);
        Piece piece = copy.of(face.piece(), "-" + size).toBuilder()
                .name(face.piece().name() + " " + size)
                .size(Optional.of(size))
                .riders(copy.of(face.piece(), "").riders().stream()
                        .map(r -> new Rider(inSize(r.id(), face.piece().id(), size), r.kind(), r.segments()))
                        .toList())
                .build();
        return new PieceDraft.Face(piece, Places.on(map, face.label()));
    }
}
