package easewright;

/** Entry point. */
public final class Main {
    private Main() {}

    /** Opens the editor without arguments and otherwise runs a command. */
    public static void main(String[] args) {}
}
