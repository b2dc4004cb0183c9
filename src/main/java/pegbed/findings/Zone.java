package pegbed.findings;

/** The parts of a peg in which an angler looks for a line. */
public enum Zone {
    TRACK("track"),
    ACROSS("across"),
    LEFT_MARGIN("left margin"),
    RIGHT_MARGIN("right margin"),
    SHORT("short");

    private final String words;

    Zone(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
