package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.command.Commands;
import easewright.ease.EaseLine;
import easewright.editor.model.Desk;
import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Rings;
import easewright.editor.model.Sample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.editor.paint.TableScene;
import easewright.measure.LevelWidth;
import easewright.pattern.Level;
import easewright.pattern.Piece;
import easewright.print.EaseText;
import easewright.print.GirthText;
import easewright.print.MovedBy;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is shown of one girth is the same in the window, in a report and by command, and adds up: on patterns with bodies and
 * wishes of all kinds, after changes of all kinds.
 */
class FiguresAgreeTest {
    private static final Pattern WIDTH = Pattern.compile("(?:(?<times>\\d+) \u00d7 )?(?<width>.+)");

    /** "Back 19 × 2", the name of the piece left out. */
    private static final Pattern ADDED =
            Pattern.compile("(?<width>(?:\\d+\u00a0)?\\d+/\\d+|[\\d.]+)\u00a0\u00d7\u00a0(?<times>\\d+)");

    @TempDir
    Path folder;

    private final Random random = new Random(20261127);

    @ParameterizedTest
    @EnumSource(
            value = LengthUnit.class,
            names = {"CM", "INCH"})
    void allThatTellsOfAGirthTellsTheSame(LengthUnit unit) throws Exception {
        int told = 0;
        for (int turn = 0; turn < 15; turn++) {
            int which = turn % (Sample.all().size() + 1);
            SvgFile drawing = which < Sample.all().size()
                    ? Sample.all().get(which).read()
                    : SvgFile.read(Path.of("sample-pieces/skirt-sizes.svg"));
            Path file = folder.resolve("pattern-" + turn + ".svg");
            Files.write(file, made(drawing, unit));
            told += agree(file, unit, file.getFileName().toString());
        }
        assertThat(told).isGreaterThan(30);
    }

    /** A pattern with bodies, wishes and changes as they come, as it is saved. */
    private byte[] made(SvgFile drawing, LengthUnit unit) throws Exception {
        Session session = new Session(unit, false);
        session.open(Opened.of(new OpenFile(drawing, Optional.empty(), "pattern.svg")));
        for (int change = random.nextInt(3); change > 0; change--) {
            List<Level> levels = session.desk().pattern().levels();
            session.chooseLevel(levels.get(random.nextInt(levels.size())).name());
            double amount = length(-20, 40);
            session.want(session.desk().wanted().orElseThrow().withAmount(amount));
            if (session.desk().shownTrial().isPresent()) {
                session.keep();
            }
        }
        for (EaseLine line : session.desk().reading().sheet().lines()) {
            if (random.nextInt(5) > 0) {
                double body = Math.max(100, Math.rint(line.finished() - length(-30, 120)));
                session.setBody(line.level(), OptionalDouble.of(round(body)), line.name());
            }
            if (random.nextInt(3) > 0) {
                session.setWish(line.level().name(), OptionalDouble.of(length(-10, 120)));
            }
        }
        return session.desk().file().orElseThrow().svg().write(session.desk().pattern());
    }

    /** As people type it: in whole millimetres or sixteenths of an inch, and now and then as it was worked out. */
    private double length(int least, int most) {
        return round(least + random.nextDouble() * (most - least));
    }

    private double round(double mm) {
        return switch (random.nextInt(4)) {
            case 0 -> Math.rint(mm / 25.4 * 16) * 25.4 / 16;
            case 1 -> Math.rint(mm / 5) * 5;
            case 2 -> Math.rint(mm);
            default -> Math.rint(mm * 100) / 100;
        };
    }

    private int agree(Path file, LengthUnit unit, String as) throws Exception {
        Session session = new Session(unit, false);
        session.open(Opened.of(new OpenFile(SvgFile.read(file), Optional.of(file), file.toString())));
        Desk desk = session.desk();
        String measured = commanded("measure", file.toString(), "--unit", unit.symbol());
        String listed = commanded("ease", file.toString(), "--unit", unit.symbol());
        Path report = folder.resolve("report.html");
        Files.deleteIfExists(report);
        commanded("report", file.toString(), "--unit", unit.symbol(), "-o", report.toString());
        String reported = Files.readString(report);
        TableScene scene = new TableScenes().of(desk);
        List<EaseRow> rows = EasePage.of(desk).rows();
        int told = 0;
        for (int i = 0; i < rows.size(); i++) {
            EaseRow row = rows.get(i);
            EaseLine line = desk.reading().sheet().lines().get(i);
            String title = new EaseText(desk.words()).title(line.girth());
            String where = as + " " + title;
            double finished = mm(row.finished(), unit);

            // By command: measured, and listed with body, ease and wish.
            String girth = row(measured.substring(measured.indexOf("Finished girths")), title);
            assertThat(girth).as(where).matches("\\S*(?: \\d+/\\d+)? .*");
            assertThat(first(girth, unit)).as(where + ": " + girth).isCloseTo(finished, within(1e-6));
            List<Double> columns = columns(row(listed, title), unit);
            List<Double> shown = new ArrayList<>();
            if (!row.body().isEmpty()) {
                shown.add(mm(row.body(), unit));
            }
            shown.add(finished);
            if (!row.ease().isEmpty()) {
                shown.add(mm(row.ease(), unit));
            }
            assertThat(columns.subList(0, shown.size())).as(where).isEqualTo(shown);
            if (!row.wish().isEmpty()) {
                // Behind the ease stands what part of the body it is.
                int at = shown.size() + (row.ease().isEmpty() ? 0 : 1);
                assertThat(columns).as(where + row(listed, title)).hasSizeGreaterThan(at);
                assertThat(columns.get(at)).as(where + " wish").isEqualTo(mm(row.wish(), unit));
            }

            // In the report.
            Matcher cells = Pattern.compile("<td>\\s*" + Pattern.quote(title) + "</td>(.*?)</tr>", Pattern.DOTALL)
                    .matcher(reported);
            assertThat(cells.find()).as(where).isTrue();
            String all = cells.group(1);
            for (String each : List.of(row.body(), row.finished(), row.ease(), row.wish())) {
                assertThat(all).as(where).contains(each);
            }

            // In the rings.
            assertThat(Rings.of(desk.reading(), desk.words()).rings().get(i).words())
                    .as(where)
                    .contains(row.finished())
                    .contains(row.body());

            // The widths, on the table, on the page Levels and by command.
            GirthText text = new GirthText(desk.words(), desk.pattern());
            List<String> widths = text.widths(line.girth());
            List<String> added = new ArrayList<>();
            Matcher parts = ADDED.matcher(girth);
            double sum = 0;
            while (parts.find()) {
                added.add(parts.group("width"));
                sum += mm(parts.group("width"), unit) * Integer.parseInt(parts.group("times"));
            }
            assertThat(added)
                    .as(where)
                    .isEqualTo(widths.stream().map(w -> desk.words().bare(w)).toList());
            double step = unit == LengthUnit.INCH ? 25.4 / 16 : 0.5;
            assertThat(sum)
                    .as(where + girth)
                    .isCloseTo(finished, within(text.addsUp(line.girth()) ? 1e-6 : step + 1e-6));
            assertThat(girth.contains("\u2248")).isEqualTo(!text.addsUp(line.girth()));
            for (int k = 0; k < widths.size(); k++) {
                LevelWidth part = line.girth().parts().get(k);
                assertThat(onTheTable(scene, part)).as(where).isEqualTo(widths.get(k));
                assertThat(onTheSheet(desk, part)).as(where).isEqualTo(widths.get(k));
                Piece piece = desk.pattern().piece(part.pieceId()).orElseThrow();
                if (MovedBy.moved(piece.original().orElse(piece.outline()), piece.outline())) {
                    String times = part.count() > 1 ? part.count() + " \u00d7 " : "";
                    String sketched = Pattern.quote(part.level() + " " + times) + "(?:[^;<]* \u2192 )?"
                            + Pattern.quote(widths.get(k)) + "[;<\"]";
                    assertThat(Pattern.compile(sketched).matcher(reported).find())
                            .as("%s: %s", where, sketched)
                            .isTrue();
                }
            }

            // And body and ease come to the girth.
            if (!row.ease().isEmpty()) {
                double ease = mm(row.ease(), unit);
                double least = unit == LengthUnit.INCH ? 25.4 / 16 : 10;
                assertThat(mm(row.body(), unit) + ease)
                        .as(where)
                        .isCloseTo(finished, within(Math.abs(ease) < least ? step / 2 + 1e-6 : 1e-6));
            }
            told++;
        }
        return told;
    }

    private static String onTheTable(TableScene scene, LevelWidth part) {
        return scene.pieces().stream()
                .filter(p -> p.piece().id().equals(part.pieceId()))
                .flatMap(p -> p.levels().stream())
                .filter(l -> l.level().equals(part.level()))
                .map(l -> width(l.figures()))
                .findFirst()
                .orElseThrow();
    }

    private static String onTheSheet(Desk desk, LevelWidth part) {
        return LevelsView.of(desk).levels().stream()
                .filter(l -> l.name().equals(part.level()))
                .flatMap(l -> l.places().stream())
                .filter(p -> p.piece().equals(part.pieceId()))
                .map(p -> width(p.width()))
                .findFirst()
                .orElseThrow();
    }

    private static String width(String figures) {
        Matcher said = WIDTH.matcher(figures);
        assertThat(said.matches()).isTrue();
        return said.group("width");
    }

    private static String commanded(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Commands.run(new PrintWriter(out), new PrintWriter(err), words);
        assertThat(code).as("%s%n%s", List.of(words), err).isLessThan(2);
        return out.toString();
    }

    /** What stands behind a name in a table, the lines that go on with it as well. */
    private static String row(String page, String title) {
        List<String> lines = page.lines().toList();
        StringBuilder row = new StringBuilder();
        for (String line : lines) {
            if (row.length() == 0 && line.startsWith("  " + title + " ")) {
                row.append(line.substring(title.length() + 2).strip());
            } else if (row.length() > 0) {
                if (!line.startsWith("        ")) {
                    break;
                }
                row.append(' ').append(line.strip());
            }
        }
        return row.toString();
    }

    private static double first(String row, LengthUnit unit) throws Unreadable {
        return columns(row, unit).get(0);
    }

    /** The figures of a row: between columns are two spaces or more. */
    private static List<Double> columns(String row, LengthUnit unit) throws Unreadable {
        List<Double> columns = new ArrayList<>();
        for (String column : row.split(" {2,}")) {
            if (column.matches("[+\u2212]?[\\d./ \u00a0]+")) {
                columns.add(mm(column, unit));
            }
        }
        return columns;
    }

    private static double mm(String length, LengthUnit unit) throws Unreadable {
        return Math.rint(Lengths.parse(length, unit) * 1e6) / 1e6;
    }
}
