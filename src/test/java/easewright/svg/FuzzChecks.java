package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Wish;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.SAXParserFactory;

/** What must hold of a reader whatever it is given. */
final class FuzzChecks {
    private FuzzChecks() {}

    static void check(FuzzCases.Reader reader, String input) throws Exception {
        switch (reader) {
            case PATH -> path(input);
            case TRANSFORM -> transform(input);
            case STYLE -> style(input);
            default -> file(input.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Every command is found where it stands, in order; what is read can be measured; nothing else is thrown. */
    private static void path(String data) {
        ParsedPath parsed = PathParser.parse(data, 0.3);
        int at = 0;
        for (Command command : parsed.commands()) {
            assertThat(command.from()).isGreaterThanOrEqualTo(at);
            assertThat(command.to()).isGreaterThan(command.from());
            at = command.to();
        }
        assertThat(at).isLessThanOrEqualTo(data.length());
        parsed.brokenAt().ifPresent(broken -> assertThat(broken).isBetween(0, data.length()));
        List<ParsedPath.Stroke> strokes;
        try {
            strokes = parsed.strokes(new Affine(0.2, 0.1, -0.1, 0.2, 3, 4));
        } catch (IllegalArgumentException beyondNumbers) {
            return;
        }
        for (ParsedPath.Stroke stroke : strokes) {
            assertThat(stroke.commands()).hasSameSizeAs(stroke.path().segments());
            for (Segment segment : stroke.path().segments()) {
                if (Math.abs(segment.start().x()) < 1e6
                        && Math.abs(segment.end().x()) < 1e6) {
                    assertThat(segment.length()).isNotNaN();
                }
            }
        }
    }

    private static void transform(String text) {
        for (Optional<Point> reference : List.of(Optional.<Point>empty(), Optional.of(new Point(300, 200)))) {
            try {
                Transforms.parse(text, reference)
                        .ifPresent(map -> assertThat(map.a()).isNotNaN());
            } catch (IllegalArgumentException beyondNumbers) {
                continue;
            }
        }
    }

    private static void style(String text) {
        StyleSheet sheet = new StyleSheet();
        sheet.add(text);
        Element root = new Element("svg", 0, null, false, new String[0]);
        Element path = new Element("path", 1, root, false, new String[] {"id", "a", "class", "b c"});
        root.children.add(path);
        for (StyleSheet.Rule rule : sheet.rules()) {
            rule.selector().matches(path, new Selector.Effort());
            assertThat(rule.declarations()).isNotEmpty();
        }
        Map<String, Declarations.Value> own = Declarations.parse(text);
        assertThat(own.values())
                .allSatisfy(
                        value -> assertThat(value.text()).isEqualTo(value.text().strip()));
    }

    /** Refused with a reason, or read; then written back as it was, and marked without harm to anything else. */
    private static void file(byte[] bytes) throws Exception {
        SvgFile file;
        try {
            file = SvgFile.read(bytes, "fuzz.svg");
        } catch (SvgProblem refused) {
            assertThat(refused.values()).containsKey("file");
            return;
        }
        assertThat(file.findings()).allSatisfy(f -> assertThat(f.code()).isNotBlank());
        assertThat(file.write(file.pattern())).isEqualTo(bytes);
        Pattern pattern = file.pattern();
        byte[] written;
        try {
            written = file.write(pattern.withWish("hip", 12.5));
        } catch (SvgProblem refused) {
            if (byStyle(refused, bytes)) {
                return;
            }
            assertThat(refused.code())
                    .isIn("marks-not-understood", "text-unwritable", "shape-not-editable", "encoding-not-kept");
            return;
        }
        SAXParserFactory.newDefaultInstance()
                .newSAXParser()
                .parse(new ByteArrayInputStream(written), new org.xml.sax.helpers.DefaultHandler());
        SvgFile again = SvgFile.read(written, "fuzz.svg");
        assertThat(again.pattern().wishes()).containsEntry("hip", Wish.of(12.5));
        assertThat(again.pattern().pieces())
                .extracting(Piece::outline)
                .isEqualTo(pattern.pieces().stream().map(Piece::outline).toList());
        moved(file, pattern, bytes);
    }

    /**
     * Whether nothing was saved because a style rule began to apply to an element that got an id or became a path:
     * without the style it must go well.
     */
    private static boolean byStyle(SvgProblem refused, byte[] bytes) throws Exception {
        String text = new String(bytes, StandardCharsets.UTF_8);
        String bare = text.replaceAll("(?s)<style>.*</style>", "");
        if (!refused.code().equals("write-unproved") || bare.equals(text)) {
            return false;
        }
        file(bare.getBytes(StandardCharsets.UTF_8));
        return true;
    }

    /** A corner of each piece moved, which either is refused or lands where it was to go. */
    private static void moved(SvgFile file, Pattern pattern, byte[] bytes) throws Exception {
        if (pattern.pieces().isEmpty()
                || pattern.pieces().get(0).outline().segments().size() < 3) {
            return;
        }
        Pattern changed = SvgFileTest.moved(pattern, 1, new Point(0.75, -0.5));
        byte[] written;
        try {
            written = file.write(changed);
        } catch (SvgProblem refused) {
            if (byStyle(refused, bytes)) {
                return;
            }
            assertThat(refused.code())
                    .isIn(
                            "shape-not-editable",
                            "shape-copied",
                            "joined-not-writable",
                            "rider-not-writable",
                            "piece-not-drawn");
            return;
        }
        assertThat(SvgFile.read(written, "fuzz.svg")
                        .pattern()
                        .pieces()
                        .get(0)
                        .outline()
                        .length())
                .isCloseTo(changed.pieces().get(0).outline().length(), org.assertj.core.api.Assertions.within(1e-3));
    }
}
