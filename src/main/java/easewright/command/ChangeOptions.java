package easewright.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** The options that describe one change. */
final class ChangeOptions {
    @Option(names = "--at", required = true, paramLabel = "LEVEL", descriptionKey = "option.at")
    String at;

    @Option(names = "--by", required = true, paramLabel = "AMOUNT", descriptionKey = "option.by")
    String by;

    @Option(names = "--edge", paramLabel = "PIECE/EDGE[=SHARE]", descriptionKey = "option.edge")
    List<String> edges = new ArrayList<>();

    @Option(names = "--method", paramLabel = "METHOD", defaultValue = "seam", descriptionKey = "option.method")
    String method;

    @Option(names = "--taper", paramLabel = "TAPER", defaultValue = "smooth", descriptionKey = "option.taper")
    String taper;

    @Option(names = "--carry", descriptionKey = "option.carry")
    boolean carry;

    @Option(names = "--one-side", descriptionKey = "option.one-side")
    boolean oneSide;

    @Option(names = "--keep", paramLabel = "PLACE", descriptionKey = "option.keep")
    List<String> keep = new ArrayList<>();

    @Option(names = "--accept", descriptionKey = "option.accept")
    boolean accept;

    Asked asked() {
        return new Asked(at, by, edges, method, taper, carry, oneSide, keep, accept);
    }
}
