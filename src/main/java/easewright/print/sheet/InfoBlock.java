package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.Cautions.Caution;
import easewright.print.StillOpen;
import easewright.print.ink.Lettering;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.ink.Tone;
import easewright.text.Words;
import java.util.List;

/** Title, test square and cautions in one block, which is laid among the pieces of a sheet that has no plan page. */
final class InfoBlock {
    private static final double TEXT = 3;

    private final Picture picture;
    private final double width;
    private final double height;

    /** @param notes what to say before the cautions, each a paragraph */
    InfoBlock(Job job, List<String> notes, double large) {
        Words words = job.words();
        double side = TestSquare.side(words.unit());
        width = side * Math.max(1, large * 0.75);
        Pencil pencil = new Pencil();
        double top = title(pencil, job.title(), large);
        pencil.write(job.byline(), 0, top + 2 * large, 3.4 * large, Tone.DARK);
        top += 6 * large;
        pencil.add(TestSquare.of(words.unit()).transformed(Affine.translation(0, top)));
        TextColumn text = new TextColumn(pencil, 0, top + side + 4, width);
        List<String> open = StillOpen.of(job.reading(), job.drawn(), job.words());
        if (!open.isEmpty()) {
            text.heading(words.of("print.open"));
            open.forEach(line -> text.paragraph(line, TEXT * large, Tone.BLACK));
            text.gap(2);
        }
        notes.forEach(note -> text.paragraph(note, TEXT * large, Tone.BLACK));
        for (Caution caution : job.cautions()) {
            if (!caution.code().equals("test-square")) {
                text.paragraph(words.of("caution." + caution.code(), caution.values()), TEXT * large, Tone.BLACK);
            }
        }
        height = text.bottom();
        picture = pencil.picture();
    }

    /** In as many lines as it takes, but three at most; gives its lower border. */
    private double title(Pencil pencil, String title, double large) {
        Lettering face = Lettering.of(true);
        double size = (face.width(title, 7 * large) <= width ? 7 : 5) * large;
        List<String> lines = face.wrapped(title, size, width);
        double y = 0;
        for (int i = 0; i < Math.min(3, lines.size()); i++) {
            String rest = i == 2 ? String.join(" ", lines.subList(2, lines.size())) : lines.get(i);
            pencil.writeBold(face.fitted(rest, size, width), 0, y + size * 0.9, size, Tone.BLACK);
            y += size * 1.25;
        }
        return y + size * 0.25;
    }

    Picture at(Affine place) {
        return picture.transformed(place);
    }

    Cutout cutout() {
        List<Point> corners =
                List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height));
        return new Cutout(corners, List.of(Cutout.AS_DRAWN), false);
    }

    Box box() {
        return new Box(0, 0, width, height);
    }
}
