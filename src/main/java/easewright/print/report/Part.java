package easewright.print.report;

import easewright.print.ink.Picture;
import java.util.List;

/** One part of a report, from top to bottom. All text is plain: whoever sets it makes it harmless. */
sealed interface Part {
    /** @param movable whether what follows may be set before the section above it, where that fills a page */
    record Heading(String text, boolean movable) implements Part {
        Heading(String text) {
            this(text, false);
        }
    }

    /** @param quiet set smaller, for what explains */
    record Paragraph(String text, boolean quiet) implements Part {}

    record Points(List<String> texts, boolean numbered) implements Part {
        public Points {
            texts = List.copyOf(texts);
        }
    }

    /** @param figures columns from here on hold figures and are set to the right; the first is 0 */
    record Grid(List<String> head, List<List<String>> rows, int figures) implements Part {
        public Grid {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Pictures side by side, as many as fit.
     *
     * @param smaller the same drawn smaller and smaller, for where there is less room; may be empty
     */
    record Figures(List<Figure> figures, List<List<Figure>> smaller) implements Part {
        public Figures {
            figures = List.copyOf(figures);
            smaller = smaller.stream().map(List::copyOf).toList();
        }

        Figures(List<Figure> figures) {
            this(figures, List.of());
        }
    }

    /**
     * A picture whose upper left corner lies at 0, 0.
     *
     * @param width   mm, as it is printed
     * @param caption may be empty
     * @param words   the same in words, for those who do not see it
     */
    record Figure(Picture picture, double width, double height, String caption, String words) {}
}
