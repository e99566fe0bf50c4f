package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Slips of the hand on a command line: what was meant is done where it is clear, and asked where it is not. */
class SlipsTest {
    private static final Path SKIRT = Path.of("sample-pieces/skirt.svg");

    private static Run at(String level, String... more) {
        List<Object> line =
                new java.util.ArrayList<>(List.of("change", SKIRT, "--at", level, "--try", "--json", "--by"));
        line.addAll(List.of(more));
        return Run.of(line.toArray());
    }

    private static double grown(Run run) {
        return Run.girth(run.json().path("after"), "hip") - Run.girth(run.json().path("before"), "hip");
    }

    @ParameterizedTest
    @CsvSource({
        "+24 mm, 24",
        "+ 24 mm, 24",
        "1 1/2 in, 38.1",
        "- 1 1/2 in, -38.1",
        "1 ½ in, 38.1",
        "5/8 inch, 15.875",
        "-12.5 mm --carry, -12.5"
    })
    void anAmountMayBeWrittenInSeveralWords(String words, double mm) {
        Run run = at("hip", words.split(" "));
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(Commands.FAULTS);
        assertThat(grown(run)).isCloseTo(mm, org.assertj.core.api.Assertions.within(0.01));
    }

    @Test
    void otherWordsAreNotDrawnIntoAnAmount() {
        assertThat(Joined.amounts(
                        new ChangeCommand().grammar(),
                        List.of("change", "--by", "1", "in", "2", "mm", "--at", "5", "mm", "--set", "below=1", "1/2")))
                .containsExactly("change", "--by", "1 in", "2", "mm", "--at", "5", "mm", "--set", "below=1 1/2");
    }

    @Test
    void saysWhatALengthWithoutAUnitWasTakenFor() {
        Run centimetres = at("hip", "2");
        assertThat(centimetres.err()).contains("\"2\" has no unit and was taken as 2 cm", "2mm", "--unit");
        assertThat(grown(centimetres)).isCloseTo(20, org.assertj.core.api.Assertions.within(0.01));
        Run inches = at("hip", "1/2", "--unit", "inch");
        assertThat(inches.err()).contains("taken as 1/2 in");
        assertThat(grown(inches)).isCloseTo(12.7, org.assertj.core.api.Assertions.within(0.01));
        assertThat(at("hip", "2 cm").err()).doesNotContain("taken as");
        assertThat(at("hip", "0").err()).doesNotContain("taken as");
        Run scale = Run.of("measure", SKIRT, "--scale", "0.1");
        assertThat(scale.err()).contains("taken as 0.1 cm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "chnge FILE | change",
                "mesure FILE | measure",
                "change FILE --att hip --by 1cm --try | --at",
                "change FILE --at hipp --by 1cm --try | hip",
                "change FILE --at hip --by 1cm --try --cary | --carry",
                "change FILE --at hip --by 1cm --try --method slahs | slash",
                "change FILE --at hip --by 1cm --try --edge bakc/side | Back",
                "change FILE --at hip --by 1cm --try --edge back/sied | side",
                "change FILE --at hip --by 1cm --try --set evn=yes | even",
                "print FILE -o out.pdf --paper leter | letter",
                "print FILE -o out.pdf --kind cord | cords"
            })
    void namesWhatWasProbablyMeant(String line, String meant) {
        Run run = Run.of((Object[]) line.replace("FILE", SKIRT.toString()).split(" "));
        assertThat(run.code()).as(run.err()).isGreaterThanOrEqualTo(Commands.REFUSED);
        assertThat(run.err()).contains("Did you mean " + meant + "?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"whatever", "x"})
    void doesNotMakeUpAMeaning(String command) {
        Run run = Run.of(command);
        assertThat(run.code()).isEqualTo(Commands.USAGE);
        assertThat(run.err()).contains(command, "measure").doesNotContain("Did you mean");
    }

    @ParameterizedTest
    @CsvSource({
        "print, FILE is missing",
        "change FILE --at, --at needs a value after it: LEVEL",
        "change FILE --at --by 1cm, --at needs a value",
        "change FILE --at hip --at waist --by 1cm, --at is there more than once"
    })
    void saysWhatIsMissingOrTooMuch(String line, String said) {
        Run run = Run.of((Object[]) line.replace("FILE", SKIRT.toString()).split(" "));
        assertThat(run.code()).isEqualTo(Commands.USAGE);
        assertThat(run.err()).contains(said);
    }

    @Test
    void saysThatNamesOfSeveralWordsNeedQuotes() {
        Run run = Run.of("change", SKIRT, "--at", "high", "hip", "--by", "1cm", "--try");
        assertThat(run.code()).isEqualTo(Commands.USAGE);
        assertThat(run.err()).contains("\"hip\"", "quotes");
    }

    @Test
    void oneWayCanBeDescribedAlone() {
        Run slash = Run.of("methods", "Slash");
        assertThat(slash.code()).isZero();
        assertThat(slash.out()).contains("--method slash").doesNotContain("--method seam");
        assertThat(Run.of("methods", "wedge").out()).contains("--method centre");
        Run slip = Run.of("methods", "slosh");
        assertThat(slip.code()).isEqualTo(Commands.REFUSED);
        assertThat(slip.err()).contains("Did you mean slash?");
        assertThat(Run.of("methods", "slash", "seam").code()).isEqualTo(Commands.USAGE);
    }
}
