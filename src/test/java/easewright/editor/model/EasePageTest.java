package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EasePageTest {
    private static final Pattern MARK = Pattern.compile("\\[(\\d+)\\]");

    private final Session session = new Session(LengthUnit.CM, false);

    private EasePage open(String garment) throws Exception {
        Sample sample = Sample.all().stream()
                .filter(s -> s.id().equals(garment))
                .findFirst()
                .orElseThrow();
        session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
        return page(Optional.empty());
    }

    private EasePage page(Optional<String> garment) {
        return EasePage.of(session.desk(), Garments.of(session.desk().pattern()), garment);
    }

    private List<String> sources(EasePage page) {
        return page.foot().lines(session.desk().words());
    }

    private EaseRow row(EasePage page, String level) {
        return page.rows().stream()
                .filter(r -> r.level().name().equals(level))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"skirt, skirt", "trousers, trousers", "bodice, dress", "knit-top, t-shirt"})
    void theLikelyGarmentIsFoundAndOnlyItsTablesSpeak(String sample, String garment) throws Exception {
        EasePage page = open(sample);
        assertThat(page.garment()).contains(garment);
        assertThat(Garments.of(session.desk().pattern()).all()).contains(garment);
        assertThat(sources(page)).noneMatch(s -> s.contains("leggings") || s.contains("coat"));
    }

    @ParameterizedTest
    @CsvSource({"skirt", "trousers", "bodice", "knit-top"})
    void everyWordLeadsToItsSourceAndEachSourceStandsOnce(String sample) throws Exception {
        EasePage page = open(sample);
        assertThat(new HashSet<>(sources(page))).hasSameSizeAs(sources(page));
        for (EaseRow row : page.rows()) {
            for (List<String> said : List.of(row.classes(), row.minimums())) {
                for (String each : said) {
                    Matcher mark = MARK.matcher(each);
                    assertThat(mark.find()).as(each).isTrue();
                    assertThat(sources(page).get(Integer.parseInt(mark.group(1)) - 1))
                            .startsWith(mark.group());
                    assertThat(each).containsPattern("\\d").doesNotContain("{", "editor.");
                }
            }
        }
    }

    @Test
    void tablesOfOneSourceDoNotContradictEachOther() throws Exception {
        EasePage page = open("knit-top");
        assertThat(row(page, "bust").classes()).hasSize(1);
        assertThat(row(page, "hip").classes()).isEmpty();
        assertThat(row(page(Optional.of("leggings")), "hip").classes()).hasSize(1);
        assertThat(row(page(Optional.of("")), "bust").classes()).isEmpty();
    }

    @Test
    void aBodyInAnotherUnitIsAskedAbout() throws Exception {
        open("skirt");
        session.setBody(session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(9850), "Hip girth");
        EaseRow row = row(page(Optional.empty()), "hip");
        assertThat(row.standing()).isEqualTo(EaseRow.Standing.UNLIKELY);
    }
}
