package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sizes that lie over each other have one title together. */
class NestTitlesTest {
    private static final Words WORDS = Words.english(LengthUnit.CM);

    private static Piece piece(String name, double x, double side) {
        Outline square = Outline.polygon(
                List.of(new Point(x, 0), new Point(x + side, 0), new Point(x + side, side), new Point(x, side)));
        return Piece.bare(name, square);
    }

    private static Piece sized(String name, String size, double x, double side) {
        return piece(name + " " + size, x, side).toBuilder()
                .size(Optional.of(size))
                .build();
    }

    private static List<String> titles(List<Piece> pieces, List<String> at) {
        Map<String, NestTitles.Title> titles = new NestTitles().of(pieces, at, WORDS);
        return pieces.stream()
                .map(p -> titles.getOrDefault(p.id(), NestTitles.Title.of(p)).words())
                .toList();
    }

    @Test
    void theSmallestSizeSpeaksForAllThatLieOverIt() {
        List<Piece> nest = List.of(
                sized("Front", "14", 0, 120),
                sized("Front", "10", 10, 100),
                sized("Front", "12", 5, 110),
                sized("Back", "10", 500, 100));
        assertThat(titles(nest, List.of())).containsExactly("", "Front \u00b7 14, 10, 12", "", "Back 10");
        assertThat(new NestTitles()
                        .of(nest, List.of(), WORDS)
                        .get(nest.get(1).id())
                        .size())
                .as("whose measures stand below")
                .contains("10");
    }

    @Test
    void onlySizesAtWorkAreNamed() {
        List<Piece> nest =
                List.of(sized("Front", "10", 10, 100), sized("Front", "12", 5, 110), sized("Front", "14", 0, 120));
        assertThat(titles(nest, List.of("12"))).containsExactly("", "Front 12", "");
        assertThat(titles(nest, List.of("12", "14"))).containsExactly("", "Front \u00b7 12, 14", "");
    }

    @Test
    void beforeSizesAreMarkedTheEndsOfNamesTellThem() {
        List<Piece> nest = List.of(piece("front-36", 0, 100), piece("front-38", 0, 104), piece("pocket", 20, 30));
        assertThat(titles(nest, List.of())).containsExactly("front \u00b7 36, 38", "", "pocket");
    }

    @Test
    void beforeSizesAreMarkedTheBeginningsOfNamesTellThemToo() {
        List<Piece> nest = List.of(piece("38 Front", 0, 100), piece("40 Front", 0, 104), piece("Pocket", 20, 30));
        assertThat(titles(nest, List.of())).containsExactly("Front \u00b7 38, 40", "", "Pocket");
    }

    /** They are one piece for levels and changes as well. */
    @Test
    void capitalsMakeNoOtherPiece() {
        assertThat(titles(List.of(sized("Front", "10", 10, 100), sized("front", "12", 5, 110)), List.of()))
                .containsExactly("Front \u00b7 10, 12", "");
    }

    @Test
    void whatLiesApartOrIsAnotherPieceKeepsItsName() {
        assertThat(titles(List.of(sized("Front", "10", 0, 100), sized("Front", "12", 130, 110)), List.of()))
                .containsExactly("Front 10", "Front 12");
        assertThat(titles(List.of(sized("Front", "10", 0, 100), sized("Lining", "12", 0, 110)), List.of()))
                .containsExactly("Front 10", "Lining 12");
    }

    @Test
    void ofManySizesTheFirstAndTheLastAreTold() {
        List<Piece> nest = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            nest.add(sized("Sleeve", String.valueOf(34 + 2 * i), 0, 100 + 5 * i));
        }
        assertThat(titles(nest, List.of()).get(0)).isEqualTo("Sleeve \u00b7 34\u201344");
    }
}
