package easewright.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** One command run in this process: its exit code and what it said. */
record Run(int code, String out, String err) {
    static Run of(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        int code = Commands.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Run(code, out.toString(), err.toString());
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The finished girth at a level, mm, as a reading has it: what a command says, or what it says of before and after. */
    static double girth(JsonNode reading, String level) {
        for (JsonNode girth : reading.path("girths")) {
            if (girth.path("level").asText().equals(level)) {
                return girth.path("finished_mm").asDouble();
            }
        }
        throw new AssertionError("No " + level + " in " + reading);
    }
}
