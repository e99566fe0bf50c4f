package easewright.print.pdf;

import easewright.print.ink.Lettering;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The embedded fonts of one document, loaded when first written with. Only the letters used are embedded. */
final class Letters {
    private enum Weight {
        PLAIN,
        BOLD
    }

    private final PDDocument document;
    private final Map<Weight, PDFont> loaded = new EnumMap<>(Weight.class);

    Letters(PDDocument document) {
        this.document = document;
    }

    PDFont font(boolean bold) throws IOException {
        Weight weight = bold ? Weight.BOLD : Weight.PLAIN;
        PDFont font = loaded.get(weight);
        if (font == null) {
            try (InputStream in = Lettering.of(bold).open()) {
                font = PDType0Font.load(document, in);
            }
            loaded.put(weight, font);
        }
        return font;
    }
}
