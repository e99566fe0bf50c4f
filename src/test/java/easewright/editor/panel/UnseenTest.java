package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

class UnseenTest {
    /** In the picture after it was hidden the toolkit still has something to take away. */
    @Test
    void aPageIsPassedOverFromTheSecondPictureInWhichItIsHidden() {
        Region page = new Region();
        Unseen unseen = new Unseen();
        assertThat(unseen.is(page)).isFalse();
        page.setVisible(false);
        assertThat(unseen.is(page)).isFalse();
        assertThat(unseen.is(page)).isTrue();
        assertThat(unseen.is(page)).isTrue();
        page.setVisible(true);
        assertThat(unseen.is(page)).isFalse();
        assertThat(unseen.is(page)).isFalse();
    }
}
