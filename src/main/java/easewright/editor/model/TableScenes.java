package easewright.editor.model;

import easewright.editor.paint.NamePlace;
import easewright.editor.paint.TableScene;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.MovedRuns;
import easewright.measure.PieceMeasures;
import easewright.measure.StitchOutline;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.print.GirthText;
import easewright.suggest.FoldBracket;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes pictures of the table from the state of the desk. Remembers the last one: a piece that is the same object, and
 * of which the same is to be said, keeps its picture, and its name stays put while a seam is pulled.
 */
public final class TableScenes {
    /** Less than this cannot be seen or cut, mm. */
    private static final double SEEN = 0.02;

    private final NamePlaces names = new NamePlaces();
    private final NestTitles nests = new NestTitles();
    private final DrawnBefore drawnBefore = new DrawnBefore();
    private boolean marking;
    /** The level that is worked at while marks are made. */
    private Optional<String> marked = Optional.empty();

    private Map<Piece, Drawn> known = new IdentityHashMap<>();

    /**
     * While marks are made: words written on the drawing are to be seen, and all sizes are alike, with their levels.
     *
     * @param level the level that is then worked at, if any
     */
    public void forMarks(boolean marks, Optional<String> level) {
        names.heedWords(marks);
        marking = marks;
        marked = level;
    }

    /** What the picture of a piece was made of, and what came of it. */
    private record Drawn(
            Optional<Outline> ghost,
            NestTitles.Title title,
            NamePlace name,
            List<ToldWidth> widths,
            Optional<String> chosen,
            LengthUnit unit,
            boolean sizes,
            boolean several,
            TableScene.PieceSight sight) {
        boolean serves(
                Look look,
                Optional<Outline> before,
                NestTitles.Title called,
                NamePlace at,
                List<ToldWidth> parts,
                boolean pointed,
                boolean aside) {
            return before.orElse(null) == ghost.orElse(null)
                    && called.equals(title)
                    && at == name
                    && same(widths, parts)
                    && look.chosen.equals(chosen)
                    && look.desk.unit() == unit
                    && look.sizes == sizes
                    && look.several == several
                    && pointed == sight.pointed()
                    && aside == sight.aside();
        }

        private static boolean same(List<ToldWidth> one, List<ToldWidth> other) {
            boolean same = one.size() == other.size();
            for (int i = 0; same && i < one.size(); i++) {
                same = one.get(i).isSame(other.get(i));
            }
            return same;
        }
    }

    /** How wide a piece is, and how that is told, which hangs on the other pieces of its girth as well. */
    private record ToldWidth(LevelWidth part, String figure) {
        boolean isSame(ToldWidth other) {
            return part == other.part && figure.equals(other.figure);
        }
    }

    /** One look at a desk: what all pieces have in common. */
    private static final class Look {
        private final Desk desk;
        private final boolean sizes;
        private final Map<String, NestTitles.Title> titles;
        private final Optional<String> chosen;
        private final TrialSights trial;
        private final List<String> taking;
        /** Whether levels of more than one size are to be seen, so that each has to say of which it is. */
        private final boolean several;

        private final Map<String, Piece> before = new HashMap<>();
        private final Map<String, List<ToldWidth>> widths = new HashMap<>();
        private final Map<Piece, StitchOutline> stitches = new IdentityHashMap<>();

        /**
         * @param chosen the level at work
         * @param titles of pieces that are not called by their name, by id
         */
        Look(Desk desk, boolean sizes, boolean marking, Optional<String> chosen, Map<String, NestTitles.Title> titles) {
            this.titles = titles;
            this.desk = desk;
            this.sizes = sizes;
            this.chosen = chosen;
            trial = new TrialSights(desk);
            taking = desk.sizesTaking();
            boolean all = marking && desk.size().isPresent();
            several = all || taking.size() > 1;
            for (Piece piece : desk.pattern().pieces()) {
                before.put(piece.id(), piece);
            }
            GarmentMeasures measures = desk.shownReading().measures();
            GarmentMeasures seen =
                    all ? measures.inEverySize() : taking.size() > 1 ? measures.inSizes(taking) : measures;
            GirthText told = new GirthText(desk.words(), desk.shown());
            for (Girth girth : seen.girths()) {
                List<String> figures = told.widths(girth);
                for (int i = 0; i < figures.size(); i++) {
                    LevelWidth part = girth.parts().get(i);
                    List<ToldWidth> known = widths.computeIfAbsent(part.pieceId(), id -> new ArrayList<>());
                    // A piece of all sizes is measured in each of them, and is as wide in one as in the other.
                    if (known.stream().noneMatch(k -> k.part().equals(part))) {
                        known.add(new ToldWidth(part, figures.get(i)));
                    }
                }
            }
            for (PieceMeasures piece : desk.shownReading().measures().pieces()) {
                stitches.put(piece.stitch().piece(), piece.stitch());
            }
        }
    }

    public TableScene of(Desk desk) {
        return of(desk, false);
    }

    /**
     * @param sizes under its name a piece says how large it is, and not how often it is cut
     */
    public TableScene of(Desk desk, boolean sizes) {
        Pattern shown = desk.shown();
        List<String> at = marking || desk.size().isEmpty() ? List.of() : desk.sizesTaking();
        Optional<String> chosen = marking ? marked : desk.wanted().map(Wanted::level);
        Look look =
                new Look(desk, sizes, marking, chosen, nests.of(desk.pattern().pieces(), at, desk.words()));
        Map<Piece, Drawn> now = new IdentityHashMap<>();
        List<TableScene.PieceSight> pieces = new ArrayList<>();
        for (Piece piece : shown.pieces()) {
            Drawn drawn = drawn(look, piece);
            now.put(piece, drawn);
            pieces.add(drawn.sight());
        }
        known = now;
        names.forgetAllBut(desk.pattern().pieces());
        return new TableScene(
                pieces,
                sizes ? nests.tags(desk.pattern().pieces()) : List.of(),
                names.wordsBeside(desk, shown),
                desk.unit() == LengthUnit.INCH,
                desk.shownTrial().isPresent(),
                marking ? List.of() : Misfits.of(desk));
    }

    private Drawn drawn(Look look, Piece piece) {
        Desk desk = look.desk;
        Optional<Outline> ghost = ghost(look, piece);
        NestTitles.Title title = look.titles.getOrDefault(piece.id(), NestTitles.Title.of(piece));
        NamePlace name = names.of(desk, look.before.getOrDefault(piece.id(), piece));
        List<ToldWidth> widths = look.widths.getOrDefault(piece.id(), List.of());
        // What would be redrawn has its own line and rings, which tell the piece.
        boolean pointed =
                desk.pointed().filter(p -> p.means(piece.id()) && !p.redrawn()).isPresent();
        boolean aside = !marking && desk.size().isPresent() && isOfNone(look.taking, piece);
        TableScene.TrialSight trial = look.trial.of(piece, look.before.getOrDefault(piece.id(), piece));
        Drawn last = known.get(piece);
        if (last != null
                && trial == TableScene.TrialSight.NONE
                && last.sight().trial() == trial
                && last.serves(look, ghost, title, name, widths, pointed, aside)) {
            return last;
        }
        TableScene.PieceSight sight = new TableScene.PieceSight(
                piece,
                title.words(),
                look.sizes ? size(piece, title, desk.words()) : cut(piece, desk.words()),
                !look.sizes,
                name,
                FoldBracket.without(piece),
                names.words(desk, piece),
                piece.drawn() == LineKind.CUTTING
                        ? Optional.of(stitch(look, piece).outline())
                        : Optional.empty(),
                ghost,
                former(look, piece),
                ghost.map(b -> MovedRuns.between(b, piece.outline(), SEEN)).orElse(List.of()),
                widths.stream().map(told -> level(look, piece, told)).toList(),
                trial,
                pointed,
                aside);
        return new Drawn(ghost, title, name, widths, look.chosen, desk.unit(), look.sizes, look.several, sight);
    }

    /** Whether a piece is of a size in which nothing is done. */
    private static boolean isOfNone(List<String> sizes, Piece piece) {
        return piece.size().filter(s -> !sizes.contains(s)).isPresent();
    }

    private static StitchOutline stitch(Look look, Piece piece) {
        StitchOutline measured = look.stitches.get(piece);
        return measured == null ? StitchOutline.of(piece) : measured;
    }

    /**
     * What the piece was before the trial, where it differs: what moved earlier would be taken for moved by it. Without
     * a trial the untouched outline.
     */
    private static Optional<Outline> ghost(Look look, Piece piece) {
        Piece before = look.before.get(piece.id());
        // A piece that the trial made for one side lies where none lay: it is compared with its own untouched outline.
        boolean untouched = look.desk.shownTrial().isEmpty() || before == null && look.trial.moves(piece);
        return (untouched ? piece.original() : Optional.ofNullable(before).map(Piece::outline))
                .filter(was -> !was.equals(piece.outline()));
    }

    /** The same of the lines around it. */
    private List<Rider> former(Look look, Piece piece) {
        if (look.desk.shownTrial().isEmpty()) {
            return drawnBefore.around(look.desk, piece);
        }
        Piece before = look.before.get(piece.id());
        return before == null || before == piece ? List.of() : DrawnBefore.around(before, piece);
    }

    private static String size(Piece piece, NestTitles.Title title, Words words) {
        Box box = piece.outline().box();
        Map<String, Object> measures = Map.of("wide", box.width(), "tall", box.height());
        String own = words.of("editor.piece.measures", measures);
        return title.size()
                .map(size -> words.of("editor.piece.nest.measures", Map.of("size", size, "measures", own)))
                .orElse(own);
    }

    static String cut(Piece piece, Words words) {
        String key = piece.onFold() ? "editor.piece.fold" : "editor.piece.cut";
        return words.forSide(words.of(key, Map.of("times", piece.times())), piece.side());
    }

    private static TableScene.LevelSight level(Look look, Piece piece, ToldWidth told) {
        LevelWidth part = told.part();
        Words words = look.desk.words();
        Optional<String> size = piece.size().filter(s -> look.several);
        String name = size.map(s -> words.of("editor.level.in-size", Map.of("level", part.level(), "size", s)))
                .orElse(part.level());
        boolean along = piece.level(part.level())
                .flatMap(LevelMark::along)
                .flatMap(piece::edge)
                .isPresent();
        return new TableScene.LevelSight(
                part.level(),
                size,
                part.cloth(stitch(look, piece)),
                along,
                LevelFigures.named(name, part, told.figure(), words),
                LevelFigures.of(part, told.figure(), words),
                look.chosen.filter(part.level()::equals).isPresent(),
                part.count() > 0);
    }
}
