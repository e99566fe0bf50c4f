package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LayerOptionTest {
    private static final String NEST = "<svg xmlns='http://www.w3.org/2000/svg' "
            + "xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape' width='400mm' height='400mm' "
            + "viewBox='0 0 400 400'>"
            + "<g inkscape:groupmode='layer' id='a' inkscape:label='Size 36'><path id='p36' d='M0 0H90V80H0Z'/></g>"
            + "<g inkscape:groupmode='layer' id='b' display='none' inkscape:label='Size 38'>"
            + "<path id='p38' d='M0 0H94V84H0Z'/></g></svg>";

    @TempDir
    private Path folder;

    @Test
    void readsTheLayerAskedForEvenIfHidden() throws Exception {
        Path file = Files.writeString(folder.resolve("nest.svg"), NEST);
        Run shown = Run.of("measure", file, "--json");
        assertThat(shown.json().path("pieces")).hasSize(1);
        assertThat(shown.json().path("pieces").get(0).path("name").asText()).isEqualTo("p36");
        assertThat(shown.out()).contains("--layer NAME");
        Run chosen = Run.of("measure", file, "--json", "--layer", "size 38", "--scale", "2mm");
        assertThat(chosen.json().path("pieces")).hasSize(1);
        assertThat(chosen.json().path("pieces").get(0).path("name").asText()).isEqualTo("p38");
        Run both = Run.of("measure", file, "--layer", "Size 40");
        assertThat(both.code()).isEqualTo(2);
        assertThat(both.err()).contains("Size 40").contains("Size 36, Size 38");
    }
}
