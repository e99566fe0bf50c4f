package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.editor.paint.TableScene;
import easewright.measure.Girth;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Who adds up the widths on the table finds the girth in the sheet, but for what each was rounded by. */
class WidthsAddUpTest {
    private static final Pattern LABEL = Pattern.compile("(?:(?<times>\\d+) \u00d7 )?(?<width>.+)");

    /** What the labels of a level add up to, mm, as a calculator adds them, and how many widths that are. */
    private record Sum(double mm, double widths) {}

    private Sum sum(TableScene scene, Girth girth, Words words) throws Unreadable {
        double sum = 0;
        double widths = 0;
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
                widths += times;
            }
        }
        return new Sum(sum, widths);
    }

    @ParameterizedTest
    @EnumSource(
            value = LengthUnit.class,
            names = {"CM", "INCH"})
    void theyAddUpButForTheirRounding(LengthUnit unit) throws Exception {
        Random random = new Random(156);
        double half = unit == LengthUnit.INCH ? 25.4 / 32 : 0.25;
        int told = 0;
        for (Sample sample : Sample.all()) {
            Session session = new Session(unit, false);
            session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
            TableScenes scenes = new TableScenes();
            for (int turn = 0; turn < 8; turn++) {
                Words words = session.desk().words();
                TableScene scene = scenes.of(session.desk());
                for (Girth girth : session.desk().shownReading().measures().girths()) {
                    Sum sum = sum(scene, girth, words);
                    if (sum.widths == 0) {
                        continue;
                    }
                    assertThat(sum.mm)
                            .as("%s %s", sample.id(), girth.name())
                            .isCloseTo(
                                    Lengths.parse(words.length(girth.finished()), unit),
                                    within((sum.widths + 1) * half + 1e-6));
                    told++;
                }
                session.chooseLevel(session.desk().pattern().levels().get(0).name());
                double amount = 1 + random.nextInt(400) / 10.0;
                session.want(session.desk().wanted().orElseThrow().withAmount(amount));
            }
        }
        assertThat(told).isGreaterThan(50);
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
