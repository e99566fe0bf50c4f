package easewright.editor.model;

import easewright.editor.paint.TableScene;
import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.Span;
import easewright.measure.StitchOutline;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the picture of the table from the state of the desk. */
public final class TableScenes {
    private TableScenes() {}

    /**
     * @param names remembers where names have room, so that they stay put while a seam is pulled
     */
    public static TableScene of(Desk desk, NamePlaces names) {
        return of(desk, names, false);
    }

    /**
     * @param names remembers where names have room, so that they stay put while a seam is pulled
     * @param sizes under its name a piece says how large it is, and not how often it is cut
     */
    public static TableScene of(Desk desk, NamePlaces names, boolean sizes) {
        Pattern shown = desk.shown();
        List<TableScene.PieceSight> pieces = new ArrayList<>();
        for (Piece piece : shown.pieces()) {
            pieces.add(sight(desk, piece, names, sizes));
        }
        names.forgetAllBut(desk.pattern().pieces());
        return new TableScene(pieces, desk.unit() == LengthUnit.INCH);
    }

    private static TableScene.PieceSight sight(Desk desk, Piece piece, NamePlaces names, boolean sizes) {
        Optional<Outline> before = ghost(desk, piece);
        List<Segment> moved =
                before.map(b -> MovedRuns.between(b, piece.outline())).orElse(List.of());
        return new TableScene.PieceSight(
                piece,
                sizes ? size(piece, desk.words()) : cut(piece, desk.words()),
                names.of(desk, piece),
                piece.drawn() == LineKind.CUTTING
                        ? Optional.of(StitchOutline.of(piece).outline())
                        : Optional.empty(),
                before,
                moved,
                levels(desk, piece),
                TrialSights.of(desk, piece),
                desk.pointed().filter(p -> p.piece().equals(piece.id())).isPresent());
    }

    /** The untouched outline where the piece differs from it, or else what it was before the trial. */
    private static Optional<Outline> ghost(Desk desk, Piece piece) {
        return piece.original()
                .or(() -> desk.pattern().piece(piece.id()).map(Piece::outline))
                .filter(before -> !before.equals(piece.outline()));
    }

    private static String size(Piece piece, Words words) {
        Box box = piece.outline().box();
        return words.of("editor.piece.measures", Map.of("wide", box.width(), "tall", box.height()));
    }

    static String cut(Piece piece, Words words) {
        String key = piece.onFold() ? "editor.piece.fold" : "editor.piece.cut";
        return words.of(key, Map.of("times", piece.times()));
    }

    private static List<TableScene.LevelSight> levels(Desk desk, Piece piece) {
        List<TableScene.LevelSight> sights = new ArrayList<>();
        for (Girth girth : desk.shownReading().measures().girths()) {
            for (LevelWidth part : girth.parts()) {
                if (part.pieceId().equals(piece.id())) {
                    sights.add(level(desk, girth, part));
                }
            }
        }
        return sights;
    }

    private static TableScene.LevelSight level(Desk desk, Girth girth, LevelWidth part) {
        List<Line> spans = part.spans().stream()
                .filter(s -> !s.from().equals(s.to()))
                .map(TableScenes::line)
                .toList();
        String name = girth.level().name();
        return new TableScene.LevelSight(
                name,
                spans,
                desk.words().of("editor.level.width", Map.of("level", name, "width", part.net())),
                desk.wanted().map(w -> w.level().equals(name)).orElse(false),
                part.count() > 0);
    }

    private static Line line(Span span) {
        return new Line(span.from(), span.to());
    }
}
