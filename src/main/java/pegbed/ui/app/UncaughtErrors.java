package pegbed.ui.app;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import pegbed.storage.disk.ProgramLog;

/** Errors that nobody caught, on whatever thread: they go to the log, and the person reads a sentence. */
final class UncaughtErrors implements Thread.UncaughtExceptionHandler {
    private static final String FAILURE = "Something did not work as it should";

    private final ProgramLog log;
    private final Executor owner;
    private final Consumer<String> teller;

    /**
     * @param owner runs what belongs to the owner's thread
     * @param teller tells the person, on the owner's thread
     */
    UncaughtErrors(ProgramLog log, Executor owner, Consumer<String> teller) {
        this.log = log;
        this.owner = owner;
        this.teller = teller;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable error) {
        String words = log.report(FAILURE, error);
        owner.execute(() -> tell(words));
    }

    /** Reporting may fail as well, which is not reported again. */
    private void tell(String words) {
        try {
            teller.accept(words);
        } catch (RuntimeException e) {
            log.report(FAILURE, e);
        }
    }
}
