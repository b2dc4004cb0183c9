package pegbed.phone.standin;

/** Stands for Jackson's class of this name: the platform's own text of a number is the shortest one there. */
public final class DoubleToDecimal {
    private DoubleToDecimal() {}

    public static String toString(double value) {
        return Double.toString(value);
    }
}
