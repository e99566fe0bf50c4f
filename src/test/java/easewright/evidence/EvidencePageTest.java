package easewright.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * {@code docs/evidence.md} says what the checks say. {@code mvn test -Dtest=EvidencePageTest -Devidence=write} writes
 * it anew.
 */
class EvidencePageTest {
    private static final Path PAGE = Path.of("docs", "evidence.md");

    private static final List<Topic> TOPICS = List.of(
            new CurveLengthsTest(),
            new AreasTest(),
            new OffsetsTest(),
            new LevelsTest(),
            new DrawingsTest(),
            new EaseFiguresTest(),
            new StretchFiguresTest(),
            new SizeTablesTest(),
            new AnsurTest(),
            new BodyNamesTest(),
            new CircleSkirtsTest(),
            new SeamExamplesTest(),
            new SlashExamplesTest(),
            new HandbookSkirtTest(),
            new SleeveTest(),
            new PapersTest());

    @Test
    void pageIsUpToDate() throws Exception {
        String page = Page.of(TOPICS);
        if ("write".equals(System.getProperty("evidence"))) {
            Files.writeString(PAGE, page);
        }
        assertThat(Page.firstDifference(Files.readString(PAGE), page))
                .as("docs/evidence.md; run with -Devidence=write to write it anew")
                .isEmpty();
    }

    @Test
    void everyTopicIsOnThePage() {
        List<String> all = new ClassFileImporter()
                .importPackages("easewright.evidence").stream()
                        .filter(c -> c.isAssignableTo(Topic.class))
                        .filter(c -> !c.getModifiers().contains(JavaModifier.ABSTRACT))
                        .map(c -> c.getSimpleName())
                        .toList();
        assertThat(TOPICS).extracting(t -> t.getClass().getSimpleName()).containsExactlyInAnyOrderElementsOf(all);
    }
}
