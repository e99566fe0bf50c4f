package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.ChangeNote;
import easewright.pattern.Cloth;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.pattern.SetAside;
import easewright.pattern.Severity;
import easewright.pattern.Wish;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Reads the marks block against the drawing as it is now. */
final class MarksReader implements MarksNotes.Reading {
    /** Marks with nothing inside. */
    private static final Set<String> EMPTY = Set.of("cloth", "garment", "level", "no-piece", "page", "wish");

    /** Marks of which several may be called alike; of seams that is looked at once their edges are known. */
    private static final Set<String> MANY = Set.of("change", "set-aside", "mate");

    private final Geometry drawn;
    private final MarksNotes notes = new MarksNotes();
    private final Set<String> seen = new HashSet<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Level> levels = new ArrayList<>();
    private final List<Mate> mates = new ArrayList<>();
    private final Map<String, Wish> wishes = new TreeMap<>();
    private final List<ChangeNote> changes = new ArrayList<>();
    private final List<SetAside> aside = new ArrayList<>();
    private final Set<String> noPieces = new HashSet<>();
    private final Map<String, Body> bodies = new TreeMap<>();
    private Body body = Body.UNKNOWN;
    private Cloth cloth = Cloth.WOVEN;
    private String garment = "";
    private Optional<PageMark> page = Optional.empty();
    private Resting resting = Resting.NONE;
    private Scale scale;

    /** What the marks may refer to. */
    interface Geometry {
        /** The outline of a drawn closed shape. */
        Optional<Outline> outline(String id);

        /** The segments of any drawn line. */
        Optional<List<Segment>> segments(String id);

        /** The scale by which the drawing was read. */
        Scale scale();

        /** From the mm in which the marks were written to those of the drawing: not the same after calibration. */
        Affine rescaled();
    }

    /** The pattern, what was noticed, the elements that could not be used, what the page was, and marks of other layers. */
    record Marks(
            Pattern pattern, List<Finding> findings, List<KeptMark> kept, Optional<PageMark> page, Resting resting) {}

    private MarksReader(Geometry drawn) {
        this.drawn = drawn;
        this.scale = drawn.scale();
    }

    static Marks read(MarkNode block, Geometry drawn) {
        return new MarksReader(drawn).read(block);
    }

    private Marks read(MarkNode block) {
        MarkValues own = new MarkValues(block);
        for (String unknown : own.unknown()) {
            notes.add(Finding.of("mark-attribute-unknown", Severity.CAUTION, "")
                    .with("mark", "marks")
                    .with("attribute", unknown));
        }
        for (MarkNode child : block.children()) {
            if (child.namespace().equals(MarkNode.NAMESPACE)) {
                mark(child);
            } else {
                notes.unknown(child, Optional.empty(), "");
            }
        }
        Pattern pattern = new Pattern(
                pieces, levels, mates, body, cloth, wishes, scale, changes, aside, bodies, garment, noPieces);
        return new Marks(pattern, notes.findings(), notes.kept(), page, resting);
    }

    private void mark(MarkNode child) {
        String nameKey = switch (child.name()) {
            case "scale", "page", "cloth", "garment", "level", "mate", "resting" -> "name";
            case "body" -> "size";
            case "wish" -> "level";
            case "piece", "no-piece" -> "ref";
            case "change", "set-aside" -> "method";
            default -> "";
        };
        if (nameKey.isEmpty()) {
            notes.unknown(child, Optional.empty(), "");
        } else {
            notes.attempt(child, Optional.empty(), "", nameKey, this);
        }
    }

    @Override
    public void read(MarkNode child, MarkValues v) throws MarkValues.Damage {
        boolean many = MANY.contains(child.name());
        if (!many && !seen.add(child.name() + " " + v.called())) {
            throw new MarkValues.Damage("mark-twice", Map.of());
        }
        if (EMPTY.contains(child.name())) {
            v.requireEmpty();
        }
        switch (child.name()) {
            case "scale" -> {
                child.children().forEach(notes::insideScale);
                ScaleMark.differing(v, drawn).ifPresent(notes::add);
                scale = ScaleMark.known(v, drawn);
            }
            case "page" -> page = Optional.of(PageMark.read(v));
            case "body" -> body(child, v);
            case "cloth" -> cloth(v);
            case "garment" -> garment = garment(v);
            case "level" -> level(v);
            case "wish" -> wishes.put(v.needed("level"), new Wish(v.neededLength("ease"), v.percent("percent")));
            case "piece" -> piece(child, v);
            case "no-piece" -> noPieces.add(v.needed("ref"));
            case "mate" -> mate(child, v);
            case "resting" -> rest(child);
            case "change" -> changes.add(change(child, v));
            default -> aside.add(new SetAside(changes.size(), change(child, v)));
        }
    }

    private void body(MarkNode node, MarkValues v) throws MarkValues.Damage {
        List<BodyMeasure> measures = new ArrayList<>();
        for (MarkNode child : children(node, Set.of("measure"))) {
            MarkValues m = new MarkValues(child);
            measures.add(new BodyMeasure(
                    m.needed("name"),
                    m.text("level").orElse(""),
                    m.neededLength("is"),
                    m.text("taken").orElse("")));
            allAsked(m);
        }
        Body read = new Body(v.text("name").orElse(""), measures);
        Optional<String> size = v.text("size");
        if (size.isPresent()) {
            bodies.put(size.get(), read);
        } else {
            body = read;
        }
    }

    private void cloth(MarkValues v) throws MarkValues.Damage {
        String kind = v.needed("kind");
        if (!kind.equals("knit") && !kind.equals("woven")) {
            throw new MarkValues.Damage("mark-value-bad", Map.of("attribute", "kind", "text", kind));
        }
        cloth = new Cloth(
                kind.equals("knit"),
                v.percent("across"),
                v.percent("along"),
                v.percent("recovery"),
                v.percent("shrinkage"));
    }

    /** In words that only ease tables know. */
    private static String garment(MarkValues v) throws MarkValues.Damage {
        String kind = v.needed("kind");
        if (kind.isBlank()) {
            throw new MarkValues.Damage("mark-value-bad", Map.of("attribute", "kind", "text", kind));
        }
        return kind.strip();
    }

    private void level(MarkValues v) throws MarkValues.Damage {
        LevelKind kind = v.word("kind", LevelKind.class, LevelKind.OTHER);
        levels.add(new Level(v.needed("name"), kind, v.yesNo("limb", kind.limb())));
    }

    private void piece(MarkNode node, MarkValues v) throws MarkValues.Damage {
        String ref = v.needed("ref");
        Optional<Outline> outline = drawn.outline(ref);
        if (outline.isEmpty()) {
            boolean thereButOpen = drawn.segments(ref).isPresent();
            throw new MarkValues.Damage(
                    thereButOpen ? "mark-not-closed" : "mark-not-drawn",
                    Map.of("ref", v.text("name").orElse(ref)));
        }
        pieces.add(PieceMarksReader.read(node, v, ref, outline.get(), drawn, notes));
    }

    /** Whatever is amiss there is told like the rest. */
    private void rest(MarkNode node) {
        Marks read = new MarksReader(drawn).read(node);
        read.findings().forEach(notes::add);
        resting = new Resting(Optional.of(read.pattern()), read.kept());
    }

    private void mate(MarkNode node, MarkValues v) throws MarkValues.Damage {
        List<EdgeRef> first = new ArrayList<>();
        List<EdgeRef> second = new ArrayList<>();
        for (MarkNode child : children(node, Set.of("first", "second"))) {
            MarkValues e = new MarkValues(child);
            EdgeRef edge = new EdgeRef(e.needed("piece"), e.needed("edge"), e.count("times", 1));
            allAsked(e);
            (child.name().equals("first") ? first : second).add(edge);
        }
        Mate mate = new Mate(v.needed("name"), first, second, v.length("ease").orElse(0.0));
        if (isTwice(mate)) {
            throw new MarkValues.Damage("mark-twice", Map.of());
        }
        mates.add(mate);
    }

    /** In each size a name may come once: where one size was changed on one side only, its seams are others there. */
    private boolean isTwice(Mate mate) {
        List<Mate> alike = new ArrayList<>(
                mates.stream().filter(m -> m.name().equals(mate.name())).toList());
        alike.add(mate);
        return alike.size() > 1
                && PatternPart.garments(Pattern.bare(pieces, drawn.scale()).withMates(alike)).stream()
                        .anyMatch(g -> g.mates().size() > 1 && g.mates().contains(mate));
    }

    private static ChangeNote change(MarkNode node, MarkValues v) throws MarkValues.Damage {
        Map<String, String> settings = new LinkedHashMap<>();
        for (MarkNode child : children(node, Set.of("set"))) {
            MarkValues s = new MarkValues(child);
            settings.put(s.needed("name"), s.needed("value"));
            allAsked(s);
        }
        return new ChangeNote(v.needed("method"), settings);
    }

    /** The children, all of which must be known: a mark half understood would be a guess. */
    private static List<MarkNode> children(MarkNode node, Set<String> known) throws MarkValues.Damage {
        for (MarkNode child : node.children()) {
            if (!child.namespace().equals(MarkNode.NAMESPACE) || !known.contains(child.name())) {
                throw new MarkValues.Damage("mark-content", Map.of("content", child.name()));
            }
        }
        return node.children();
    }

    private static void allAsked(MarkValues values) throws MarkValues.Damage {
        values.requireEmpty();
        if (!values.unknown().isEmpty()) {
            throw new MarkValues.Damage(
                    "mark-content", Map.of("content", values.unknown().get(0)));
        }
    }
}
