package easewright.svg;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.ChangeNote;
import easewright.pattern.Cloth;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.SetAside;
import easewright.pattern.Wish;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;

/** Writes the marks block: everything about a pattern but its outlines. */
final class MarksWriter {
    /** No piece is called so. */
    private static final String OF_NO_PIECE = "";

    /** And none so. */
    private static final String AMONG_RESTING = " ";

    private final Pattern pattern;

    /** By the piece's id. */
    private final Map<String, List<KeptMark>> kept = new HashMap<>();

    private final Optional<PageMark> page;
    private final Resting resting;
    private final MarkupBuilder out;

    private MarksWriter(
            Pattern pattern,
            List<KeptMark> kept,
            Optional<PageMark> page,
            Resting resting,
            String indent,
            String lineEnd) {
        this.pattern = pattern;
        for (KeptMark mark : kept) {
            keep(mark.piece().orElse(OF_NO_PIECE), mark);
        }
        // What is kept of a piece goes with it, to rest and back.
        for (KeptMark mark : resting.kept()) {
            keep(mark.piece().orElse(AMONG_RESTING), mark);
        }
        this.page = page;
        this.resting = resting.beside(pattern);
        this.out = new MarkupBuilder(indent, lineEnd);
    }

    private void keep(String piece, KeptMark mark) {
        kept.computeIfAbsent(piece, id -> new ArrayList<>()).add(mark);
    }

    /**
     * The element {@code marks}, escaped, without a line end after it.
     *
     * @param indent what stands before it on its line, repeated before every line but the first
     * @throws SvgProblem {@code text-unwritable} if a name holds a control character
     */
    static String write(
            Pattern pattern,
            List<KeptMark> kept,
            Optional<PageMark> page,
            Resting resting,
            String indent,
            String lineEnd)
            throws SvgProblem {
        return new MarksWriter(pattern, kept, page, resting, indent, lineEnd).block();
    }

    private String block() throws SvgProblem {
        out.open("marks").text("xmlns", MarkNode.NAMESPACE);
        out.open("scale")
                .number("across", pattern.scale().mmPerUnitX())
                .number("down", pattern.scale().mmPerUnitY())
                .text("proof", MarkWords.word(pattern.scale().proof()));
        if (pattern.scale().from().isPresent()) {
            ScaleMark.write(pattern.scale().from().get(), out);
        }
        for (KeptMark mark : kept.getOrDefault(OF_NO_PIECE, List.of())) {
            if (mark.kind().equals(KeptMark.INSIDE_SCALE)) {
                out.verbatim(mark.markup());
            }
        }
        out.close();
        if (page.isPresent()) {
            page.get().write(out);
        }
        if (!pattern.body().equals(Body.UNKNOWN)) {
            body(pattern.body(), Optional.empty());
        }
        for (Map.Entry<String, Body> body : new TreeMap<>(pattern.bodies()).entrySet()) {
            body(body.getValue(), Optional.of(body.getKey()));
        }
        if (!pattern.cloth().equals(Cloth.WOVEN)) {
            cloth(pattern.cloth());
        }
        if (!pattern.garment().isEmpty()) {
            out.open("garment").text("kind", pattern.garment()).close();
        }
        for (Level level : pattern.levels()) {
            level(level);
        }
        for (Map.Entry<String, Wish> wish : new TreeMap<>(pattern.wishes()).entrySet()) {
            out.open("wish")
                    .text("level", wish.getKey())
                    .number("ease", wish.getValue().mm());
            if (wish.getValue().percent().isPresent()) {
                out.number("percent", wish.getValue().percent().getAsDouble());
            }
            out.close();
        }
        for (Piece piece : pattern.pieces()) {
            piece(piece);
        }
        for (String id : new TreeSet<>(pattern.noPieces())) {
            out.open("no-piece").text("ref", id).close();
        }
        for (Mate mate : pattern.mates()) {
            mate(mate);
        }
        changes();
        rest();
        for (KeptMark mark : kept.getOrDefault(OF_NO_PIECE, List.of())) {
            boolean written = mark.kind().equals(KeptMark.INSIDE_SCALE);
            if (mark.twin() || !written && !replaced(mark.kind(), mark.name().orElse(""))) {
                out.verbatim(mark.markup());
            }
        }
        return out.close().markup();
    }

    private void level(Level level) throws SvgProblem {
        out.open("level").text("name", level.name()).text("kind", MarkWords.word(level.kind()));
        if (level.limb() != level.kind().limb()) {
            out.yesNo("limb", level.limb());
        }
        out.close();
    }

    /** Pieces in layers that are not read. */
    private void rest() throws SvgProblem {
        List<KeptMark> loose = kept.getOrDefault(AMONG_RESTING, List.of());
        if (resting.pattern().isEmpty() && loose.isEmpty()) {
            return;
        }
        out.open("resting");
        if (resting.pattern().isPresent()) {
            Pattern others = resting.pattern().get();
            for (Level level : others.levels()) {
                level(level);
            }
            for (Piece piece : others.pieces()) {
                piece(piece);
            }
            for (Mate mate : others.mates()) {
                mate(mate);
            }
        }
        loose.forEach(m -> out.verbatim(m.markup()));
        out.close();
    }

    private void piece(Piece piece) throws SvgProblem {
        PieceMarksWriter.write(piece, kept.getOrDefault(piece.id(), List.of()), out);
    }

    /** Changes made and changes set aside, in one course. */
    private void changes() throws SvgProblem {
        for (int i = 0; i <= pattern.changes().size(); i++) {
            for (SetAside aside : pattern.aside()) {
                if (aside.before() == i) {
                    change("set-aside", aside.note());
                }
            }
            if (i < pattern.changes().size()) {
                change("change", pattern.changes().get(i));
            }
        }
    }

    private void change(String element, ChangeNote note) throws SvgProblem {
        out.open(element).text("method", note.method());
        for (Map.Entry<String, String> setting : note.settings().entrySet()) {
            out.open("set")
                    .text("name", setting.getKey())
                    .text("value", setting.getValue())
                    .close();
        }
        out.close();
    }

    private void body(Body body, Optional<String> size) throws SvgProblem {
        out.open("body");
        if (size.isPresent()) {
            out.text("size", size.get());
        }
        if (!body.name().isEmpty()) {
            out.text("name", body.name());
        }
        for (BodyMeasure measure : body.measures()) {
            out.open("measure").text("name", measure.name());
            if (!measure.level().isEmpty()) {
                out.text("level", measure.level());
            }
            out.number("is", measure.mm());
            if (!measure.takenAt().isEmpty()) {
                out.text("taken", measure.takenAt());
            }
            out.close();
        }
        out.close();
    }

    private void cloth(Cloth cloth) throws SvgProblem {
        out.open("cloth").text("kind", cloth.knit() ? "knit" : "woven");
        percent("across", cloth.across());
        percent("along", cloth.along());
        percent("recovery", cloth.recovery());
        percent("shrinkage", cloth.shrinkage());
        out.close();
    }

    private void percent(String name, OptionalDouble value) throws SvgProblem {
        if (value.isPresent()) {
            out.number(name, value.getAsDouble());
        }
    }

    private void mate(Mate mate) throws SvgProblem {
        out.open("mate").text("name", mate.name());
        if (mate.declaredEase() != 0) {
            out.number("ease", mate.declaredEase());
        }
        side("first", mate.first());
        side("second", mate.second());
        out.close();
    }

    private void side(String element, List<EdgeRef> edges) throws SvgProblem {
        for (EdgeRef edge : edges) {
            out.open(element).text("piece", edge.piece()).text("edge", edge.edge());
            if (edge.times() != 1) {
                out.text("times", String.valueOf(edge.times()));
            }
            out.close();
        }
    }

    /** Whether the pattern now has a mark of the same kind and name. */
    private boolean replaced(String kind, String name) {
        return switch (kind) {
            case "level" -> pattern.level(name).isPresent();
            case "piece" -> pattern.pieces().stream().anyMatch(p -> p.id().equals(name));
            case "no-piece" -> pattern.noPieces().contains(name);
            case "mate" -> pattern.mates().stream().anyMatch(m -> m.name().equals(name));
            case "wish" -> pattern.wishes().containsKey(name);
            case "scale" -> true;
            case "page" -> page.isPresent();
            case "resting" -> resting.pattern().isPresent();
            case "cloth" -> !pattern.cloth().equals(Cloth.WOVEN);
            case "garment" -> !pattern.garment().isEmpty();
            case "body" ->
                name.isEmpty()
                        ? !pattern.body().equals(Body.UNKNOWN)
                        : pattern.bodies().containsKey(name);
            default -> false;
        };
    }
}
