package easewright.svg;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import easewright.pattern.Unfit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is noticed while the marks are read: findings, and the elements kept aside. */
final class MarksNotes {
    private final Notes findings = new Notes();
    private final List<KeptMark> kept = new ArrayList<>();

    /** Reads one mark into place. */
    @FunctionalInterface
    interface Reading {
        void read(MarkNode node, MarkValues values) throws MarkValues.Damage;
    }

    List<Finding> findings() {
        return findings.all();
    }

    List<KeptMark> kept() {
        return List.copyOf(kept);
    }

    void add(Finding finding) {
        findings.add(finding);
    }

    /**
     * Reads a mark; one that is damaged becomes a finding and is kept as it stands.
     *
     * @param pieceId   id of the piece around it, if any
     * @param pieceName that piece's name, or an empty text
     * @param nameKey   the attribute that names the mark
     */
    void attempt(MarkNode node, Optional<String> pieceId, String pieceName, String nameKey, Reading reading) {
        String name = node.text(nameKey);
        MarkValues values = new MarkValues(node, name);
        try {
            reading.read(node, values);
            for (String unknown : values.unknown()) {
                findings.add(Finding.of("mark-attribute-unknown", Severity.CAUTION, pieceName)
                        .with("mark", called(node, name))
                        .with("attribute", unknown));
            }
        } catch (MarkValues.Damage damage) {
            Finding finding =
                    Finding.of(damage.code(), Severity.FAULT, pieceName).with("mark", called(node, name));
            for (Map.Entry<String, Object> value : damage.values().entrySet()) {
                finding = finding.with(value.getKey(), value.getValue());
            }
            findings.add(finding);
            keep(node, pieceId, name, damage.code().equals("mark-twice"));
        } catch (IllegalArgumentException refused) {
            // The values are well written but the pattern does not take them, such as an allowance below 0.
            String code = refused instanceof Unfit unfit ? unfit.code() : "mark-refused";
            findings.add(Finding.of(code, Severity.FAULT, pieceName).with("mark", called(node, name)));
            keep(node, pieceId, name, false);
        }
    }

    /** An element that this version does not know. */
    void unknown(MarkNode node, Optional<String> pieceId, String pieceName) {
        findings.add(Finding.of("mark-unknown", Severity.NOTE, pieceName).with("mark", node.name()));
        keep(node, pieceId, "", false);
    }

    /** Something inside the scale, which itself is needed all the same. */
    void insideScale(MarkNode node) {
        findings.add(Finding.of("mark-unknown", Severity.NOTE, "").with("mark", node.name()));
        kept.add(new KeptMark(
                Optional.empty(),
                KeptMark.INSIDE_SCALE,
                Optional.empty(),
                false,
                node.markup().get()));
    }

    private void keep(MarkNode node, Optional<String> pieceId, String name, boolean twin) {
        Optional<String> known = name.isEmpty() ? Optional.empty() : Optional.of(name);
        kept.add(new KeptMark(pieceId, node.name(), known, twin, node.markup().get()));
    }

    static String called(MarkNode node, String name) {
        return name.isEmpty() ? node.name() : node.name() + " " + name;
    }
}
