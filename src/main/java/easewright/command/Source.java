package easewright.command;

import easewright.check.LinesSaid;
import easewright.ease.EaseTables;
import easewright.ease.Garment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.pattern.SizeNames;
import easewright.print.Reading;
import easewright.suggest.KnownLength;
import easewright.suggest.Sheet;
import easewright.svg.Layer;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
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
 * @param worn   people to compare with in place of those in the pattern
 * @param size   the one size to look at, where the pattern comes in several
 * @param garment what the garment is said to be; otherwise the file says so, or its marks show it
 * @param wished  eases that are wished for in place of those in the file
 * @param known   the ease tables that came with the program, and the user's own
 */
record Source(
        Path file,
        Typed typed,
        boolean json,
        Optional<Worn> worn,
        Optional<String> scale,
        List<String> layers,
        Optional<String> size,
        Optional<Garment> garment,
        Wished wished,
        EaseTables known) {
    static Grammar grammar(String command) {
        return Grammar.of(command)
                .place("FILE", "option.file")
                .value("--unit", "UNIT", "option.unit")
                .flag("--json", "option.json")
                .value("--body", "BODYFILE", "option.body")
                .value("--scale", "SCALE", "option.scale")
                .values("--layer", "LAYER", "option.layer")
                .value("--size", "SIZE", "option.size")
                .value("--garment", "WORD", "option.garment-is")
                .values("--wish", "LEVEL=EASE", "option.wish")
                .values("--table", "TABLEFILE", "option.table");
    }

    static Source of(Given given) throws Trouble {
        Optional<String> body = given.text("--body");
        Optional<Path> file = given.path("--body");
        EaseTables tables = OwnTables.with(EaseTables.standard(), given);
        return new Source(
                given.path(0),
                new Typed(unit(given)),
                given.has("--json"),
                body.isEmpty() ? Optional.empty() : Optional.of(Worn.of(body.get(), file.orElseThrow())),
                given.text("--scale"),
                given.texts("--layer"),
                given.text("--size").map(String::strip),
                garment(given, tables),
                new Wished(given.texts("--wish")),
                tables);
    }

    /** The garment as the user calls it, if it is one that tables know. */
    private static Optional<Garment> garment(Given given, EaseTables tables) throws Misuse {
        Optional<String> text = given.text("--garment");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Garment garment = Garment.named(text.get());
        List<String> known = tables.garments();
        for (String word : garment.words()) {
            if (!known.contains(word) && !Garment.OTHER.words().contains(word)) {
                throw new Misuse("garment-unknown", Map.of("word", word, "known", known));
            }
        }
        return Optional.of(garment);
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

    /**
     * A file that was opened.
     *
     * @param pattern  as it was read, and said to be what the user says it is
     * @param findings what was noticed on opening it
     * @param size     the one size to look at, where the pattern has sizes and one was asked for
     * @param tables   the ease tables to go by
     */
    record Opened(
            SvgFile svg,
            Pattern pattern,
            List<Finding> findings,
            Optional<Worn> worn,
            Optional<String> size,
            EaseTables tables) {
        Opened {
            findings = List.copyOf(findings);
        }

        /** Everything read off a pattern of this file, for the wearer and the size given. */
        Reading reading(Pattern of) {
            return reading(of, size.stream().toList());
        }

        /** The same in some sizes, or in all where none is named. */
        Reading reading(Pattern of, List<String> sizes) {
            Pattern on = worn.map(w -> w.bodies(of)).orElse(of);
            Pattern seen = PatternPart.ofSizes(on, sizes).alone();
            return Reading.of(seen, tables.fitting(seen));
        }
    }

    Words words() {
        return typed.words();
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
            if (worn.isPresent()) {
                worn.get().require(svg.pattern());
            }
            return opened(svg);
        } catch (SvgProblem e) {
            throw Said.of(e, file);
        }
    }

    /** With the squares left out that are there to check the scale, where nobody has said yet what is what. */
    private Opened opened(SvgFile svg) throws Trouble {
        List<Finding> findings = new ArrayList<>(svg.findings());
        findings.addAll(svg.oldWords(svg.pattern()));
        Pattern read = wished.on(svg.pattern(), typed, worn.isPresent());
        Pattern pattern =
                garment.map(g -> read.withGarment(String.join(", ", g.words()))).orElse(read);
        if (!svg.marked()) {
            for (KnownLength known : KnownLength.on(new Sheet(pattern, svg.loose(pattern), svg.texts()))) {
                Optional<Piece> square = known.piece().flatMap(pattern::piece);
                if (square.isPresent() && known.stated().isPresent()) {
                    Piece no = square.get();
                    findings.removeIf(f -> f.piece().equals(no.name()));
                    findings.add(Finding.of("test-square-left-out", Severity.NOTE, "")
                            .with("text", known.words()));
                    pattern = pattern.withPieces(pattern.pieces().stream()
                            .filter(p -> !p.id().equals(no.id()))
                            .toList());
                }
            }
        }
        findings.addAll(LinesSaid.around(pattern, svg.looseOutlines(pattern)));
        return new Opened(svg, pattern, findings, worn, size(pattern), known);
    }

    /** The size asked for, where the pattern has sizes; where its names only end in them, printing goes by these. */
    private Optional<String> size(Pattern pattern) throws Trouble {
        List<String> known = PatternPart.sizes(pattern);
        Optional<String> meant = size.flatMap(
                s -> known.stream().filter(k -> k.equalsIgnoreCase(s)).findFirst());
        if (size.isPresent() && meant.isEmpty() && !known.isEmpty()) {
            throw new Trouble("size-not-known", Map.of("size", size.get(), "known", known));
        }
        List<String> names = pattern.pieces().stream().map(Piece::name).toList();
        if (size.isPresent() && known.isEmpty() && SizeNames.in(names).isEmpty()) {
            throw new Trouble("no-size-marked", Map.of());
        }
        return meant;
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
                throw all.isEmpty()
                        ? new Trouble("no-layers", Map.of("layer", name))
                        : new Trouble("layer-not-known", Map.of("layer", name, "known", all));
            }
            keys.addAll(named);
        }
        return keys;
    }
}
