package pegbed.notation;

/** Lengths in feet and inches, in the three forms in which they are written. */
public final class FeetAndInches {
    /** Metres in a foot, exact (international agreement of 1959). */
    public static final double FOOT_METRES = 0.3048;

    /** Metres in an inch, exact (international agreement of 1959). */
    public static final double INCH_METRES = 0.0254;

    private static final int INCHES = 12;

    /** Quarters of an inch. */
    private static final String[] FRACTIONS = {"", "¼", "½", "¾"};

    private FeetAndInches() {}

    /**
     * In words: {@code 5 ft 6½ in}, {@code 9 in}, {@code 5 ft}, {@code -2 in}.
     *
     * @param partsOfInch the inch, half or quarter inch to which it is rounded: 1, 2 or 4
     */
    public static String words(double metres, int partsOfInch) {
        long parts = Math.round(Math.abs(metres) / INCH_METRES * partsOfInch);
        String sign = metres < 0 && parts > 0 ? "-" : "";
        long feet = parts / (INCHES * (long) partsOfInch);
        long inches = parts / partsOfInch % INCHES;
        String part = FRACTIONS[(int) (parts % partsOfInch * FRACTIONS.length / partsOfInch)];
        String inchWords = (inches > 0 || part.isEmpty() ? inches : "") + part + " in";
        if (feet == 0) {
            return sign + inchWords;
        }
        return sign + feet + " ft" + (inches > 0 || !part.isEmpty() ? " " + inchWords : "");
    }

    /** To the foot, in words: {@code 33 ft}. */
    public static String wholeFeet(double metres) {
        return Math.round(metres / FOOT_METRES) + " ft";
    }

    /** As a short figure, to the inch: {@code 4'6}, {@code 9"}. */
    public static String figure(double metres) {
        long inches = Math.round(Math.abs(metres) / INCH_METRES);
        String sign = metres < 0 && inches > 0 ? "-" : "";
        return inches < INCHES ? sign + inches + "\"" : sign + inches / INCHES + "'" + inches % INCHES;
    }

    /**
     * As it is typed, and read back by {@link Notation}: {@code 5'6.5}, {@code 9in}.
     *
     * @param metres 0 or more
     * @param partsOfInch the part of an inch to which it is rounded, at most a tenth: 1, 2 or 10
     */
    static String typed(double metres, int partsOfInch) {
        long parts = Math.round(metres / INCH_METRES * partsOfInch);
        long foot = INCHES * (long) partsOfInch;
        String inches = Numbers.print(parts % foot / (double) partsOfInch, 0, 1);
        return parts < foot ? inches + "in" : parts / foot + "'" + inches;
    }
}
