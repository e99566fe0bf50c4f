package easewright.pattern;

/** A value that no pattern can have; what is wrong with it is told by the finding of this code. */
public final class Unfit extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String code;

    /**
     * @param code    of the finding that says so where it was read from a file
     * @param message for who reads the program
     */
    Unfit(String code, String message) {
        super(message);
        this.code = code;
    }

    public String code() {
        return code;
    }
}
