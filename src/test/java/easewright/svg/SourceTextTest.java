package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SourceTextTest {
    /** Where it begins is told as editors count it, and in the words of the bundle alone. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <svg>~<g/>                      | 1
            <svg>~<g>~<path/>~</g           | 4
            <svg>~~<!-- a note              | 3
            <svg/>~</g>                     | 2
            <svg>~<path d=M0,0/></svg>      | 2
            <svg>~<path d="M0,0/></svg>     | 2
            <!DOCTYPE svg [                 | 1
            """)
    void whatIsTornIsToldByItsLine(String text, int line) {
        byte[] bytes = text.replace('~', '\n').getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> SourceText.of(bytes, "a.svg")).isInstanceOfSatisfying(SvgProblem.class, e -> {
            assertThat(e.code()).isEqualTo("tags-broken");
            assertThat(Words.english(LengthUnit.CM).problem(e.code(), e.values()))
                    .contains("a.svg", "line " + line + " ")
                    .doesNotContain("{", "element", "character");
        });
    }
}
