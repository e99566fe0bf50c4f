package easewright.topology;

import easewright.geom.Point;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** Finds the pairs of strands whose boxes meet. */
final class StrandPairs {
    /** Up to so many, comparing all boxes is quicker than building an index: 12,720 comparisons, some 20 microseconds. */
    private static final int FEW = 160;

    /** Takes a pair, the earlier strand first. */
    interface Sink {
        void pair(int first, int second);
    }

    private StrandPairs() {}

    static void each(List<Strand> strands, Sink sink) {
        if (strands.size() <= FEW) {
            compared(strands, sink);
        } else {
            indexed(strands, sink);
        }
    }

    private static void compared(List<Strand> strands, Sink sink) {
        for (int i = 0; i < strands.size(); i++) {
            Strand one = strands.get(i);
            for (int j = i + 1; j < strands.size(); j++) {
                if (!one.apart(strands.get(j), StrandMeetings.SAME)) {
                    sink.pair(i, j);
                }
            }
        }
    }

    private static void indexed(List<Strand> strands, Sink sink) {
        HPRtree index = new HPRtree();
        for (int i = 0; i < strands.size(); i++) {
            index.insert(box(strands.get(i)), i);
        }
        for (int i = 0; i < strands.size(); i++) {
            int self = i;
            index.query(box(strands.get(i)), item -> {
                int other = (Integer) item;
                if (other > self) {
                    sink.pair(self, other);
                }
            });
        }
    }

    private static Envelope box(Strand strand) {
        Point a = strand.start();
        Point b = strand.end();
        Envelope box = new Envelope(a.x(), b.x(), a.y(), b.y());
        box.expandBy(StrandMeetings.SAME);
        return box;
    }
}
