package easewright.suggest;

/** A bodice above a skirt, both half a front on the fold and half a back, without any marks; our own invention. */
public final class WaistedDress {
    static final String DRAWN = """
            <path id='bf' d='M50,130 C90,130 120,100 125,50 L240,90 C225,160 240,260 300,280 L266,462 L152,470 L139,316 L126,470 L50,474 Z'/>
            <text x='80' y='200' font-size='14'>Bodice front<tspan x='80' dy='18'>cut 1 on fold</tspan></text>
            <path id='bb' d='M400,72 C440,72 470,66 473,50 L589,88 C570,160 580,260 635,268 L616,454 L514,459 L501,279 L489,459 L400,462 Z'/>
            <text x='430' y='200' font-size='14'>Bodice back<tspan x='430' dy='18'>cut 2</tspan></text>
            <path id='sf' d='M50,610 C100,609 125,608 142,606 L152,695 L161,605 C190,604 228,601 260,600 C284,663 310,727 310,803 L310,1150
                L50,1150 Z'/>
            <text x='80' y='900' font-size='14'>Skirt front<tspan x='80' dy='18'>cut 1 on fold</tspan></text>
            <path id='sb' d='M400,616 C430,615 460,614 491,611 L504,740 L517,609 C550,607 580,604 616,600 C639,663 660,727 660,803
                L660,1150 L400,1150 Z'/>
            <text x='430' y='900' font-size='14'>Skirt back<tspan x='430' dy='18'>cut 2</tspan></text>
            """;

    /** The whole drawing, in millimetres. */
    public static final String SVG =
            "<svg xmlns='http://www.w3.org/2000/svg' width='700mm' height='1200mm' viewBox='0 0 700 1200'>" + DRAWN
                    + "</svg>";

    private WaistedDress() {}
}
