package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.editor.paint.TableScene;
import easewright.measure.Girth;
import easewright.pattern.Level;
import easewright.print.GirthText;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Who adds up the widths on the table finds the girth in the sheet; where equal ones cannot come to it, one step from it. */
class WidthsAddUpTest {
    private static final Pattern LABEL = Pattern.compile("(?:(?<times>\\d+) \u00d7 )?(?<width>.+)");

    /** What the labels of a level add up to, mm, as a calculator adds them. */
    private double sum(TableScene scene, Girth girth, Words words) throws Unreadable {
        double sum = 0;
        for (TableScene.PieceSight piece : scene.pieces()) {
            for (TableScene.LevelSight level : piece.levels()) {
                boolean own = girth.parts().stream()
                        .anyMatch(p -> p.pieceId().equals(piece.piece().id())
                                && p.level().equals(level.level()));
                if (!own || !level.counts()) {
                    continue;
                }
                Matcher said = LABEL.matcher(level.figures());
                assertThat(said.matches()).isTrue();
                assertThat(level.label()).endsWith(level.figures());
                double times = said.group("times") == null ? 1 : Double.parseDouble(said.group("times"));
                sum += times * Lengths.parse(said.group("width"), words.unit());
            }
        }
        return sum;
    }

    @ParameterizedTest
    @EnumSource(
            value = LengthUnit.class,
            names = {"CM", "INCH"})
    void theyAddUpToTheGirthInTheSheet(LengthUnit unit) throws Exception {
        Random random = new Random(156);
        double step = unit == LengthUnit.INCH ? 25.4 / 16 : 0.5;
        int told = 0;
        int exact = 0;
        for (Sample sample : Sample.all()) {
            Session session = new Session(unit, false);
            session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
            TableScenes scenes = new TableScenes();
            for (int turn = 0; turn < 8; turn++) {
                Words words = session.desk().words();
                TableScene scene = scenes.of(session.desk());
                for (Girth girth : session.desk().shownReading().measures().girths()) {
                    double sum = sum(scene, girth, words);
                    if (sum == 0) {
                        continue;
                    }
                    GirthText text = new GirthText(words, session.desk().shown());
                    String finished = words.length(text.finished(girth));
                    assertThat(EasePage.of(session.desk()).rows())
                            .extracting(EaseRow::finished)
                            .contains(finished);
                    assertThat(sum)
                            .as("%s %s", sample.id(), girth.name())
                            .isCloseTo(Lengths.parse(finished, unit), within(text.addsUp(girth) ? 1e-6 : step + 1e-6));
                    exact += text.addsUp(girth) ? 1 : 0;
                    told++;
                }
                session.chooseLevel(session.desk().pattern().levels().get(0).name());
                double amount = 1 + random.nextInt(400) / 10.0;
                session.want(session.desk().wanted().orElseThrow().withAmount(amount));
            }
        }
        assertThat(told).isGreaterThan(50);
        // An odd half of a millimetre is no sum of pieces cut twice; an odd sixteenth is, of halves of one.
        assertThat(exact).as("of %s", told).isGreaterThan(unit == LengthUnit.INCH ? told * 19 / 20 : told * 4 / 5);
    }

    /** Bodies in centimetres come to no whole sixteenths: the girth is told as what is told of body and ease come to. */
    @ParameterizedTest
    @EnumSource(
            value = LengthUnit.class,
            names = {"CM", "INCH"})
    void bodyAndEaseComeToTheGirth(LengthUnit unit) throws Exception {
        int apart = 0;
        for (Sample sample : Sample.all()) {
            Session session = new Session(unit, false);
            session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
            for (int more = 0; more < 20; more++) {
                for (Level level : session.desk().pattern().levels()) {
                    session.setBody(
                            level,
                            OptionalDouble.of(600 + more * 2.5 + level.name().length()),
                            level.name());
                }
                for (EaseRow row : EasePage.of(session.desk()).rows()) {
                    double finished = Lengths.parse(row.finished(), unit);
                    double ease = Lengths.parse(row.ease(), unit);
                    // What is less than 1 cm, or than 1/16 in, is told finer.
                    double within = unit == LengthUnit.INCH
                            ? Math.abs(ease) < 25.4 / 16 ? 25.4 / 32 : 0
                            : Math.abs(ease) < 10 ? 0.25 : 0;
                    assertThat(Lengths.parse(row.body(), unit) + ease)
                            .as("%s %s", sample.id(), row)
                            .isCloseTo(finished, within(within + 1e-6));
                    double girth = session.desk().reading().measures().girths().stream()
                            .filter(g -> g.name().equals(row.name()))
                            .findFirst()
                            .orElseThrow()
                            .finished();
                    assertThat(finished).isCloseTo(girth, within(unit == LengthUnit.INCH ? 25.4 / 16 : 0.5));
                    apart += session.desk().words().length(girth).equals(row.finished()) ? 0 : 1;
                }
            }
        }
        if (unit == LengthUnit.INCH) {
            assertThat(apart).isGreaterThan(10);
        }
    }

    /** Size 10 of the skirt in sizes has a waist of 29 in, 73.62 cm, in four equal parts of 18.405 cm. */
    @Test
    void fourEqualPartsOfAWaistAreToldAsATapeIsRead() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "nest.svg"), Optional.empty(), "nest.svg")));
        assertThat(new TableScenes()
                        .of(session.desk()).pieces().stream()
                                .flatMap(p -> p.levels().stream())
                                .filter(l -> l.level().equals("waist"))
                                .map(TableScene.LevelSight::figures))
                .contains("2 \u00d7 18.4\u00a0cm");
    }
}
