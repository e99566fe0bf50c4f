package easewright.command;

import easewright.draft.DraftRefused;
import easewright.draft.Garment;
import easewright.draft.Recipe;
import easewright.draft.Samples;
import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.Measures;
import easewright.pattern.Body;
import easewright.pattern.Pattern;
import easewright.svg.SvgProblem;
import easewright.text.BodyFile;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code draft GARMENT -o OUT}: a garment drawn anew, to a wearer's measurements; or all the samples. */
final class DraftCommand implements Job {
    private static final String SAMPLES = "samples";

    /** Ease beyond this is no garment that lies round the body any more, percent of it (common practice). */
    private static final double MOST_EASE = 50;

    /** A length so many times the usual one, or as small a part of it (common practice). */
    private static final double MOST_LENGTH = 4;

    @Override
    public Grammar grammar() {
        return Target.grammar(Grammar.of("draft").place("GARMENT", "option.garment"))
                .value("--body", "BODYFILE", "option.draft-body")
                .values("--ease", "LEVEL=AMOUNT", "option.ease")
                .values("--length", "NAME=AMOUNT", "option.length")
                .value("--unit", "UNIT", "option.unit")
                .flag("--anyway", "option.draft-anyway");
    }

    @Override
    public int run(Given given, Voice voice) throws Trouble {
        Target target = Target.of(given);
        if (target.output().isEmpty()) {
            throw new Misuse("draft-output-needed", Map.of());
        }
        Typed typed = new Typed(Source.unit(given));
        String garment = given.places().get(0);
        try {
            if (garment.equalsIgnoreCase(SAMPLES)) {
                samples(target.output().get(), target.overwrite(), voice);
            } else {
                one(recipe(garment), given, typed, target, voice);
            }
        } catch (DraftRefused e) {
            throw new Trouble(e.code(), e.values());
        } catch (SvgProblem e) {
            throw Said.of(e, target.output().get());
        } catch (Unreadable e) {
            throw Said.of(e);
        }
        return Commands.DONE;
    }

    private static Recipe recipe(String garment) throws Trouble {
        Optional<Recipe> recipe = Recipe.of(garment);
        if (recipe.isEmpty()) {
            List<String> known = new ArrayList<>();
            Recipe.all().forEach(r -> known.add(r.garment()));
            known.add(SAMPLES);
            throw new Trouble("garment-not-known", Map.of("text", garment, "known", known));
        }
        return recipe.get();
    }

    private static void one(Recipe recipe, Given given, Typed typed, Target target, Voice voice)
            throws Trouble, SvgProblem, Unreadable {
        Path output = target.output().orElseThrow();
        Optional<Path> file = given.path("--body");
        if (file.isPresent()) {
            target.check(output, file.get(), false);
        } else {
            target.check(output);
        }
        Body body = file.isPresent() ? BodyFile.read(file.get()) : recipe.sample();
        Map<String, Double> ease = wishes(given.texts("--ease"), recipe.ease(), recipe, typed);
        Map<String, Double> lengths = wishes(given.texts("--length"), recipe.lengths(), recipe, typed);
        typed.tell(voice);
        Garment drawn = recipe.draft(body, ease, lengths).draft();
        if (!given.has("--anyway")) {
            refuseSlips(drawn.pattern(), ease, lengths, recipe);
        }
        String drawing = Samples.svg(drawn);
        save(output, drawing, typed.words(), voice);
    }

    /** A wish so large that a slip of the unit is likelier: 2 m of ease where 2 cm were meant. */
    private static void refuseSlips(Pattern drawn, Map<String, Double> ease, Map<String, Double> lengths, Recipe recipe)
            throws Trouble {
        for (EaseLine line :
                EaseSheet.of(drawn, Measures.of(drawn), EaseTables.standard()).lines()) {
            double percent = line.percent().orElse(0);
            if (ease.containsKey(line.level().name()) && Math.abs(percent) > MOST_EASE) {
                throw new Trouble(
                        "draft-ease-out-of-proportion",
                        Map.of(
                                "level", line.level().name(),
                                "ease.signed", line.ease().orElseThrow(),
                                "of.percent", percent));
            }
        }
        for (Recipe.Wish wish : recipe.lengths()) {
            double asked = lengths.getOrDefault(wish.name(), wish.standard());
            if (asked > wish.standard() * MOST_LENGTH || asked < wish.standard() / MOST_LENGTH) {
                throw new Trouble(
                        "draft-length-out-of-proportion",
                        Map.of("name", wish.name(), "length", asked, "usual", wish.standard()));
            }
        }
    }

    /** Wishes written {@code NAME=AMOUNT}, each for something the garment has. */
    private static Map<String, Double> wishes(List<String> texts, List<Recipe.Wish> known, Recipe recipe, Typed typed)
            throws Trouble, Unreadable {
        Map<String, Double> wishes = new LinkedHashMap<>();
        for (String text : texts) {
            int equals = text.lastIndexOf('=');
            String name = equals < 0 ? text.strip() : text.substring(0, equals).strip();
            Optional<Recipe.Wish> wish =
                    known.stream().filter(w -> w.name().equalsIgnoreCase(name)).findFirst();
            if (wish.isEmpty() || equals < 0) {
                List<String> forms = new ArrayList<>();
                known.forEach(w -> forms.add(w.name() + "=" + typed.words().length(w.standard())));
                throw new Trouble("draft-wish", Map.of("text", text, "garment", recipe.garment(), "known", forms));
            }
            wishes.put(wish.get().name(), typed.mm(text.substring(equals + 1)));
        }
        return wishes;
    }

    private static void samples(Path folder, boolean overwrite, Voice voice) throws Trouble, SvgProblem {
        Map<String, String> files = Samples.files();
        Target.folder(folder);
        for (String name : files.keySet()) {
            if (Files.exists(folder.resolve(name)) && !overwrite) {
                throw new Trouble(
                        "output-exists", Map.of("file", folder.resolve(name).toString()));
            }
        }
        for (Map.Entry<String, String> file : files.entrySet()) {
            save(folder.resolve(file.getKey()), file.getValue(), Commands.english(), voice);
        }
    }

    private static void save(Path file, String text, Words words, Voice voice) throws Trouble {
        Target.save(file, text.getBytes(StandardCharsets.UTF_8));
        voice.err().println(words.of("command.saved", Map.of("file", file.toString())));
    }
}
