package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Files opened lately are told by where people say that they lie. */
class RecentPlacesTest {
    private static final Path HOME = Path.of("/home/ida");

    private static List<String> places(String... files) {
        return RecentPlaces.of(List.of(files).stream().map(Path::of).toList(), HOME);
    }

    @Test
    void aPlaceIsTheNameOfItsFolder() {
        assertThat(places(
                        "/home/ida/skirt.svg",
                        "/home/ida/Sewing/skirt-wide.svg",
                        "/home/ida/Sewing/2026/Skirts/long.svg",
                        "/media/stick/Patterns/coat.svg",
                        "/coat-of-all.svg",
                        "/tmp/hat.svg"))
                .containsExactly("~", "~/Sewing", "~/\u2026/Skirts", "Patterns", "/", "/tmp");
    }

    @Test
    void filesOfOneNameAreToldApart() {
        assertThat(places(
                        "/home/ida/Sewing/2025/Skirts/long.svg",
                        "/home/ida/Sewing/2026/Skirts/long.svg",
                        "/media/stick/a/Skirts/long.svg",
                        "/media/stick/b/Skirts/long.svg"))
                .containsExactly("~/\u2026/2025/Skirts", "~/\u2026/2026/Skirts", "a/Skirts", "b/Skirts");
    }
}
