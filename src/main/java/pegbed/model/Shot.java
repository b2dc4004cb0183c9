package pegbed.model;

/**
 * Split shot by size. Weights are the nominal ones that the trade prints on its shotting charts, as approximate (common
 * practice; they agree with the charts' own equivalents, such as one SSG for two AAA and one AAA for two BB); those of
 * AB, No.3, No.5 and No.7 are from memory.
 */
public enum Shot {
    SSG("SSG", 1.6),
    AAA("AAA", 0.8),
    AB("AB", 0.6),
    BB("BB", 0.4),
    NO_1("No.1", 0.3),
    NO_3("No.3", 0.25),
    NO_4("No.4", 0.2),
    NO_5("No.5", 0.15),
    NO_6("No.6", 0.1),
    NO_7("No.7", 0.08),
    NO_8("No.8", 0.06),
    NO_9("No.9", 0.05),
    NO_10("No.10", 0.04),
    NO_11("No.11", 0.03),
    NO_12("No.12", 0.02),
    NO_13("No.13", 0.01);

    private final String word;
    private final double grams;

    Shot(String word, double grams) {
        this.word = word;
        this.grams = grams;
    }

    /** The size as it is said, and as the peg file holds it. */
    public String word() {
        return word;
    }

    public double grams() {
        return grams;
    }
}
