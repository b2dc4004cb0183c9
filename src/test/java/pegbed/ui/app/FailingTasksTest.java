package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.session.Answer;
import pegbed.session.Session;
import pegbed.session.VisitEdits;
import pegbed.ui.plan.PlanViewModel;
import pegbed.ui.profile.ProfileViewModel;
import pegbed.ui.reading.NextReadingViewModel;
import pegbed.ui.visits.ComparisonViewModel;
import pegbed.ui.visits.VisitsViewModel;

/** Whatever fails in the background is said with the log's name, stands in the log, and is not waited for any more. */
class FailingTasksTest {
    private static final Executor FAILING = work -> {
        throw new RejectedExecutionException("a worker that fails");
    };

    @TempDir
    Path folder;

    private Session session;

    @BeforeEach
    void desk() throws InputException {
        session = Desks.atOnce(folder, SamplePegFiles.first()).session();
    }

    private void assertLogged(String what, String words) throws IOException {
        assertEquals(what + "; what went wrong is in the log " + session.log().file() + ".", words);
        String log = Files.readString(session.log().file());
        assertTrue(log.contains(what), log);
        assertTrue(log.contains("RejectedExecutionException: a worker that fails"), log);
        assertTrue(log.contains("\tat pegbed."), log);
    }

    @Test
    void thePlan() throws IOException {
        PlanViewModel plan = new PlanViewModel(session, FAILING, Runnable::run);
        assertLogged("The lines could not be worked out", plan.errorProperty().get());
        assertTrue(plan.planProperty().get().isEmpty());
    }

    @Test
    void theNextReading() throws IOException {
        NextReadingViewModel next = new NextReadingViewModel(session, FAILING, Runnable::run);
        assertLogged(
                "The next reading could not be worked out", next.wordsProperty().get());
    }

    @Test
    void theProfile() throws IOException {
        ProfileViewModel profile = new ProfileViewModel(session, FAILING, Runnable::run);
        assertLogged(
                "The profile could not be worked out", profile.slopesProperty().get());
    }

    @Test
    void theLevels() throws IOException {
        VisitsViewModel visits = new VisitsViewModel(session, Desks.CLOCK, FAILING, Runnable::run, place -> {});
        assertLogged(
                "The levels could not be worked out", visits.errorProperty().get());
    }

    @Test
    void theComparison() throws IOException, InputException {
        ComparisonViewModel comparison = new ComparisonViewModel(session, FAILING, Runnable::run);
        session.edit(VisitEdits.begin(session.peg(), OffsetDateTime.parse("2026-08-01T07:00:00+01:00")));
        comparison.compare();
        assertLogged(
                "The visits could not be compared", comparison.errorProperty().get());
        assertEquals("", comparison.headingProperty().get());
    }

    @Test
    void theAnswersAndTheDisk() throws IOException, InputException {
        Session failing = new Session(
                folder.resolve("journals"), new Session.Executors(Runnable::run, FAILING, FAILING), Desks.CLOCK);
        failing.begin(SamplePegFiles.first());
        assertLogged("It could not be opened, so the peg that was open stays", failing.trouble());
        Answer.Failed failed = (Answer.Failed) failing.answer();
        assertLogged("The bottom could not be worked out, so undo the last change", failed.why());
        failing.save(() -> {}, why -> failing.fail(why));
        assertLogged("The disk's work was not done, so save under another name", failing.failure());
        boolean[] otherwise = {false};
        failing.takeUpLeftBehind(() -> otherwise[0] = true);
        assertTrue(otherwise[0], "the start goes on");
    }

    @Test
    void whatNobodyCaughtIsLoggedAndShownUntilItIsRead() throws IOException {
        WindowViewModels desk = Desks.atOnce(folder.resolve("other"), session.peg());
        Session own = desk.session();
        UncaughtErrors uncaught = new UncaughtErrors(own.log(), Runnable::run, own::fail);
        uncaught.uncaughtException(Thread.currentThread(), new IllegalStateException("nobody caught this"));
        String words = desk.document().newsProperty().get();
        assertEquals(
                "Something did not work as it should; what went wrong is in the log "
                        + own.log().file() + ".",
                words);
        assertTrue(Files.readString(own.log().file()).contains("IllegalStateException: nobody caught this"));
        desk.document().dismissNews();
        assertEquals("", desk.document().newsProperty().get());
        uncaught.uncaughtException(Thread.currentThread(), new IllegalStateException("again"));
        assertEquals(words, desk.document().newsProperty().get(), "it is said again");
        new UncaughtErrors(own.log(), Runnable::run, sentence -> {
                    throw new IllegalStateException("can't be told");
                })
                .uncaughtException(Thread.currentThread(), new IllegalStateException("third"));
        assertTrue(Files.readString(own.log().file()).contains("can't be told"));
    }
}
