package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Hold;
import easewright.editor.model.Pointed;
import easewright.editor.paint.GripPlaces;
import easewright.editor.paint.OverlayPainter;
import easewright.editor.paint.SeenUnder;
import easewright.editor.paint.Viewport;
import easewright.geom.Nearest;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a seam on the table can be taken hold of; one of the places may have the pointer's or the keys' attention. */
final class TableHolds {
    /** Between places that are the same, looked at through the table, mm. */
    private static final double SAME = 1e-6;

    private List<Hold> holds = List.of();
    private int pointed = -1;
    /** Those that are there when no hand pulls, while one pulls at another. */
    private Optional<List<Hold>> others = Optional.empty();

    /** Where they are drawn, from the holds; what that was worked out for. */
    private List<GripPlaces.Place> places = List.of();

    private List<Piece> pieces = List.of();
    private Runnable heard = () -> {};
    private double scale;
    private boolean settled;

    /** Those of a desk; none while a list shows what would be redrawn: they would hide where that ends. */
    void show(Desk desk, boolean pulled) {
        boolean redrawn = desk.pointed().filter(Pointed::redrawn).isPresent();
        show(redrawn ? List.of() : desk.takingHolds(), pulled);
    }

    /**
     * Other holds; the attention stays with its seam, or goes to another where that takes part no longer.
     *
     * @param pulled a hand is pulling at one: none of them jumps to another place beside its seam, and the one in the
     *               hand stays, also where its piece has become two and the other of them is changed
     */
    void show(List<Hold> now, boolean pulled) {
        Optional<Hold> held = pulled
                ? pointed().filter(h -> now.stream().noneMatch(n -> n.edge().equals(h.edge())))
                : Optional.empty();
        others = held.map(h -> now);
        List<Hold> all = new ArrayList<>(now);
        held.ifPresent(all::add);
        take(List.copyOf(all));
        settled &= pulled && all.size() == places.size();
    }

    private void take(List<Hold> now) {
        pointed = isPointed() ? next(holds.get(pointed).edge(), pointed, now) : -1;
        holds = now;
    }

    /** The pieces on which the holds are: their notches and corners are to be seen beside the grips. */
    void onPieces(List<Piece> now) {
        pieces = now;
    }

    /** A hand has let go. */
    void settle() {
        others.ifPresent(this::take);
        others = Optional.empty();
        settled = false;
    }

    private static int next(EdgeRef edge, int at, List<Hold> now) {
        int same = now.stream().map(Hold::edge).toList().indexOf(edge);
        boolean stays = at < now.size() && now.get(at).edge().equals(edge);
        return stays || same < 0 ? Math.min(at, now.size() - 1) : same;
    }

    List<Hold> all() {
        return holds;
    }

    /** Where they are to be pressed. */
    List<Point> onScreen(Viewport view) {
        return grips(view).stream().map(OverlayPainter.Grip::at).toList();
    }

    List<OverlayPainter.Grip> grips(Viewport view) {
        if (!settled || view.scale() != scale) {
            places = GripPlaces.of(
                    holds.stream()
                            .map(h -> new GripPlaces.End(
                                    h.pieceId(), view.toScreen(h.at()), h.outward(), isMarked(h, view.scale())))
                            .toList(),
                    onTheTable(view));
            scale = view.scale();
            settled = true;
        }
        List<OverlayPainter.Grip> grips = new ArrayList<>();
        for (int i = 0; i < holds.size(); i++) {
            GripPlaces.Place place = places.get(i);
            grips.add(new OverlayPainter.Grip(
                    view.toScreen(holds.get(i).at()),
                    place.off(),
                    holds.get(i).outward(),
                    place.small(),
                    place.marked(),
                    i == pointed));
        }
        return grips;
    }

    private boolean isMarked(Hold hold, double scale) {
        return piece(hold.pieceId())
                .filter(piece -> SeenUnder.isThere(piece, hold.at(), scale))
                .isPresent();
    }

    private Optional<Piece> piece(String id) {
        return pieces.stream().filter(piece -> piece.id().equals(id)).findFirst();
    }

    private GripPlaces.Ground onTheTable(Viewport view) {
        return new GripPlaces.Ground() {
            @Override
            public boolean hides(GripPlaces.End end, Point at) {
                return piece(end.piece())
                        .filter(piece -> SeenUnder.isThere(piece, view.toTable(at.x(), at.y()), view.scale()))
                        .isPresent();
            }

            @Override
            public boolean isOff(GripPlaces.End end, Point at) {
                return piece(end.piece())
                        .filter(piece -> SeenUnder.isOff(piece, view.toTable(at.x(), at.y()), view.scale()))
                        .isPresent();
            }

            @Override
            public Optional<Point> along(GripPlaces.End end, double pixels) {
                Point at = view.toTable(end.at().x(), end.at().y());
                return holds.stream()
                        .filter(h -> h.pieceId().equals(end.piece()) && h.at().distance(at) < SAME)
                        .findFirst()
                        .flatMap(h -> alongSeam(h, pixels / view.scale()))
                        .map(off -> off.times(view.scale()));
            }
        };
    }

    /** From a hold to where its seam has come after so many mm, up the table or with a minus down. */
    private Optional<Point> alongSeam(Hold hold, double mm) {
        return piece(hold.pieceId())
                .flatMap(piece -> piece.edge(hold.edge().edge()).map(edge -> edge.on(piece.outline())))
                .flatMap(seam -> {
                    Nearest here = seam.nearest(hold.at());
                    boolean endsAbove = seam.end().y() < seam.start().y();
                    double far = seam.lengthTo(here.place()) + (endsAbove ? mm : -mm);
                    return far < 0 || far > seam.length()
                            ? Optional.empty()
                            : Optional.of(seam.pointAtLength(far).minus(here.point()));
                });
    }

    /** The one that a press at a pixel means, or −1: the nearest, within a circle no smaller than a fingertip asks for. */
    int at(Point pixel, Viewport view) {
        List<OverlayPainter.Grip> grips = grips(view);
        int nearest = -1;
        double least = OverlayPainter.GRIP + 5;
        for (int i = 0; i < grips.size(); i++) {
            double away = Math.min(
                    grips.get(i).at().distance(pixel), grips.get(i).end().distance(pixel));
            if (away < least || nearest < 0 && away == least) {
                nearest = i;
                least = away;
            }
        }
        return nearest;
    }

    /** Whoever is to hear that another one was given the attention. */
    void onPointed(Runnable hears) {
        heard = hears;
    }

    /** Gives the attention to the next one, or with −1 to the one before, if there is any. */
    void next(int step) {
        if (!holds.isEmpty()) {
            pointed = Math.floorMod(pointed + step, holds.size());
            heard.run();
        }
    }

    /** Gives one the attention, or with a number below 0 none. */
    void point(int hold) {
        if (hold != pointed) {
            pointed = hold;
            heard.run();
        }
    }

    /** The one with the attention. */
    Optional<Hold> pointed() {
        return isPointed() ? Optional.of(holds.get(pointed)) : Optional.empty();
    }

    boolean isPointed() {
        return pointed >= 0;
    }
}
