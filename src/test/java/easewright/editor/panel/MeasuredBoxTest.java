package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

class MeasuredBoxTest {
    @Test
    void partsAreMeasuredOnceAtAWidthUntilOneOfThemChanges() {
        AtomicInteger measured = new AtomicInteger();
        // It is as high as it takes at a width, as words are that wrap, so that the toolkit remembers nothing of it.
        Region part = new Region() {
            private double area = 6000;

            @Override
            public Orientation getContentBias() {
                return Orientation.HORIZONTAL;
            }

            @Override
            protected double computePrefHeight(double width) {
                measured.incrementAndGet();
                return area / width;
            }

            @Override
            public void requestLayout() {
                area *= 2;
                super.requestLayout();
            }
        };
        MeasuredBox box = new MeasuredBox(part);
        double high = box.prefHeight(100);
        measured.set(0);
        assertThat(box.prefHeight(100)).isEqualTo(high);
        assertThat(measured).as("the same width again").hasValue(0);
        assertThat(box.prefHeight(50)).isEqualTo(2 * high);
        assertThat(box.prefHeight(100)).isEqualTo(high);
        assertThat(measured).as("another width").hasValue(1);
        part.requestLayout();
        assertThat(box.prefHeight(100)).as("with other words").isEqualTo(2 * high);
    }

    @Test
    void aPartThatGrowsWhileItIsGivenItsPlaceIsMeasuredAnew() {
        Region part = new Region() {
            @Override
            public void resize(double width, double height) {
                super.resize(width, height);
                setPrefHeight(40);
            }
        };
        part.setPrefHeight(20);
        MeasuredBox box = new MeasuredBox(part);
        box.resize(100, 20);
        assertThat(box.prefHeight(100)).isEqualTo(20);
        box.layout();
        assertThat(box.prefHeight(100)).isEqualTo(40);
    }
}
