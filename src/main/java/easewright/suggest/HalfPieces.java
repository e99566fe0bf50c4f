package easewright.suggest;

import easewright.geom.Segment;
import easewright.measure.Alike;
import easewright.measure.BothSides;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How often pieces are cut of which neither a word nor a sign says it. Counted once, halves of a front and a back make
 * half a garment, so it is told by form: a piece that does not cover both sides of the body has a mirrored half, on the
 * fold or as a second piece. That most fronts lie on a fold at a straight centre, that what opens mostly opens at the centre
 * back, and that sleeves and legs come in pairs, is common practice; each of these can be otherwise, which the reason
 * says.
 */
final class HalfPieces {
    /** An allowance below this is none, mm. */
    private static final double NO_ALLOWANCE = 1;

    private final Sheet sheet;
    private final PieceWords words;
    private final String garment;
    private final MainPieces mainPieces;

    private HalfPieces(Sheet sheet) {
        this.sheet = sheet;
        words = PieceWords.of(sheet);
        mainPieces = new MainPieces(sheet.pattern());
        garment = words.beside();
    }

    static List<Suggestion> find(Sheet sheet) {
        HalfPieces halves = new HalfPieces(sheet);
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            if (halves.isOpen(piece)) {
                halves.count(piece).ifPresent(found::add);
            }
        }
        return found;
    }

    /** Whether nothing is known yet of how often the piece is cut. */
    private boolean isOpen(Piece piece) {
        return piece.edges().isEmpty()
                && piece.times() == 1
                && !piece.onFold()
                && piece.side() == Side.BOTH
                && !Vocabulary.has(piece.name(), "left", "right")
                && WordsOnPieces.count(piece, words).isEmpty();
    }

    private Optional<CutCount> count(Piece piece) {
        boolean small = Vocabulary.has(
                piece.name(),
                "pocket",
                "facing",
                "flap",
                "collar",
                "stand",
                "placket",
                "waistband",
                "band",
                "belt",
                "cuff",
                "strap",
                "tie",
                "loop",
                "gusset",
                "hood",
                "fly");
        Optional<RunsOfPiece> runs = small ? Optional.empty() : RunsOfPiece.of(piece);
        return runs.isEmpty() ? Optional.empty() : count(piece, runs.get());
    }

    private Optional<CutCount> count(Piece piece, RunsOfPiece runs) {
        Form form = runs.form();
        boolean alike = Alike.leftAndRight(piece);
        Optional<CentreEdge> centre = alike ? Optional.empty() : CentreEdge.of(form);
        boolean body = isBack(piece) || Vocabulary.has(told(piece), "front", "cf", "c\\.\\s?f");
        boolean shoulder = form.shoulder().isPresent();
        if (centre.isEmpty()
                && (Vocabulary.has(piece.name(), "sleeve")
                        || !body && form.cap().isPresent())) {
            return Optional.of(pair(piece, List.of(), "sleeves-in-pairs", 0.8));
        }
        if (alike) {
            return Optional.empty();
        }
        if (!shoulder && form.crotch().isPresent() && !isAboveWaist(piece)) {
            return Optional.of(pair(piece, List.of(), "one-leg", 0.8));
        }
        if (Vocabulary.has(piece.name(), "side")) {
            return Optional.of(pair(piece, List.of(), "side-in-pairs", 0.7));
        }
        if (form.hasBothShoulders() || BothSides.on(piece)) {
            return Optional.empty();
        }
        if (centre.isPresent() && (body || shoulder || isSkirt(form, piece))) {
            return Optional.of(atCentre(piece, centre.get(), runs, body));
        }
        // It may be meant to differ left and right; that it is a guess is said.
        return body || shoulder
                ? Optional.of(pair(piece, List.of(), "not-alike", body ? 0.45 : 0.35))
                : Optional.empty();
    }

    private boolean isAboveWaist(Piece piece) {
        List<String> others = sheet.pattern().pieces().stream()
                .filter(p -> p != piece)
                .map(Piece::name)
                .toList();
        return Worn.said(piece.name(), garment, others) == Worn.ABOVE_WAIST;
    }

    /** Its name and what is written on it. */
    private String told(Piece piece) {
        StringBuilder told = new StringBuilder(piece.name());
        words.on(piece).forEach(c -> told.append(' ').append(c.words()));
        return told.toString();
    }

    private boolean isBack(Piece piece) {
        return Vocabulary.has(told(piece), "back", "cb", "c\\.\\s?b");
    }

    private boolean isSkirt(Form form, Piece piece) {
        OptionalInt high = form.highest();
        boolean darts = high.isPresent() && form.dartsOn(high.getAsInt()) > 0;
        boolean said = Vocabulary.has(piece.name() + " " + garment, "skirt");
        boolean across =
                high.isPresent() && form.lowest().isPresent() && form.lowest().getAsInt() != high.getAsInt();
        return across && (darts || said) || mainPieces.isSkirtHalf(piece);
    }

    private CutCount atCentre(Piece piece, CentreEdge edge, RunsOfPiece runs, boolean named) {
        Run centre = runs.runs().get(edge.run());
        List<Segment> shown = centre.curve().segments();
        if (opensInWords(piece)) {
            return pair(piece, shown, "opening-written", 0.8);
        }
        if (CentreLine.beside(piece, centre.curve(), words.on(piece)).isPresent()) {
            return pair(piece, shown, "overlap-at-centre", 0.7);
        }
        if (CentreLine.saysWrap(told(piece))) {
            return pair(piece, shown, "wrap-written", 0.7);
        }
        if (CentreLine.saysWrap(garment) && !isBack(piece)) {
            return pair(piece, shown, "wrap-of-garment", 0.6);
        }
        if (edge.reachesOut()) {
            return pair(piece, shown, "vent-at-centre", 0.6);
        }
        OptionalDouble allowance = RunsOfPiece.allowance(piece, centre.curve());
        if (allowance.isPresent() && piece.allowance() > NO_ALLOWANCE) {
            return allowance.getAsDouble() < NO_ALLOWANCE
                    ? fold(piece, shown, "no-allowance-at-centre", 0.85)
                    : pair(piece, shown, "allowance-at-centre", 0.75);
        }
        if (isBack(piece) && !runs.darts().isEmpty()) {
            return pair(piece, shown, "straight-centre-back", 0.55);
        }
        Optional<MainPieces.Narrower> narrower = mainPieces.narrower(piece);
        boolean foldElsewhere = sheet.pattern().pieces().stream().anyMatch(p -> p != piece && p.onFold());
        if (narrower.isPresent()) {
            Map<String, Object> values = Map.of(
                    "other", narrower.get().name(),
                    "wide", narrower.get().own(),
                    "narrow", narrower.get().wide());
            // Who has written on one piece that it lies on a fold would have written it on this one too.
            return foldElsewhere
                    ? new CutCount(piece.id(), 2, false, shown, new Reason("wide-beside-fold", values, 0.45))
                    : new CutCount(piece.id(), 1, true, shown, new Reason("straight-centre-wide", values, 0.35));
        }
        return foldElsewhere
                ? fold(piece, shown, "straight-centre-unsaid", named ? 0.49 : 0.4)
                : fold(piece, shown, "straight-centre", named ? 0.65 : 0.45);
    }

    private boolean opensInWords(Piece piece) {
        return Vocabulary.has(
                told(piece), "zip", "button", "opening", "c\\.?\\s?[bf]\\.? seam", "(centre|center) (back|front) seam");
    }

    private static CutCount pair(Piece piece, List<Segment> shown, String reason, double sure) {
        return new CutCount(piece.id(), 2, false, shown, Reason.of(reason, sure));
    }

    private static CutCount fold(Piece piece, List<Segment> shown, String reason, double sure) {
        return new CutCount(piece.id(), 1, true, shown, Reason.of(reason, sure));
    }
}
