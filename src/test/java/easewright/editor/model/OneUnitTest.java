package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Level;
import easewright.pattern.Side;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is said around a change is said in the unit that was chosen, and in no other beside it. */
class OneUnitTest {
    private static final Pattern METRIC = Pattern.compile("\\d[\\s\\u00a0](mm|cm|m)\\b");
    private static final Pattern MM = Pattern.compile("\\d[\\s\\u00a0](mm|m)\\b");
    private static final Pattern INCHES = Pattern.compile("\\d([\\s\\u00a0](in|inch|inches)\\b)");
    /** One form of an inch stands in fields, lists and sentences (docs/decisions/0110-how-figures-are-shown.md). */
    private static final Pattern SIGN = Pattern.compile("\\d[\\s\\u00a0]?[\u2033\"]");

    private static List<String> said(Session session) {
        Desk desk = session.desk();
        List<String> all = new ArrayList<>();
        Notes.of(desk).forEach(n -> all.add(n.words()));
        all.add(HereWords.outcome(desk));
        Effect.of(desk).lines().forEach(l -> all.add(l.words()));
        EasePage.of(desk).rows().forEach(r -> {
            all.addAll(List.of(r.body(), r.finished(), r.ease(), r.wish(), r.verdict()));
            all.addAll(r.classes());
            all.addAll(r.minimums());
        });
        Rings.of(desk.shownReading(), desk.words()).rings().forEach(r -> all.add(r.words()));
        SizeWords size = SizeWords.of(desk);
        all.add(size.intro());
        size.lines()
                .forEach(l -> all.addAll(
                        List.of(l.before(), l.here().words(), l.size().words())));
        Course.of(desk).lines().forEach(l -> all.addAll(List.of(l.words(), l.amount())));
        desk.refusedTrial()
                .map(Trial.Refused::refusal)
                .ifPresent(r -> all.add(desk.words().problem(r.code(), r.values())));
        return all;
    }

    @ParameterizedTest
    @EnumSource(
            value = LengthUnit.class,
            names = {"CM", "INCH"})
    void aSentenceKeepsToTheUnit(LengthUnit unit) throws Exception {
        int lengths = 0;
        for (Sample sample : Sample.all()) {
            Session session = new Session(unit, false);
            session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
            for (Level level : session.desk().pattern().levels()) {
                session.chooseLevel(level.name());
                for (double amount : new double[] {3, -12, 400, -300}) {
                    Side side = amount > 0 ? Side.LEFT : Side.BOTH;
                    session.want(
                            session.desk().wanted().orElseThrow().withSide(side).withAmount(amount));
                    for (String each : said(session)) {
                        boolean inches = unit == LengthUnit.INCH;
                        Pattern foreign = inches ? METRIC : INCHES;
                        assertThat(foreign.matcher(each).find()).as(each).isFalse();
                        assertThat(SIGN.matcher(each).find()).as(each).isFalse();
                        assertThat(!inches && MM.matcher(each).find()).as(each).isFalse();
                        lengths += (inches ? INCHES : METRIC).matcher(each).find() ? 1 : 0;
                    }
                }
            }
        }
        assertThat(lengths).isGreaterThan(1000);
    }
}
