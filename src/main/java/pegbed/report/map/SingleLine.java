package pegbed.report.map;

/** What a person typed, made fit for one line of a picture. */
public final class SingleLine {
    private static final int LONGEST = 120;

    private SingleLine() {}

    /**
     * What a person typed, made fit for one line: signs that can't be seen or that turn the direction of writing are
     * taken out, and what is longer than {@value #LONGEST} signs is cut short with an ellipsis.
     */
    public static String of(String typed) {
        return of(typed, LONGEST);
    }

    /** As {@link #of(String)}, cut short to so many signs, 1 or more. */
    public static String of(String typed, int longest) {
        StringBuilder clean = new StringBuilder();
        int signs = 0;
        for (int at = 0; at < typed.length() && signs <= longest; at += Character.charCount(typed.codePointAt(at))) {
            int sign = typed.codePointAt(at);
            int kind = Character.getType(sign);
            if (Character.isWhitespace(sign)) {
                clean.append(' ');
            } else if (kind != Character.CONTROL
                    && (kind != Character.FORMAT || sign == 0x200C || sign == 0x200D)
                    && kind != Character.SURROGATE
                    && kind != Character.UNASSIGNED
                    && kind != Character.PRIVATE_USE) {
                clean.appendCodePoint(sign);
            } else {
                continue;
            }
            signs++;
        }
        if (signs > longest) {
            clean.setLength(clean.offsetByCodePoints(clean.length(), -2));
            clean.append('…');
        }
        return clean.toString().strip();
    }
}
