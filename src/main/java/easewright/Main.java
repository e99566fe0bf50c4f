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

/** Entry point. */
public final class Main {
    private Main() {}

    /** Opens the editor without arguments and otherwise runs a command. */
    public static void main(String[] args) {
        PrintWriter out = writer(System.out);
        PrintWriter err = writer(System.err);
        int code;
        if (args.length == 0) {
            err.println(Words.english(LengthUnit.CM).of("main.no-window-yet"));
            err.flush();
            code = SampleJob.run(out, err, Path.of(""), Path.of("target"));
        } else {
            code = Commands.run(out, err, args);
        }
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Signs such as − and × come out whole even where the locale is a bare one; Windows consoles keep their own. */
    private static PrintWriter writer(OutputStream stream) {
        boolean windows = System.getProperty("os.name", "").startsWith("Windows");
        Charset charset = windows ? Charset.defaultCharset() : StandardCharsets.UTF_8;
        return new PrintWriter(new OutputStreamWriter(stream, charset), true);
    }
}
