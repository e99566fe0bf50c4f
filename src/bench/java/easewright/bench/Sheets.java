package easewright.bench;

import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Within;
import easewright.draft.Recipe;
import easewright.draft.Samples;
import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Grain;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Side;
import easewright.svg.MarksBlock;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Large drawings, fully marked: every size of a nest holds the twelve pieces of our samples and gores beside them. */
final class Sheets {
    private static final int PER_SIZE = 20;
    private static final double ROW = 1200;

    private Sheets() {}

    /** The nest with one seam changed in every size that it holds. */
    static Pattern changed(Pattern nest) throws Refusal {
        SeamChange change = SeamChange.at("thigh", 6);
        if (!PatternPart.severalSizes(nest)) {
            return change.apply(nest).pattern();
        }
        Pattern done = nest;
        for (String size : PatternPart.sizes(nest)) {
            done = new Within(new Scope(Optional.of(size), Side.BOTH), change)
                    .apply(done)
                    .pattern();
        }
        return done;
    }

    /**
     * A nest as an SVG file.
     *
     * @param pieces a multiple of 20
     */
    static byte[] nest(int pieces) throws SvgProblem {
        return nest(pieces, ROW);
    }

    /**
     * The same with the sizes so far apart, mm; a little, and they lie over each other as they do on a printed sheet.
     */
    static byte[] nest(int pieces, double row) throws SvgProblem {
        if (pieces < PER_SIZE || pieces % PER_SIZE != 0) {
            throw new IllegalArgumentException("Pieces come in sizes of " + PER_SIZE + ", not " + pieces);
        }
        List<Piece> all = new ArrayList<>();
        for (int size = 0; size < pieces / PER_SIZE; size++) {
            for (Recipe recipe : Recipe.all()) {
                for (Piece piece : SvgFile.read(
                                Samples.svg(recipe.draft(recipe.sample(), java.util.Map.of(), java.util.Map.of())
                                                .draft())
                                        .getBytes(StandardCharsets.UTF_8),
                                recipe.garment())
                        .pattern()
                        .pieces()) {
                    all.add(moved(piece, "s" + size + "-", all.size() % PER_SIZE * 1000.0, size * row));
                }
            }
            Pattern gores = Gores.skirt(PER_SIZE - all.size() % PER_SIZE, 40 * PER_SIZE, LineKind.STITCHING);
            for (Piece piece : gores.pieces()) {
                all.add(moved(piece, "s" + size + "-", all.size() % PER_SIZE * 1000.0, size * row));
            }
        }
        return drawing(Gores.skirt(1, 8, LineKind.STITCHING).withMates(List.of()).withPieces(all));
    }

    /**
     * Writes a nest of so many pieces to a file, to be opened in the window; a third argument says how far apart. Or
     * {@code gores}, segments in all, and a file: the skirt of twelve gores.
     */
    public static void main(String[] args) throws SvgProblem, IOException {
        if (args[0].equals("gores")) {
            Pattern gores = Gores.skirt(12, Integer.parseInt(args[1]), LineKind.STITCHING);
            Files.write(Path.of(args[2]), drawing(gores));
            return;
        }
        double row = args.length > 2 ? Double.parseDouble(args[2]) : ROW;
        Files.write(Path.of(args[1]), nest(Integer.parseInt(args[0]), row));
    }

    /** A pattern as a drawing in millimetres: outlines, the lines that go along, and marks. */
    static byte[] drawing(Pattern pattern) throws SvgProblem {
        StringBuilder out = new StringBuilder();
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"30000mm\" height=\"60000mm\"")
                .append(" viewBox=\"0 0 30000 60000\">\n")
                .append(MarksBlock.text(pattern));
        for (Piece piece : pattern.pieces()) {
            out.append("  <g fill=\"none\" stroke=\"#1f2933\" stroke-width=\"0.4\">\n");
            for (Rider rider : piece.riders()) {
                path(out, rider.id(), rider.segments(), rider.kind() == Rider.Kind.PARALLEL);
            }
            path(out, piece.id(), piece.outline().segments(), true);
            out.append("  </g>\n");
        }
        return out.append("</svg>\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void path(StringBuilder out, String id, List<Segment> segments, boolean closed) {
        out.append("    <path id=\"").append(id).append("\" d=\"");
        Point pen = null;
        for (Segment segment : segments) {
            if (!segment.start().equals(pen)) {
                out.append('M').append(number(segment.start()));
            }
            if (segment instanceof Cubic c) {
                out.append(" C").append(number(c.control1())).append(' ').append(number(c.control2()));
                out.append(' ').append(number(c.end()));
            } else {
                out.append(" L").append(number(segment.end()));
            }
            pen = segment.end();
        }
        out.append(closed ? " Z\"/>\n" : "\"/>\n");
    }

    private static String number(Point p) {
        return p.x() + "," + p.y();
    }

    /** The piece elsewhere on the sheet, under another id; to the thousandth of a millimetre. */
    private static Piece moved(Piece piece, String prefix, double dx, double dy) {
        Affine map = Affine.translation(dx, dy);
        String size = prefix.substring(0, prefix.length() - 1);
        return Piece.bare(prefix + piece.id(), new Outline(moved(piece.outline().segments(), map))).toBuilder()
                .name(piece.name() + " " + size)
                .size(Optional.of(size))
                .drawn(piece.drawn(), piece.allowance())
                .cut(piece.times(), piece.onFold())
                .edges(piece.edges().stream()
                        .map(e -> e.withEnds(moved(e.from(), map), moved(e.to(), map)))
                        .toList())
                .levels(piece.levels().stream().map(l -> l.mapped(p -> moved(p, map))).toList())
                .darts(piece.darts().stream().map(d -> d.mapped(p -> moved(p, map))).toList())
                .notches(piece.notches().stream()
                        .map(n -> new Notch(n.name(), moved(n.at(), map)))
                        .toList())
                .grain(piece.grain()
                        .map(g -> new Grain(moved(g.from(), map), moved(g.to(), map)))
                        .orElseThrow())
                .riders(piece.riders().stream()
                        .map(r -> new Rider(prefix + r.id(), r.kind(), moved(r.segments(), map)))
                        .toList())
                .build();
    }

    private static List<Segment> moved(List<Segment> segments, Affine map) {
        List<Segment> moved = new ArrayList<>();
        for (Segment segment : segments) {
            moved.add(
                    segment instanceof Cubic c
                            ? new Cubic(
                                    moved(c.start(), map),
                                    moved(c.control1(), map),
                                    moved(c.control2(), map),
                                    moved(c.end(), map))
                            : new Line(moved(segment.start(), map), moved(segment.end(), map)));
        }
        return moved;
    }

    private static Point moved(Point p, Affine map) {
        Point there = map.apply(p);
        return new Point(Math.rint(there.x() * 1e4) / 1e4, Math.rint(there.y() * 1e4) / 1e4);
    }
}
