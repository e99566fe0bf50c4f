package easewright.svg;

import java.util.Optional;

/**
 * An element of the marks block that could not be used: damaged, out of place or unknown. It is written back as it
 * stands, so that nothing is lost, until a mark of the same kind and name takes its place.
 *
 * @param piece  id of the piece it belongs to; empty if it stood outside any
 * @param kind   the element's name
 * @param name   the mark's name, if it has one
 * @param twin   it repeats a mark that is in use, so that one does not take its place
 * @param markup the element as it stood
 */
record KeptMark(Optional<String> piece, String kind, Optional<String> name, boolean twin, String markup) {
    /** The kind of what stands inside the scale, which is written anew and takes it back. No element is called so. */
    static final String INSIDE_SCALE = "scale/";
}
