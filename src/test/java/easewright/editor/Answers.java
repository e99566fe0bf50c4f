package easewright.editor;

import easewright.editor.file.Asking;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Gives the answers laid ready, and remembers what was asked. An answer that was not laid ready is "stay". */
final class Answers implements Asking {
    final Deque<Path> toOpen = new ArrayDeque<>();
    final Deque<Path> tables = new ArrayDeque<>();
    final Deque<Path> toSave = new ArrayDeque<>();
    final Deque<Leave> leave = new ArrayDeque<>();
    final Deque<Meanwhile> meanwhile = new ArrayDeque<>();
    final Deque<Boolean> throwAway = new ArrayDeque<>();
    final List<String> asked = new ArrayList<>();

    @Override
    public Optional<Path> whichToOpen(Path folder) {
        asked.add("open");
        return Optional.ofNullable(toOpen.poll());
    }

    @Override
    public Optional<Path> whichTable(Optional<Path> folder) {
        asked.add("table");
        return Optional.ofNullable(tables.poll());
    }

    @Override
    public Optional<Path> whereToSave(Path proposed) {
        asked.add("save " + proposed.getFileName());
        return Optional.ofNullable(toSave.poll());
    }

    @Override
    public Leave leaving(String file) {
        asked.add("leave " + file);
        return leave.isEmpty() ? Leave.STAY : leave.poll();
    }

    @Override
    public Meanwhile changedMeanwhile(String file) {
        asked.add("meanwhile " + file);
        return meanwhile.isEmpty() ? Meanwhile.STAY : meanwhile.poll();
    }

    @Override
    public boolean throwAway(String file) {
        asked.add("throw away " + file);
        return !throwAway.isEmpty() && throwAway.poll();
    }
}
