package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is read without the JDK's parser, that parser takes for well-formed too, and reads the very same tree in it. */
class PlainXmlTest {
    private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg'>%s</svg>";

    /** Small files that hold something of everything. */
    private static final List<String> SEEDS = List.of(
            "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"no\"?>\n<!-- Generator: x -->\n"
                    + "<?xml-stylesheet href='a.css'?><svg xmlns=\"http://www.w3.org/2000/svg\""
                    + " xmlns:k=\"http://www.inkscape.org/namespaces/inkscape\" viewBox=\"0 0 10 10\">\r\n"
                    + "<g k:label=\"A &amp; b\" id='a'><title>T&#233;&lt;</title><path d=\"M0 0\n1\t1\" k:x=''/></g>"
                    + "<metadata><m xmlns='urn:m'><n at='1 2'/></m></metadata></svg>\n<!-- end -->",
            "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'>"
                    + "<style><![CDATA[.a>b{display:none}]]></style><text x='1' xml:space='preserve'>a\r\nb<tspan y='2'>c"
                    + "</tspan>]] ></text ><use xlink:href='#a' href='#b'/><s:g xmlns:s='http://www.w3.org/2000/svg'>"
                    + "<s:rect width='1e1' height=\"5\"/></s:g><script>a&lt;b</script></svg>");

    private static final String[] SPOILS = {
        "<",
        ">",
        "&",
        "'",
        "\"",
        "=",
        "/",
        " ",
        "\n",
        "\r",
        "\t",
        ":",
        "-",
        "--",
        "]",
        "]]>",
        "<!--",
        "-->",
        "<![CDATA[",
        "<?x y?>",
        "<?xml?>",
        "?>",
        "</g>",
        "<g>",
        "<g/>",
        "&#10;",
        "&#0;",
        "&#xD800;",
        "&#x10FFFF;",
        "&x;",
        "&amp",
        "xmlns:q=''",
        " xmlns:q='u'",
        " q:a='1'",
        " k:a='1'",
        " a='1'",
        " xmlns=''",
        " xmlns:xml='u'",
        "\u0000",
        "\u0085",
        "\uFFFE",
        "\uFFFF",
        "\uFEFF",
        "\u00e9",
        "\ud83e\udea1",
        "\u2028",
        "<!DOCTYPE svg>",
        "0",
        "x",
        ".",
        "é",
        "%",
        ";",
        "title",
        "</title>",
        "<text>",
        "</text>",
        "<tspan dy='1'>"
    };

    private static Optional<Tree> plain(byte[] bytes) {
        try {
            return PlainXml.tree(SourceText.of(bytes, "a.svg"));
        } catch (SvgProblem noText) {
            return Optional.empty();
        }
    }

    /** Whether it was read; if so it is compared. */
    private static boolean compared(byte[] bytes) throws SvgProblem {
        Optional<Tree> plain = plain(bytes);
        if (plain.isPresent()) {
            requireSame(plain.get(), SafeXml.read(bytes, "a.svg"));
        }
        return plain.isPresent();
    }

    private static void requireSame(Tree one, Tree other) {
        assertThat(one.byId().keySet()).isEqualTo(other.byId().keySet());
        one.byId()
                .forEach((id, element) ->
                        assertThat(element.index).isEqualTo(other.byId().get(id).index));
        assertThat(one.repeatedIds()).isEqualTo(other.repeatedIds());
        assertThat(one.generator()).isEqualTo(other.generator());
        assertThat(one.fromEntities()).isEqualTo(other.fromEntities());
        assertThat(one.styledFromOutside()).isEqualTo(other.styledFromOutside());
        assertThat(one.styleSheets().stream().map(e -> e.index).toList())
                .isEqualTo(other.styleSheets().stream().map(e -> e.index).toList());
        Deque<Element> ones = new ArrayDeque<>(List.of(one.root()));
        Deque<Element> others = new ArrayDeque<>(List.of(other.root()));
        while (!ones.isEmpty()) {
            Element a = ones.pop();
            Element b = others.pop();
            boolean same = a.name.equals(b.name)
                    && a.index == b.index
                    && a.position == b.position
                    && a.fromEntity == b.fromEntity
                    && Arrays.equals(a.attributes, b.attributes)
                    && Objects.equals(String.valueOf(a.text), String.valueOf(b.text))
                    && a.children.size() == b.children.size();
            assertThat(same)
                    .as(
                            "%s %s %s / %s %s %s",
                            a.name,
                            Arrays.toString(a.attributes),
                            a.text,
                            b.name,
                            Arrays.toString(b.attributes),
                            b.text)
                    .isTrue();
            ones.addAll(a.children);
            others.addAll(b.children);
        }
    }

    @Test
    void allKeptFiles() throws IOException, SvgProblem {
        int read = 0;
        int all = 0;
        for (String folder : new String[] {"src/test/resources", "src/main/resources", "docs"}) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".svg")).toList()) {
                    byte[] bytes = Files.readAllBytes(file);
                    read += compared(bytes) ? 1 : 0;
                    all++;
                }
            }
        }
        assertThat(read).isBetween(all / 2, all - 1);
    }

    @Test
    void spoiltFiles() throws SvgProblem {
        assertThat(spoilt(17, 10_000)).isBetween(1000, 9000);
    }

    /** How many of so many spoilt files were read. */
    static int spoilt(long seed, int cases) throws SvgProblem {
        Random random = new Random(seed);
        int read = 0;
        for (int i = 0; i < cases; i++) {
            StringBuilder text = new StringBuilder(SEEDS.get(random.nextInt(SEEDS.size())));
            for (int k = random.nextInt(3); k >= 0; k--) {
                int at = random.nextInt(text.length() + 1);
                int to = random.nextInt(3) == 0 ? Math.min(text.length(), at + random.nextInt(12)) : at;
                text.replace(at, to, random.nextInt(4) == 0 ? "" : SPOILS[random.nextInt(SPOILS.length)]);
            }
            byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
            try {
                read += compared(bytes) ? 1 : 0;
            } catch (SvgProblem | AssertionError differs) {
                throw new AssertionError("Case " + i + " of seed " + seed + ":\n" + text, differs);
            }
        }
        return read;
    }

    @Test
    void seedsAreRead() throws SvgProblem {
        for (String seed : SEEDS) {
            assertThat(compared(seed.getBytes(StandardCharsets.UTF_8))).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<g a='1' a='2'/>",
                "<g a='<'/>",
                "<g a='&none;'/>",
                "<g a='&#0;'/>",
                "<g a='1'b='2'/>",
                "<q:g/>",
                "<g q:a='1'/>",
                "<g xmlns:q='u' xmlns:r='u' q:a='1' r:a='2'/>",
                "<g xmlns:q=''/>",
                "<g></h>",
                "<g>",
                "</g>",
                "<!-- -- -->",
                "<!--->",
                "]]>",
                "&",
                "<?xml version='1.0'?>",
                "<?a:b c?>",
                "<1/>",
                "<g:/>",
                "<g/></svg><svg>",
                "</svg>x<svg>",
                "<![CDATA[",
                "<!DOCTYPE svg>",
                "\u0001",
                "\uFFFE"
            })
    void whatIsNotWellFormedIsLeftToTheParser(String inside) {
        assertThat(plain(SVG.formatted(inside).getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @Test
    void whatIsDeepIsLeftToTheParser() {
        String deep = "<g>".repeat(300) + "</g>".repeat(300);
        assertThat(plain(SVG.formatted(deep).getBytes(StandardCharsets.UTF_8))).isEmpty();
    }
}
