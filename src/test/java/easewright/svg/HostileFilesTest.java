package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import easewright.pattern.Finding;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files of {@code src/test/resources/hostile}, each with what EXPECT.tsv there asks for. */
class HostileFilesTest {
    private static final Path FOLDER = folder();

    private static Path folder() {
        try {
            return Path.of(HostileFilesTest.class.getResource("/hostile").toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Stream<String> expected(String wanted) throws IOException {
        List<String> names = Files.readAllLines(FOLDER.resolve("EXPECT.tsv")).stream()
                .map(line -> line.split("\t"))
                .filter(row -> row.length > 2 && row[1].equals(wanted) && Files.exists(FOLDER.resolve(row[0])))
                .map(row -> row[0])
                .toList();
        assertThat(names).isNotEmpty();
        return names.stream();
    }

    static Stream<String> rejected() throws IOException {
        return expected("reject");
    }

    static Stream<String> opened() throws IOException {
        return expected("open");
    }

    static Stream<String> bounded() throws IOException {
        return expected("bounded");
    }

    private static Drawing read(String file) throws SvgProblem {
        return DrawingReader.read(bytes(file), file);
    }

    private static byte[] bytes(String file) {
        try {
            return Files.readAllBytes(FOLDER.resolve(file));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("rejected")
    void isRefusedWithAProblem(String file) {
        assertTimeoutPreemptively(
                Duration.ofSeconds(10),
                () -> assertThatThrownBy(() -> read(file))
                        .isInstanceOfSatisfying(
                                SvgProblem.class,
                                problem -> assertThat(problem.values()).containsEntry("file", file)));
    }

    @ParameterizedTest
    @MethodSource("opened")
    void isReadWithItsGoodOutline(String file) {
        Drawing drawing = assertTimeoutPreemptively(Duration.ofSeconds(10), () -> read(file));
        boolean holdsGood = new String(bytes(file), StandardCharsets.ISO_8859_1)
                        .replace("\0", "")
                        .contains("'good'")
                || new String(bytes(file), StandardCharsets.ISO_8859_1)
                        .replace("\0", "")
                        .contains("\"good\"");
        if (holdsGood) {
            DrawnShape good = drawing.shape("good").orElseThrow();
            boolean odd = file.startsWith("53") || file.startsWith("55") || file.startsWith("57");
            assertThat(Ring.largest(good).orElseThrow().area()).isCloseTo(odd ? area(file) : 6400, within(0.001));
        }
    }

    /** 53: viewBox ignored, 1 unit = 1 px; 55: width invalid, height 100mm holds; 57: 2 × 1 mm per unit. */
    private static double area(String file) {
        double px = 25.4 / 96;
        return file.startsWith("53") ? 6400 * px * px : file.startsWith("57") ? 12_800 : 6400;
    }

    @ParameterizedTest
    @MethodSource("bounded")
    void endsInTime(String file) {
        assertTimeoutPreemptively(Duration.ofSeconds(10), () -> {
            try {
                assertThat(read(file).shapes()).isNotEmpty();
            } catch (SvgProblem problem) {
                assertThat(problem.code()).isNotBlank();
            }
        });
    }

    private static List<String> codes(String file) throws SvgProblem {
        return read(file).findings().stream().map(Finding::code).distinct().toList();
    }

    @Test
    void whatIsLeftOutIsTold() throws SvgProblem {
        assertThat(codes("41-use-self.svg")).contains("use-in-circles");
        assertThat(codes("43-use-ancestor.svg")).contains("use-in-circles");
        assertThat(codes("47-dangling-refs.svg")).contains("use-missing");
        assertThat(codes("27-use-file.svg")).contains("use-outside");
        assertThat(codes("49-nan-infinity.svg")).contains("path-broken", "number-unreadable", "transform-unreadable");
        assertThat(codes("51-huge-coordinates.svg")).contains("out-of-range");
        assertThat(codes("53-viewbox-negative.svg")).contains("view-box-invalid", "scale-unproved");
        assertThat(codes("55-width-negative.svg")).contains("page-size-invalid");
        assertThat(codes("59-transform-singular.svg")).contains("transform-flattens");
        assertThat(codes("61-transform-overflow.svg")).contains("out-of-range");
        assertThat(codes("65-negative-sizes.svg")).contains("size-negative", "points-broken");
        assertThat(codes("67-self-intersecting.svg")).contains("outline-closed");
        assertThat(codes("85-duplicate-ids.svg")).contains("same-id");
        assertThat(codes("89-empty-svg.svg")).contains("no-outlines");
    }

    @Test
    void refusalsSayWhy() {
        assertThat(problem("01-xxe-file.svg").code()).isEqualTo("external-entity");
        assertThat(problem("03-xxe-parameter.svg").code()).isEqualTo("external-entity");
        assertThat(problem("09-billion-laughs-attr.svg").code()).isEqualTo("too-much");
        assertThat(problem("13-dtd-default-attribute.svg").code()).isEqualTo("default-attribute");
        assertThat(problem("69-namespace-wrong.svg").code()).isEqualTo("not-svg");
        assertThat(problem("77-encoding-unknown.svg").code()).isEqualTo("encoding-unknown");
        assertThat(problem("79-surrogate-cesu8.svg").code()).isEqualTo("encoding-broken");
        assertThat(problem("81-truncated.svg").code()).isEqualTo("not-well-formed");
        assertThat(problem("81-truncated.svg").values()).containsKey("line");
        assertThat(problem("91-png-renamed.svg").code()).isEqualTo("not-svg");
    }

    private static SvgProblem problem(String file) {
        try {
            read(file);
        } catch (SvgProblem problem) {
            return problem;
        }
        throw new AssertionError(file + " was read");
    }

    @Test
    void sameIdsAreToldApartByPlace() throws SvgProblem {
        List<DrawnShape> shapes = read("85-duplicate-ids.svg").shapes();
        assertThat(shapes).extracting(DrawnShape::id).doesNotHaveDuplicates().startsWith("same", "same-2");
        assertThat(shapes).extracting(DrawnShape::idGiven).startsWith(true, false);
        assertThat(shapes).extracting(DrawnShape::element).startsWith(1, 2);
    }

    @Test
    void namesCarryNoControlCharacters() throws SvgProblem {
        for (DrawnShape shape : read("87-id-injection.svg").shapes()) {
            String name = ShapeNames.readable(shape.id()) + shape.label() + shape.layers();
            assertThat(name.codePoints()
                            .filter(c -> Character.getType(c) == Character.CONTROL
                                    || Character.getType(c) == Character.FORMAT))
                    .isEmpty();
        }
    }

    @Test
    void aBombIsStoppedWhileUnpacking() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            byte[] spaces = new byte[1 << 20];
            Arrays.fill(spaces, (byte) ' ');
            for (int i = 0; i < 200; i++) {
                out.write(spaces);
            }
        }
        assertThatThrownBy(() -> DrawingReader.read(packed.toByteArray(), "bomb.svgz"))
                .isInstanceOfSatisfying(
                        SvgProblem.class, p -> assertThat(p.code()).isEqualTo("too-large"));
    }

    @Test
    void aFileWithNothingInItIsSaidToBeEmpty() {
        assertThatThrownBy(() -> DrawingReader.read(new byte[0], "a.svg"))
                .isInstanceOfSatisfying(
                        SvgProblem.class, p -> assertThat(p.code()).isEqualTo("file-empty"));
    }

    @Test
    void oneLayerOfPackingIsOpenedAndNoMore() throws Exception {
        byte[] plain = bytes("63-arc-oddities.svg");
        assertThat(DrawingReader.read(packed(plain), "a.svgz").shapes())
                .isEqualTo(DrawingReader.read(plain, "a.svg").shapes());
        assertThatThrownBy(() -> DrawingReader.read(packed(packed(plain)), "a.svgz"))
                .isInstanceOfSatisfying(
                        SvgProblem.class, p -> assertThat(p.code()).isEqualTo("not-svg"));
        byte[] cut = Arrays.copyOf(packed(plain), packed(plain).length - 12);
        assertThatThrownBy(() -> DrawingReader.read(cut, "a.svgz"))
                .isInstanceOfSatisfying(
                        SvgProblem.class, p -> assertThat(p.code()).isEqualTo("gzip-broken"));
    }

    private static byte[] packed(byte[] plain) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(plain);
        }
        return packed.toByteArray();
    }

    @Test
    void depthAndCopiesAreBounded() {
        String head = "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm' viewBox='0 0 10 10'>";
        String deep = head + "<g>".repeat(100_000) + "</g>".repeat(100_000) + "</svg>";
        assertThatThrownBy(() -> DrawingReader.read(deep.getBytes(StandardCharsets.UTF_8), "deep.svg"))
                .isInstanceOfSatisfying(
                        SvgProblem.class, p -> assertThat(p.code()).isEqualTo("too-deep"));

        StringBuilder doubling = new StringBuilder(head).append("<defs><path id='u0' d='M0 0H5'/>");
        for (int i = 1; i < 60; i++) {
            doubling.append("<g id='u").append(i).append("'>");
            doubling.append(("<use href='#u" + (i - 1) + "'/>").repeat(2)).append("</g>");
        }
        doubling.append("</defs><use href='#u59'/></svg>");
        assertTimeoutPreemptively(Duration.ofSeconds(10), () -> {
            Drawing drawing = DrawingReader.read(doubling.toString().getBytes(StandardCharsets.UTF_8), "laughs.svg");
            assertThat(drawing.findings()).extracting(Finding::code).contains("too-many-copies");
        });
    }
}
