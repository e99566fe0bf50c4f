package easewright.editor.paint;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What was asked for lately, remembered; what was asked for longest ago is forgotten first. */
final class Lately<K, V> extends LinkedHashMap<K, V> {
    private static final long serialVersionUID = 1;

    private static final float LOAD = 0.75f;

    private final int most;

    private Lately(int most) {
        super(64, LOAD, true);
        this.most = most;
    }

    /** For several threads at once. */
    static <K, V> Map<K, V> asked(int most) {
        return Collections.synchronizedMap(new Lately<>(most));
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > most;
    }
}
