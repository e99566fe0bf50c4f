package easewright.svg;

import easewright.geom.Affine;
import java.util.Base64;

/**
 * A picture in the drawing, such as a scanned pattern that lies under the outlines. It is kept in the file as it is
 * and never measured.
 */
public final class Picture {
    private final Affine toMm;
    private final String mediaType;
    private final int pixelsAcross;
    private final int pixelsDown;
    private final String base64;

    Picture(Affine toMm, String mediaType, int pixelsAcross, int pixelsDown, String base64) {
        this.toMm = toMm;
        this.mediaType = mediaType;
        this.pixelsAcross = pixelsAcross;
        this.pixelsDown = pixelsDown;
        this.base64 = base64;
    }

    /** From pixels, counted across and down from the upper left corner, to mm of the drawing. */
    public Affine toMm() {
        return toMm;
    }

    /** {@code image/png}, {@code image/jpeg} or {@code image/gif}. */
    public String mediaType() {
        return mediaType;
    }

    public int pixelsAcross() {
        return pixelsAcross;
    }

    public int pixelsDown() {
        return pixelsDown;
    }

    /** The picture as it stands in the file, packed; unpacked it has no more pixels than it says. */
    public byte[] bytes() {
        return decoded(base64);
    }

    /** White space is skipped, as browsers do. */
    static byte[] decoded(String base64) {
        return Base64.getMimeDecoder().decode(base64);
    }
}
