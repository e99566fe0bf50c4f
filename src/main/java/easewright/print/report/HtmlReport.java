package easewright.print.report;

import easewright.print.report.Part.Figure;
import easewright.print.report.Part.Figures;
import easewright.print.report.Part.Grid;
import easewright.print.report.Part.Heading;
import easewright.print.report.Part.Paragraph;
import easewright.print.report.Part.Points;
import java.util.List;

/** Sets a report as one page for a browser. It needs no other file, asks for none, and runs no script. */
public final class HtmlReport {
    private final Html page = new Html();

    private HtmlReport() {}

    public static String of(ReportContent content) {
        return new HtmlReport().page(content);
    }

    private String page(ReportContent content) {
        page.raw("<!DOCTYPE html>").raw("<html lang=\"en\"><head><meta charset=\"utf-8\">");
        page.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        page.raw("<meta http-equiv=\"Content-Security-Policy\""
                + " content=\"default-src 'none'; style-src 'unsafe-inline'\">");
        page.element("title", content.title());
        page.raw(STYLE).raw("</head><body><main>");
        page.raw("<header>").element("h1", content.title()).element("p", content.byline());
        page.raw("</header>");
        content.parts().forEach(this::part);
        return page.raw("</main></body></html>").toString();
    }

    private void part(Part part) {
        if (part instanceof Heading heading) {
            page.element("h2", heading.text());
        } else if (part instanceof Paragraph paragraph) {
            page.raw(paragraph.quiet() ? "<p class=\"quiet\">" : "<p>");
            page.text(paragraph.text()).raw("</p>");
        } else if (part instanceof Points points) {
            page.raw(points.numbered() ? "<ol>" : "<ul>");
            points.texts().forEach(text -> page.element("li", text));
            page.raw(points.numbered() ? "</ol>" : "</ul>");
        } else if (part instanceof Grid grid) {
            grid(grid);
        } else if (part instanceof Figures figures) {
            page.raw("<div class=\"figures\">");
            figures.figures().forEach(this::figure);
            page.raw("</div>");
        }
    }

    private void grid(Grid grid) {
        page.raw("<div class=\"wide\"><table><thead>");
        row("th", grid.head(), grid.figures());
        page.raw("</thead><tbody>");
        grid.rows().forEach(cells -> row("td", cells, grid.figures()));
        page.raw("</tbody></table></div>");
    }

    private void row(String cell, List<String> texts, int figures) {
        page.raw("<tr>");
        for (int i = 0; i < texts.size(); i++) {
            page.raw("<" + cell + (i >= figures ? " class=\"figure\">" : ">"));
            page.text(texts.get(i)).raw("</" + cell + ">");
        }
        page.raw("</tr>");
    }

    private void figure(Figure figure) {
        page.raw("<figure>").raw(SvgPicture.of(figure));
        if (!figure.caption().isEmpty()) {
            page.element("figcaption", figure.caption());
        }
        page.raw("</figure>");
    }

    private static final String STYLE = """
            <style>
            :root{color-scheme:light;--ink:#14181d;--soft:#48505a;--line:#d5d9dd}
            *{box-sizing:border-box}
            body{font:16px/1.55 "DejaVu Sans Condensed",system-ui,sans-serif;margin:0;background:#f4f4f1;color:var(--ink)}
            main{max-width:54rem;margin:0 auto;padding:2.5rem clamp(1rem,5vw,4rem) 4rem;background:#fff;min-height:100vh}
            header{border-bottom:2px solid var(--ink);margin-bottom:1.5rem}
            h1{font-size:2rem;line-height:1.2;margin:0;overflow-wrap:anywhere}
            header p{margin:.3rem 0 1rem;color:var(--soft)}
            h2{font-size:1.2rem;margin:2.4rem 0 .7rem;break-after:avoid}
            p,li{overflow-wrap:anywhere;max-width:44rem}
            .quiet{color:var(--soft);font-size:.88rem}
            ul,ol{padding-left:1.3rem;margin:.5rem 0}li{margin:.3rem 0}
            .wide{overflow-x:auto}
            table{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums;font-size:.92rem}
            th,td{text-align:left;padding:.4rem .9rem .4rem 0;border-bottom:1px solid var(--line);vertical-align:top}
            th{vertical-align:bottom;color:var(--soft);font-weight:600}
            .figure{text-align:right;padding:.4rem 0 .4rem .9rem;white-space:nowrap}
            th.figure{white-space:normal;vertical-align:bottom}
            .figures{display:flex;flex-wrap:wrap;gap:1.2rem 2rem;align-items:flex-end;margin:.8rem 0}
            figure{margin:0;max-width:100%;break-inside:avoid}
            figcaption{color:var(--soft);font-size:.88rem;margin-top:.2rem}
            svg{display:block;max-width:100%;height:auto}
            svg text{font-family:"DejaVu Sans Condensed",system-ui,sans-serif}
            @page{margin:16mm}
            @media print{body{background:#fff;font-size:10.5pt}main{max-width:none;padding:0}}
            </style>""";
}
