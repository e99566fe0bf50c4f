package easewright.editor.model;

import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import java.util.Optional;

/**
 * What is in the user's hands and not done yet: a change that is tried, and what is begun in the window. It is no part
 * of the pattern and is never saved, but kept from a crash. Immutable.
 *
 * @param wanted  what is tried, or half chosen
 * @param size    the size at work
 * @param begun   what is half typed or half marked
 * @param asSaved whether nothing else is new: the pattern itself is as it was opened or saved
 */
public record Unfinished(Optional<Wanted> wanted, Optional<String> size, Begun begun, boolean asSaved) {
    public static final Unfinished NOTHING = at(Begun.NOTHING);

    /**
     * What is tried on the desk, or half chosen: settings that stay for the next change are nothing by themselves. What
     * is typed may belong to them.
     */
    public static Unfinished on(Desk desk, Begun begun) {
        boolean none = begun.isNothing();
        Optional<Wanted> wanted = none ? desk.wanted().filter(Wanted::isBegun) : desk.wanted();
        return none && wanted.isEmpty() ? at(begun) : new Unfinished(wanted, desk.size(), begun, desk.isSaved());
    }

    /** Nothing in hand, and the page that is open. */
    static Unfinished at(Begun page) {
        return new Unfinished(Optional.empty(), Optional.empty(), page, false);
    }

    /** A desk with this in hand again, as far as its pattern still has what it speaks of. */
    Desk laidOn(Desk desk) {
        Desk sized = size.filter(
                        s -> desk.size().isPresent() && !desk.size().get().equals(s))
                .map(desk::withSize)
                .orElse(desk);
        boolean known = wanted.filter(w -> desk.pattern().level(w.level()).isPresent())
                .filter(w -> w.leftOut().stream().allMatch(e -> isOn(desk.pattern(), e)))
                .isPresent();
        return known ? sized.withWanted(wanted) : sized;
    }

    private static boolean isOn(Pattern pattern, EdgeRef ref) {
        return pattern.piece(ref.piece()).flatMap(p -> p.edge(ref.edge())).isPresent();
    }

    public boolean isNothing() {
        return wanted.isEmpty() && begun.isNothing();
    }

    /** Written down, with the page that is open; empty for nothing. */
    public String text() {
        return equals(NOTHING) ? "" : UnfinishedText.of(this);
    }

    /** Reads it again; nothing where that is not understood, as it may be from another version of the program. */
    public static Unfinished of(String text) {
        return UnfinishedText.read(text);
    }
}
