package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.pattern.PatternPart;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.concurrent.Task;

/**
 * What is offered of all levels for other sizes and for pieces that their girths leave out. In a pattern of several sizes
 * it takes longer than a frame to find, so that it is looked for away from the window's thread; until it is found, what
 * was offered before stands, and acts on what lies there now. For the window's thread only.
 */
public final class LevelsElsewhere {
    private final Runnable found;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "levels elsewhere");
        thread.setDaemon(true);
        return thread;
    });
    private Map<String, LevelElsewhere> offers = Map.of();

    /** The desk that is looked into. Others that wait their turn are passed over. */
    private volatile Desk asked;

    /**
     * @param found is told when something else is offered than before
     */
    public LevelsElsewhere(Runnable found) {
        this.found = found;
    }

    /** What is offered of a level, as far as it is known. */
    public LevelElsewhere of(String level) {
        return offers.getOrDefault(level, LevelElsewhere.nothing(level));
    }

    /** Looks into another desk, where its pattern or the size at work is another one. */
    public void look(Desk desk) {
        if (asked != null && asked.pattern() == desk.pattern() && asked.size().equals(desk.size())) {
            return;
        }
        boolean another = asked == null || desk.isOtherWork(asked);
        asked = desk;
        if (another) {
            offers = Map.of();
        }
        if (!PatternPart.severalSizes(desk.pattern())) {
            offers = LevelElsewhere.of(desk);
            return;
        }
        Task<Map<String, LevelElsewhere>> task = new Task<>() {
            @Override
            protected Map<String, LevelElsewhere> call() {
                return asked == desk ? LevelElsewhere.of(desk) : Map.of();
            }
        };
        task.setOnSucceeded(e -> {
            if (asked == desk) {
                offers = task.getValue();
                found.run();
            }
        });
        task.setOnFailed(e -> {
            throw new IllegalStateException(task.getException());
        });
        worker.execute(task);
    }
}
