package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Segment;
import easewright.measure.Alike;
import easewright.pattern.Caption;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How often pieces are cut of which neither a word nor a sign says it. Counted once, halves of a front and a back make
 * half a garment, so it is told by form: a piece that is not alike left and right has a mirrored half, on the fold or
 * as a second piece. That most fronts lie on a fold at a straight centre, that what opens mostly opens at the centre
 * back, and that sleeves and legs come in pairs, is common practice; each of these can be otherwise, which the reason
 * says.
 */
final class HalfPieces {
    /** A centre takes at least this part of the piece's length along the grain. */
    private static final double LEAST_OF_LENGTH = 0.4;

    /** A centre leans less than this from the grain, degrees. */
    private static final double UPRIGHT = 2.5;

    /** A centre lies this near to where the piece ends sideways, mm. */
    private static final double AT_THE_SIDE = 3;

    /** An allowance below this is none, mm. */
    private static final double NO_ALLOWANCE = 1;

    /** How far beyond the centre a front that buttons reaches, mm, from and to. */
    private static final double LEAST_OVERLAP = 8;

    private static final double MOST_OVERLAP = 60;

    private final Sheet sheet;
    private final PieceWords words;
    private final String garment;

    private HalfPieces(Sheet sheet) {
        this.sheet = sheet;
        words = PieceWords.of(sheet);
        garment =
                String.join(" ", words.elsewhere().stream().map(Caption::words).toList());
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
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        List<List<Double>> noTicks =
                runs.get().runs().stream().map(r -> List.<Double>of()).toList();
        Form form = new Form(runs.get().runs(), runs.get().dartCounts(), noTicks, OptionalInt.empty());
        boolean whole = Alike.leftAndRight(piece);
        OptionalInt centre = whole ? OptionalInt.empty() : centre(form);
        boolean body = isBack(piece) || Vocabulary.has(told(piece), "front", "cf", "c\\.\\s?f");
        boolean side = Vocabulary.has(piece.name(), "side");
        if (centre.isEmpty()
                && (Vocabulary.has(piece.name(), "sleeve")
                        || !body && form.cap().isPresent())) {
            return Optional.of(pair(piece, List.of(), "sleeves-in-pairs", 0.8));
        }
        if (whole) {
            return Optional.empty();
        }
        if (form.shoulder().isEmpty() && form.crotch().isPresent()) {
            return Optional.of(pair(piece, List.of(), "one-leg", 0.8));
        }
        if (side) {
            return Optional.of(pair(piece, List.of(), "side-in-pairs", 0.7));
        }
        boolean shaped = form.shoulder().isPresent() || isSkirt(form, piece);
        if (centre.isPresent() && (body || shaped)) {
            return Optional.of(atCentre(piece, form.run(centre.getAsInt()), runs.get(), body));
        }
        return body || form.shoulder().isPresent()
                ? Optional.of(pair(piece, List.of(), "not-alike", body ? 0.6 : 0.45))
                : Optional.empty();
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
        return high.isPresent()
                && form.lowest().isPresent()
                && form.lowest().getAsInt() != high.getAsInt()
                && (darts
                        || Vocabulary.has(piece.name() + " " + garment, "skirt")
                        || form.skirtHalf().isPresent());
    }

    /** The longest of the runs that stand straight along the grain where the piece ends sideways. */
    private static OptionalInt centre(Form form) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (Run run : form.runs()) {
            left = Math.min(left, run.middle().x() - Math.abs(run.across().x()) / 2);
            right = Math.max(right, run.middle().x() + Math.abs(run.across().x()) / 2);
        }
        int best = -1;
        for (int i = 0; i < form.size(); i++) {
            Run run = form.run(i);
            boolean atSide = run.middle().x() - left < AT_THE_SIDE
                    || right - run.middle().x() < AT_THE_SIDE;
            boolean upright = run.isStraight() && run.lean() < UPRIGHT && atSide;
            boolean longEnough = run.length() >= LEAST_OF_LENGTH * (form.bottom() - form.top());
            if (upright
                    && longEnough
                    && (best < 0 || run.length() > form.run(best).length())) {
                best = i;
            }
        }
        return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
    }

    private CutCount atCentre(Piece piece, Run centre, RunsOfPiece runs, boolean named) {
        List<Segment> shown = centre.curve().segments();
        if (opensInWords(piece)) {
            return pair(piece, shown, "opening-written", 0.8);
        }
        if (lineInside(piece, centre)) {
            return pair(piece, shown, "overlap-at-centre", 0.7);
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
        return fold(piece, shown, "straight-centre", named ? 0.65 : 0.45);
    }

    private boolean opensInWords(Piece piece) {
        return Vocabulary.has(
                told(piece), "zip", "button", "opening", "c\\.?\\s?[bf]\\.? seam", "(centre|center) (back|front) seam");
    }

    /** Whether a line runs beside the centre from end to end of the piece, as where a front overlaps. */
    private static boolean lineInside(Piece piece, Run centre) {
        for (Rider rider : piece.riders()) {
            for (Pen pen : Pen.of(rider)) {
                if (!pen.isLine()) {
                    continue;
                }
                Line line = Pen.chord(pen.runs().get(0));
                double away = centre.curve().nearest(line.at(0.5)).distance();
                boolean beside = away >= LEAST_OVERLAP && away <= MOST_OVERLAP;
                boolean along = Turns.between(
                                line.tangent(0),
                                centre.curve().end().minus(centre.curve().start()))
                        < UPRIGHT;
                boolean reaches = piece.outline().comesWithin(line.start(), AT_THE_SIDE)
                        && piece.outline().comesWithin(line.end(), AT_THE_SIDE);
                if (beside && along && reaches && line.length() > 0.7 * centre.length()) {
                    return true;
                }
            }
        }
        return false;
    }

    private static CutCount pair(Piece piece, List<Segment> shown, String reason, double sure) {
        return new CutCount(piece.id(), 2, false, shown, Reason.of(reason, sure));
    }

    private static CutCount fold(Piece piece, List<Segment> shown, String reason, double sure) {
        return new CutCount(piece.id(), 1, true, shown, Reason.of(reason, sure));
    }
}
