package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Finds drawn lines by the ids that pieces and riders use: {@code ID}, or {@code ID#k} for one sub-path of it. */
final class DrawnGeometry implements MarksReader.Geometry {
    private final Drawing drawing;
    private final Affine rescaled;
    private final Map<String, Integer> byId = new HashMap<>();

    DrawnGeometry(Drawing drawing, Affine rescaled) {
        this.drawing = drawing;
        this.rescaled = rescaled;
        for (int i = 0; i < drawing.all().size(); i++) {
            byId.put(drawing.all().get(i).id(), i);
        }
    }

    /** One sub-path of a shape, or all of them. */
    record Part(int shape, List<Integer> subPaths) {}

    /** The sub-path that is the outline of a piece. */
    Optional<Part> piece(String id) {
        Integer shape = byId.get(id);
        if (shape == null) {
            return rider(id).filter(part -> line(part).closed());
        }
        Optional<Ring> ring = Ring.largest(drawing.all().get(shape));
        return ring.isEmpty()
                ? Optional.empty()
                : Optional.of(new Part(shape, List.of(ring.get().subPath())));
    }

    /** The sub-path that is an outline of which the last line is missing, which a person has said to be straight. */
    Optional<Part> open(String id) {
        return rider(id)
                .filter(part -> part.subPaths().size() == 1 && !line(part).closed())
                .filter(part -> line(part).segments().size() > 1);
    }

    /** The outline of an open sub-path, closed by a straight line. */
    Optional<Outline> closing(String id) {
        return open(id).map(part -> OpenOutlines.closed(line(part)));
    }

    /** The loose lines whose ids, with spaces between, are given, if they join to an outline. */
    Optional<JoinedOutline> joined(String ids) {
        String[] names = ids.strip().split("\\s+");
        List<int[]> lines = new ArrayList<>();
        Set<Part> once = new HashSet<>();
        for (String name : names) {
            Optional<Part> part = rider(name).filter(p -> p.subPaths().size() == 1);
            if (part.isEmpty() || names.length < 2 || !once.add(part.get())) {
                return Optional.empty();
            }
            lines.add(new int[] {part.get().shape(), part.get().subPaths().get(0)});
        }
        return JoinedOutline.of(drawing.all(), lines);
    }

    /** The sub-paths that make up a rider. */
    Optional<Part> rider(String id) {
        Integer shape = byId.get(id);
        if (shape != null) {
            int count = drawing.all().get(shape).subPaths().size();
            List<Integer> all =
                    count == 1 ? List.of(0) : IntStream.range(0, count).boxed().toList();
            return Optional.of(new Part(shape, all));
        }
        int hash = id.lastIndexOf('#');
        Integer whole = hash < 0 ? null : byId.get(id.substring(0, hash));
        String number = id.substring(hash + 1);
        if (whole == null || !number.matches("\\d{1,6}")) {
            return Optional.empty();
        }
        int k = Integer.parseInt(number);
        return k < drawing.all().get(whole).subPaths().size()
                ? Optional.of(new Part(whole, List.of(k)))
                : Optional.empty();
    }

    List<Segment> segments(Part part) {
        if (part.subPaths().size() == 1) {
            return line(part).segments();
        }
        List<Segment> all = new ArrayList<>();
        for (int k : part.subPaths()) {
            all.addAll(drawing.all().get(part.shape()).subPaths().get(k).segments());
        }
        return List.copyOf(all);
    }

    private SubPath line(Part part) {
        return drawing.all().get(part.shape()).subPaths().get(part.subPaths().get(0));
    }

    @Override
    public Optional<Outline> outline(String id) {
        Optional<Part> part = piece(id);
        if (part.isPresent()) {
            return line(part.get()).outline();
        }
        Optional<JoinedOutline> joined = joined(id);
        return joined.isEmpty() ? Optional.empty() : Optional.of(joined.get().outline());
    }

    @Override
    public Optional<List<Segment>> segments(String id) {
        Optional<Part> part = rider(id);
        return part.isEmpty() ? Optional.empty() : Optional.of(segments(part.get()));
    }

    @Override
    public Scale scale() {
        return drawing.scale();
    }

    @Override
    public Affine rescaled() {
        return rescaled;
    }
}
