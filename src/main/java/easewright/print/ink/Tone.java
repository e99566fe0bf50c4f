package easewright.print.ink;

/** Shades of ink. All tell apart in grey; the accent is the only colour and prints as a dark grey. */
public enum Tone {
    BLACK(0x14181d),
    DARK(0x48505a),
    MID(0x7b848e),
    LIGHT(0xb9bfc6),
    PALE(0xeceef1),
    WHITE(0xffffff),
    ACCENT(0xb23a0a);

    private final int rgb;

    Tone(int rgb) {
        this.rgb = rgb;
    }

    /** Red, green and blue in eight bits each. */
    public int rgb() {
        return rgb;
    }
}
