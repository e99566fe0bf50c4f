package easewright.editor;

import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.Optional;

/** Takes pictures of marking a bare drawing: run with the folder to write to and the drawing. */
public final class MarkPictures extends Director {
    /** Starts it; a class of its own, because a main class that is an application wants JavaFX as modules. */
    static final class Run {
        private Run() {}

        public static void main(String[] args) {
            direct(MarkPictures.class, args);
        }
    }

    @Override
    void play() throws Exception {
        Path drawing = Path.of(getParameters().getRaw().get(1));
        size(1280, 800);
        SvgFile svg = SvgFile.read(drawing);
        act(() -> app.session()
                .open(Opened.of(new OpenFile(
                        svg, Optional.empty(), drawing.getFileName().toString()))));
        press("#step-scale");
        picture("scale");
        press("#scale-check");
        // A drawing that proves its scale is offered no other.
        if (shows("#scale-offer-0")) {
            press("#scale-offer-0");
            picture("scale-done");
        }
        press("#step-suggested");
        picture("suggested");
        press("#suggest-accept");
        picture("accepted");
        press("#step-pieces");
        picture("pieces");
        press("#tool-dart");
        picture("dart");
        press("#step-seams");
        picture("seams");
        press("#step-levels");
        picture("levels");
        press("#mark-next");
        picture("ease");
        act(() -> app.session().setDark(true));
        size(1920, 1080);
        press("#page-marks");
        picture("levels-dark");
        press("#step-pieces");
        picture("pieces-dark");
    }
}
