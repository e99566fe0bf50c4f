package easewright.check;

import easewright.alter.Alteration;
import easewright.alter.Coupled;
import easewright.alter.EdgeLength;
import easewright.alter.Within;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a change asks of the pieces sewn to the changed one, as findings: offered, with what it brings, and not done. */
public final class Offers {
    private Offers() {}

    public static List<Finding> of(Pattern before, Pattern after) {
        List<Finding> findings = new ArrayList<>();
        for (Coupled.Offer offer : Coupled.offers(before, after)) {
            Map<How, List<String>> edges = new LinkedHashMap<>();
            for (Alteration each : offer.alterations()) {
                Alteration change = each instanceof Within within ? within.change() : each;
                Side side = each instanceof Within within ? within.scope().side() : Side.BOTH;
                if (change instanceof EdgeLength length) {
                    String piece = after.piece(length.edge().piece())
                            .map(Piece::name)
                            .orElse(length.edge().piece());
                    edges.computeIfAbsent(new How(rounded(length.amount()), side), how -> new ArrayList<>())
                            .add(piece + "/" + length.edge().edge());
                }
            }
            edges.forEach((how, each) -> findings.add(Finding.of(code(how.side()), Severity.NOTE, "")
                    .with("mate", offer.mate().name())
                    .with("edges", List.copyOf(each))
                    .with("by.signed", how.by())));
            if (!offer.girths().isEmpty()) {
                Map<String, Double> girths = new TreeMap<>(offer.girths());
                findings.add(Finding.of("fit-offer-girth", Severity.NOTE, "")
                        .with("mate", offer.mate().name())
                        .with("levels", List.copyOf(girths.keySet()))
                        .with("by.signed", List.copyOf(girths.values())));
            }
        }
        return findings;
    }

    /** Edges that change alike are told together. */
    private record How(double by, Side side) {}

    private static String code(Side side) {
        return switch (side) {
            case BOTH -> "fit-offer";
            case LEFT -> "fit-offer-left";
            case RIGHT -> "fit-offer-right";
        };
    }

    /** To a millionth of a millimetre, so that edges which change alike are told together. */
    private static double rounded(double mm) {
        return Math.rint(mm * 1e6) / 1e6;
    }
}
