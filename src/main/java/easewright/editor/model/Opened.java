package easewright.editor.model;

/**
 * A file with all that can be read off its pattern. Measuring and checking a large file takes longer than a window may
 * stand still, so this is made where the file is read.
 *
 * @param reading of the pattern of the file
 */
public record Opened(OpenFile file, Reading reading) {
    public static Opened of(OpenFile file) {
        return new Opened(file, Reading.of(file.svg().pattern()));
    }
}
