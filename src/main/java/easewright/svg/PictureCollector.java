package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the pictures that are held in the drawing itself. Nothing outside it is ever opened, nothing is unpacked. */
final class PictureCollector {
    private static final int MOST = 100;

    /** More than this, unpacked, would fill the memory of a small machine: about an A0 sheet at 200 to the inch. */
    private static final long MOST_PIXELS = 64_000_000;

    /** Enough of a packed picture to hold its head, characters of base 64. */
    private static final int HEAD = 1 << 18;

    private final List<Picture> found = new ArrayList<>();

    List<Picture> found() {
        return found;
    }

    void add(Frame frame, Map<String, String> style, Notes notes) {
        String called = ShapeNames.called(frame.source());
        String href =
                frame.element().href() == null ? "" : frame.element().href().strip();
        if (!frame.sight().shown() || href.isEmpty() || found.size() >= MOST) {
            return;
        }
        if (!href.regionMatches(true, 0, "data:", 0, 5)) {
            notes.add("picture-outside", Severity.NOTE, called);
            return;
        }
        int comma = href.indexOf(',');
        boolean base64 = comma > 0 && href.substring(0, comma).strip().endsWith(";base64");
        String data = base64 ? href.substring(comma + 1) : "";
        Optional<PictureSize> size = head(data);
        if (size.isEmpty() || size.get().pixels() > MOST_PIXELS) {
            notes.add(size.isEmpty() ? "picture-unreadable" : "picture-too-large", Severity.CAUTION, called);
            return;
        }
        place(frame, style, size.get())
                .ifPresent(toMm -> found.add(new Picture(
                        toMm,
                        size.get().mediaType(),
                        size.get().across(),
                        size.get().down(),
                        data)));
    }

    private static Optional<PictureSize> head(String data) {
        String head = data.substring(0, Math.min(data.length(), HEAD)).replaceAll("[^A-Za-z0-9+/]", "");
        try {
            return PictureSize.of(Picture.decoded(head.substring(0, head.length() / 4 * 4)));
        } catch (IllegalArgumentException notBase64) {
            return Optional.empty();
        }
    }

    private static Optional<Affine> place(Frame frame, Map<String, String> style, PictureSize size) {
        Optional<Point> corner = Viewport.corner(frame.element(), style, frame.viewportWidth(), frame.viewportHeight());
        Optional<Double> width = side(frame, style, "width", frame.viewportWidth());
        Optional<Double> height = side(frame, style, "height", frame.viewportHeight());
        double ratio = size.down() / (double) size.across();
        double w = width.orElseGet(() -> height.map(h -> h / ratio).orElse((double) size.across()));
        double h = height.orElse(w * ratio);
        if (corner.isEmpty() || !(w > 0 && h > 0)) {
            return Optional.empty();
        }
        Affine inBox = new ViewBox(0, 0, size.across(), size.down())
                .into(w, h, frame.element().get("preserveAspectRatio"));
        return Optional.of(frame.toMm().after(Affine.translation(corner.get())).after(inBox));
    }

    private static Optional<Double> side(Frame frame, Map<String, String> style, String name, double whole) {
        String text = style.getOrDefault(name, frame.element().get(name));
        return text == null ? Optional.empty() : Length.parse(text).map(length -> length.units(whole));
    }
}
