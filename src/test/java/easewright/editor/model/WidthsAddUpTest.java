package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.paint.TableScene;
import easewright.measure.Girth;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Who adds up the widths on the table finds the girth in the sheet, or is told that they are rounded. */
class WidthsAddUpTest {
    private static final Pattern LABEL =
            Pattern.compile("(?<about>\u2248\u00a0)?(?:(?<times>\\d+) \u00d7 )?(?<width>.+)");

    /** What the labels of a level add up to, mm, as a calculator adds them. */
    private double sum(TableScene scene, Girth girth, Words words, Set<Boolean> about) throws Unreadable {
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
                about.add(said.group("about") != null);
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
    void aSignStandsJustWhereTheyDoNot(LengthUnit unit) throws Exception {
        Random random = new Random(156);
        int rounded = 0;
        int exact = 0;
        for (Sample sample : Sample.all()) {
            Session session = new Session(unit, false);
            session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
            TableScenes scenes = new TableScenes();
            for (int turn = 0; turn < 8; turn++) {
                Words words = session.desk().words();
                TableScene scene = scenes.of(session.desk());
                for (Girth girth : session.desk().shownReading().measures().girths()) {
                    Set<Boolean> about = new HashSet<>();
                    double sum = sum(scene, girth, words, about);
                    if (about.isEmpty()) {
                        continue;
                    }
                    double told = Lengths.parse(words.length(girth.finished()), unit);
                    boolean adds = Math.abs(sum - told) < 1e-6;
                    assertThat(about)
                            .as("%s %s %s of %s", sample.id(), girth.name(), sum, told)
                            .containsExactly(!adds);
                    rounded += adds ? 0 : 1;
                    exact += adds ? 1 : 0;
                }
                session.chooseLevel(session.desk().pattern().levels().get(0).name());
                double amount = 1 + random.nextInt(400) / 10.0;
                session.want(session.desk().wanted().orElseThrow().withAmount(amount));
            }
        }
        assertThat(rounded).isPositive();
        assertThat(exact).isPositive();
    }

    /** Size 10 of the skirt in sizes has a waist of 29 in, 73.62 cm, in four equal parts. */
    @Test
    void fourEqualPartsOfAWaistAreToldToBeRounded() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "nest.svg"), Optional.empty(), "nest.svg")));
        assertThat(new TableScenes()
                        .of(session.desk()).pieces().stream()
                                .flatMap(p -> p.levels().stream())
                                .filter(l -> l.level().equals("waist"))
                                .map(TableScene.LevelSight::figures))
                .contains("\u2248\u00a02 \u00d7 18.41\u00a0cm");
    }
}
