package pegbed;

/** Where the program starts. */
public final class Pegbed {
    private Pegbed() {}

    public static void main(String[] args) {
        System.exit(0);
    }
}
