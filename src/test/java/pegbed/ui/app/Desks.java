package pegbed.ui.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import pegbed.model.Peg;
import pegbed.session.Session;

/** Desks whose work is done at once on the calling thread, without the toolkit. */
public final class Desks {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-13T06:05:00Z"), ZoneOffset.UTC);

    private Desks() {}

    public static WindowViewModels atOnce(Path folder, Peg peg) {
        return atOnce(folder, peg, CLOCK);
    }

    public static WindowViewModels atOnce(Path folder, Peg peg, Clock clock) {
        WindowViewModels desk = WindowViewModels.of(
                folder, Session.Executors.AT_ONCE, Runnable::run, Runnable::run, Runnable::run, clock);
        desk.document().begin(peg);
        return desk;
    }
}
