package pegbed.phone.standin;

/** Stands for JTS's class of this name, which writes coordinates in messages: the platform's own text will do there. */
public final class OrdinateFormat {
    public static final OrdinateFormat DEFAULT = new OrdinateFormat();

    private OrdinateFormat() {}

    public static OrdinateFormat create(int maximumFractionDigits) {
        return DEFAULT;
    }

    public String format(double ordinate) {
        return Double.toString(ordinate);
    }
}
