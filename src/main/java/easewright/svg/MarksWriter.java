package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.ChangeNote;
import easewright.pattern.Cloth;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.SetAside;
import easewright.pattern.Side;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Writes the marks block: everything about a pattern but its outlines. */
final class MarksWriter {
    private final Pattern pattern;
    private final List<KeptMark> kept;
    private final MarkupBuilder out;

    private MarksWriter(Pattern pattern, List<KeptMark> kept, String indent, String lineEnd) {
        this.pattern = pattern;
        this.kept = kept;
        this.out = new MarkupBuilder(indent, lineEnd);
    }

    /**
     * The element {@code marks}, escaped, without a line end after it.
     *
     * @param indent what stands before it on its line, repeated before every line but the first
     * @throws SvgProblem {@code text-unwritable} if a name holds a control character
     */
    static String write(Pattern pattern, List<KeptMark> kept, String indent, String lineEnd) throws SvgProblem {
        return new MarksWriter(pattern, kept, indent, lineEnd).block();
    }

    private String block() throws SvgProblem {
        out.open("marks").text("xmlns", MarkNode.NAMESPACE);
        out.open("scale")
                .number("across", pattern.scale().mmPerUnitX())
                .number("down", pattern.scale().mmPerUnitY())
                .text("proof", MarkWords.word(pattern.scale().proof()))
                .close();
        if (!pattern.body().equals(Body.UNKNOWN)) {
            body(pattern.body(), Optional.empty());
        }
        for (Map.Entry<String, Body> body : new TreeMap<>(pattern.bodies()).entrySet()) {
            body(body.getValue(), Optional.of(body.getKey()));
        }
        if (!pattern.cloth().equals(Cloth.WOVEN)) {
            cloth(pattern.cloth());
        }
        for (Level level : pattern.levels()) {
            out.open("level").text("name", level.name()).text("kind", MarkWords.word(level.kind()));
            if (level.limb() != level.kind().limb()) {
                out.yesNo("limb", level.limb());
            }
            out.close();
        }
        for (Map.Entry<String, Double> wish : new TreeMap<>(pattern.wishes()).entrySet()) {
            out.open("wish")
                    .text("level", wish.getKey())
                    .number("ease", wish.getValue())
                    .close();
        }
        for (Piece piece : pattern.pieces()) {
            piece(piece);
        }
        for (Mate mate : pattern.mates()) {
            mate(mate);
        }
        changes();
        kept(Optional.empty());
        return out.close().markup();
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

    private void piece(Piece piece) throws SvgProblem {
        Box box = piece.outline().box();
        out.open("piece").text("ref", piece.id()).text("name", piece.name());
        if (piece.size().isPresent()) {
            out.text("size", piece.size().get());
        }
        if (piece.side() != Side.BOTH) {
            out.text("side", MarkWords.word(piece.side()));
        }
        out.text("line", MarkWords.word(piece.drawn()))
                .number("allowance", piece.allowance())
                .text("cut", String.valueOf(piece.times()))
                .yesNo("fold", piece.onFold())
                .text(
                        "box",
                        MarkWords.place(new Point(box.minX(), box.minY())) + " "
                                + MarkWords.place(new Point(box.maxX(), box.maxY())));
        for (Edge edge : piece.edges()) {
            edge(piece, edge);
        }
        for (LevelMark level : piece.levels()) {
            level(level);
        }
        for (Dart dart : piece.darts()) {
            dart(dart);
        }
        for (Notch notch : piece.notches()) {
            out.open("notch").text("name", notch.name()).place("at", notch.at()).close();
        }
        if (piece.grain().isPresent()) {
            out.open("grain")
                    .place("from", piece.grain().get().from())
                    .place("to", piece.grain().get().to())
                    .close();
        }
        for (Rider rider : piece.riders()) {
            out.open("rider")
                    .text("ref", rider.id())
                    .text("kind", MarkWords.word(rider.kind()))
                    .close();
        }
        if (piece.original().isPresent()) {
            out.open("original")
                    .text("d", MarkWords.path(piece.original().get()))
                    .close();
        }
        kept(Optional.of(piece.id()));
        out.close();
    }

    private void edge(Piece piece, Edge edge) throws SvgProblem {
        out.open("edge")
                .text("name", edge.name())
                .text("role", MarkWords.word(edge.role()))
                .place("from", edge.from());
        if (!edge.from().equals(edge.to())) {
            Curve run = edge.on(piece.outline());
            out.place("via", run.pointAtLength(run.length() / 2));
        }
        out.place("to", edge.to());
        if (edge.isProtected() != edge.role().protectedByDefault()) {
            out.yesNo("protected", edge.isProtected());
        }
        if (edge.allowance().isPresent()) {
            out.number("allowance", edge.allowance().getAsDouble());
        }
        out.close();
    }

    private void level(LevelMark mark) throws SvgProblem {
        out.open("at").text("level", mark.level());
        if (mark.through().isPresent()) {
            out.place("through", mark.through().get());
        }
        if (mark.along().isPresent()) {
            out.text("along", mark.along().get());
        }
        if (mark.turn() != 0) {
            out.number("turn", mark.turn());
        }
        if (!mark.counts()) {
            out.yesNo("counts", false);
        }
        if (mark.overlap() != 0) {
            out.number("overlap", mark.overlap());
        }
        if (mark.span() != LevelMark.Span.NEAREST) {
            out.text("span", MarkWords.word(mark.span()));
        }
        if (mark.reference().isPresent()) {
            out.place("reference", mark.reference().get());
        }
        out.close();
    }

    private void dart(Dart dart) throws SvgProblem {
        out.open("dart").text("name", dart.name());
        if (dart.edge().isPresent()) {
            out.text("edge", dart.edge().get());
        }
        out.place("mouth", dart.mouth1()).place("point", dart.point()).place("mouth2", dart.mouth2());
        if (dart.otherPoint().isPresent()) {
            out.place("point2", dart.otherPoint().get());
        }
        out.close();
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

    private void kept(Optional<String> piece) {
        for (KeptMark mark : kept) {
            if (mark.piece().equals(piece) && (mark.twin() || !replaced(mark))) {
                out.verbatim(mark.markup());
            }
        }
    }

    /** Whether the pattern now has a mark of the same kind and name. */
    private boolean replaced(KeptMark mark) {
        String name = mark.name().orElse("");
        if (mark.piece().isEmpty()) {
            return switch (mark.kind()) {
                case "level" -> pattern.level(name).isPresent();
                case "piece" -> pattern.pieces().stream().anyMatch(p -> p.id().equals(name));
                case "mate" -> pattern.mates().stream().anyMatch(m -> m.name().equals(name));
                case "wish" -> pattern.wishes().containsKey(name);
                case "scale" -> true;
                case "cloth" -> !pattern.cloth().equals(Cloth.WOVEN);
                case "body" ->
                    name.isEmpty()
                            ? !pattern.body().equals(Body.UNKNOWN)
                            : pattern.bodies().containsKey(name);
                default -> false;
            };
        }
        Piece piece = pattern.pieces().stream()
                .filter(p -> p.id().equals(mark.piece().get()))
                .findFirst()
                .orElseThrow();
        return switch (mark.kind()) {
            case "edge" -> piece.edge(name).isPresent();
            case "at" -> piece.level(name).isPresent();
            case "dart" -> piece.darts().stream().anyMatch(d -> d.name().equals(name));
            case "notch" -> piece.notches().stream().anyMatch(n -> n.name().equals(name));
            case "rider" -> piece.riders().stream().anyMatch(r -> r.id().equals(name));
            case "grain" -> piece.grain().isPresent();
            case "original" -> piece.original().isPresent();
            default -> false;
        };
    }
}
