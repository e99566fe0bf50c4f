package easewright.command;

import com.fasterxml.jackson.jr.ob.JSON;
import easewright.ease.EaseLine;
import easewright.measure.EdgeLength;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.MateWalk;
import easewright.measure.PastCentre;
import easewright.measure.PieceMeasures;
import easewright.pattern.ChangeNote;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.print.EaseText;
import easewright.print.Reading;
import easewright.print.sheet.PrintJob;
import easewright.text.Words;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** The one JSON document of a command. Keys are in snake case; lengths are mm whatever the unit of the messages. */
final class Json {
    private static final JSON WRITER =
            JSON.std.with(JSON.Feature.PRETTY_PRINT_OUTPUT, JSON.Feature.WRITE_NULL_PROPERTIES);

    private final Words words;

    Json(Words words) {
        this.words = words;
    }

    String text(Node document) {
        try {
            return WRITER.asString(document.values());
        } catch (IOException e) {
            throw new IllegalStateException("A tree of plain values is always writable", e);
        }
    }

    Node document(Source.Opened opened, Reading reading, Noticed noticed) {
        Node root = reading(reading);
        root.put("garment", reading.sheet().garment().words());
        root.put("garment_said", !reading.pattern().garment().isEmpty());
        Node.Rows cloth = root.putArray("cloth_said");
        new EaseText(words).cloth(reading.sheet()).forEach(cloth::add);
        root.put("scale", scale(opened.pattern()));
        root.put("findings", findings(noticed));
        return root;
    }

    /** What can be measured on a print. */
    static Node prints(PrintJob.Prints prints) {
        Node root = new Node();
        root.put("pages", prints.leaves().size());
        root.put("sheets", prints.sheets());
        Node.Rows at = root.putArray("sheets_at");
        prints.at().forEach(s -> at.addObject().put("row", s.row()).put("column", s.column()));
        root.put("width_mm", prints.width()).put("height_mm", prints.height());
        root.put("test_square_mm", prints.square());
        Node.Rows controls = root.putArray("control_lines_mm");
        prints.controls().forEach(controls::add);
        Node.Rows pieces = root.putArray("pieces");
        prints.pieces().forEach(pieces::add);
        return root;
    }

    /** Pieces, girths with ease, and mates. */
    Node reading(Reading reading) {
        Node root = new Node();
        Node.Rows pieces = root.putArray("pieces");
        for (PieceMeasures piece : reading.measures().pieces()) {
            pieces.add(piece(piece, reading));
        }
        Node.Rows girths = root.putArray("girths");
        for (Girth girth : reading.measures().girths()) {
            girths.add(girth(girth, reading));
        }
        Node.Rows mates = root.putArray("mates");
        for (MateWalk walk : reading.measures().mates()) {
            Node mate = mates.addObject()
                    .put("name", walk.mate().name())
                    .put("first_mm", walk.first())
                    .put("second_mm", walk.second())
                    .put("declared_ease_mm", walk.mate().declaredEase())
                    .put("drift_mm", walk.drift());
            walk.size().ifPresent(size -> mate.put("size", size));
        }
        return root;
    }

    private static Node piece(PieceMeasures measured, Reading reading) {
        Node node = new Node();
        node.put("name", reading.pieceName(measured.pieceId()));
        node.put("id", measured.pieceId());
        Piece piece = measured.stitch().piece();
        node.put("count", piece.timesThere());
        piece.size().ifPresent(size -> node.put("size", size));
        if (piece.side() != Side.BOTH) {
            node.put("side", piece.side().name().toLowerCase(Locale.ROOT));
        }
        Node.Rows edges = node.putArray("edges");
        for (EdgeLength edge : measured.edges()) {
            Node each = edges.addObject()
                    .put("name", edge.edge())
                    .put("role", edge.role().name().toLowerCase(Locale.ROOT))
                    .put("length_mm", edge.mm())
                    .put("dart_mm", edge.dartMm());
            double past = PastCentre.mm(measured, edge.edge());
            if (past > 0) {
                each.put("to_centre_mm", edge.mm() - past);
            }
        }
        Node.Rows levels = node.putArray("levels");
        for (LevelWidth width : measured.levels()) {
            levels.addObject()
                    .put("level", width.level())
                    .put("width_mm", width.net())
                    .put("dart_mm", width.dartIntake())
                    .put("overlap_mm", width.overlap())
                    .put("count", width.count());
        }
        return node;
    }

    private Node girth(Girth girth, Reading reading) {
        Node node = new Node();
        node.put("level", girth.level().name());
        node.put("kind", girth.level().kind().name().toLowerCase(Locale.ROOT));
        girth.size().ifPresent(size -> node.put("size", size));
        if (girth.side() != Side.BOTH) {
            node.put("side", girth.side().name().toLowerCase(Locale.ROOT));
        }
        node.put("finished_mm", girth.finished());
        if (girth.sided()) {
            node.put("left_mm", girth.on(Side.LEFT)).put("right_mm", girth.on(Side.RIGHT));
        }
        for (EaseLine line : reading.sheet().lines()) {
            if (line.girth().equals(girth)) {
                ease(node, line);
            }
        }
        Node.Rows parts = node.putArray("parts");
        for (LevelWidth part : girth.parts()) {
            parts.addObject()
                    .put("piece", reading.pieceName(part.pieceId()))
                    .put("width_mm", part.net())
                    .put("count", part.count());
        }
        return node;
    }

    private void ease(Node node, EaseLine line) {
        put(node, "body_mm", line.body());
        put(node, "ease_mm", line.ease());
        put(node, "ease_percent", line.percent());
        put(node, "stretch_needed_percent", line.stretchNeeded());
        put(node, "wished_ease_mm", line.wish());
        line.wishPercent().ifPresent(percent -> node.put("wished_ease_percent", percent));
        put(node, "missing_mm", line.missing());
        EaseText text = new EaseText(words);
        Node.Rows classes = node.putArray("classes");
        line.classes().forEach(c -> classes.add(text.classed(c)));
        Node.Rows minimums = node.putArray("minimums");
        line.minimums().forEach(m -> minimums.add(text.minimum(m)));
    }

    private static void put(Node node, String key, OptionalDouble value) {
        if (value.isPresent()) {
            node.put(key, value.getAsDouble());
        } else {
            node.put(key, null);
        }
    }

    /** Changes as they are recorded. */
    static Node.Rows changes(List<ChangeNote> notes) {
        Node.Rows array = new Node.Rows();
        for (ChangeNote note : notes) {
            Node node = array.addObject().put("method", note.method());
            note.settings().forEach(node::put);
        }
        return array;
    }

    static Node scale(Pattern pattern) {
        return new Node()
                .put("mm_per_unit_x", pattern.scale().mmPerUnitX())
                .put("mm_per_unit_y", pattern.scale().mmPerUnitY())
                .put("proof", pattern.scale().proof().name().toLowerCase(Locale.ROOT));
    }

    Node.Rows findings(Noticed noticed) {
        Node.Rows nodes = new Node.Rows();
        for (Finding finding : noticed.all()) {
            Node node = nodes.addObject()
                    .put("code", finding.code())
                    .put("severity", finding.severity().name().toLowerCase(Locale.ROOT))
                    .put("piece", finding.piece())
                    .put("message", words.of(finding));
            Node values = node.putObject("values");
            for (Map.Entry<String, Object> value : new TreeMap<>(finding.values()).entrySet()) {
                if (value.getValue() instanceof Double || value.getValue() instanceof List<?>) {
                    values.put(value.getKey(), value.getValue());
                } else {
                    values.put(value.getKey(), String.valueOf(value.getValue()));
                }
            }
        }
        return nodes;
    }
}
