package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small sheets drawn by hand, each with something of its own. */
class OtherSheetsTest {
    /** Front on the fold with a dart in the side seam; back with a centre seam and a dart closed at both ends. */
    private static final String DRESS = """
            <text x='40' y='30' font-size='22'>Shift dress</text>
            <path id='a' d='M50,150 C90,150 120,120 125,90 L240,120 C225,200 240,260 290,290 L280,330 L282,352 L270,560 L330,1000
                L50,1000 Z'/>
            <path d='M280,330 L180,335 L282,352'/>
            <path d='M80,300 V800 M76,308 L80,300 L84,308 M76,792 L80,800 L84,792'/>
            <text x='150' y='640' font-size='14'>Dress front<tspan x='150' dy='18'>cut 1 on fold</tspan></text>
            <path id='b' d='M800,110 C770,110 740,100 735,90 L620,120 C632,200 630,260 570,310 L590,560 L530,1000 L800,1000
                Z'/>
            <path d='M700,420 L709,560 L700,700 L691,560 Z'/>
            <path d='M750,300 V800 M746,308 L750,300 L754,308'/>
            <text x='640' y='640' font-size='14'>Dress back<tspan x='640' dy='18'>cut 2</tspan></text>
            <path d='M584,561 L595,559'/>
            """;

    private static Suggestions on(String body, Set<String> leftOut) throws SvgProblem {
        return Suggestions.of(sheet(body), leftOut);
    }

    private static Sheet sheet(String body) throws SvgProblem {
        SvgFile svg = SvgFile.read(
                ("<svg xmlns='http://www.w3.org/2000/svg' width='1200mm' height='1200mm' viewBox='0 0 1200 1200'>"
                                + body + "</svg>")
                        .getBytes(StandardCharsets.UTF_8),
                "sheet.svg");
        return new Sheet(svg.pattern(), svg.loose(svg.pattern()), svg.texts());
    }

    private static Edge edge(Piece piece, EdgeRole role) {
        return piece.edges().stream()
                .filter(e -> e.role() == role)
                .findFirst()
                .orElseThrow(() -> new AssertionError(role + " not in " + piece.edges()));
    }

    /** A T-shirt of knit: its band is cut whole and shorter than the neck, of which each piece shows one half. */
    @Test
    void aWholeNeckBandGoesOnBothHalvesOfTheNeck() throws SvgProblem {
        String shirt = """
                <path d='M30,120 C75,120 105,80 110,30 L220,65 C195,140 198,235 250,240 L255,670 L30,670 Z'/>
                <text x='100' y='330' font-size='14'>Front<tspan x='100' dy='18'>cut 1 on fold</tspan></text>
                <path d='M300,50 C340,50 375,45 380,30 L490,65 C472,140 476,235 520,240 L525,670 L300,670 Z'/>
                <text x='370' y='330' font-size='14'>Back<tspan x='370' dy='18'>cut 1 on fold</tspan></text>
                <path d='M560,400 h384 v40 h-384 Z'/>
                <text x='717' y='425' font-size='14'>Neck band</text>
                """;
        Pattern pattern = on(shirt, Set.of()).outcome();
        Mate mate = pattern.mates().stream()
                .filter(m -> m.name().equals("neck band"))
                .findFirst()
                .orElseThrow();
        assertThat(mate.first()).extracting(EdgeRef::times).containsExactly(2, 2);
        assertThat(mate.second()).extracting(EdgeRef::times).containsExactly(1);
        assertThat(mate.declaredEase()).isBetween(40.0, 60.0);
        String longer = shirt.replace("h384 v40 h-384", "h620 v40 h-620").replace("560,400", "500,700");
        assertThat(on(longer, Set.of()).outcome().mates())
                .extracting(Mate::name)
                .as("a band that is far too long goes elsewhere")
                .doesNotContain("neck band");
    }

    @Test
    void aDressWithADartInTheSideSeam() throws SvgProblem {
        Pattern dress = on(DRESS, Set.of()).outcome();
        Piece front = dress.piece("Dress front").orElseThrow();
        assertThat(front.onFold()).isTrue();
        assertThat(front.grain()).isPresent();
        assertThat(front.edges())
                .extracting(Edge::role)
                .containsExactlyInAnyOrder(
                        EdgeRole.NECK, EdgeRole.SHOULDER, EdgeRole.ARMHOLE, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.FOLD);
        assertThat(front.darts()).hasSize(1);
        Dart dart = front.darts().get(0);
        assertThat(dart.point().distance(new Point(180, 335))).isLessThan(0.1);
        assertThat(dart.edge()).contains("side");
        Piece back = dress.piece("Dress back").orElseThrow();
        assertThat(back.times()).isEqualTo(2);
        assertThat(edge(back, EdgeRole.CENTRE).name()).isEqualTo("centre back");
        assertThat(back.darts()).hasSize(1);
        assertThat(back.darts().get(0).otherPoint()).isPresent();
        assertThat(back.darts().get(0).intake()).isCloseTo(18, within(0.1));
        assertThat(back.notches()).hasSize(1);
        assertThat(back.riders())
                .filteredOn(r -> r.kind() == Rider.Kind.ATTACHED)
                .hasSize(1);
        assertThat(dress.mates()).extracting(Mate::name).contains("side seam", "shoulder");
    }

    /** On a waist in two parts no level is laid; the bodice above it then tells the girth. */
    @Test
    void aBodiceCountsAboveASkirtWhoseWaistIsNotMeasured() throws SvgProblem {
        Pattern dress = on(WaistedDress.DRAWN, Set.of()).outcome().withLevels(List.of());
        List<Piece> parted = new ArrayList<>();
        for (Piece piece : dress.pieces()) {
            List<Edge> edges = new ArrayList<>(piece.edges());
            if (piece.name().startsWith("Skirt")) {
                edges.add(Edge.of(
                        "waist two",
                        EdgeRole.WAIST,
                        edges.get(0).from(),
                        edges.get(0).to()));
            }
            parted.add(piece.withLevels(List.of()).withEdges(edges));
        }
        Pattern found = dress.withPieces(parted);
        for (Suggestion each : LevelLines.find(new Sheet(found, List.of(), List.of()))) {
            found = each.apply(found);
        }
        assertThat(found.pieces())
                .filteredOn(p -> p.level("waist").filter(LevelMark::counts).isPresent())
                .extracting(Piece::name)
                .containsExactlyInAnyOrder("Bodice front", "Bodice back");
    }

    @Test
    void aWaistSeamGoesRoundTheBodyOnce() throws SvgProblem {
        Pattern dress = on(WaistedDress.DRAWN, Set.of()).outcome();
        assertThat(dress.pieces())
                .filteredOn(p -> p.level("waist").filter(LevelMark::counts).isPresent())
                .extracting(Piece::name)
                .containsExactlyInAnyOrder("Skirt front", "Skirt back");
        assertThat(dress.pieces()).allMatch(p -> p.level("waist").isPresent());
        double skirt = Measures.of(dress).girth("waist").orElseThrow().finished();
        assertThat(skirt).as("2 x (two halves of about 190)").isBetween(740.0, 790.0);
        assertThat(dress.mates())
                .filteredOn(m -> m.name().startsWith("waist seam"))
                .extracting(m -> dress.piece(m.first().get(0).piece())
                                .orElseThrow()
                                .name() + " on "
                        + dress.piece(m.second().get(0).piece()).orElseThrow().name())
                .allMatch(pair -> pair.contains("Bodice") && pair.contains("Skirt"))
                .satisfiesExactlyInAnyOrder(
                        pair -> assertThat(pair).contains("Bodice front").contains("Skirt front"),
                        pair -> assertThat(pair).contains("Bodice back").contains("Skirt back"));
    }

    @Test
    void goresHaveTwoSlantedSides() throws SvgProblem {
        Pattern skirt = on(
                        "<text x='20' y='20' font-size='20'>Six gore skirt</text>"
                                + "<path d='M200,100 C220,104 240,104 260,100 L330,700 C270,716 190,716 130,700 Z'/>"
                                + "<text x='200' y='300' font-size='12'>SKIRT GORE CUT 6</text>",
                        Set.of())
                .outcome();
        Piece gore = skirt.pieces().get(0);
        assertThat(gore.name()).isEqualTo("Skirt gore");
        assertThat(gore.times()).isEqualTo(6);
        assertThat(gore.edges())
                .extracting(Edge::role)
                .containsExactlyInAnyOrder(EdgeRole.WAIST, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.SEAM);
        assertThat(gore.edges()).extracting(Edge::name).doesNotHaveDuplicates();
        assertThat(gore.darts()).isEmpty();
    }

    @Test
    void cutsInTheOutlineAreNotchesAndNoDarts() throws SvgProblem {
        Pattern pattern = on(
                        "<path d='M100,100 L297,100 L300,106 L303,100 L500,100 L500,397 L494,400 L500,403 L500,700 L100,700 Z'/>",
                        Set.of())
                .outcome();
        Piece piece = pattern.pieces().get(0);
        assertThat(piece.notches()).hasSize(2);
        assertThat(piece.darts()).isEmpty();
        assertThat(piece.edges()).hasSize(4);
    }

    @Test
    void anAllowanceInWordsMakesCuttingLines() throws SvgProblem {
        String piece = "<path d='M100,100 H400 V600 H100 Z'/>";
        Piece cut = on(piece + "<text x='500' y='50' font-size='9'>Seam allowance 1.5 cm included</text>", Set.of())
                .outcome()
                .pieces()
                .get(0);
        assertThat(cut.drawn()).isEqualTo(LineKind.CUTTING);
        assertThat(cut.allowance()).isCloseTo(15, within(1e-9));
        for (String words : List.of("No seam allowance", "Seam allowance of 1 cm is not included")) {
            assertThat(on(piece + "<text x='500' y='50' font-size='9'>" + words + "</text>", Set.of())
                            .outcome()
                            .pieces()
                            .get(0)
                            .drawn())
                    .as(words)
                    .isEqualTo(LineKind.STITCHING);
        }
    }

    /** Words in the cells of a table; in a band they stand in one row, and a pocket has no cells. */
    @ParameterizedTest
    @CsvSource({
        "240, 80, M0 40 h240 M80 0 v80 M160 0 v80, 40-20 120-20 40-60, true",
        "240, 80, M0 40 h240 M160 40 v40, 40-20 120-20 40-60, false",
        "240, 80, M0 40 h240 M160 40 v40, 40-20 80-60 200-60, true",
        "240, 80, M0 40 h240 M0 60 h240, 40-20 80-50 200-70, false",
        "700, 80, M0 40 h700 M175 0 v80 M350 0 v80, 80-20 240-20 500-20, false",
        "130, 150, M0 20 h130 M65 0 v150, 40-90, false",
    })
    void aTableWithWordsInItsCellsIsNoPiece(int wide, int high, String lines, String words, boolean table)
            throws SvgProblem {
        StringBuilder body = new StringBuilder(DRESS + "<g transform='translate(340 1020)'><path id='box' d='M0 0h"
                + wide + "v" + high + "h-" + wide + "z'/><path d='" + lines + "'/>");
        for (String place : words.split(" ")) {
            String[] at = place.split("-");
            body.append("<text x='%s' y='%s' font-size='8'>Word</text>".formatted(at[0], at[1]));
        }
        Suggestions made = on(body + "</g>", Set.of());
        assertThat(made.all().stream()
                        .filter(s -> s.kind() == Suggestion.Kind.NO_PIECE)
                        .map(s -> s.reason().code()))
                .isEqualTo(table ? List.of("parted-like-a-table") : List.of());
        assertThat(made.outcome().piece("box").isPresent()).isEqualTo(!table);
        assertThat(made.outcome().noPieces()).hasSize(table ? 1 : 0);
    }

    @Test
    void aTestSquareIsNoPiece() throws SvgProblem {
        Suggestions made = on(
                "<path d='M100,100 H400 V600 H100 Z'/><path id='q' d='M600,100 h50 v50 h-50 Z'/>"
                        + "<text x='610' y='130' font-size='8'>5 cm</text>",
                Set.of());
        assertThat(made.outcome().pieces()).hasSize(1);
        assertThat(made.all()).anySatisfy(s -> assertThat(s.kind()).isEqualTo(Suggestion.Kind.NO_PIECE));
    }

    @Test
    void roundAndPlainPiecesAreLeftAlone() throws SvgProblem {
        Pattern pattern = on(
                        "<circle cx='300' cy='300' r='140'/><path d='M600,100 C900,100 900,500 600,500 C500,400 500,200 600,100'/>",
                        Set.of())
                .outcome();
        for (Piece piece : pattern.pieces()) {
            assertThat(piece.darts()).isEmpty();
            assertThat(piece.notches()).isEmpty();
            assertThat(piece.grain()).isEmpty();
            assertThat(piece.levels()).isEmpty();
        }
        assertThat(pattern.pieces().get(0).edges()).isEmpty();
        assertThat(pattern.mates()).isEmpty();
    }

    @Test
    void whatIsLeftOutIsNotDoneAndOthersTakeItsPlace() throws SvgProblem {
        Suggestions all = on(DRESS, Set.of());
        String edges = all.all().stream()
                .filter(s -> s.kind() == Suggestion.Kind.EDGES)
                .map(Suggestion::key)
                .findFirst()
                .orElseThrow();
        Suggestions without = on(DRESS, Set.of(edges));
        assertThat(without.all()).extracting(Suggestion::key).contains(edges);
        assertThat(without.outcome().piece("Dress front").orElseThrow().edges()).isEmpty();
        assertThat(without.outcome().piece("Dress back").orElseThrow().edges()).isNotEmpty();
        assertThat(without.outcome().mates()).isEmpty();
        Set<String> keys = new HashSet<>();
        assertThat(all.all()).allSatisfy(s -> assertThat(keys.add(s.key())).isTrue());
        Set<String> every = new HashSet<>(keys);
        assertThat(on(DRESS, every).outcome()).isEqualTo(sheet(DRESS).pattern());
    }

    @Test
    void whatHasBeenAcceptedIsNotSuggestedAgain() throws SvgProblem {
        Sheet bare = sheet(DRESS);
        Pattern marked = Suggestions.of(bare, Set.of()).outcome();
        assertThat(Suggestions.of(bare.with(marked), Set.of()).all()).isEmpty();
    }
}
