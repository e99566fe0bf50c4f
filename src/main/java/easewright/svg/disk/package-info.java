/**
 * The text to the disk: {@link easewright.svg.disk.AtomicSave} puts a file there whole or not at all,
 * {@link easewright.svg.disk.Recovery} keeps unsaved work beside it, {@link easewright.svg.disk.FileClaim} says who has
 * it open, and with {@link easewright.svg.disk.OneAtATime} a file that several windows change is changed by one after the
 * other. What a drawing is, nothing here knows; of the room around it only {@link easewright.svg.SvgProblem} is used.
 */
package easewright.svg.disk;
