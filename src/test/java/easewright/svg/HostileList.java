package easewright.svg;

import easewright.svg.HostileDrawings.Fate;
import easewright.svg.HostileDrawings.Hostile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/** Some hostile drawings, listed one after the other. */
abstract class HostileList {
    private static final String XLINK = " xmlns:xlink=\"http://www.w3.org/1999/xlink\"";

    static final String ROOT = "<svg xmlns=\"http://www.w3.org/2000/svg\"" + XLINK
            + " width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\">";

    static final String GOOD = "<path id=\"good\" d=\"M10 10H90V90H10Z\"/>";

    static final String CANARY = "http://127.0.0.1:18999/";

    final List<Hostile> all = new ArrayList<>();

    void add(Fate fate, String name, Supplier<String> text) {
        all.add(new Hostile(name, fate, false, () -> text.get().getBytes(StandardCharsets.UTF_8)));
    }

    void refused(String name, String text) {
        add(Fate.REFUSED, name, () -> text);
    }

    void opened(String name, String body) {
        add(Fate.OPENED, name, () -> ROOT + body + GOOD + "</svg>");
    }

    void bounded(String name, Supplier<String> body) {
        all.add(new Hostile(
                name,
                Fate.BOUNDED,
                true,
                () -> (ROOT + body.get() + GOOD + "</svg>").getBytes(StandardCharsets.UTF_8)));
    }

    void raw(Fate fate, String name, Supplier<byte[]> bytes) {
        all.add(new Hostile(name, fate, false, bytes));
    }

    static String each(int count, IntFunction<String> text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < count; i++) {
            out.append(text.apply(i));
        }
        return out.toString();
    }
}
