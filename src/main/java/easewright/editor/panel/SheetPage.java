package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/**
 * A page beside the table. Scaling, measuring and wording take a moment, so a page that is not looked at waits until it
 * is.
 */
abstract class SheetPage extends ScrollPane {
    final Session session;

    SheetPage(Session session, String id) {
        this.session = session;
        setId(id);
        setVisible(false);
        setFitToWidth(true);
        getStyleClass().add("sheet-page");
        // A page that is read can be gone to, so that it can be scrolled by key and be heard as a whole.
        setFocusTraversable(true);
    }

    /** Fills the page, which from now on follows the desk. */
    final void begin(Region content) {
        setContent(content);
        BarRoom.keep(this);
        WholeLines.on(this, content);
        session.deskProperty().addListener((o, before, now) -> showIfSeen());
        visibleProperty().addListener(o -> showIfSeen());
        showIfSeen();
    }

    final void showIfSeen() {
        if (isVisible()) {
            show(session.desk());
        }
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.TEXT
                ? Heard.all(getContent())
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    /** Shows the desk as it is now. */
    abstract void show(Desk desk);
}
