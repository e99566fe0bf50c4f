package easewright.svg;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One writing of a changed pattern into an opened file. */
final class Rewriting {
    /** How far a moved place may land from where it was to go, mm. */
    static final double TOLERANCE = 1e-6;

    private final String name;
    private final byte[] original;
    private final SourceText source;
    private final Drawing drawing;
    private final Opening.MarksState marks;
    private final Pattern changed;
    private final Targets targets;
    private final SpareCopies spare;

    Rewriting(String name, byte[] original, Opening opening, Pattern changed) throws SvgProblem {
        this.name = name;
        this.original = original;
        this.source = opening.source();
        this.drawing = opening.drawing();
        this.marks = opening.marks();
        this.changed = changed;
        this.targets = Targets.of(drawing, opening.drawn(), changed);
        this.spare = SpareCopies.in(source, drawing, opening.drawn(), opening.pattern(), changed);
    }

    /** Names of the pieces of which lines are drawn anew, in the order of the drawing. */
    List<String> redrawn() {
        Set<String> names = new LinkedHashSet<>();
        targets.geometry().keySet().forEach(index -> names.add(targets.pieces().get(index)));
        targets.copies().values().forEach(copy -> names.add(copy.piece()));
        names.addAll(spare.pieces().values());
        return List.copyOf(names);
    }

    /** What happens to the file beyond moving lines. */
    List<Finding> consequences() {
        List<Finding> found = new ArrayList<>();
        targets.geometry().forEach((index, geometry) -> {
            DrawnShape shape = drawing.all().get(index);
            if (ShapeRewriter.becomesPath(shape, geometry)) {
                found.add(Finding.of(
                                "shape-becomes-path",
                                Severity.NOTE,
                                targets.pieces().get(index))
                        .with("shape", shape.tag()));
            }
            geometry.forEach((k, wanted) -> {
                SubPath old = shape.subPaths().get(k);
                if (!old.closed() && SubPathRewriter.closed(wanted)) {
                    List<Segment> segments = old.segments();
                    found.add(Finding.of(
                                    "outline-closed-by-line",
                                    Severity.NOTE,
                                    targets.pieces().get(index))
                            .with(
                                    "gap",
                                    segments.get(segments.size() - 1)
                                            .end()
                                            .distance(segments.get(0).start())));
                }
            });
        });
        spare.pieces().values().forEach(piece -> found.add(Finding.of("copy-taken-out", Severity.NOTE, piece)));
        return found.stream().distinct().toList();
    }

    /** The new content of the file, proved. */
    byte[] bytes() throws SvgProblem {
        if (!marks.understood()) {
            throw new SvgProblem("marks-not-understood", Map.of("file", name));
        }
        List<Edit> edits = new ArrayList<>();
        Set<Integer> copied = copied();
        for (Map.Entry<Integer, Map<Integer, List<Segment>>> target :
                targets.geometry().entrySet()) {
            edits.addAll(shapeEdits(target.getKey(), target.getValue(), copied));
        }
        for (int used : targets.used()) {
            DrawnShape shape = drawing.all().get(used);
            // A copy drawn through use has no element of its own to carry an id; its made-up one stays the same.
            if (!shape.idGiven() && shape.editable()) {
                edits.add(new ShapeRewriter(source, shape).setting("id", shape.id()));
            }
        }
        edits.addAll(copyEdits());
        edits.addAll(spare.edits(source, drawing));
        edits.addAll(marksEdits());
        byte[] plain = source.splice(edits);
        byte[] written = PlainBytes.isPacked(original) ? PlainBytes.packed(plain) : plain;
        prove(written);
        return written;
    }

    /** Elements that are drawn more than once, through use. */
    private Set<Integer> copied() {
        Set<Integer> once = new HashSet<>();
        Set<Integer> copied = new HashSet<>();
        for (DrawnShape shape : drawing.all()) {
            if (!once.add(shape.element())) {
                copied.add(shape.element());
            }
        }
        return copied;
    }

    private List<Edit> shapeEdits(int index, Map<Integer, List<Segment>> geometry, Set<Integer> copied)
            throws SvgProblem {
        DrawnShape shape = drawing.all().get(index);
        Map<String, Object> values = Map.of("piece", targets.pieces().get(index), "id", shape.id(), "file", name);
        if (!shape.editable()) {
            throw new SvgProblem("shape-not-editable", values);
        }
        // A use element draws the same element again: a change would show there too, unasked.
        if (copied.contains(shape.element())) {
            throw new SvgProblem("shape-copied", values);
        }
        try {
            return new ShapeRewriter(source, shape).edits(geometry);
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw new SvgProblem("shape-not-editable", values, e);
        }
    }

    /** New elements, each behind the one that it is a copy of. */
    private List<Edit> copyEdits() throws SvgProblem {
        List<Edit> edits = new ArrayList<>();
        for (DrawnCopy copy : targets.copies().values()) {
            DrawnShape base = drawing.all().get(copy.shape());
            if (!base.editable()) {
                throw new SvgProblem(
                        "shape-not-editable", Map.of("piece", copy.piece(), "id", base.id(), "file", name));
            }
            Tag tag = source.tag(base.element());
            int at = Math.max(tag.to(), tag.endTo());
            edits.add(new Edit(at, at, source.lineEnd() + indentOf(tag.from()) + copy.element(source, base)));
        }
        return edits;
    }

    private List<Edit> marksEdits() throws SvgProblem {
        String lineEnd = source.lineEnd();
        if (marks.block().isPresent()) {
            Tag block = marks.block().get();
            String text = MarksWriter.write(changed, marks.kept(), indentOf(block.from()), lineEnd);
            return List.of(new Edit(block.from(), block.endTo(), text));
        }
        Tag root = source.tag(0);
        String metadata = MarksBlock.metadata(changed, List.of(), root.prefix(), "  ", lineEnd);
        if (root.selfClosed()) {
            String content = ">" + lineEnd + "  " + metadata + lineEnd + "</" + root.name() + ">";
            return List.of(new Edit(root.to() - 2, root.to(), content));
        }
        int at = root.endFrom();
        boolean ownLine = at > 0 && "\r\n".indexOf(source.text().charAt(at - 1)) >= 0;
        return List.of(new Edit(at, at, (ownLine ? "" : lineEnd) + "  " + metadata + lineEnd));
    }

    /** The white space between the start of a line and a place on it; nothing if there is more before the place. */
    private String indentOf(int at) {
        int start = at;
        while (start > 0 && "\r\n".indexOf(source.text().charAt(start - 1)) < 0) {
            start--;
        }
        String before = source.text().substring(start, at);
        return before.isBlank() ? before : "";
    }

    /** Reads the new content as if it were somebody else's and compares every shape. */
    private void prove(byte[] written) throws SvgProblem {
        SvgFile again = SvgFile.proving(written, name);
        List<DrawnShape> now = again.drawing().all();
        if (!again.marked()
                || now.size()
                        != drawing.all().size()
                                + targets.copies().size()
                                - spare.shapes().size()) {
            throw unproved("", "marks");
        }
        int at = 0;
        for (int i = 0; i < drawing.all().size(); i++) {
            if (spare.has(i)) {
                continue;
            }
            DrawnShape is = now.get(at++);
            DrawnShape before = drawing.all().get(i);
            Map<Integer, List<Segment>> wanted = targets.geometry().getOrDefault(i, Map.of());
            boolean right = is.subPaths().size() == before.subPaths().size();
            for (int k = 0; right && k < before.subPaths().size(); k++) {
                SubPath drawn = is.subPaths().get(k);
                SubPath old = before.subPaths().get(k);
                right = wanted.containsKey(k)
                        ? lands(drawn.segments(), wanted.get(k))
                                && drawn.closed() == (old.closed() || SubPathRewriter.closed(wanted.get(k)))
                        : drawn.equals(old);
            }
            if (!right) {
                throw unproved(targets.pieces().getOrDefault(i, ""), before.id());
            }
            for (DrawnCopy copy : targets.copies().values()) {
                if (copy.shape() == i && !isThere(copy, now.get(at++))) {
                    throw unproved(copy.piece(), copy.id());
                }
            }
        }
        for (Piece piece : changed.pieces()) {
            // Of several outlines in one path another may be the largest now, and would be read as the piece.
            Optional<Outline> read =
                    again.drawn().piece(piece.id()).flatMap(p -> again.drawn().outline(piece.id()));
            boolean same = read.isEmpty()
                    || lands(read.get().segments(), piece.outline().segments());
            if (!same) {
                throw unproved(piece.name(), piece.id());
            }
        }
    }

    private static boolean isThere(DrawnCopy copy, DrawnShape drawn) {
        boolean right = drawn.id().equals(copy.id())
                && drawn.idGiven()
                && drawn.subPaths().size() == copy.strokes().size();
        for (int k = 0; right && k < copy.strokes().size(); k++) {
            List<Segment> stroke = copy.strokes().get(k);
            right = lands(drawn.subPaths().get(k).segments(), stroke)
                    && drawn.subPaths().get(k).closed() == DrawnCopy.closed(stroke);
        }
        return right;
    }

    private SvgProblem unproved(String piece, String id) {
        return new SvgProblem("write-unproved", Map.of("file", name, "piece", piece, "id", id));
    }

    /** Whether the segments are the wanted ones within tolerance, from whichever corner a closed line begins. */
    private static boolean lands(List<Segment> drawnAll, List<Segment> wantedAll) {
        List<Segment> drawn = withoutSpecks(drawnAll);
        List<Segment> wanted = withoutSpecks(wantedAll);
        int n = wanted.size();
        if (drawn.size() != n) {
            return false;
        }
        for (int turn = 0; turn < n; turn++) {
            int i = 0;
            while (i < n && near(drawn.get(i), wanted.get((i + turn) % n))) {
                i++;
            }
            if (i == n) {
                return true;
            }
        }
        return false;
    }

    /** What is smaller than the rounding may be gone after it, and nobody could tell. */
    private static List<Segment> withoutSpecks(List<Segment> all) {
        List<Segment> large = all.stream().filter(s -> !isSpeck(s)).toList();
        return large.isEmpty() ? all : large;
    }

    private static boolean isSpeck(Segment s) {
        boolean ends = s.start().distance(s.end()) <= 2 * TOLERANCE;
        return s instanceof Cubic c
                ? ends
                        && c.control1().distance(c.start()) <= 2 * TOLERANCE
                        && c.control2().distance(c.start()) <= 2 * TOLERANCE
                : ends;
    }

    private static boolean near(Segment a, Segment b) {
        boolean ends = a.start().distance(b.start()) <= TOLERANCE && a.end().distance(b.end()) <= TOLERANCE;
        if (a instanceof Cubic p && b instanceof Cubic q) {
            return ends
                    && p.control1().distance(q.control1()) <= TOLERANCE
                    && p.control2().distance(q.control2()) <= TOLERANCE;
        }
        return ends && a.getClass() == b.getClass();
    }
}
