package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Legend;
import easewright.editor.paint.Ink;
import easewright.text.Words;
import java.util.Locale;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableNumberValue;
import javafx.geometry.Pos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;

/** Says in a corner of the table what the lines mean that a change brings there. */
public final class LegendBar extends FlowPane {
    private static final double LONG = 18;

    /** How high the sample of a line is, so that all stand alike, pixels. */
    private static final double HIGH = 10;

    /** How large the sample of a ring is, as near to that on the table as a row has room for, pixels. */
    private static final double RING = 7;

    /** From the edge of the table, pixels. */
    private static final double MARGIN = 14;

    /** From the head of the table, where the labels above the pieces begin a little below, pixels. */
    private static final double HEAD = 4;

    private final ReadOnlyObjectProperty<Legend> legend;
    private final ReadOnlyObjectProperty<Desk> seen;
    private final ObservableNumberValue across;
    private final ObservableNumberValue room;
    private final ObservableBooleanValue asks;
    private final ReadOnlyBooleanWrapper atFoot = new ReadOnlyBooleanWrapper();
    private Legend shown = Legend.NONE;
    private boolean dark;

    /**
     * @param legend what is drawn on the table
     * @param seen   what the table shows
     * @param across how wide the table is, pixels
     * @param room   how much there is beside the buttons in the other corner, pixels; with less it stands at the head of
     *               the table, in two rows if it must
     * @param asks   whether a click on the table is asked for: then what is there is not to be covered, and without room
     *               it waits
     */
    public LegendBar(
            ReadOnlyObjectProperty<Legend> legend,
            ReadOnlyObjectProperty<Desk> seen,
            ObservableNumberValue across,
            ObservableNumberValue room,
            ObservableBooleanValue asks) {
        this.legend = legend;
        this.seen = seen;
        this.across = across;
        this.room = room;
        this.asks = asks;
        setId("legend");
        getStyleClass().add("legend");
        setAlignment(Pos.CENTER_LEFT);
        setMouseTransparent(true);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        setVisible(false);
        across.addListener(o -> place());
        room.addListener(o -> place());
        asks.addListener(o -> place());
        legend.addListener(o -> show());
        seen.addListener(o -> show());
        show();
    }

    private void place() {
        double inRow = inRow();
        double around = snappedLeftInset() + snappedRightInset();
        boolean beside = inRow + around <= room.doubleValue();
        setPrefWrapLength(beside ? inRow : Math.min(inRow, across.doubleValue() - 2 * MARGIN - around));
        StackPane.setAlignment(this, beside ? Pos.BOTTOM_RIGHT : Pos.TOP_RIGHT);
        setTranslateY(beside ? -MARGIN : HEAD);
        setVisible(!shown.signs().isEmpty() && (beside || !asks.get()));
        atFoot.set(isVisible() && beside);
    }

    /** Whether it is to be seen, and stands at the foot of the table. */
    ReadOnlyBooleanProperty atFootProperty() {
        return atFoot.getReadOnlyProperty();
    }

    /** How wide all of it is in one row, pixels. */
    private double inRow() {
        double wide = getChildren().stream()
                .mapToDouble(n -> snapSizeX(n.prefWidth(-1)))
                .sum();
        return wide + snapSpaceX(getHgap()) * Math.max(0, getChildren().size() - 1);
    }

    private void show() {
        Legend now = legend.get();
        Desk desk = seen.get();
        if (desk == null || now.equals(shown) && desk.dark() == dark) {
            return;
        }
        shown = now;
        dark = desk.dark();
        getChildren()
                .setAll(now.signs().stream().map(s -> said(s, desk.words())).toList());
        if (getScene() != null) {
            // How wide words are is known once they have their style.
            applyCss();
        }
        place();
    }

    private Label said(Legend.Sign sign, Words words) {
        // Within a box of one size, so that lines of all shapes have their words at one height.
        Rectangle box = new Rectangle(LONG, HIGH, Color.TRANSPARENT);
        Label label = new Label(
                words.of("editor.legend." + sign.name().toLowerCase(Locale.ROOT)), new Group(box, line(sign)));
        label.setMinWidth(USE_PREF_SIZE);
        return label;
    }

    /** The line as the table draws it. */
    private Node line(Legend.Sign sign) {
        Ink ink = dark ? Ink.DARK : Ink.LIGHT;
        double y = HIGH / 2;
        return switch (sign) {
            case MOVED -> line(ink.moved(), 3.2, 0, y, LONG, y);
            case DONE -> line(ink.moved(), 2, 0, y, LONG, y);
            case BEFORE -> {
                Polyline dotted = line(ink.ghost(), 1.4, 0, y, LONG, y);
                dotted.getStrokeDashArray().setAll(2.0, 3.0);
                yield dotted;
            }
            case KEPT ->
                new Group(line(ink.guard(), 2.6, 0, y - 2, LONG, y - 2), pin(ink, LONG / 4), pin(ink, LONG * 3 / 4));
            case GUARDED ->
                new Group(line(ink.line(), 1.4, 0, y - 2, LONG, y - 2), pin(ink, LONG / 4), pin(ink, LONG * 3 / 4));
            case REDRAWN -> line(ink.moved(), 2.4, 0, y, LONG, y);
            case PLACE -> {
                Circle ring = new Circle(LONG / 2, y, RING, Color.TRANSPARENT);
                ring.setStroke(ink.moved());
                ring.setStrokeWidth(2);
                yield ring;
            }
            case STITCHED -> {
                Polyline dashed = line(ink.line(), 1.6, 0, y, LONG, y);
                dashed.getStrokeDashArray().setAll(7.0, 4.0);
                yield dashed;
            }
            case DRIFTED -> line(ink.moved(), 1.6, 0, 2, 4.5, 7, 9, 2, 13.5, 7, LONG, 2);
            case UNFIT -> line(ink.moved(), 1.1, 0, 3, 4.5, 7, 9, 3, 13.5, 7, LONG, 3);
        };
    }

    /** One of the short lines on the inner side of a protected edge. */
    private static Line pin(Ink ink, double x) {
        Line pin = new Line(x, HIGH / 2 - 2, x, HIGH - 1);
        pin.setStroke(ink.guard());
        pin.setStrokeWidth(1.4);
        return pin;
    }

    private static Polyline line(Color color, double width, double... corners) {
        Polyline line = new Polyline(corners);
        line.setStroke(color);
        line.setStrokeWidth(width);
        return line;
    }
}
