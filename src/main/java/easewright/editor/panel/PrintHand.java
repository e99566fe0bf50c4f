package easewright.editor.panel;

import easewright.editor.model.Begun;
import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;

/**
 * What is half typed in the window for prints. What a crash left of it waits here until that window is opened, and then
 * in its fields there.
 */
public final class PrintHand {
    private final Runnable changed;
    private Optional<HalfTyped> open = Optional.empty();
    private List<Begun.Typed> left = List.of();

    /**
     * @param changed something may have been typed there
     */
    PrintHand(Runnable changed) {
        this.changed = changed;
    }

    /**
     * The window is open.
     *
     * @param remark that a text waits, and how it is taken
     */
    void opened(Scene scene, String remark) {
        HalfTyped fields = new HalfTyped(scene);
        open = Optional.of(fields);
        List<Begun.Typed> before = left;
        left = fields.again(before, remark);
        if (fields.hidesWaiting() && scene.lookup("#print-kind-report") instanceof ToggleButton report) {
            report.fire();
        }
        fields.takeKeys(before);
    }

    /** Something may have been typed. */
    void touched() {
        changed.run();
    }

    /** The window is closed: what stood there half typed is given up. */
    void closed() {
        open = Optional.empty();
        left = List.of();
        changed.run();
    }

    List<Begun.Typed> typed() {
        return open.map(fields -> fields.in(field -> Begun.PRINT)).orElse(left);
    }

    /** Holds what a crash left. */
    void again(List<Begun.Typed> typed) {
        left = typed;
    }

    /** What lies on the table is other work. */
    void forget() {
        left = List.of();
    }
}
