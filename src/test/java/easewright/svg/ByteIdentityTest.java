package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Wish;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What no edit touches comes out byte for byte. */
class ByteIdentityTest {
    private static final Path HOSTILE = Path.of("src/test/resources/hostile");

    /** A file with everything that a serialiser would lose. */
    private static final String ODD = "<?xml version='1.0' encoding=\"%s\" standalone = 'no' ?>\r\n"
            + "<!DOCTYPE svg [ <!-- > ' --> <!ENTITY ns 'http://www.w3.org/2000/svg'> <?pi > ' ?>]>\n"
            + "<!-- d=\"M0 0\" <path d='M1 1'/> -->\r\n"
            + "<s:svg\txmlns:s = \"&ns;\"\r\n xmlns:x='urn:x' width='200mm' height = \"200mm\" viewBox='0 0 200 200'>\r"
            + "<x:data a='>' b=\"&quot;'\"><![CDATA[ <path d=\"M9 9\"/> ]]></x:data  >\n"
            + "<?keep  me ?><s:title>G\u00fcrtel &#x20AC; &amp; </s:title>\r\n"
            + "<s:path x:d=\"M0 0\"  d = 'M10,10\r\nh100&#10;v100\th-100 z' id=\"a\"\t/ >"
            + "</s:svg >\r\n<!-- end -->  ";

    static List<String> openFiles() throws IOException {
        try (Stream<String> lines = Files.lines(HOSTILE.resolve("EXPECT.tsv"))) {
            return lines.map(line -> line.split("\t"))
                    .filter(cells -> cells[1].equals("open"))
                    .map(cells -> cells[0])
                    .filter(name -> Files.exists(HOSTILE.resolve(name)))
                    .toList();
        }
    }

    @Test
    void thereAreHostileFilesToOpen() throws IOException {
        assertThat(openFiles()).hasSizeGreaterThan(25);
    }

    @ParameterizedTest
    @MethodSource("openFiles")
    void aHostileFileIsWrittenBackAsItWas(String name) throws Exception {
        byte[] bytes = Files.readAllBytes(HOSTILE.resolve(name));
        SvgFile file = SvgFile.read(bytes, name);
        assertThat(file.write(file.pattern())).isEqualTo(bytes);
        assertThat(SourceText.of(PlainBytes.of(bytes, name), name).splice(List.of(new Edit(0, 0, ""))))
                .isEqualTo(bytes);
    }

    @ParameterizedTest
    @MethodSource("openFiles")
    void marksInAHostileFileLeaveTheRestAsItWas(String name) throws Exception {
        byte[] bytes = Files.readAllBytes(HOSTILE.resolve(name));
        SvgFile file = SvgFile.read(bytes, name);
        byte[] written = file.write(file.pattern().withWish("hip", 40));
        SvgFile again = SvgFile.read(written, name);
        assertThat(again.pattern().wishes()).containsEntry("hip", Wish.of(40.0));
        assertThat(again.pattern().pieces()).hasSameSizeAs(file.pattern().pieces());
        SourceText before = SourceText.of(PlainBytes.of(bytes, name), name);
        SourceText after = SourceText.of(PlainBytes.of(written, name), name);
        Tag block = MarkNode.blocks(after).get(0);
        Tag metadata = after.tag(block.parent());
        String rest = after.text().substring(0, metadata.from()) + after.text().substring(metadata.endTo());
        // An empty root has to be opened to take the block.
        String was = before.tag(0).selfClosed() ? before.text().replace("/>", "></svg>") : before.text();
        assertThat(bare(rest)).isEqualTo(bare(was));
    }

    /** Without ids, which marks may add, and the line ends around the block. */
    private static String bare(String text) {
        return text.replaceAll(" id=\"[^\"]*\"", "").replaceAll("\\s", "");
    }

    @ParameterizedTest
    @CsvSource({"UTF-8, 0", "UTF-8, 3", "UTF-16BE, 2", "UTF-16LE, 2", "ISO-8859-1, 0", "windows-1252, 0"})
    void oneChangedCornerIsTheOnlyDifference(String encoding, int mark) throws SvgProblem {
        Charset charset = Charset.forName(encoding);
        String declared = encoding.startsWith("UTF-16") ? "UTF-16" : encoding;
        String text = String.format(ODD.replace("/ >", "/>"), declared);
        byte[] bytes = stored(text, charset, mark);
        SvgFile file = SvgFile.read(bytes, "odd.svg");
        assertThat(file.write(file.pattern())).isEqualTo(bytes);
        Pattern moved = SvgFileTest.moved(file.pattern(), 1, new Point(2, 0));
        byte[] written = file.write(moved);
        String now = new String(written, charset).substring(mark > 0 ? 1 : 0);
        int block = now.indexOf("  <s:metadata>");
        String rest =
                now.substring(0, block) + now.substring(now.indexOf("</s:metadata>") + "</s:metadata>\r\n".length());
        assertThat(rest)
                .isEqualTo(text.replace("M10,10\r\nh100&#10;v100\th-100 z", "M10,10 L112 10 L110 110 h-100 z")
                        .replace("</s:svg >", "\r\n</s:svg >"));
        assertThat(stored(now, charset, mark)).isEqualTo(written);
    }

    private static byte[] stored(String text, Charset charset, int mark) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (mark > 0) {
            out.writeBytes("\ufeff".getBytes(charset));
        }
        out.writeBytes(text.getBytes(charset));
        return out.toByteArray();
    }

    @Test
    void aPackedFileStaysPacked() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var gzip = new java.util.zip.GZIPOutputStream(out)) {
            gzip.write(SvgFileTest.file("<path id='a' d='M10,10h100v100H10z'/>").bytes());
        }
        SvgFile file = SvgFile.read(out.toByteArray(), "a.svgz");
        assertThat(file.write(file.pattern())).isEqualTo(out.toByteArray());
        byte[] written = file.write(SvgFileTest.moved(file.pattern(), 1, new Point(1, 0)));
        assertThat(PlainBytes.isPacked(written)).isTrue();
        assertThat(new String(PlainBytes.of(written, "a"), StandardCharsets.UTF_8))
                .contains("d='M10,10L111 10 L110 110H10z'");
    }
}
