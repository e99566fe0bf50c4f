package easewright.print;

import easewright.ease.EaseLine;
import easewright.measure.EdgeLength;
import easewright.measure.MateWalk;
import easewright.measure.PieceMeasures;
import easewright.pattern.ChangeNote;
import easewright.pattern.Edge;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The report of a pattern and of what was changed in it: one page that needs no other file and runs no script. */
public final class ReportPage {
    private final Words words;
    private final EaseText ease;
    private final Html page = new Html();

    private ReportPage(Words words) {
        this.words = words;
        this.ease = new EaseText(words);
    }

    /**
     * The page.
     *
     * @param name   what to call the pattern
     * @param before as it was, where it was changed
     */
    public static String of(String name, Optional<Reading> before, Reading after, List<Finding> findings, Words words) {
        return new ReportPage(words).page(name, before, after, findings);
    }

    private String page(String name, Optional<Reading> before, Reading after, List<Finding> findings) {
        page.raw("<!DOCTYPE html>").raw("<html lang=\"en\"><head><meta charset=\"utf-8\">");
        page.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        page.raw(
                "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">");
        page.element("title", words.of("report.title", Map.of("name", name)));
        page.raw(STYLE).raw("</head><body><main>");
        page.element("h1", words.of("report.title", Map.of("name", name)));
        String wearer = after.pattern().body().name();
        if (!wearer.isEmpty()) {
            page.element("p", words.of("report.wearer", Map.of("wearer", wearer)));
        }
        easeTable(before, after);
        if (before.isPresent()) {
            changes(after);
            drawings(before.get(), after);
            mates(before.get(), after);
            unchanged(before.get(), after);
        } else {
            page.element("p", words.of("report.no-change"));
        }
        findings(findings);
        page.element("p", words.of("report.care"));
        return page.raw("</main></body></html>").toString();
    }

    private void easeTable(Optional<Reading> before, Reading after) {
        page.element("h2", words.of("report.ease"));
        page.raw("<table>");
        List<String> head = new ArrayList<>();
        List.of("level", "body", "before", "after", "ease-before", "ease-after", "percent")
                .forEach(key -> head.add(words.of("report.column." + key)));
        page.row("th", head);
        for (EaseLine line : after.sheet().lines()) {
            Optional<EaseLine> old = before.flatMap(b -> b.sheet().lines().stream()
                    .filter(l -> l.level().name().equals(line.level().name()))
                    .findFirst());
            page.row(
                    "td",
                    List.of(
                            line.level().name(),
                            line.body().isEmpty()
                                    ? "\u2013"
                                    : words.length(line.body().getAsDouble()),
                            old.map(o -> words.length(o.finished())).orElse("\u2013"),
                            words.length(line.finished()),
                            old.map(o -> ease.ease(o.ease())).orElse("\u2013"),
                            ease.ease(line.ease()),
                            ease.percent(line)));
        }
        page.raw("</table>");
        for (EaseLine line : after.sheet().lines()) {
            List<String> details = ease.details(line);
            if (!details.isEmpty()) {
                page.raw("<details><summary>" + Html.escaped(line.level().name() + ": " + ease.figures(line))
                        + "</summary><ul>");
                details.forEach(detail -> page.element("li", detail));
                page.raw("</ul></details>");
            }
        }
    }

    private void changes(Reading after) {
        page.element("h2", words.of("report.changes"));
        page.raw("<ol>");
        for (ChangeNote note : after.pattern().changes()) {
            page.element("li", new ChangeWords(words).of(note, after.pattern()));
        }
        page.raw("</ol>");
    }

    private void drawings(Reading before, Reading after) {
        page.element("h2", words.of("report.drawings"));
        page.element("p", words.of("report.drawings-key"));
        page.raw("<div class=\"pieces\">");
        for (Piece piece : after.pattern().pieces()) {
            Optional<Piece> old = before.pattern().piece(piece.id());
            if (old.isPresent() && !old.get().outline().equals(piece.outline())) {
                page.raw("<figure>" + PieceDrawing.of(old.get(), piece, piece.name()));
                page.element("figcaption", piece.name()).raw("</figure>");
            }
        }
        page.raw("</div>");
    }

    private void mates(Reading before, Reading after) {
        if (after.measures().mates().isEmpty()) {
            return;
        }
        page.element("h2", words.of("report.mates")).raw("<table>");
        List<String> head = new ArrayList<>();
        List.of("mate", "first", "second", "meant", "drift-before", "drift-after")
                .forEach(key -> head.add(words.of("report.column." + key)));
        page.row("th", head);
        for (MateWalk walk : after.measures().mates()) {
            Optional<MateWalk> old = before.measures().mate(walk.mate().name());
            page.row(
                    "td",
                    List.of(
                            walk.mate().name(),
                            words.length(walk.first()),
                            words.length(walk.second()),
                            words.length(walk.mate().declaredEase()),
                            old.map(o -> words.signed(o.drift())).orElse("\u2013"),
                            words.signed(walk.drift())));
        }
        page.raw("</table>");
    }

    private void unchanged(Reading before, Reading after) {
        page.element("h2", words.of("report.unchanged")).raw("<ul>");
        for (PieceMeasures piece : after.measures().pieces()) {
            Piece now = after.pattern().piece(piece.pieceId()).orElseThrow();
            Optional<Piece> then = before.pattern().piece(piece.pieceId());
            if (then.isPresent() && then.get().outline().equals(now.outline())) {
                page.element("li", words.of("report.whole-piece", Map.of("piece", now.name())));
                continue;
            }
            List<String> kept = new ArrayList<>();
            for (EdgeLength edge : piece.edges()) {
                if (unmoved(then, now, edge.edge())) {
                    kept.add(edge.edge() + " " + words.length(edge.mm()));
                }
            }
            if (!kept.isEmpty()) {
                page.element("li", words.of("report.edges-kept", Map.of("piece", now.name(), "edges", kept)));
            }
        }
        page.raw("</ul>");
    }

    /** Whether the edge's run is the same to the last bit. */
    private static boolean unmoved(Optional<Piece> then, Piece now, String name) {
        Optional<Edge> was = then.flatMap(p -> p.edge(name));
        Optional<Edge> is = now.edge(name);
        return was.isPresent()
                && is.isPresent()
                && was.get().on(then.get().outline()).equals(is.get().on(now.outline()));
    }

    private void findings(List<Finding> findings) {
        if (findings.isEmpty()) {
            return;
        }
        page.element("h2", words.of("report.findings")).raw("<ul>");
        for (Finding finding : findings) {
            String severity = words.of("severity." + finding.severity().name()).strip();
            page.element("li", severity + " \u2013 " + sentence(finding, words));
        }
        page.raw("</ul>");
    }

    /** A finding in words, with the piece before it where the words do not name it themselves. */
    public static String sentence(Finding finding, Words words) {
        String said = words.of(finding);
        return said.contains(finding.piece()) ? said : finding.piece() + ": " + said;
    }

    private static final String STYLE = """
            <style>
            :root{color-scheme:light dark}
            body{font:16px/1.5 system-ui,sans-serif;margin:0;background:Canvas;color:CanvasText}
            main{max-width:60rem;margin:0 auto;padding:1.5rem}
            table{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums}
            th,td{text-align:left;padding:.3rem .8rem .3rem 0;border-bottom:1px solid #8886;vertical-align:top}
            details{margin:.4rem 0}
            .pieces{display:flex;flex-wrap:wrap;gap:1.5rem;align-items:flex-start}
            figure{margin:0}figcaption{text-align:center}
            svg path{fill:none;stroke:currentColor;stroke-width:1.2;vector-effect:non-scaling-stroke}
            svg .cloth{fill:#8882;stroke:none}
            svg .ghost{stroke-dasharray:5 4;opacity:.7}
            svg .moved{stroke:#c2410c;stroke-width:3}
            svg .dart,svg .grain{stroke-width:.8;opacity:.7}
            @media print{details{display:block}}
            </style>""";
}
