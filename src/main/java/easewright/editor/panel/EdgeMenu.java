package easewright.editor.panel;

import easewright.editor.mark.SeamsView.EdgeChoice;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;

/** Edges to be chosen from, piece by piece: those of the piece in hand come first, the others each behind its name. */
final class EdgeMenu {
    private EdgeMenu() {}

    /**
     * @param inHand id of the piece in hand
     * @param taker  told which one is chosen
     */
    static void fill(
            MenuButton menu,
            List<EdgeChoice> edges,
            Pattern pattern,
            Optional<String> inHand,
            Consumer<EdgeChoice> taker) {
        Map<String, List<EdgeChoice>> byPiece = new LinkedHashMap<>();
        inHand.ifPresent(id -> byPiece.put(id, new ArrayList<>()));
        edges.forEach(
                e -> byPiece.computeIfAbsent(e.piece(), id -> new ArrayList<>()).add(e));
        byPiece.values().removeIf(List::isEmpty);
        menu.getItems().clear();
        if (byPiece.size() == 1) {
            edges.forEach(e -> menu.getItems().add(item(e.words(), e, taker)));
            return;
        }
        byPiece.forEach((id, its) -> {
            Menu piece = new Menu(pattern.piece(id).map(Piece::name).orElse(id));
            piece.setMnemonicParsing(false);
            its.forEach(e -> piece.getItems().add(item(e.ref().edge(), e, taker)));
            menu.getItems().add(piece);
        });
    }

    private static MenuItem item(String words, EdgeChoice edge, Consumer<EdgeChoice> taker) {
        MenuItem item = new MenuItem(words);
        item.setMnemonicParsing(false);
        item.setOnAction(e -> taker.accept(edge));
        return item;
    }
}
