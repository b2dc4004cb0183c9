package pegbed.storage.peg;

/** Lines of a text as the JSON parser counts them: a line ends with CR, LF or both. */
final class LineCounter {
    private LineCounter() {}

    /**
     * A line of a text.
     *
     * @param start offset of its first letter
     * @param end offset behind its last letter
     */
    record Line(int start, int end) {}

    /** The line of a number, 1 for the first; the last line where there are not so many. */
    static Line line(CharSequence text, int number) {
        int start = 0;
        int current = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'))) {
                if (current == number) {
                    return new Line(start, i);
                }
                current++;
                start = i + 1;
            }
        }
        return new Line(start, text.length());
    }
}
