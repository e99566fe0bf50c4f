package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Legend;
import easewright.editor.paint.Ink;
import easewright.text.Words;
import java.util.Locale;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.value.ObservableNumberValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Polyline;

/** Says in a corner of the table what the lines mean that a change brings there. */
public final class LegendBar extends HBox {
    private static final double LONG = 18;

    /** From the edge of the table, pixels. */
    private static final double MARGIN = 14;

    /** From the head of the table, where the labels above the pieces begin a little below, pixels. */
    private static final double HEAD = 4;

    private Legend shown = Legend.NONE;
    private boolean dark;

    /**
     * @param seen what the table shows
     * @param room how much there is beside the buttons in the other corner, pixels; with less it stands at the head of the table
     */
    public LegendBar(ReadOnlyObjectProperty<Desk> seen, ObservableNumberValue room) {
        setId("legend");
        getStyleClass().add("legend");
        setAlignment(Pos.CENTER_LEFT);
        setMouseTransparent(true);
        widthProperty().addListener(o -> place(room));
        room.addListener(o -> place(room));
        place(room);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        setVisible(false);
        seen.addListener((o, before, now) -> show(now));
        show(seen.get());
    }

    private void place(ObservableNumberValue room) {
        boolean beside = getWidth() <= room.doubleValue();
        StackPane.setAlignment(this, beside ? Pos.BOTTOM_RIGHT : Pos.TOP_RIGHT);
        setTranslateY(beside ? -MARGIN : HEAD);
    }

    private void show(Desk desk) {
        Legend now = Legend.of(desk);
        if (now.signs().equals(shown.signs()) && desk.dark() == dark) {
            return;
        }
        shown = now;
        dark = desk.dark();
        setVisible(!now.signs().isEmpty());
        getChildren()
                .setAll(now.signs().stream().map(s -> said(s, desk.words())).toList());
    }

    private Label said(Legend.Sign sign, Words words) {
        Label label = new Label(words.of("editor.legend." + sign.name().toLowerCase(Locale.ROOT)), line(sign));
        label.setMinWidth(USE_PREF_SIZE);
        return label;
    }

    /** The line as the table draws it. */
    private Polyline line(Legend.Sign sign) {
        Ink ink = dark ? Ink.DARK : Ink.LIGHT;
        return switch (sign) {
            case MOVED -> line(ink.moved(), 3.2, 0, 0, LONG, 0);
            case BEFORE -> {
                Polyline dashed = line(ink.ghost(), 1.2, 0, 0, LONG, 0);
                dashed.getStrokeDashArray().setAll(5.0, 4.0);
                yield dashed;
            }
            case KEPT -> line(ink.guard(), 2.6, 0, 0, LONG, 0);
            case DRIFTED -> line(ink.moved(), 1.6, 0, 0, 4.5, 5, 9, 0, 13.5, 5, LONG, 0);
        };
    }

    private static Polyline line(Color color, double width, double... corners) {
        Polyline line = new Polyline(corners);
        line.setStroke(color);
        line.setStrokeWidth(width);
        return line;
    }
}
