package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Caption;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that is to be seen on the table.
 *
 * @param tags   which of the lines that lie over each other is of which size
 * @param beside words that are written on the drawing beside the pieces and are to be seen, mm
 * @param inches the grid goes by inches instead of centimetres
 * @param trying a change is being tried: what it moves is drawn more strongly than what was moved before
 * @param misfits edges that do not fit what they are sewn to, whatever is tried
 */
public record TableScene(
        List<PieceSight> pieces,
        List<SizeTag> tags,
        List<Caption> beside,
        boolean inches,
        boolean trying,
        List<Misfit> misfits) {
    public static final TableScene EMPTY = new TableScene(List.of(), List.of(), false, false);

    public TableScene {
        pieces = List.copyOf(pieces);
        tags = List.copyOf(tags);
        beside = List.copyOf(beside);
        misfits = List.copyOf(misfits);
    }

    /** Without sizes that lie over each other, and of which all fit. */
    public TableScene(List<PieceSight> pieces, List<Caption> beside, boolean inches, boolean trying) {
        this(pieces, List.of(), beside, inches, trying, List.of());
    }

    /**
     * An edge that does not fit what it is sewn to.
     *
     * @param runs      its line, beside darts that are cut into it
     * @param clockwise whether the outline it is of runs so
     * @param words     by how much, at one edge of each such seam; else empty
     */
    public record Misfit(List<List<Segment>> runs, boolean clockwise, String words) {
        public Misfit {
            runs = List.copyOf(runs);
        }
    }

    /**
     * The size of a line.
     *
     * @param at      on the line, apart from those of other sizes, mm
     * @param outward unit direction off the piece
     */
    public record SizeTag(String size, Point at, Point outward) {}

    /**
     * One piece as it is to be seen.
     *
     * @param title    its name; empty where that of another size stands for it
     * @param subtitle what stands under its name, already in words
     * @param instructs whether that says how the piece is cut, which is never left out as long as there is any room
     * @param name     where its name has room
     * @param riders   drawn lines that belong to it and are not shown by the sign of a mark
     * @param written  words that are written on the drawing and are to be seen
     * @param stitch   the stitching line, where the drawn outline is the cutting line
     * @param ghost    the outline as it was before the changes, where it differs
     * @param former   lines around the outline as they were before the changes, where they lie elsewhere now
     * @param moved    the stretches of the outline that lie elsewhere than in the ghost
     * @param trial    what a change that is being tried does to its edges
     * @param pointed  a finding or a list points at this piece
     * @param aside    of a size in which nothing is done: seen faintly
     */
    public record PieceSight(
            Piece piece,
            String title,
            String subtitle,
            boolean instructs,
            NamePlace name,
            List<Rider> riders,
            List<Written> written,
            Optional<Outline> stitch,
            Optional<Outline> ghost,
            List<Rider> former,
            List<Segment> moved,
            List<LevelSight> levels,
            TrialSight trial,
            boolean pointed,
            boolean aside) {
        public PieceSight {
            riders = List.copyOf(riders);
            written = List.copyOf(written);
            former = List.copyOf(former);
            moved = List.copyOf(moved);
            levels = List.copyOf(levels);
        }

        /** The cutting line that is drawn around a piece which is drawn as it is sewn, and runs the same way. */
        Optional<Outline> cuttingLine() {
            return piece.drawn() == LineKind.CUTTING
                    ? Optional.empty()
                    : riders.stream()
                            .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                            .map(Rider::segments)
                            .filter(s ->
                                    s.get(0).start().equals(s.get(s.size() - 1).end()))
                            .map(Outline::new)
                            .filter(o -> Math.abs(o.signedArea())
                                    > Math.abs(piece.outline().signedArea()))
                            .map(o -> o.signedArea() > 0 == piece.outline().signedArea() > 0 ? o : o.reversed())
                            .findFirst();
        }
    }

    /**
     * Words that are written on the drawing.
     *
     * @param box   around them, mm
     * @param high  how high their letters are, mm
     * @param names whether they say how the piece is called on which they stand
     */
    public record Written(Box box, double high, boolean names) {}

    /**
     * What a change that is being tried does to the edges of one piece.
     *
     * @param kept   protected edges that stay as they are
     * @param drifts edges that no longer fit the seam they are sewn to
     * @param darts  legs of darts that changed or moved
     * @param former the legs of those darts as they were
     */
    public record TrialSight(
            List<List<Segment>> kept, List<List<Segment>> drifts, List<Segment> darts, List<Segment> former) {
        public static final TrialSight NONE = new TrialSight(List.of(), List.of(), List.of(), List.of());

        public TrialSight {
            kept = List.copyOf(kept);
            drifts = List.copyOf(drifts);
            darts = List.copyOf(darts);
            former = List.copyOf(former);
        }
    }

    /**
     * A level on one piece.
     *
     * @param size    of the piece, where levels of several are to be seen: nothing is written of it without its size
     * @param runs    the stretches of cloth that are measured, from end to end
     * @param shaped  whether they lie along an edge, which may be curved
     * @param label   name, how often it counts and width, already in words
     * @param figures the same without the name, to stand below it on a narrow piece
     * @param chosen  whether this is the level at work
     * @param counts  whether this piece counts in the girth
     */
    public record LevelSight(
            String level,
            Optional<String> size,
            List<Curve> runs,
            boolean shaped,
            String label,
            String figures,
            boolean chosen,
            boolean counts) {
        public LevelSight {
            runs = List.copyOf(runs);
        }

        /** All lines of it. */
        public Stream<Segment> lines() {
            return runs.stream().flatMap(run -> run.segments().stream());
        }

        /** What stands before the figures, with the name of the level shortened to so many letters. */
        String head(int letters) {
            String head = label.endsWith(figures)
                    ? label.substring(0, label.length() - figures.length()).strip()
                    : name();
            return head.startsWith(level) ? NameRows.shortened(level, letters) + head.substring(level.length()) : head;
        }

        /** What it is called where its width has no room: with its size, where it has one. */
        String name() {
            return name(Integer.MAX_VALUE);
        }

        /** The same with the name of the level shortened to so many letters. */
        String name(int letters) {
            String shortened = NameRows.shortened(level, letters);
            return size.map(s -> shortened + " " + s).orElse(shortened);
        }
    }
}
