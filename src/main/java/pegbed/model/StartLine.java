package pegbed.model;

import java.util.Arrays;
import java.util.Optional;

/** The part of the peg in which a person likes to start. */
public enum StartLine {
    /** Down the track, or in the deepest water. */
    TRACK("track"),
    /** Across, or further out where there is no far bank. */
    ACROSS("across"),
    /** In front of the seat. */
    SHORT("short"),
    /** In either margin. */
    MARGIN("margin");

    private final String word;

    StartLine(String word) {
        this.word = word;
    }

    /** The word that the peg file and commands use. */
    public String word() {
        return word;
    }

    /** The part of a word; empty if there is none of that name. */
    public static Optional<StartLine> of(String word) {
        return Arrays.stream(values()).filter(part -> part.word.equals(word)).findFirst();
    }
}
