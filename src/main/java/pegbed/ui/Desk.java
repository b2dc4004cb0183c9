package pegbed.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import pegbed.session.Session;
import pegbed.storage.OwnRigs;

/**
 * The session of one window with all its view models.
 *
 * @param session owns all that changes
 * @param drawn draws the map off the toolkit's thread
 * @param remembered what the window remembers between runs
 * @param document the open peg as a document
 * @param box the reading box
 * @param readings the table
 * @param target the target depth
 * @param findings deepest and flats
 * @param plan lines and rigs
 * @param rigs how rigs are tied
 * @param guide where to plumb next
 * @param profile the bottom along a direction
 * @param map what the pointer does
 * @param visits visits and today's level
 * @param board today's board measure
 * @param comparison two visits beside each other
 * @param others what other pegs of the water teach
 * @param place banks, marks, hazards, pole
 * @param bankside the large-button view
 */
record Desk(
        Session session,
        DrawnAhead drawn,
        Remembered remembered,
        DocumentModel document,
        ReadingBoxModel box,
        ReadingsModel readings,
        TargetModel target,
        FindingsModel findings,
        PlanModel plan,
        RigsModel rigs,
        GuideModel guide,
        ProfileModel profile,
        MapModel map,
        VisitsModel visits,
        BoardModel board,
        ComparisonModel comparison,
        OthersModel others,
        PlaceModel place,
        BanksideModel bankside) {
    private static final int AFTER_MILLISECONDS = 120;

    /** Nearer to the seat than this, a place shows no direction. */
    private static final double NO_DIRECTION_METRES = 0.3;

    /** Starts its work a moment later, and behind the map that is being painted by then. */
    static Executor behind(Executor painter, Executor worker) {
        return CompletableFuture.delayedExecutor(
                AFTER_MILLISECONDS, TimeUnit.MILLISECONDS, work -> painter.execute(() -> worker.execute(work)));
    }

    /** Who works for a window's session; what is worked out anew waits until the painter has shown what there was. */
    static Session.Executors executors(Executor owner, Executor painter) {
        Executor worker = thread("answers");
        return new Session.Executors(
                owner, worker, work -> painter.execute(() -> worker.execute(work)), thread("disk"));
    }

    /** Threads that end with the program. */
    static ExecutorService thread(String name) {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "pegbed-" + name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * A desk.
     *
     * @param folder the program's own folder
     * @param executors who does what takes time
     * @param painter paints
     * @param planner makes plans and tells levels, one after the other
     * @param guide reckons where to plumb next, which may come a little later than all else
     */
    static Desk of(
            Path folder, Session.Executors executors, Executor painter, Executor planner, Executor guide, Clock clock) {
        Session session = new Session(folder.resolve("journals"), executors, clock);
        // The first to hear of new answers: the map is painted while the others are told.
        FindingsModel findings = new FindingsModel(session);
        Remembered remembered = new Remembered(folder);
        GuideModel next = new GuideModel(session, guide, executors.owner());
        ReadingBoxModel box = new ReadingBoxModel(session, clock, next.nextProperty());
        ProfileModel profile = new ProfileModel(session, painter, executors.owner());
        MapModel map = new MapModel(session);
        map.pointerProperty().addListener((property, before, now) -> {
            if (now.distanceMetres() > NO_DIRECTION_METRES) {
                profile.towards(now.angleDegrees());
            }
        });
        return new Desk(
                session,
                new DrawnAhead(session, painter),
                remembered,
                new DocumentModel(session, remembered),
                box,
                new ReadingsModel(session),
                new TargetModel(session),
                findings,
                new PlanModel(session, planner, executors.owner()),
                new RigsModel(session, new OwnRigs(folder), executors.disk(), executors.owner()),
                next,
                profile,
                map,
                new VisitsModel(session, clock, planner, executors.owner(), box::fillFrom),
                new BoardModel(session),
                new ComparisonModel(session, planner, executors.owner()),
                new OthersModel(session),
                new PlaceModel(session),
                new BanksideModel(session, box, next));
    }
}
