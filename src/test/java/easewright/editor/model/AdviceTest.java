package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.text.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AdviceTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private List<Advice> open(int sample) throws Exception {
        Sample garment = Sample.all().get(sample);
        session.open(Opened.of(new OpenFile(garment.read(), Optional.empty(), garment.fileName())));
        return Stream.of(FitSign.Feels.values())
                .flatMap(f -> Advice.of(session.desk(), f).stream())
                .toList();
    }

    @Test
    void everySignHasWordsAWayASourceAndItsStanding() throws Exception {
        List<String> heard = Stream.of(0, 1, 2, 3)
                .flatMap(i -> {
                    try {
                        return open(i).stream();
                    } catch (Exception e) {
                        throw new IllegalStateException(e);
                    }
                })
                .peek(a -> assertThat(a.sign() + a.words() + a.source())
                        .doesNotContain("editor.")
                        .doesNotContain("{"))
                .map(a -> a.about().id())
                .distinct()
                .toList();
        assertThat(heard)
                .containsExactlyInAnyOrderElementsOf(
                        FitSign.all().stream().map(FitSign::id).toList());
    }

    @Test
    void onlyLevelsThatThePatternHasAreSpokenOf() throws Exception {
        assertThat(open(0)).extracting(Advice::level).isSubsetOf("waist", "hip").isNotEmpty();
        assertThat(open(1)).extracting(a -> a.about().id()).contains("large-arm", "full-bust");
    }

    /** Guide C-228 (docs/sources.md 4.2): the seat is worked at centre back, the abdomen at centre front. */
    @Test
    void takingItChoosesLevelWayAndCentreLineButChangesNothing() throws Exception {
        Advice seat = open(0).stream()
                .filter(a -> a.about().id().equals("seat"))
                .findFirst()
                .orElseThrow();
        session.want(seat.taken(session.desk().pattern()));
        Wanted wanted = session.desk().wanted().orElseThrow();
        assertThat(wanted.level()).isEqualTo("hip");
        assertThat(wanted.other().orElseThrow().texts("edge")).containsExactly("skirt-back/centre back");
        assertThat(session.desk().trial()).isEmpty();
        session.want(wanted.withAmount(10));
        assertThat(session.desk().shownTrial()).isPresent();
        session.leave();
        Advice sides = open(0).get(0);
        assertThat(sides.taken(session.desk().pattern()).atSeams()).isTrue();
    }

    @Test
    void aSignWithoutASourceIsNoSign() {
        assertThatThrownBy(() -> FitSign.read("sign: x\nfeels: pulls\nlevels: hip\nway: seam\nstanding: published"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
