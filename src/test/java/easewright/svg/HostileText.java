package easewright.svg;

import easewright.svg.HostileDrawings.Fate;
import easewright.svg.HostileDrawings.Hostile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.GZIPOutputStream;

/** Hostile as text and bytes: in XML, by their encoding, by how they are packed. */
final class HostileText extends HostileList {
    HostileText() {
        xml();
        encodings();
        packing();
    }

    private void xml() {
        opened("xinclude", "<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\"file:///etc/passwd\"/>");
        refused(
                "unparsed-entity",
                "<!DOCTYPE svg [<!NOTATION n SYSTEM \"n\"><!ENTITY e SYSTEM \"" + CANARY + "\" NDATA n>]>" + ROOT
                        + "</svg>");
        refused("public-entity", "<!DOCTYPE svg [<!ENTITY e PUBLIC \"p\" \"" + CANARY + "\">]>" + ROOT + "&e;</svg>");
        refused(
                "recursive-entity",
                "<!DOCTYPE svg [<!ENTITY a \"&b;\"><!ENTITY b \"&a;\">]>" + ROOT + "<text>&a;</text></svg>");
        refused("undefined-entity", "<!DOCTYPE svg [<!ENTITY a \"x\">]>" + ROOT + "<text>&b;</text></svg>");
        add(
                Fate.OPENED,
                "entity-of-shapes",
                () -> "<!DOCTYPE svg [<!ENTITY p \"<path xmlns='http://www.w3.org/2000/svg' d='M0 0H5'/>\">]>" + ROOT
                        + "&p;&p;" + GOOD + "</svg>");
        add(
                Fate.OPENED,
                "entity-in-style",
                () -> "<!DOCTYPE svg [<!ENTITY s \"fill:red\">]>" + ROOT + "<style>path{&s;}</style>" + GOOD
                        + "</svg>");
        add(
                Fate.OPENED,
                "attlist-namespace",
                () -> "<!DOCTYPE svg [<!ATTLIST svg xmlns:x CDATA #FIXED \"urn:x\">]>" + ROOT + GOOD + "</svg>");
        refused(
                "attlist-href",
                "<!DOCTYPE svg [<!ATTLIST use href CDATA \"" + CANARY + "\">]>" + ROOT + "<use/></svg>");
        add(Fate.OPENED, "doctype-of-another-kind", () -> "<!DOCTYPE html>" + ROOT + GOOD + "</svg>");
        refused("null-character", ROOT + "\u0000</svg>");
        refused("control-reference", ROOT + "<text>&#1;</text></svg>");
        refused("surrogate-reference", ROOT + "<text>&#xD800;</text></svg>");
        refused("attribute-twice", ROOT + "<path d='M0 0' d='M1 1'/></svg>");
        refused("two-roots", ROOT + "</svg>" + ROOT + "</svg>");
        refused("text-after-root", ROOT + "</svg>tail");
        refused("double-dash-comment", ROOT + "<!-- a -- b --></svg>");
        refused("unquoted", ROOT + "<path d=M0/></svg>");
        refused("html-around", "<html xmlns=\"http://www.w3.org/1999/xhtml\">" + ROOT + "</svg></html>");
        refused("svg-without-namespace", "<svg width='10mm'><path d='M0 0H5'/></svg>");
        refused("end-tag-swapped", ROOT + "<g><a></g></a></svg>");
        opened("instruction-php", "<?php system('touch /tmp/owned') ?><?xml-model href=\"" + CANARY + "\"?>");
        opened(
                "foreign-animation",
                "<animate href=\"#good\" attributeName=\"d\" to=\"M0 0\"/><set attributeName=\"display\" to=\"none\"/>"
                        + "<handler xmlns=\"http://www.w3.org/2001/xml-events\">alert(1)</handler>");
        bounded("white-space-20mb", () -> " ".repeat(20_000_000));
        bounded("cdata-20mb", () -> "<desc><![CDATA[" + "<".repeat(20_000_000) + "]]></desc>");
        bounded("tags-of-one-letter", () -> "<g/>".repeat(2_000_000));
        bounded("instructions-1m", () -> "<?a?>".repeat(1_000_000));
        bounded("long-names", () -> each(200, i -> "<" + "n".repeat(20_000) + i + "/>"));
    }

    private void encodings() {
        refused("utf-7", "<?xml version='1.0' encoding='UTF-7'?>" + ROOT + "</svg>");
        refused("says-utf-16-is-not", "<?xml version='1.0' encoding='UTF-16'?>" + ROOT + GOOD + "</svg>");
        raw(
                Fate.REFUSED,
                "utf-32",
                () -> ("<?xml version='1.0'?>" + ROOT + "</svg>").getBytes(Charset.forName("UTF-32")));
        raw(
                Fate.REFUSED,
                "ebcdic",
                () -> ("<?xml version='1.0'?>" + ROOT + "</svg>").getBytes(Charset.forName("IBM037")));
        raw(
                Fate.REFUSED,
                "overlong-utf-8",
                () -> bytes(ROOT + "<text>", new byte[] {(byte) 0xC0, (byte) 0xAF}, "</text></svg>"));
        raw(
                Fate.REFUSED,
                "cut-utf-8",
                () -> bytes(ROOT + "<text>", new byte[] {(byte) 0xE2, (byte) 0x82}, "</text></svg>"));
        raw(Fate.REFUSED, "nothing", () -> new byte[0]);
        raw(Fate.REFUSED, "only-a-mark", () -> new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF});
        raw(Fate.REFUSED, "pdf", () -> "%PDF-1.7\n<svg/>".getBytes(StandardCharsets.US_ASCII));
        raw(Fate.REFUSED, "zip", () -> new byte[] {'P', 'K', 3, 4, 0, 0});
        add(Fate.OPENED, "mark-inside", () -> ROOT + "<text>\ufeff</text>" + GOOD + "</svg>");
    }

    private static byte[] bytes(String before, byte[] middle, String after) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(before.getBytes(StandardCharsets.UTF_8));
        out.writeBytes(middle);
        out.writeBytes(after.getBytes(StandardCharsets.UTF_8));
        return out.toByteArray();
    }

    private static byte[] packed(byte[] plain) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(plain);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private void packing() {
        byte[] plain = (ROOT + GOOD + "</svg>").getBytes(StandardCharsets.UTF_8);
        raw(Fate.OPENED, "gzip-two-members", () -> twice(packed(plain), packed(new byte[] {'\n'})));
        raw(Fate.REFUSED, "gzip-bad-sum", () -> {
            byte[] bad = packed(plain);
            bad[bad.length - 6] ^= 1;
            return bad;
        });
        raw(Fate.REFUSED, "gzip-head-only", () -> new byte[] {0x1F, (byte) 0x8B, 8, 0});
        raw(Fate.REFUSED, "gzip-of-gzip", () -> packed(packed(plain)));
        all.add(new Hostile(
                "gzip-70mb",
                Fate.REFUSED,
                true,
                () -> packed((ROOT + " ".repeat(70_000_000) + "</svg>").getBytes(StandardCharsets.UTF_8))));
    }

    private static byte[] twice(byte[] a, byte[] b) {
        byte[] both = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, both, a.length, b.length);
        return both;
    }
}
