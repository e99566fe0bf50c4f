package easewright.alter;

/**
 * Reads a length as people write it; this room knows millimetres only.
 *
 * @param <X> what is thrown where the text is no length
 */
public interface LengthReader<X extends Exception> {
    /** The length in mm. */
    double mm(String text) throws X;
}
