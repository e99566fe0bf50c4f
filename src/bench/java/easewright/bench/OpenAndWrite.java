package easewright.bench;

import easewright.alter.Refusal;
import easewright.pattern.Pattern;
import easewright.svg.DrawingReader;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Reading a nest, opening it with all its marks, Batik making a tree of the same bytes, and writing a changed seam. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class OpenAndWrite {
    @Param({"20", "200", "2000"})
    public int pieces;

    private byte[] bytes;
    private SvgFile file;
    private Pattern changed;

    @Setup
    public void lay() throws SvgProblem, Refusal {
        bytes = Sheets.nest(pieces);
        file = SvgFile.read(bytes, "nest.svg");
        if (file.pattern().pieces().size() != pieces) {
            throw new IllegalStateException("Pieces read: " + file.pattern().pieces().size());
        }
        changed = Sheets.changed(file.pattern());
    }

    @Benchmark
    public Object open() throws SvgProblem {
        return SvgFile.read(bytes, "nest.svg");
    }

    @Benchmark
    public Object drawing() throws SvgProblem {
        return DrawingReader.read(bytes, "nest.svg");
    }

    @Benchmark
    public Object batik() throws IOException {
        return new SAXSVGDocumentFactory(null).createDocument("nest.svg", new ByteArrayInputStream(bytes));
    }

    @Benchmark
    public Object write() throws SvgProblem {
        return file.write(changed);
    }
}
