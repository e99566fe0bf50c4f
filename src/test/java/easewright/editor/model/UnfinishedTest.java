package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Taper;
import easewright.alter.Ways;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelKind;
import easewright.pattern.Side;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is tried or half typed is written down with what is kept from a crash, and read again. */
class UnfinishedTest {
    private static Desk skirt() throws Exception {
        Opened opened = OpenedSample.skirt();
        return Desk.of(opened, LengthUnit.CM, false);
    }

    @Test
    void everythingThatTheFormHoldsComesBack() {
        Random random = new Random(20260301);
        List<String> words = List.of("hip", "upper hip = 2", "Gesäß: links", "a\nb", "#1", " x ", "\\", "front/side");
        for (int i = 0; i < 500; i++) {
            String level = words.get(random.nextInt(words.size()));
            var way = Ways.all().get(random.nextInt(Ways.all().size()));
            Map<String, List<String>> texts = way.settings().isEmpty()
                    ? Map.of()
                    : Map.of(way.settings().get(0).key(), List.of(words.get(random.nextInt(words.size())), "12,5 mm"));
            Wanted wanted = new Wanted(
                    level,
                    random.nextGaussian() * 100,
                    random.nextBoolean() ? Set.of() : Set.of(EdgeRef.of("fr/ont", "side seam"), EdgeRef.of("b", "c")),
                    Taper.values()[random.nextInt(Taper.values().length)],
                    random.nextBoolean(),
                    Side.values()[random.nextInt(Side.values().length)],
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextBoolean() ? Optional.empty() : Optional.of(new OtherWay(way.method(), texts)),
                    random.nextBoolean() ? Map.of() : texts,
                    random.nextBoolean() ? Set.of() : Set.of("12", "XL = 2; wide"));
            Unfinished hand = new Unfinished(
                    Optional.of(wanted),
                    random.nextBoolean() ? Optional.of("38") : Optional.empty(),
                    begun(random, words),
                    random.nextBoolean());
            assertThat(Unfinished.of(hand.text())).as(hand.text()).isEqualTo(hand);
        }
    }

    private static Begun begun(Random random, List<String> words) {
        Supplier<String> word = () -> words.get(random.nextInt(words.size()));
        Supplier<Point> point = () -> new Point(random.nextGaussian() * 1e3, random.nextGaussian());
        Supplier<Optional<Line>> line =
                () -> random.nextBoolean() ? Optional.empty() : Optional.of(new Line(point.get(), point.get()));
        List<Begun.Place> places = Stream.generate(
                        () -> new Begun.Place("CORNER", point.get(), Optional.of(word.get()), line.get()))
                .limit(random.nextInt(3))
                .toList();
        Begun.Marking marking = new Begun.Marking(
                random.nextBoolean(),
                "PIECES",
                "DART",
                random.nextBoolean() ? Optional.empty() : Optional.of(word.get()),
                Optional.empty(),
                places,
                line.get(),
                random.nextBoolean() ? Set.of() : Set.of("edge of front", word.get() + "2"));
        return new Begun(
                word.get(),
                List.of(new Begun.Typed("ease", "body-hip", "Body at hip", word.get(), random.nextBoolean())),
                Optional.of(marking),
                random.nextBoolean() ? Optional.empty() : Optional.of(new Begun.Cut(word.get(), point.get())));
    }

    @Test
    void nothingIsNothingAndWhatIsNotUnderstoodTooIs() throws Exception {
        Desk desk = skirt();
        assertThat(Unfinished.on(desk, Begun.NOTHING)).isEqualTo(Unfinished.NOTHING);
        assertThat(Unfinished.NOTHING.text()).isEmpty();
        assertThat(Unfinished.of("")).isEqualTo(Unfinished.NOTHING);
        assertThat(Unfinished.of("level=hip\ntaper=WAVY\nside=BOTH")).isEqualTo(Unfinished.NOTHING);
        assertThat(Unfinished.of("level=hip\ntaper=SMOOTH\nside=BOTH\nway=magic"))
                .isEqualTo(Unfinished.NOTHING);
        Begun page = new Begun("changes", List.of(), Optional.empty(), Optional.empty());
        Unfinished again = Unfinished.of(Unfinished.on(desk, page).text());
        assertThat(again.begun().page()).isEqualTo("changes");
        assertThat(again.isNothing()).as("an open page is nothing to be done").isTrue();
        // The way that stays chosen for the next change is nothing by itself, an amount is.
        Wanted hip = Wanted.at("hip", LevelKind.HIP).withTaper(Taper.STRAIGHT);
        assertThat(Unfinished.on(desk.withWanted(Optional.of(hip)), Begun.NOTHING)
                        .isNothing())
                .isTrue();
        Desk trying = desk.withWanted(Optional.of(hip.withAmount(10)));
        assertThat(Unfinished.on(trying, Begun.NOTHING).wanted()).contains(hip.withAmount(10));
    }

    @Test
    void whatWasTriedIsTriedAgainOrLeftWhereItsPlaceIsGone() throws Exception {
        Desk desk = skirt();
        Wanted tried = Wanted.at("hip", LevelKind.HIP).withAmount(20);
        Desk trying = desk.withWanted(Optional.of(tried));
        Desk again = Unfinished.of(Unfinished.on(trying, Begun.NOTHING).text()).laidOn(desk);
        assertThat(again.shown().pieces()).isEqualTo(trying.shown().pieces());
        for (Wanted gone : List.of(
                Wanted.at("elbow", LevelKind.HIP).withAmount(20),
                tried.withLeftOut(Set.of(EdgeRef.of("no piece", "side"))))) {
            Unfinished hand = new Unfinished(Optional.of(gone), Optional.empty(), Begun.NOTHING, true);
            assertThat(hand.laidOn(desk).trial()).isEmpty();
        }
    }
}
