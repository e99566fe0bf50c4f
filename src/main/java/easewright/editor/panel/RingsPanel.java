package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Rings;
import easewright.editor.model.Session;
import easewright.editor.paint.Ink;
import easewright.editor.paint.RingPainter;
import easewright.text.Words;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Body and garment at each level, as seen from above, to scale. */
public final class RingsPanel extends SheetPage {
    private static final double LEAST_HIGH = 72;
    /** Of a ring, pixels, where there are so many: few are drawn so large that the air between the lines is seen. */
    private static final double[] SIZES = {196, 196, 196, 160};

    private static final double OF_MANY = 132;

    private final Label intro = new Label();
    private final VBox list = new VBox(14);

    public RingsPanel(Session session) {
        super(session, "rings");
        intro.getStyleClass().add("page-intro");
        intro.setWrapText(true);
        list.getStyleClass().add("ring-list");
        begin(new VBox(14, intro, list));
    }

    @Override
    void show(Desk desk) {
        Words words = desk.words();
        Rings rings = Rings.of(desk.shownReading(), words);
        intro.setText(words.of(rings.rings().isEmpty() ? "editor.ease.none" : "editor.rings.intro"));
        double widest = rings.widest();
        Ink ink = desk.dark() ? Ink.DARK : Ink.LIGHT;
        int many = rings.rings().size();
        double size = many < SIZES.length ? SIZES[many] : OF_MANY;
        list.getChildren().clear();
        for (Rings.Ring ring : rings.rings()) {
            // A small ring takes no more height than it needs, in the same scale as the others.
            double share = Math.max(ring.body(), ring.garment()) / widest;
            double high = Math.min(size, Math.max(LEAST_HIGH, size * share + 8));
            Canvas canvas = new Canvas(size, high);
            canvas.getGraphicsContext2D().translate(0, (high - size) / 2);
            RingPainter.paint(canvas.getGraphicsContext2D(), size, widest, ring.body(), ring.garment(), ink);
            canvas.setAccessibleText(ring.words());
            Label name = new Label(ring.level());
            name.getStyleClass().add("section-title");
            name.setWrapText(true);
            name.setMinHeight(USE_PREF_SIZE);
            Label text = new Label(ring.words());
            text.setWrapText(true);
            VBox said = new VBox(4, name, text);
            said.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
            HBox.setHgrow(said, Priority.ALWAYS);
            list.getChildren().add(new HBox(16, canvas, said));
        }
    }
}
