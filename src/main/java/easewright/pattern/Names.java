package easewright.pattern;

/** The one rule for names of things that files and commands refer to. */
final class Names {
    private Names() {}

    static void require(String name, String what) {
        if (name == null || name.isBlank()) {
            throw new Unfit("mark-name-empty", "The name of a(n) " + what + " must not be empty");
        }
    }
}
