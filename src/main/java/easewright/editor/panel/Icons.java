package easewright.editor.panel;

import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.SVGPath;

/** Our own small drawings for buttons, as paths on a field of 20 × 20, stroked in the colour of the text. */
final class Icons {
    /** A sheet of paper lifted out of a folder. */
    static final String OPEN = "M2.5 7.5v9h15v-9h-6l-2-2.5h-7zM5 12.5h10";
    /** An arrow laid down on a line. */
    static final String SAVE = "M10 2.5v9.5M6 8.5l4 4 4-4M3 13.5v4h14v-4";
    /** A sheet with an arrow leaving it. */
    static final String EXPORT = "M11 4.5h-7.5v12h12v-7M10 10.5l7-7M12.5 3.5h4.5v4.5";

    /** A sheet coming out of a printer. */
    static final String PRINT = "M6 7v-4.5h8v4.5M6 13.5h-2.5v-6.5h13v6.5h-2.5M6 11.5h8v6h-8z";

    static final String UNDO = "M4 8.5h8.5a4 4 0 0 1 0 8h-4M7.5 4.5l-4 4 4 4";
    static final String REDO = "M16 8.5h-8.5a4 4 0 0 0 0 8h4M12.5 4.5l4 4-4 4";
    /** A lamp. */
    static final String LAMP = "M6.5 3.5h7l2.5 7h-12zM10 10.5v5M6.5 16.5h7";
    /** A frame with its content fitted in. */
    static final String ALL = "M3.5 7v-3.5h3.5M13 3.5h3.5v3.5M16.5 13v3.5h-3.5M7 16.5h-3.5v-3.5M7.5 7.5h5v5h-5z";

    /** Earlier and later in a list. */
    static final String UP = "M10 15.5v-11M5.5 9l4.5-4.5 4.5 4.5";

    static final String DOWN = "M10 4.5v11M5.5 11l4.5 4.5 4.5-4.5";
    /** Away to the edge, and back from it. */
    static final String FOLD = "M4.5 7.5l5.5 5.5 5.5-5.5";

    static final String UNFOLD = "M4.5 12.5l5.5-5.5 5.5 5.5";
    /** Cut away. */
    static final String AWAY = "M5.5 5.5l9 9M14.5 5.5l-9 9";

    static final String NEARER = "M10 4.5v11M4.5 10h11";
    static final String FARTHER = "M4.5 10h11";
    /** A tape with its marks. */
    static final String TAPE = "M2.5 7h15v6h-15zM5.5 7v3M8.5 7v2M11.5 7v3M14.5 7v2";

    /** A keyboard. */
    static final String KEYS = "M2.5 5.5h15v9h-15zM5.2 8.5h1.2M8.2 8.5h1.2M11.2 8.5h1.2M14.2 8.5h.8M6.5 11.5h7";

    /** A drawn sheet that shows under another. */
    static final String DRAWING = "M3 3h10v10h-10zM7 16.5h9.5v-9.5M5.5 10.5l2-3 2 2 1.5-3";

    private Icons() {}

    static Node of(String path) {
        SVGPath shape = new SVGPath();
        shape.setContent(path);
        shape.getStyleClass().add("icon-line");
        StackPane field = new StackPane(shape);
        field.setMinSize(20, 20);
        field.setMaxSize(20, 20);
        field.setMouseTransparent(true);
        return field;
    }
}
