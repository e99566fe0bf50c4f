package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

class SampleTest {
    @Test
    void theirPicturesAreThoseOfTheDrafts() throws Exception {
        assertThat(Files.readString(SamplePictures.FILE))
                .as("run SamplePictures if a draft has changed")
                .isEqualTo(SamplePictures.all());
    }

    @Test
    void everySampleHasAName() {
        Words words = Words.english(LengthUnit.CM);
        assertThat(Sample.all())
                .hasSize(4)
                .allSatisfy(s -> assertThat(s.title(words)).doesNotContain("editor."));
    }
}
