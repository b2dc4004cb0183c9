package pegbed.model;

/** How long work tells its progress and hears that it is no longer wanted. Knows no toolkit. */
public interface Monitor {
    /** Nobody watches, nobody cancels. */
    Monitor NONE = new Monitor() {
        @Override
        public void progress(double share) {}

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** Tells how much is done, 0 to 1. */
    void progress(double share);

    /** Whether the work is no longer wanted. */
    boolean cancelled();

    /** Throws if the work is no longer wanted. */
    default void check() {
        if (cancelled()) {
            throw new Cancelled();
        }
    }

    /** The work was given up because nobody wants it any more. */
    final class Cancelled extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public Cancelled() {
            super("No longer wanted.", null, false, false);
        }
    }
}
