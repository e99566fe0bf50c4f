package easewright.command;

import easewright.ease.EaseTables;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.print.Reading;
import easewright.svg.Layer;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.BodyFile;
import easewright.text.LengthUnit;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What all commands that read a pattern have in common: the file, and how it is to be read and shown.
 *
 * @param typed reads lengths; its unit is that of messages too
 * @param scale the user's own word on the scale
 * @param layers names of the layers to read; empty for all that are shown
 */
record Source(
        Path file, Typed typed, boolean json, Optional<Path> bodyFile, Optional<String> scale, List<String> layers) {
    static Grammar grammar(String command) {
        return Grammar.of(command)
                .place("FILE", "option.file")
                .value("--unit", "UNIT", "option.unit")
                .flag("--json", "option.json")
                .value("--body", "BODYFILE", "option.body")
                .value("--scale", "SCALE", "option.scale")
                .values("--layer", "LAYER", "option.layer");
    }

    static Source of(Given given) throws Misuse {
        return new Source(
                given.path(0),
                new Typed(unit(given)),
                given.has("--json"),
                given.path("--body"),
                given.text("--scale"),
                given.texts("--layer"));
    }

    /** The unit for messages and for lengths typed without one. */
    static LengthUnit unit(Given given) throws Misuse {
        String text = given.text("--unit").orElse("cm");
        Optional<LengthUnit> unit = LengthUnit.named(text);
        if (unit.isEmpty()) {
            throw new Misuse("unit-not-known", Map.of("text", text));
        }
        return unit.get();
    }

    /** A file that was opened. */
    record Opened(SvgFile svg, Pattern pattern, Optional<Body> body) {
        /** Everything read off a pattern of this file, for the wearer given. */
        Reading reading(Pattern of) {
            Pattern worn = body.map(b -> of.withBody(fitted(b, of))).orElse(of);
            return Reading.of(worn, EaseTables.standard());
        }
    }

    Words words() {
        return Words.english(typed.unit());
    }

    Opened open() throws Trouble {
        Rehearsal.begin();
        try {
            SvgFile svg = SvgFile.read(file);
            if (!layers.isEmpty()) {
                svg = svg.reread(svg.options().withLayers(keys(svg.drawing().layers())));
            }
            if (scale.isPresent()) {
                svg = Calibration.of(scale.get(), typed).apply(svg);
            }
            if (svg.pattern().pieces().isEmpty()) {
                throw Said.noPiece(file, svg.findings(), words());
            }
            Optional<Body> body = bodyFile.isEmpty() ? Optional.empty() : Optional.of(BodyFile.read(bodyFile.get()));
            return new Opened(svg, svg.pattern(), body);
        } catch (SvgProblem e) {
            throw Said.of(e, file);
        } catch (Unreadable e) {
            throw new Trouble(e.code(), e.values());
        }
    }

    /** The layers asked for, by their names or keys. */
    private Set<String> keys(List<Layer> known) throws Trouble {
        Set<String> keys = new HashSet<>();
        for (String name : layers) {
            List<String> named = known.stream()
                    .filter(layer ->
                            layer.name().equalsIgnoreCase(name) || layer.key().equals(name))
                    .map(Layer::key)
                    .toList();
            if (named.isEmpty()) {
                String all = known.stream().map(Layer::name).collect(Collectors.joining(", "));
                throw new Trouble("layer-not-known", Map.of("layer", name, "known", all));
            }
            keys.addAll(named);
        }
        return keys;
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
