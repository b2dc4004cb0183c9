package pegbed.model;

/** Validation shared by the records of this package. Each refusal is one sentence that names the value. */
final class Check {
    private Check() {}

    static void finite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, not " + value + ".");
        }
    }

    static void within(int value, int least, int most, String name) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " must be between " + least + " and " + most + ", not " + value + ".");
        }
    }

    static void within(double value, double least, double most, String name) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " must be between " + least + " and " + most + ", not " + value + ".");
        }
    }
}
