package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.PropertyResourceBundle;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

/** Java's own reader of such files is the oracle. */
class LinesTest {
    @Test
    void readsTheBundleAsJavaDoes() throws IOException {
        ResourceBundle java;
        try (Reader in =
                new InputStreamReader(Lines.class.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8)) {
            java = new PropertyResourceBundle(in);
        }
        ResourceBundle ours = new Lines("messages.properties");
        assertThat(Collections.list(ours.getKeys()))
                .hasSizeGreaterThan(1000)
                .containsExactlyInAnyOrderElementsOf(Collections.list(java.getKeys()));
        for (String key : Collections.list(java.getKeys())) {
            assertThat(ours.getString(key)).as(key).isEqualTo(java.getString(key));
        }
    }

    @Test
    void aKeyWithoutALineIsMissed() {
        assertThat(new Lines("messages.properties").containsKey("no.such.line")).isFalse();
    }
}
