package easewright.editor.mark;

import easewright.draft.Samples;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A session with a drawing without marks on the table, for tests. */
final class Bare {
    final Session session = new Session(LengthUnit.CM, false);
    final Marker marker = new Marker(session);
    final SvgFile svg;

    private Bare(SvgFile svg) {
        this.svg = svg;
        session.open(Opened.of(new OpenFile(svg, Optional.empty(), "bare.svg")));
        marker.begin();
        marker.go(MarkState.Step.SUGGESTED);
    }

    static Bare of(String svg) throws SvgProblem {
        return new Bare(SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "bare.svg"));
    }

    /** One piece 200 mm wide and 300 mm tall, and a second one beside it. */
    static Bare twoPieces() throws SvgProblem {
        return of(
                "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='front' d='M100,100 H300 V400 H100 Z'/><path id='back' d='M400,100 H600 V400 H400 Z'/></svg>");
    }

    /** The sample skirt without its marks. */
    static Bare skirt() throws SvgProblem {
        return of(Samples.svg(Samples.drafts().get(0).draft()).replaceFirst("(?s)<metadata>.*</metadata>", ""));
    }

    /** Sets the scale, as from a line that was measured. */
    void scale(double mmPerUnit, boolean statedToo) {
        marker.scale(new ScaleView.Offer("", "", mmPerUnit, Optional.empty()), statedToo);
    }

    /** A line beside the outlines of pieces. */
    OtherLines.Other other(String id) {
        return OtherLines.on(marker.sheet()).stream()
                .filter(o -> o.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    Piece piece(String idOrName) {
        return session.desk().pattern().piece(idOrName).orElseThrow();
    }

    /** The skirt with all marks that are suggested. */
    static Pattern marked() throws SvgProblem {
        Bare bare = skirt();
        bare.marker.suggesting().accept();
        return bare.session.desk().pattern();
    }

    /** Two pieces without any mark. */
    static Pattern unmarked() throws SvgProblem {
        return twoPieces().session.desk().pattern();
    }

    /** The name of the edge at the top of a piece, at a place across, mm. */
    static String top(Pattern pattern, String piece, double x) {
        return EdgeEdits.at(pattern.piece(piece).orElseThrow(), new Point(x, 94))
                .orElseThrow()
                .name();
    }
}
