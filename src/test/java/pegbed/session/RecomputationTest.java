package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.findings.PegMap;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.model.Wishes;
import pegbed.storage.disk.ProgramLog;

class RecomputationTest {
    /** Runs what it is given when it is told to. */
    private static final class ByHand implements Executor {
        private final ArrayDeque<Runnable> waiting = new ArrayDeque<>();

        @Override
        public void execute(Runnable work) {
            waiting.add(work);
        }

        void next() {
            waiting.remove().run();
        }
    }

    private final ByHand worker = new ByHand();
    private ProgramLog log;
    private final Session.Executors executors = new Session.Executors(Runnable::run, worker, Runnable::run);
    private final List<Peg> fitted = new ArrayList<>();
    private Recomputation work;

    @BeforeEach
    void work(@TempDir Path folder) {
        log = new ProgramLog(folder);
        work = new Recomputation(this::fit, executors, log, () -> {}, ready -> {}, () -> {});
    }

    private PegMap fit(Peg peg, Monitor monitor) throws InputException {
        fitted.add(peg);
        return PegMap.of(peg, monitor);
    }

    /** What is known besides the readings takes longer. */
    private Recomputation withMoreThanReadings() {
        Recomputation.Fitting fitting = new Recomputation.Fitting() {
            @Override
            public PegMap fit(Peg peg, Monitor monitor) throws InputException {
                return RecomputationTest.this.fit(peg, monitor);
            }

            @Override
            public Optional<PegMap> alone(Peg peg, Monitor monitor) throws InputException {
                return Optional.of(PegMap.of(peg, monitor));
            }
        };
        return new Recomputation(fitting, executors, log, () -> {}, ready -> {}, () -> {});
    }

    @Test
    void anOpenedPegIsShownByItsOwnReadingsUntilAllIsWorkedOut() {
        Recomputation both = withMoreThanReadings();
        both.request(1, Pegs.plumbed(12));
        worker.next();
        Answer.Ready alone =
                assertInstanceOf(Answer.Computing.class, both.answer()).before().orElseThrow();
        worker.next();
        Answer.Ready all = assertInstanceOf(Answer.Ready.class, both.answer());
        assertFalse(all.map().differsInWishesOnly(alone.map()));
        assertEquals(1, fitted.size());
    }

    @Test
    void whatItsOwnReadingsSayIsNeverTakenForAll() {
        Recomputation both = withMoreThanReadings();
        Peg peg = Pegs.plumbed(12);
        both.request(1, peg);
        worker.next();
        both.request(2, peg.withWishes(peg.wishes().withTarget(OptionalDouble.of(0.5))));
        assertInstanceOf(Answer.Computing.class, both.answer());
        while (!worker.waiting.isEmpty()) {
            worker.next();
        }
        assertEquals(2, assertInstanceOf(Answer.Ready.class, both.answer()).revision());
        assertEquals(1, fitted.size());
    }

    @Test
    void nothingToldIsNothingYet() {
        work.request(1, Peg.EMPTY);
        assertInstanceOf(Answer.NothingYet.class, work.answer());
        assertTrue(work.answer().shown().isEmpty());
    }

    @Test
    void aMissingBankIsSaidWithAnExample() {
        work.request(1, Pegs.plumbed(5).withBanks(Banks.NONE));
        assertEquals(
                "The near bank needs two points: where the water's edge is to your left and to your right, such as edge 3"
                        + " 80L and edge 3 80R.",
                assertInstanceOf(Answer.TooLittle.class, work.answer()).missing());
        work.request(2, Pegs.plumbed(5).withBanks(new Banks(List.of(BankPoint.at(-3, 0.5)), List.of(), List.of())));
        assertTrue(assertInstanceOf(Answer.TooLittle.class, work.answer())
                .missing()
                .startsWith("The near bank needs one more point"));
    }

    @Test
    void banksWithoutReadingsLackAReading() {
        work.request(1, Pegs.bare());
        assertTrue(assertInstanceOf(Answer.TooLittle.class, work.answer())
                .missing()
                .startsWith("No reading yet"));
    }

    @Test
    void aPlaceWithoutReadingsIsDrawnButNothingIsFoundOnIt() {
        work.request(1, Pegs.bare());
        worker.next();
        assertTrue(work.answer().shown().isEmpty());
        assertEquals(0, work.answer().picture().orElseThrow().map().bottom().soundings());
        work.request(2, Peg.EMPTY);
        assertTrue(work.answer().picture().isPresent(), "the old picture stays until there is another");
        worker.next();
        assertTrue(
                work.answer().picture().orElseThrow().map().peg().banks().far().isEmpty());
    }

    @Test
    void answersCarryTheRevisionTheyAreFor() {
        work.request(7, Pegs.plumbed(8));
        assertEquals(new Answer.Computing(7, Optional.empty()), work.answer());
        worker.next();
        assertEquals(7, assertInstanceOf(Answer.Ready.class, work.answer()).revision());
    }

    @Test
    void theOldMapStaysWhileTheNewOneIsWorkedOut() {
        work.request(1, Pegs.plumbed(8));
        worker.next();
        Answer.Ready old = (Answer.Ready) work.answer();
        work.request(2, Pegs.plumbed(9));
        assertSame(old, ((Answer.Computing) work.answer()).before().orElseThrow());
        worker.next();
        worker.next();
        assertEquals(2, ((Answer.Ready) work.answer()).revision());
    }

    @Test
    void oneReadingMoreIsOnTheMapBeforeAllIsWorkedOutAnew() {
        List<Answer> seen = new ArrayList<>();
        Recomputation[] it = new Recomputation[1];
        it[0] = new Recomputation(this::fit, executors, log, () -> seen.add(it[0].answer()), ready -> {}, () -> {});
        it[0].request(1, Pegs.plumbed(20));
        worker.next();
        seen.clear();
        Peg more = Pegs.plumbed(20).withReading(Reading.of(6.2, 12, 1.4));
        it[0].request(2, more);
        worker.next();
        worker.next();
        assertEquals(3, seen.size());
        Answer.Ready old = seen.get(0).shown().orElseThrow();
        Answer.Ready meanwhile = seen.get(1).shown().orElseThrow();
        Answer.Ready ready = assertInstanceOf(Answer.Ready.class, seen.get(2));
        assertInstanceOf(Answer.Computing.class, seen.get(1));
        assertEquals(20, old.map().bottom().soundings());
        assertEquals(21, meanwhile.map().bottom().soundings());
        assertEquals(2, meanwhile.revision());
        assertTrue(meanwhile.map().isProvisional());
        assertFalse(ready.map().isProvisional());
        assertEquals(List.of(Pegs.plumbed(20), more), fitted);
    }

    /** What is shown meanwhile is never taken for the answer, whatever is changed in that moment. */
    @Test
    void aNewTargetWhileOneReadingMoreIsShownWorksAllOut() {
        Recomputation[] it = new Recomputation[1];
        Peg more = Pegs.plumbed(20).withReading(Reading.of(6.2, 12, 1.4));
        Peg aimed = more.withWishes(Wishes.NONE.withTarget(OptionalDouble.of(0.7)));
        it[0] = new Recomputation(this::fit, executors, log, () -> aim(it[0], aimed), ready -> {}, () -> {});
        it[0].request(1, Pegs.plumbed(20));
        worker.next();
        it[0].request(2, more);
        worker.next();
        worker.next();
        Answer.Ready ready = assertInstanceOf(Answer.Ready.class, it[0].answer());
        assertEquals(3, ready.revision());
        assertFalse(ready.map().isProvisional());
        assertEquals(21, ready.map().bottom().soundings());
    }

    /** Asks for another target as soon as a provisional map is shown. */
    private static void aim(Recomputation work, Peg aimed) {
        boolean meanwhile = work.answer() instanceof Answer.Computing computing
                && computing.revision() == 2
                && computing
                        .before()
                        .filter(before -> before.map().isProvisional())
                        .isPresent();
        if (meanwhile) {
            work.request(3, aimed);
        }
    }

    @Test
    void theNewestRequestWinsAndTheOlderIsNeverWorkedOut() {
        work.request(1, Pegs.plumbed(8));
        work.request(2, Pegs.plumbed(9));
        worker.next();
        assertInstanceOf(Answer.Computing.class, work.answer());
        worker.next();
        assertEquals(2, ((Answer.Ready) work.answer()).revision());
        assertEquals(1, fitted.size());
    }

    @Test
    void aBottomIsToldBeforeTheOwnerHasItAndNotWhenNobodyWantsItAnyMore() {
        ByHand owner = new ByHand();
        List<Integer> mapped = new ArrayList<>();
        Recomputation busy = new Recomputation(
                this::fit,
                new Session.Executors(owner, worker, Runnable::run),
                log,
                () -> {},
                map -> mapped.add(map.bottom().soundings()),
                () -> {});
        busy.request(1, Pegs.plumbed(8));
        worker.next();
        assertEquals(List.of(8), mapped);
        assertInstanceOf(Answer.Computing.class, busy.answer());
        busy.request(2, Pegs.plumbed(9));
        busy.request(3, Pegs.plumbed(10));
        worker.next();
        worker.next();
        assertEquals(List.of(8, 10), mapped);
    }

    @Test
    void runningWorkStopsWhenANewerRequestComes() {
        List<Boolean> stopped = new ArrayList<>();
        Recomputation[] self = new Recomputation[1];
        self[0] = new Recomputation(
                (peg, monitor) -> {
                    if (stopped.isEmpty()) {
                        stopped.add(false);
                        self[0].request(2, Pegs.plumbed(9));
                        stopped.set(0, monitor.cancelled());
                        monitor.check();
                    }
                    return PegMap.of(peg, monitor);
                },
                executors,
                log,
                () -> {},
                ready -> {},
                () -> {});
        self[0].request(1, Pegs.plumbed(8));
        worker.next();
        assertEquals(List.of(true), stopped);
        assertInstanceOf(Answer.Computing.class, self[0].answer());
        worker.next();
        assertEquals(2, ((Answer.Ready) self[0].answer()).revision());
    }

    @Test
    void anotherTargetKeepsTheBottom() {
        Peg peg = Pegs.plumbed(8);
        work.request(1, peg);
        worker.next();
        PegMap map = ((Answer.Ready) work.answer()).map();
        work.request(2, peg.withWishes(Wishes.NONE.withTarget(OptionalDouble.of(0.6))));
        worker.next();
        Answer.Ready at = (Answer.Ready) work.answer();
        assertEquals(1, fitted.size());
        assertSame(map.grid(), at.map().grid());
        assertEquals(0.6, at.findings().targetMetres());
        work.request(3, peg);
        worker.next();
        assertTrue(((Answer.Ready) work.answer()).findings().targetFollows());
    }

    @Test
    void aDragOfTheTargetShowsItsStepsEvenIfItGoesOn() {
        Peg peg = Pegs.plumbed(8);
        work.request(1, peg);
        worker.next();
        work.request(2, peg.withWishes(Wishes.NONE.withTarget(OptionalDouble.of(0.6))));
        work.request(3, peg.withWishes(Wishes.NONE.withTarget(OptionalDouble.of(0.7))));
        worker.next();
        Answer.Ready step =
                assertInstanceOf(Answer.Computing.class, work.answer()).before().orElseThrow();
        assertEquals(2, step.revision());
        assertEquals(0.6, step.findings().targetMetres());
    }

    @Test
    void banksThatCrossAreSaidAndTheOldMapStays() {
        work.request(1, Pegs.plumbed(8));
        worker.next();
        Peg crossing = Pegs.plumbed(8)
                .withBanks(new Banks(
                        List.of(BankPoint.at(-9, 0), BankPoint.at(9, 9)),
                        List.of(BankPoint.at(-9, 9), BankPoint.at(9, 0)),
                        List.of()));
        work.request(2, crossing);
        worker.next();
        Answer.Failed failed = assertInstanceOf(Answer.Failed.class, work.answer());
        assertTrue(failed.why().startsWith("The near and far banks cross"), failed.why());
        assertEquals(1, failed.before().orElseThrow().revision());
    }

    @Test
    void progressGoesFromNothingToAll() {
        List<Double> shares = new ArrayList<>();
        Recomputation[] self = new Recomputation[1];
        self[0] = new Recomputation(
                this::fit, executors, log, () -> {}, ready -> {}, () -> shares.add(self[0].progress()));
        self[0].request(1, Pegs.plumbed(8));
        assertEquals(0, self[0].progress());
        worker.next();
        assertTrue(shares.size() > 3);
        assertTrue(shares.stream().allMatch(share -> share >= 0 && share <= 1));
        assertEquals(1, self[0].progress());
    }

    @Test
    void stoppedWorkLeavesTheOldMapMarked() {
        work.request(1, Pegs.plumbed(8));
        worker.next();
        work.request(2, Pegs.plumbed(9));
        work.cancel();
        worker.next();
        Answer.Failed stopped = assertInstanceOf(Answer.Failed.class, work.answer());
        assertEquals(1, stopped.before().orElseThrow().revision());
    }

    @Test
    void anotherPegDoesNotShowTheOldOnesMap() {
        work.request(5, Pegs.plumbed(8));
        Runnable late = worker.waiting.remove();
        work.forget();
        work.request(0, Pegs.plumbed(9));
        late.run();
        assertEquals(new Answer.Computing(0, Optional.empty()), work.answer());
    }

    @Test
    void aFitThatBreaksIsSaidWithTheLogsNameAndTheLogHoldsItsTrace() throws IOException {
        Recomputation broken = new Recomputation(
                (peg, monitor) -> {
                    throw new IllegalStateException("a matrix that is none");
                },
                executors,
                log,
                () -> {},
                ready -> {},
                () -> {});
        broken.request(1, Pegs.plumbed(8));
        worker.next();
        assertEquals(
                "The bottom could not be worked out, so undo the last change; what went wrong is in the log "
                        + log.file() + ".",
                assertInstanceOf(Answer.Failed.class, broken.answer()).why());
        String text = Files.readString(log.file());
        assertTrue(text.contains("IllegalStateException: a matrix that is none"), text);
        assertTrue(text.contains("at pegbed.session.RecomputationTest"), text);
    }
}
