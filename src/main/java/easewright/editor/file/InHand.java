package easewright.editor.file;

import easewright.editor.model.Begun;

/** What is begun in the window beside what is tried on the desk: half typed, half marked. */
public interface InHand {
    /** While there is no window. */
    InHand EMPTY = new InHand() {
        @Override
        public Begun begun() {
            return Begun.NOTHING;
        }

        @Override
        public Begun again(Begun before) {
            return before;
        }

        @Override
        public void take() {}
    };

    Begun begun();

    /**
     * Sets it up again as it was.
     *
     * @return what has no place any more
     */
    Begun again(Begun before);

    /** Takes what is being typed, as leaving its field would: whoever works by keys saves without leaving it. */
    void take();
}
