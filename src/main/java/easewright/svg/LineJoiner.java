package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Segment;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds closed outlines that are drawn as many loose lines. A line drawn twice counts once; lines that end freely,
 * such as notch ticks, are left aside; and where three or more of what then remains meet, other than at darts
 * ({@link OuterRing}), nothing is guessed: it is reported as a tangle, since several outlines could be meant. Work grows linearly with the number of lines.
 */
final class LineJoiner {
    /** Outlines of more lines than this cannot be referred to with reason. */
    private static final int MOST_PARTS = 500;

    /** More different lines between the same two places than this are not looked through for doubles. */
    private static final int MOST_BETWEEN = 16;

    /** With more loose lines than this the drawing is a picture, or shattered beyond putting together. */
    private static final long MOST_LINES = 100_000;

    private static final int MOST_OUTLINES = 2000;

    private final List<DrawnShape> shapes;
    private final List<LooseLine> lines = new ArrayList<>();
    private final List<JoinedLines.Tangle> tangles = new ArrayList<>();
    private final List<List<LooseLine>> atNode = new ArrayList<>();

    /** How many lines that are not aside end at each node. */
    private int[] degree = {};

    private boolean[] reachedNode = {};

    private LineJoiner(List<DrawnShape> shapes) {
        this.shapes = shapes;
    }

    /** The outlines found, layer by layer, in the order in which their first lines are drawn. */
    static JoinedLines find(List<DrawnShape> shapes) {
        long lines = 0;
        for (DrawnShape shape : shapes) {
            for (SubPath line : shape.subPaths()) {
                lines += shape.shown() && !line.closed() ? 1 : 0;
            }
        }
        if (lines > MOST_LINES) {
            return new JoinedLines(List.of(), List.of(), true);
        }
        Map<String, List<Integer>> layers = new LinkedHashMap<>();
        for (int i = 0; i < shapes.size(); i++) {
            if (shapes.get(i).shown()) {
                String layer = outermost(shapes.get(i));
                if (!layers.containsKey(layer)) {
                    layers.put(layer, new ArrayList<>());
                }
                layers.get(layer).add(i);
            }
        }
        List<Integer> single = new ArrayList<>();
        for (Iterator<List<Integer>> each = layers.values().iterator(); each.hasNext(); ) {
            List<Integer> members = each.next();
            if (members.size() == 1) {
                single.addAll(members);
                each.remove();
            }
        }
        single.addAll(0, layers.getOrDefault("", List.of()));
        layers.put("", single);
        List<JoinedOutline> outlines = new ArrayList<>();
        List<JoinedLines.Tangle> tangles = new ArrayList<>();
        for (List<Integer> members : layers.values()) {
            LineJoiner joiner = new LineJoiner(shapes);
            outlines.addAll(joiner.among(members));
            tangles.addAll(joiner.tangles);
        }
        return new JoinedLines(outlines, tangles, false);
    }

    /** Lines of two sizes meet at the same places without belonging together. */
    private static String outermost(DrawnShape shape) {
        return shape.groups().isEmpty() ? "" : shape.groups().get(0).key();
    }

    private List<JoinedOutline> among(List<Integer> members) {
        collect(members);
        if (lines.size() < 2) {
            return List.of();
        }
        dropDoubled();
        dropFree();
        List<JoinedOutline> found = new ArrayList<>();
        for (LooseLine line : lines) {
            if (!line.aside && !reachedNode[line.first] && found.size() < MOST_OUTLINES) {
                Optional<JoinedOutline> outline = follow(line);
                if (outline.isPresent()) {
                    found.add(outline.get());
                }
            }
        }
        return found;
    }

    private void collect(List<Integer> members) {
        EndNodes nodes = new EndNodes();
        for (int i : members) {
            List<SubPath> subPaths = shapes.get(i).subPaths();
            for (int k = 0; k < subPaths.size(); k++) {
                if (!subPaths.get(k).closed()) {
                    LooseLine line = new LooseLine(i, k, subPaths.get(k).segments());
                    line.first = nodes.at(line.start());
                    line.second = nodes.at(line.end());
                    lines.add(line);
                }
            }
        }
        degree = new int[nodes.count()];
        reachedNode = new boolean[nodes.count()];
        for (LooseLine line : lines) {
            degree[line.first]++;
            degree[line.second]++;
        }
        int[] stands = nodes.bridged(degree);
        degree = new int[nodes.count()];
        for (int i = 0; i < degree.length; i++) {
            atNode.add(new ArrayList<>(2));
        }
        for (LooseLine line : lines) {
            line.first = stands[line.first];
            line.second = stands[line.second];
            line.aside = line.first == line.second;
            if (!line.aside) {
                for (int node : new int[] {line.first, line.second}) {
                    atNode.get(node).add(line);
                    degree[node]++;
                }
            }
        }
    }

    private void putAside(LooseLine line) {
        line.aside = true;
        degree[line.first]--;
        degree[line.second]--;
    }

    private void dropDoubled() {
        Map<Long, List<LooseLine>> between = new HashMap<>();
        for (LooseLine line : lines) {
            if (line.aside || degree[line.first] < 2 || degree[line.second] < 2) {
                continue;
            }
            List<LooseLine> others = between.computeIfAbsent(line.ends(), ends -> new ArrayList<>(1));
            Optional<LooseLine> twin = others.stream().filter(line::same).findFirst();
            if (twin.isPresent()) {
                putAside(line);
                twin.get().doubles++;
            } else if (others.size() < MOST_BETWEEN) {
                others.add(line);
            }
        }
    }

    /** Takes away, again and again, lines one of whose ends meets no other. */
    private void dropFree() {
        Deque<LooseLine> free = new ArrayDeque<>();
        for (LooseLine line : lines) {
            if (!line.aside && (degree[line.first] == 1 || degree[line.second] == 1)) {
                free.add(line);
            }
        }
        while (!free.isEmpty()) {
            LooseLine line = free.poll();
            if (line.aside) {
                continue;
            }
            putAside(line);
            for (int node : new int[] {line.first, line.second}) {
                if (degree[node] == 1) {
                    free.addAll(live(node));
                }
            }
        }
    }

    private List<LooseLine> live(int node) {
        List<LooseLine> live = new ArrayList<>(2);
        for (LooseLine line : atNode.get(node)) {
            if (!line.aside) {
                live.add(line);
            }
        }
        return live;
    }

    /** The outline that the line is part of, if no lines branch off; all nodes that are reached are marked. */
    private Optional<JoinedOutline> follow(LooseLine first) {
        List<LooseLine> reached = new ArrayList<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(first.first));
        boolean branches = false;
        reachedNode[first.first] = true;
        while (!open.isEmpty()) {
            int node = open.poll();
            branches |= degree[node] > 2;
            for (LooseLine line : live(node)) {
                // Each line is met at both its ends, and counted at the one.
                if (line.first == node) {
                    reached.add(line);
                }
                int next = line.other(node);
                if (!reachedNode[next]) {
                    reachedNode[next] = true;
                    open.add(next);
                }
            }
        }
        if (!couldBePiece(reached)) {
            return Optional.empty();
        }
        Optional<List<LooseLine>> ring =
                branches && reached.size() <= MOST_PARTS ? OuterRing.of(reached) : Optional.empty();
        if (ring.isPresent()) {
            reached.stream().filter(line -> !ring.get().contains(line)).forEach(this::putAside);
            return joined(ring.get().get(0), ring.get());
        }
        if (branches || reached.size() > MOST_PARTS) {
            tangles.add(new JoinedLines.Tangle(first.shape, first.subPath, reached.size(), branches));
            return Optional.empty();
        }
        return joined(first, reached);
    }

    /**
     * The ring as it goes round from its first line.
     *
     * @param ring all its lines, in any order
     */
    private Optional<JoinedOutline> joined(LooseLine first, List<LooseLine> ring) {
        int count = ring.size();
        int doubled = ring.stream().mapToInt(line -> line.doubles).sum();
        List<int[]> order = new ArrayList<>();
        LooseLine line = first;
        int node = first.first;
        for (int i = 0; i < count; i++) {
            order.add(new int[] {line.shape, line.subPath});
            node = line.other(node);
            List<LooseLine> both = live(node);
            line = both.get(0) == line ? both.get(1) : both.get(0);
        }
        // Ids with spaces in them cannot stand in a list of ids.
        boolean nameable = order.stream().noneMatch(l -> shapes.get(l[0]).id().matches(".*\\s.*"));
        return nameable
                ? JoinedOutline.of(shapes, order).map(outline -> outline.withDoubled(doubled))
                : Optional.empty();
    }

    private static boolean couldBePiece(List<LooseLine> reached) {
        Box box = null;
        for (LooseLine line : reached) {
            for (Segment segment : line.segments) {
                box = box == null ? segment.box() : box.union(segment.box());
            }
        }
        return box != null && box.width() * box.height() >= BarePattern.LEAST_AREA;
    }
}
