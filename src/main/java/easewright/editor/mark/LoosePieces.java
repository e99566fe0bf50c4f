package easewright.editor.mark;

import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.NumberedNames;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.suggest.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Closed lines that belong to no piece, for whoever knows that one of them is a piece after all. */
public final class LoosePieces {
    /** Smallest area of a piece, mm², as where a drawing is read. */
    private static final double LEAST_AREA = 400;

    /** A line this near to the outline lies on it, mm, as where a drawing is read. */
    private static final double ON_THE_LINE = 0.1;

    private LoosePieces() {}

    /** Those on the sheet, in the order in which they are drawn. */
    public static List<Piece> on(Sheet sheet) {
        List<Piece> found = new ArrayList<>();
        for (Rider rider : sheet.loose()) {
            if (isClosed(rider.segments())) {
                Outline outline = new Outline(rider.segments());
                if (Math.abs(outline.signedArea()) >= LEAST_AREA) {
                    int next = sheet.pattern().pieces().size() + found.size() + 1;
                    String name = NumberedNames.isNumbered(rider.id()) ? NumberedNames.of(next) : rider.id();
                    found.add(Piece.bare(rider.id(), outline).withName(name));
                }
            }
        }
        return found;
    }

    static boolean isClosed(List<Segment> segments) {
        for (int i = 1; i < segments.size(); i++) {
            if (!segments.get(i - 1).end().equals(segments.get(i).start())) {
                return false;
            }
        }
        return segments.size() > 1
                && segments.get(segments.size() - 1)
                        .end()
                        .equals(segments.get(0).start());
    }

    /** The pattern on the sheet with one more piece, which takes along what lies loose inside it. */
    public static Pattern with(Sheet sheet, Piece piece) {
        Outline outline = piece.outline();
        List<Rider> inside = sheet.loose().stream()
                .filter(rider -> !rider.id().equals(piece.id()))
                .filter(rider -> rider.segments().stream().allMatch(s -> holds(outline, s)))
                .map(rider -> rider.as(Rider.Kind.INNER))
                .toList();
        List<Piece> pieces = new ArrayList<>(sheet.pattern().pieces());
        String name = piece.name();
        for (int i = 2; isTaken(name, pieces); i++) {
            name = piece.name() + " " + i;
        }
        pieces.add(piece.toBuilder().name(name).riders(inside).build());
        return sheet.pattern().withPieces(pieces);
    }

    private static boolean holds(Outline outline, Segment segment) {
        return Stream.of(segment.start(), segment.at(0.5), segment.end())
                .allMatch(p -> outline.box().grown(ON_THE_LINE).contains(p)
                        && (outline.contains(p) || outline.comesWithin(p, ON_THE_LINE)));
    }

    private static boolean isTaken(String name, List<Piece> pieces) {
        return pieces.stream().anyMatch(p -> p.name().equals(name));
    }
}
