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

    /** The zone's name in the trade, also that of answers in JSON and of practice pegs: {@code left margin}. */
    public String words() {
        return words;
    }

    /** What an angler calls it where there is a far bank in reach, or none: {@code across} or {@code further out}. */
    public String words(boolean farBank) {
        return switch (this) {
            case TRACK -> farBank ? words : "deepest water";
            case ACROSS -> farBank ? words : "further out";
            default -> words;
        };
    }
}
