package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Legend;
import easewright.editor.model.TableScenes;
import easewright.editor.paint.TableScene;
import easewright.geom.Box;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What lies on the table to be seen, which the hand that makes marks has a say in. */
final class TableSight {
    private final TableScenes scenes = new TableScenes();
    /** The desk as it is to be seen, which while suggestions are looked at is not quite as it is. */
    private final ReadOnlyObjectWrapper<Desk> seen = new ReadOnlyObjectWrapper<>();

    /** The meanings of the lines that are drawn. */
    private final ReadOnlyObjectWrapper<Legend> legend = new ReadOnlyObjectWrapper<>(Legend.NONE);

    private TableScene scene = TableScene.EMPTY;

    /** The level that is marked. */
    private Optional<String> level = Optional.empty();

    void take(Desk desk, Optional<MarkHand> hand) {
        seen.set(seen(desk, hand));
        level = hand.flatMap(MarkHand::level);
        scenes.forMarks(hand.map(MarkHand::isOpen).orElse(false), level);
        scene = scenes.of(seen.get(), hand.map(MarkHand::isScaling).orElse(false));
        legend.set(desk.isOpen() ? Legend.of(scene, desk.pointed()) : Legend.NONE);
    }

    /** Whether the desk would be seen otherwise than it is. */
    boolean isOutdated(Desk desk, Optional<MarkHand> hand) {
        return seen(desk, hand) != seen.get() || !hand.flatMap(MarkHand::level).equals(level);
    }

    private static Desk seen(Desk desk, Optional<MarkHand> hand) {
        return hand.map(h -> h.seen(desk)).orElse(desk);
    }

    ReadOnlyObjectProperty<Desk> seenProperty() {
        return seen.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Legend> legendProperty() {
        return legend.getReadOnlyProperty();
    }

    TableScene scene() {
        return scene;
    }

    /** The boxes round the pieces and the cutting lines drawn around them, mm. */
    Stream<Box> boxes() {
        return boxes(p -> true);
    }

    /** The same of some pieces. */
    Stream<Box> boxes(Predicate<Piece> wanted) {
        return scene.pieces().stream()
                .filter(p -> wanted.test(p.piece()))
                .flatMap(p -> Stream.concat(
                        Stream.of(p.piece().outline().box()),
                        p.riders().stream()
                                .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                                .flatMap(r -> r.segments().stream())
                                .map(Segment::box)));
    }

    /** The lines of the level at work. */
    Stream<? extends Segment> levelAtWork() {
        return scene.pieces().stream()
                .flatMap(p -> p.levels().stream())
                .filter(TableScene.LevelSight::chosen)
                .flatMap(TableScene.LevelSight::lines);
    }
}
