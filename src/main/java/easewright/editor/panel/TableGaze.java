package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Pointed;
import easewright.editor.paint.Viewport;
import easewright.geom.Box;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Bounds;

/** Looks at what lies on the table: brings all of it, a piece or a place into the view, and follows what changes. */
final class TableGaze {
    private final TableOutlook outlook = new TableOutlook();
    private final TableSight sight;
    private final Strays strays = new Strays();
    private final Runnable seen;
    private Optional<MarkHand> hand = Optional.empty();
    private boolean marksOpen;

    /**
     * @param seen asks for a new picture
     */
    TableGaze(TableSight sight, Runnable seen) {
        this.sight = sight;
        this.seen = seen;
    }

    /** What lies beside the pieces is of interest too while the hand that makes marks is at work. */
    void heed(MarkHand marks) {
        hand = Optional.of(marks);
    }

    Viewport view() {
        return outlook.view();
    }

    void resize(double width, double height) {
        outlook.resize(width, height);
        if (outlook.showsAll()) {
            fit();
        }
        seen.run();
    }

    /** Other work, another scale or a level that is out of view is looked at anew. */
    void follow(Desk before, Desk now) {
        boolean other = before == null
                || now.isOtherWork(before)
                || before.pattern().pieces().isEmpty();
        if (other
                || !before.pattern().scale().equals(now.pattern().scale())
                || !before.level().equals(now.level()) && isLevelOutOfView()) {
            fit();
        }
    }

    private boolean isLevelOutOfView() {
        return sight.levelAtWork().noneMatch(line -> outlook.holds(line.at(0.5)));
    }

    /** Shows everything where a change has made pieces outside the view or taken pieces away; the view keeps still under a hand that pulls. */
    void gather(boolean pulled) {
        boolean strayed = !pulled && strays.look(sight.scene().pieces(), outlook);
        if (strayed && !marksOpen) {
            fit();
        }
    }

    /** Marks have begun or ended to be made. */
    void marking(boolean open) {
        marksOpen = open;
        if (outlook.showsAll()) {
            fit();
        }
    }

    void fit() {
        outlook.fit(boxes());
        seen.run();
    }

    /**
     * Something is said over the foot of the view. Pieces that are all in view make room for it, and keep their places once
     * it is gone.
     *
     * @param pulled whether a hand pulls a seam, under which the view keeps still
     */
    void makeRoom(Bounds said, boolean pulled) {
        outlook.layOver(said);
        if (outlook.showsAll() && !pulled && outlook.lieUnder(boxes())) {
            fit();
        }
    }

    private List<Box> boxes() {
        Stream<Box> beside = hand.filter(MarkHand::isOpen).stream().flatMap(MarkHand::beside);
        return Stream.concat(sight.boxes(), beside).toList();
    }

    void zoom(double factor) {
        outlook.zoom(factor);
        seen.run();
    }

    void zoomAt(double factor, double x, double y) {
        outlook.zoomAt(factor, x, y);
        seen.run();
    }

    void move(double dx, double dy) {
        outlook.move(dx, dy);
        seen.run();
    }

    void show(String pieceId) {
        sight.scene().pieces().stream()
                .filter(p -> p.piece().id().equals(pieceId))
                .findFirst()
                .ifPresent(p -> outlook.centre(p.piece().outline().box().centre()));
        seen.run();
    }

    /** Its own pieces and those of every size: the other sizes lie round them and stay in reach. */
    void showSize(String size) {
        outlook.fitPart(
                sight.boxes(p -> p.size().map(size::equals).orElse(true)).toList());
        seen.run();
    }

    void show(Pointed what) {
        what.around().ifPresentOrElse(outlook::fill, () -> show(what.piece()));
        seen.run();
    }

    void showIfAway(Pointed what) {
        if (!what.around().map(outlook::holds).orElse(true)) {
            show(what);
        }
    }
}
