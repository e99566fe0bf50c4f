package easewright.svg;

import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Scale;
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
    private final String name;
    private final byte[] original;
    private final SourceText source;
    private final Drawing drawing;
    private final Opening.MarksState marks;
    private final Pattern changed;
    private final Targets targets;
    private final SpareCopies spare;
    private final Opening opening;

    /** What becomes of the page; empty where it stays. */
    private Optional<PageChange> page;

    Rewriting(String name, byte[] original, Opening opening, Pattern changed) throws SvgProblem {
        this.name = name;
        this.original = original;
        this.source = opening.source();
        this.drawing = opening.drawing();
        this.marks = opening.marks();
        this.changed = changed;
        this.targets = Targets.of(drawing, opening.drawn(), changed);
        this.opening = opening;
        this.page = PageChange.of(opening, changed);
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

    /** What happens to the file beyond moving lines; of the page it is known once the content is written. */
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
            } else if (LiveForm.isOn(source.tag(shape.element()))) {
                found.add(Finding.of(
                        "shape-no-longer-live", Severity.NOTE, targets.pieces().get(index)));
            }
            groupNoLongerLive(index, targets.pieces().get(index)).ifPresent(found::add);
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
        targets.copies()
                .values()
                .forEach(copy -> groupNoLongerLive(copy.shape(), copy.piece()).ifPresent(found::add));
        page.ifPresentOrElse(p -> found.addAll(p.findings()), () -> {
            if (changed.scale().proof() == Scale.Proof.KNOWN_LINE) {
                found.add(PageChange.NOT_SIZED);
            }
        });
        found.addAll(OldWords.in(drawing, changed));
        spare.pieces().values().forEach(piece -> found.add(Finding.of("copy-taken-out", Severity.NOTE, piece)));
        return found.stream().distinct().toList();
    }

    private Optional<Finding> groupNoLongerLive(int shape, String piece) {
        return LiveForm.groupAround(source, drawing.all().get(shape).element())
                .map(group -> Finding.of("group-no-longer-live", Severity.NOTE, piece));
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
        List<Edit> gone = spare.edits(source, drawing);
        edits.addAll(gone);
        edits.addAll(LiveForm.madePlain(source, drawnAnew(), gone));
        return proved(edits, page);
    }

    /** The elements of which a line is drawn anew, or another one beside them. */
    private Set<Integer> drawnAnew() {
        Set<Integer> elements = new HashSet<>();
        targets.geometry()
                .keySet()
                .forEach(index -> elements.add(drawing.all().get(index).element()));
        // Where a copy is laid beside a line, that stays the form that it is unless it is drawn anew itself.
        targets.copies().values().forEach(copy -> {
            int base = drawing.all().get(copy.shape()).element();
            LiveForm.groupAround(source, base).ifPresent(group -> elements.add(base));
        });
        return elements;
    }

    /** With as much of what becomes of the page as moves nothing. */
    private byte[] proved(List<Edit> edits, Optional<PageChange> wanted) throws SvgProblem {
        page = wanted;
        try {
            return proved(edits);
        } catch (SvgProblem somethingGoesByThePage) {
            Optional<PageChange> less = wanted.flatMap(p -> p.less(opening, changed));
            if (less.isEmpty()) {
                throw somethingGoesByThePage;
            }
            return proved(edits, less);
        }
    }

    private byte[] proved(List<Edit> lines) throws SvgProblem {
        List<Edit> edits = new ArrayList<>(lines);
        page.ifPresent(p -> edits.addAll(p.edits(source.tag(0))));
        edits.addAll(marksEdits());
        byte[] plain = source.splice(edits);
        byte[] written = PlainBytes.isPacked(original) ? PlainBytes.packed(plain) : plain;
        new WrittenProof(name, source, drawing, changed, targets, spare, page).of(written);
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
            String text = MarksWriter.write(
                    changed,
                    marks.kept(),
                    page.flatMap(PageChange::mark),
                    marks.resting(),
                    indentOf(block.from()),
                    lineEnd);
            return List.of(new Edit(block.from(), block.endTo(), text));
        }
        Tag root = source.tag(0);
        String metadata = MarksBlock.metadata(
                changed, List.of(), page.flatMap(PageChange::mark), marks.resting(), root.prefix(), "  ", lineEnd);
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
}
