package easewright;

import easewright.command.Commands;
import easewright.command.SampleJob;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Entry point. */
public final class Main {
    private Main() {}

    /** Opens the editor without arguments, or with nothing but drawings; otherwise runs a command. */
    public static void main(String[] args) {
        PrintWriter out = writer(System.out);
        PrintWriter err = writer(System.err);
        boolean window = Stream.of(args).allMatch(Main::isDrawing);
        int code = window ? window(out, err, args) : Commands.run(out, err, args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    private static int window(PrintWriter out, PrintWriter err, String... args) {
        Optional<String> hindrance = WindowStart.open(args);
        if (hindrance.isEmpty()) {
            return Commands.DONE;
        }
        String key = args.length == 0 ? "main.no-window-sample" : "main.no-window-file";
        err.println(Words.english(LengthUnit.CM).of(key, Map.of("reason", hindrance.get())));
        err.flush();
        return args.length == 0 ? SampleJob.run(out, err, Path.of(""), Path.of("target")) : Commands.REFUSED;
    }

    private static boolean isDrawing(String argument) {
        String name = argument.toLowerCase(Locale.ROOT);
        return !name.startsWith("-") && (name.endsWith(".svg") || name.endsWith(".svgz"));
    }

    /** Signs such as − and × come out whole even where the locale is a bare one; Windows consoles keep their own. */
    private static PrintWriter writer(OutputStream stream) {
        boolean windows = System.getProperty("os.name", "").startsWith("Windows");
        Charset charset = windows ? Charset.defaultCharset() : StandardCharsets.UTF_8;
        return new PrintWriter(new OutputStreamWriter(stream, charset), true);
    }
}
