package easewright.command;

import easewright.alter.Proposal;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What an untrue place is called on a command line: a number in the list, or a name that stays. */
final class TruePlace {
    private TruePlace() {}

    /** Such as {@code side seam/start}, {@code Front/waist/end} or {@code Front/waist dart}. */
    static String of(Proposal proposal, Pattern pattern) {
        Map<String, String> target = proposal.truing().target();
        String name = switch (proposal.truing().matter()) {
            case JOINED_LINE -> target.get("mate") + "/" + target.get("end");
            case SQUARE_CORNER -> edge(target.get("edge"), pattern) + "/" + target.get("end");
            case DART_CAP -> piece(target.get("piece"), pattern) + "/" + target.get("dart");
            case DART_LEGS -> piece(target.get("piece"), pattern) + "/" + target.get("dart") + "/legs";
            case BLENDED_CORNER -> edge(target.get("edge"), pattern) + "/" + rounded(proposal);
            case NOTCHES -> target.get("mate") + "/" + target.get("notch");
            case CUTTING_LINE -> piece(target.get("piece"), pattern) + "/" + "allowance";
        };
        return proposal.size().map(size -> name + " @" + size).orElse(name);
    }

    /** Where a corner lies, to the millimetre. */
    private static String rounded(Proposal proposal) {
        Map<String, Object> values = proposal.finding().values();
        return Math.round((Double) values.get("x")) + "," + Math.round((Double) values.get("y"));
    }

    private static String edge(String text, Pattern pattern) {
        EdgeRef ref = EdgeRef.parse(text);
        return piece(ref.piece(), pattern) + "/" + ref.edge();
    }

    private static String piece(String id, Pattern pattern) {
        return pattern.piece(id).map(Piece::name).orElse(id);
    }

    /** The proposal that is meant by its number, counted from 1, or its name. */
    static Optional<Proposal> find(List<Proposal> known, String text, Pattern pattern) {
        for (int i = 0; i < known.size(); i++) {
            if (text.strip().equals(String.valueOf(i + 1))
                    || text.strip().equalsIgnoreCase(of(known.get(i), pattern))) {
                return Optional.of(known.get(i));
            }
        }
        return Optional.empty();
    }
}
