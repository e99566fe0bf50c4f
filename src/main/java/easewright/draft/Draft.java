package easewright.draft;

import easewright.pattern.Body;

/** A way to draft one kind of garment for one body. */
public sealed interface Draft permits SkirtDraft, BodiceDraft, TrouserDraft, KnitTopDraft {
    Body body();

    /**
     * Draws the pieces.
     *
     * @throws DraftRefused if a measurement is missing or the measurements cannot be drawn together
     */
    Garment draft();
}
