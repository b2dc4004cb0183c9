package pegbed.ui.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.report.card.DayPage;
import pegbed.session.FishingPage;
import pegbed.session.Session;
import pegbed.session.VisitLessons;
import pegbed.storage.shelf.OwnRigs;
import pegbed.ui.bankside.BanksideViewModel;
import pegbed.ui.document.DocumentViewModel;
import pegbed.ui.document.WindowPreferences;
import pegbed.ui.findings.FindingsViewModel;
import pegbed.ui.findings.TargetViewModel;
import pegbed.ui.fishing.FishingPictures;
import pegbed.ui.fishing.FishingViewModel;
import pegbed.ui.fishing.LessonsViewModel;
import pegbed.ui.map.BackgroundDrawing;
import pegbed.ui.map.MapViewModel;
import pegbed.ui.place.PlaceViewModel;
import pegbed.ui.plan.PlanViewModel;
import pegbed.ui.plan.RigsViewModel;
import pegbed.ui.profile.ProfileViewModel;
import pegbed.ui.reading.NextReadingViewModel;
import pegbed.ui.reading.ReadingBoxViewModel;
import pegbed.ui.reading.ReadingsViewModel;
import pegbed.ui.visits.BoardViewModel;
import pegbed.ui.visits.ComparisonViewModel;
import pegbed.ui.visits.NeighbouringPegsViewModel;
import pegbed.ui.visits.VisitsView;
import pegbed.ui.visits.VisitsViewModel;

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
 * @param fishing the day's log
 * @param lessons what earlier visits teach
 * @param pictures of the day and of earlier visits
 * @param bankside the large-button view
 */
public record WindowViewModels(
        Session session,
        BackgroundDrawing drawn,
        WindowPreferences remembered,
        DocumentViewModel document,
        ReadingBoxViewModel box,
        ReadingsViewModel readings,
        TargetViewModel target,
        FindingsViewModel findings,
        PlanViewModel plan,
        RigsViewModel rigs,
        NextReadingViewModel guide,
        ProfileViewModel profile,
        MapViewModel map,
        VisitsViewModel visits,
        BoardViewModel board,
        ComparisonViewModel comparison,
        NeighbouringPegsViewModel others,
        PlaceViewModel place,
        FishingViewModel fishing,
        LessonsViewModel lessons,
        FishingPictures pictures,
        BanksideViewModel bankside) {
    private static final int AFTER_MILLISECONDS = 120;

    /** Nearer to the seat than this, a place shows no direction. */
    private static final double NO_DIRECTION_METRES = 0.3;

    /** What the panel of visits shows. */
    VisitsView.ViewModels visitsPanel() {
        return new VisitsView.ViewModels(visits, board, others, comparison);
    }

    /** What makes the page of the fishing as it stands now, beside a plan. */
    Supplier<Optional<DayPage>> fishingPage(Plan made) {
        Peg peg = session.peg();
        Optional<VisitLessons> known = lessons.lessonsProperty().get();
        OffsetDateTime now = fishing.now();
        return () -> FishingPage.latest(peg, made.places(), known, now);
    }

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
     * @param planner makes plans and works out levels, one after the other
     * @param guide reckons where to plumb next, which may come a little later than all else
     */
    public static WindowViewModels of(
            Path folder, Session.Executors executors, Executor painter, Executor planner, Executor guide, Clock clock) {
        Session session = new Session(folder.resolve("journals"), executors, clock);
        // The first to hear of new answers: the map is painted while the others are called.
        FindingsViewModel findings = new FindingsViewModel(session);
        WindowPreferences remembered = new WindowPreferences(folder);
        NextReadingViewModel next = new NextReadingViewModel(session, guide, executors.owner());
        ReadingBoxViewModel box = new ReadingBoxViewModel(session, clock, next.nextProperty());
        ProfileViewModel profile = new ProfileViewModel(session, painter, executors.owner());
        MapViewModel map = new MapViewModel(session);
        map.pointerProperty().addListener((property, before, now) -> {
            if (now.distanceMetres() > NO_DIRECTION_METRES) {
                profile.towards(now.angleDegrees());
            }
        });
        PlanViewModel plan = new PlanViewModel(session, planner, executors.owner());
        LessonsViewModel lessons = new LessonsViewModel(session, clock, planner, executors.owner());
        FishingViewModel fishing = new FishingViewModel(session, plan, clock, planner, executors.owner());
        return new WindowViewModels(
                session,
                new BackgroundDrawing(session, painter),
                remembered,
                new DocumentViewModel(session, remembered),
                box,
                new ReadingsViewModel(session),
                new TargetViewModel(session, lessons.lessonsProperty()),
                findings,
                plan,
                new RigsViewModel(session, new OwnRigs(folder), executors.disk(), executors.owner()),
                next,
                profile,
                map,
                new VisitsViewModel(session, clock, planner, executors.owner(), box::fillFrom),
                new BoardViewModel(session),
                new ComparisonViewModel(session, planner, executors.owner()),
                new NeighbouringPegsViewModel(session),
                new PlaceViewModel(session),
                fishing,
                lessons,
                new FishingPictures(session, fishing, lessons, planner, executors.owner()),
                new BanksideViewModel(session, box, next));
    }
}
