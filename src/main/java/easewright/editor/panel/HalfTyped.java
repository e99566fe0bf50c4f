package easewright.editor.panel;

import easewright.editor.model.Begun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;

/** What stands in the fields of the window and has not been taken yet. */
final class HalfTyped {
    private final Scene scene;

    HalfTyped(Scene scene) {
        this.scene = scene;
    }

    /**
     * In the order of the window.
     *
     * @param pageOf the key of the page on which a field is
     */
    List<Begun.Typed> in(Function<CheckedField, String> pageOf) {
        return fields().filter(field -> !field.getText().equals(field.shown()))
                .map(field -> new Begun.Typed(
                        pageOf.apply(field), id(field), field.called(), field.getText(), field.isFocused()))
                .toList();
    }

    private Stream<CheckedField> fields() {
        return scene.getRoot().lookupAll(".text-field").stream()
                .filter(CheckedField.class::isInstance)
                .map(CheckedField.class::cast);
    }

    private static String id(CheckedField field) {
        return field.getId() == null ? "" : field.getId();
    }

    /**
     * Puts texts back into their fields, as far as those are there now; they wait there until they are taken.
     *
     * @param remark that the text waits, and how it is taken
     * @return those without a field
     */
    List<Begun.Typed> again(List<Begun.Typed> before, String remark) {
        // What scrolls has its content only once it has its looks.
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        List<Begun.Typed> lost = new ArrayList<>();
        for (Begun.Typed typed : before) {
            Optional<CheckedField> field = fields().filter(f -> isOf(typed, f)).findFirst();
            field.ifPresentOrElse(f -> f.await(typed.text(), remark), () -> lost.add(typed));
        }
        return lost;
    }

    /** Whether a text waits where it is not to be seen. */
    boolean hidesWaiting() {
        return fields().anyMatch(field -> field.isWaiting() && !isShown(field));
    }

    private static boolean isShown(Node node) {
        return node.isVisible() && (node.getParent() == null || isShown(node.getParent()));
    }

    /** Brings back in all fields what was there before anything was typed. */
    void forget() {
        fields().forEach(CheckedField::forget);
    }

    /** Gives the keys to the field in which they were. */
    void takeKeys(List<Begun.Typed> before) {
        before.stream()
                .filter(Begun.Typed::keys)
                .flatMap(typed -> fields().filter(f -> f.isWaiting() && isOf(typed, f)))
                .findFirst()
                .ifPresent(field -> {
                    field.requestFocus();
                    field.end();
                    // What was made just now has no place yet.
                    Platform.runLater(field::toSight);
                });
    }

    /** A field of the same place that is called otherwise is one for something else. */
    private static boolean isOf(Begun.Typed typed, CheckedField field) {
        return typed.field().equals(field.called())
                && (typed.id().isEmpty() || typed.id().equals(id(field)));
    }
}
