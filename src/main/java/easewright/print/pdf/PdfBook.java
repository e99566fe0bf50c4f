package easewright.print.pdf;

import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Group;
import easewright.print.ink.Leaf.Layer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleConsumer;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Binds pages into one PDF file. The same pages and date give the same bytes. */
public final class PdfBook {
    /** Readers in common use stop at this length of a page: 14 400 units of 1/72 in (docs/decisions/0020). */
    public static final double LONGEST_MM = 5080;

    private PdfBook() {}

    /**
     * The file.
     *
     * @param title    as shown by viewers
     * @param date     the day it is dated
     * @param progress told after each page which share is done, 0 to 1
     * @throws CancellationException if the thread was interrupted
     */
    public static byte[] of(List<Leaf> leaves, String title, LocalDate date, DoubleConsumer progress) {
        try (PDDocument document = new PDDocument()) {
            Letters letters = new Letters(document);
            Map<String, PDOptionalContentGroup> groups = groups(document, leaves);
            for (int i = 0; i < leaves.size(); i++) {
                if (Thread.currentThread().isInterrupted()) {
                    throw new CancellationException();
                }
                page(document, letters, groups, leaves.get(i));
                progress.accept((i + 1.0) / leaves.size());
            }
            describe(document, title, date);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            // Object streams save little here and make one checker count objects wrongly.
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void page(
            PDDocument document, Letters letters, Map<String, PDOptionalContentGroup> groups, Leaf leaf)
            throws IOException {
        PDRectangle paper = new PDRectangle(Brush.points(leaf.width()), Brush.points(leaf.height()));
        PDPage page = new PDPage(paper);
        page.setCropBox(paper);
        page.setTrimBox(paper);
        document.addPage(page);
        try (PDPageContentStream out =
                new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, true)) {
            for (Layer layer : leaf.layers()) {
                out.saveGraphicsState();
                for (Group group : layer.groups()) {
                    out.beginMarkedContent(COSName.OC, groups.get(group.id()));
                }
                new Brush(out, letters, leaf, layer).paint();
                for (int i = 0; i < layer.groups().size(); i++) {
                    out.endMarkedContent();
                }
                out.restoreGraphicsState();
            }
        }
    }

    private static Map<String, PDOptionalContentGroup> groups(PDDocument document, List<Leaf> leaves) {
        Map<String, PDOptionalContentGroup> made = new LinkedHashMap<>();
        Map<String, List<Group>> inside = new HashMap<>();
        for (Leaf leaf : leaves) {
            for (Layer layer : leaf.layers()) {
                for (int i = 0; i < layer.groups().size(); i++) {
                    Group group = layer.groups().get(i);
                    made.computeIfAbsent(group.id(), id -> new PDOptionalContentGroup(group.name()));
                    inside.put(group.id(), layer.groups().subList(0, i));
                }
            }
        }
        if (made.isEmpty()) {
            return made;
        }
        PDOptionalContentProperties all = new PDOptionalContentProperties();
        made.values().forEach(all::addGroup);
        order(all, made, inside);
        document.getDocumentCatalog().setOCProperties(all);
        document.setVersion(1.5f);
        return made;
    }

    /** Shows groups in the viewer's list inside those that they can be switched off with. */
    private static void order(
            PDOptionalContentProperties all,
            Map<String, PDOptionalContentGroup> made,
            Map<String, List<Group>> inside) {
        COSArray order = new COSArray();
        Map<String, COSArray> under = new HashMap<>();
        made.forEach((id, group) -> {
            List<Group> outer = inside.get(id);
            COSArray list = order;
            if (!outer.isEmpty()) {
                list = under.computeIfAbsent(outer.get(outer.size() - 1).id(), o -> new COSArray());
            }
            list.add(group.getCOSObject());
            if (under.containsKey(id) || isOuter(id, inside)) {
                list.add(under.computeIfAbsent(id, o -> new COSArray()));
            }
        });
        ((COSDictionary) all.getCOSObject()).getCOSDictionary(COSName.D).setItem(COSName.ORDER, order);
    }

    private static boolean isOuter(String id, Map<String, List<Group>> inside) {
        return inside.values().stream().anyMatch(outer -> outer.stream().anyMatch(g -> g.id().equals(id)));
    }

    private static void describe(PDDocument document, String title, LocalDate date) {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        about.setCreator("Easewright");
        about.setProducer("Easewright");
        Calendar day = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
        day.setTimeZone(TimeZone.getTimeZone("UTC"));
        about.setCreationDate(day);
        document.setDocumentInformation(about);
        document.setDocumentId(date.toEpochDay());
        PDViewerPreferences viewing = new PDViewerPreferences(new COSDictionary());
        viewing.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        viewing.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(viewing);
        document.getDocumentCatalog().setLanguage("en");
    }
}
