package easewright.command;

import java.util.List;

/**
 * One option of a command.
 *
 * @param names with their dashes, the chief one last
 * @param label what stands for its value in the help; empty: it takes none
 * @param words key of its line in the bundle
 * @param many  whether it may be given more than once
 */
record Option(List<String> names, String label, String words, boolean many) {
    boolean flag() {
        return label.isEmpty();
    }

    /** Whether lengths may be written as its value, or in it. */
    boolean mayHoldAmount() {
        return label.contains("AMOUNT") || label.contains("LENGTH") || label.equals("SCALE") || label.contains("VALUE");
    }

    /** The name its values are kept under. */
    String name() {
        return names.get(names.size() - 1);
    }
}
