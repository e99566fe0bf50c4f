package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The sizes of a nest are suggested by names and layers, with the reason, and not taken silently. */
class PieceSizeTest {
    private static Sheet sheet(String svg) throws Exception {
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "nest.svg");
        return new Sheet(file.pattern(), file.loose(file.pattern()), file.texts(), file.layerNames(file.pattern()));
    }

    private static List<PieceSize> sizes(Suggestions suggestions) {
        return suggestions.all().stream()
                .filter(PieceSize.class::isInstance)
                .map(PieceSize.class::cast)
                .toList();
    }

    @Test
    void byTheEndsOfNames() throws Exception {
        String bare = Samples.files().get("skirt-sizes.svg").replaceFirst("(?s)<metadata>.*</metadata>", "");
        Sheet sheet = sheet(bare);
        Suggestions all = Suggestions.of(sheet, Set.of());
        assertThat(sizes(all)).hasSize(9).allMatch(s -> s.reason().code().equals("size-in-name"));
        Pattern outcome = all.outcome();
        assertThat(PatternPart.sizes(outcome)).containsExactly("10", "12", "14");
        assertThat(sheet.pattern().pieces()).allMatch(p -> p.size().isEmpty());
        // One seam for all sizes, sewn in each of them.
        assertThat(outcome.mates()).extracting(Mate::name).containsExactly("side seam", "waistband");
        assertThat(outcome.mates().get(0).first()).extracting(EdgeRef::piece).containsExactly("Back");
        assertThat(Measures.of(outcome).mates()).hasSize(6);
        SvgFile file = SvgFile.read(bare.getBytes(StandardCharsets.UTF_8), "nest.svg");
        assertThat(SvgFile.read(file.write(outcome), "again.svg").pattern()).isEqualTo(outcome);
    }

    @Test
    void byLayers() throws Exception {
        String layer = "<g inkscape:groupmode='layer' inkscape:label='%s'>"
                + "<path id='f%s' d='M%s 0h80v200h-80z'/><path id='b%s' d='M%s 300h80v200h-80z'/></g>";
        String svg =
                "<svg xmlns='http://www.w3.org/2000/svg' xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape'"
                        + " width='900mm' height='900mm' viewBox='0 0 900 900'>"
                        + layer.formatted("Size 10", "a", 10, "a", 10)
                        + layer.formatted("Size 12", "b", 210, "b", 210)
                        + "</svg>";
        List<PieceSize> sizes = sizes(Suggestions.of(sheet(svg), Set.of()));
        assertThat(sizes).extracting(PieceSize::size).containsExactly("10", "10", "12", "12");
        assertThat(sizes).allMatch(s -> s.reason().code().equals("size-of-layer"));
    }

    @Test
    void byLayersAndNamesThatBeginWithASize() throws Exception {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape'"
                        + " width='900mm' height='900mm' viewBox='0 0 900 900'>");
        StringBuilder names = new StringBuilder(svg);
        for (String size : List.of("8", "10", "12")) {
            int x = 70 * Integer.parseInt(size) - 550;
            svg.append("<g inkscape:groupmode='layer' inkscape:label='" + size + " Front'><path id='f" + size + "' d='M"
                    + x + " 0h80v200h-80z'/></g>");
            names.append(
                    "<path id='n" + size + "' d='M" + x + " 0h80v200h-80z'><title>" + size + " Front</title></path>");
        }
        List<PieceSize> byLayer = sizes(Suggestions.of(sheet(svg + "</svg>"), Set.of()));
        assertThat(byLayer).extracting(PieceSize::size).containsExactly("8", "10", "12");
        assertThat(byLayer).allMatch(s -> s.reason().code().equals("size-of-layer"));
        Suggestions byName = Suggestions.of(sheet(names + "</svg>"), Set.of());
        assertThat(sizes(byName)).extracting(PieceSize::size).containsExactly("8", "10", "12");
        assertThat(byName.outcome().pieces()).extracting(Piece::plainName).containsOnly("Front");
    }

    @Test
    void oneNumberAloneIsNoSize() throws Exception {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='900mm' viewBox='0 0 900 900'>"
                + "<path id='x' d='M0 0h80v200h-80z'><title>Front</title></path>"
                + "<path id='y' d='M200 0h80v200h-80z'><title>Pocket 2</title></path></svg>";
        assertThat(sizes(Suggestions.of(sheet(svg), Set.of()))).isEmpty();
    }
}
