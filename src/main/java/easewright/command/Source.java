package easewright.command;

import easewright.ease.EaseTables;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.print.Reading;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.BodyFile;
import easewright.text.LengthUnit;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What all commands that read a pattern have in common: the file, and how it is to be read and shown. */
final class Source {
    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "option.file")
    Path file;

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            converter = LengthUnitReader.class,
            defaultValue = "cm",
            descriptionKey = "option.unit")
    LengthUnit unit;

    @Option(names = "--json", descriptionKey = "option.json")
    boolean json;

    @Option(names = "--body", paramLabel = "BODYFILE", descriptionKey = "option.body")
    Path bodyFile;

    @Option(names = "--scale", paramLabel = "SCALE", descriptionKey = "option.scale")
    String scale;

    /** A file that was opened. */
    record Opened(SvgFile svg, Pattern pattern, Optional<Body> body) {
        /** Everything read off a pattern of this file, for the wearer given. */
        Reading reading(Pattern of) {
            Pattern worn = body.map(b -> of.withBody(fitted(b, of))).orElse(of);
            return Reading.of(worn, EaseTables.standard());
        }
    }

    Words words() {
        return Words.english(unit);
    }

    Opened open() throws Trouble {
        try {
            SvgFile svg = SvgFile.read(file);
            if (scale != null) {
                svg = Calibration.of(scale, unit).apply(svg, file);
            }
            if (svg.pattern().pieces().isEmpty()) {
                throw Said.noPiece(file, svg.findings(), words());
            }
            Optional<Body> body = bodyFile == null ? Optional.empty() : Optional.of(BodyFile.read(bodyFile));
            return new Opened(svg, svg.pattern(), body);
        } catch (SvgProblem e) {
            throw Said.of(e, file);
        } catch (Unreadable e) {
            throw new Trouble(e.code(), e.values());
        }
    }

    /** The body with each girth at the pattern's own name of its level, whatever the capitals. */
    private static Body fitted(Body body, Pattern pattern) {
        List<BodyMeasure> measures = new ArrayList<>();
        for (BodyMeasure m : body.measures()) {
            String level = pattern.levels().stream()
                    .map(Level::name)
                    .filter(name -> name.equalsIgnoreCase(m.level()))
                    .findFirst()
                    .orElse(m.level());
            measures.add(new BodyMeasure(m.name(), level, m.mm(), m.takenAt()));
        }
        return new Body(body.name(), measures);
    }
}
