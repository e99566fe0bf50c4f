package easewright.editor.panel;

import javafx.beans.InvalidationListener;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableNumberValue;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * The foot of the table beside the buttons of the view, where the pieces leave room: what the next click does, and above
 * it what has just happened.
 */
public final class TableFoot extends VBox {
    private static final double APART = 14;
    private static final double LEAST = 200;
    private static final double MOST = 720;

    /** With less beside the legend, what has happened is told above it. */
    private static final double LEAST_TOLD = 300;

    private final HintBar hint;
    private final NoticeBar notice;
    private final Region beside;
    private final Region over;
    /** How wide and how high the legend is where it stands in the other corner, pixels. */
    private double taken;

    private double high;

    /**
     * @param beside what it stands beside
     * @param over   what it lies over
     */
    public TableFoot(HintBar hint, NoticeBar notice, Region beside, Region over) {
        super(6, notice, hint);
        this.hint = hint;
        this.notice = notice;
        this.beside = beside;
        this.over = over;
        setFillWidth(false);
        setAlignment(Pos.BOTTOM_LEFT);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        // Between the two lines the table is at hand.
        setPickOnBounds(false);
        InvalidationListener fits = o -> fit();
        over.widthProperty().addListener(fits);
        beside.widthProperty().addListener(fits);
        beside.visibleProperty().addListener(fits);
        fit();
    }

    /** What has happened is told beside the legend where there is room, else above it: the legend keeps its place. */
    public void standBeside(LegendBar legend) {
        InvalidationListener moved = o -> {
            taken = legend.atFootProperty().get() ? legend.getWidth() + APART : 0;
            high = legend.atFootProperty().get() ? legend.getHeight() + APART / 2 : 0;
            fit();
        };
        legend.atFootProperty().addListener(moved);
        legend.widthProperty().addListener(moved);
        legend.heightProperty().addListener(moved);
        hint.visibleProperty().addListener(moved);
    }

    private void fit() {
        double left = beside.isVisible() ? beside.getWidth() + 2 * APART : APART;
        StackPane.setAlignment(this, beside.isVisible() ? Pos.BOTTOM_LEFT : Pos.BOTTOM_CENTER);
        StackPane.setMargin(this, new Insets(APART, APART, APART, left));
        double widest = Math.max(LEAST, over.getWidth() - left - APART);
        hint.setMaxWidth(Math.min(MOST, widest));
        boolean fits = widest - taken >= LEAST_TOLD;
        notice.widest(fits ? widest - taken : widest);
        VBox.setMargin(notice, new Insets(0, 0, fits || hint.isVisible() ? 0 : high, 0));
    }

    /** How much of the foot of the table is taken while it says what the next click does, pixels; else 0. */
    public ObservableNumberValue roomProperty() {
        return Bindings.when(hint.visibleProperty())
                .then(hint.widthProperty().add(APART))
                .otherwise(0);
    }

    /** Whether it says what the next click does. */
    public ObservableBooleanValue asksProperty() {
        return hint.visibleProperty();
    }
}
