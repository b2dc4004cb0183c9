package pegbed.ui.fishing;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.image.Image;
import pegbed.day.LineHistories;
import pegbed.model.Peg;
import pegbed.report.day.CatchByDepth;
import pegbed.report.day.DayStrip;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;
import pegbed.report.paint.LetterOutlines;
import pegbed.report.paint.PngWriter;
import pegbed.session.BackgroundTask;
import pegbed.session.Session;
import pegbed.session.VisitLessons;
import pegbed.ui.controls.Pixels;

/** Pictures of the day that goes on, and of what earlier visits gave by depth. */
public final class FishingPictures {
    /** Pixels for each point, so that letters are sharp on a fine screen too. */
    static final double PIXELS_PER_POINT = 2;

    private final Session session;
    private final FishingViewModel fishing;
    private final LessonsViewModel lessons;
    private final BackgroundTask painting;
    private final ReadOnlyObjectWrapper<Optional<Image>> strip = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Image>> bars = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Question> asked = Optional.empty();
    private double widthPoints;
    private boolean dark;

    /** What the pictures depend on. */
    private record Question(LineHistories day, Optional<VisitLessons> lessons, double widthPoints, boolean dark) {}

    /** Both, painted. */
    private record Painted(Optional<Image> strip, Optional<Image> bars) {}

    /**
     * @param fishing the day's log
     * @param lessons what earlier visits teach
     * @param worker paints
     * @param owner runs what belongs to the owner's thread
     */
    public FishingPictures(
            Session session, FishingViewModel fishing, LessonsViewModel lessons, Executor worker, Executor owner) {
        this.session = session;
        this.fishing = fishing;
        this.lessons = lessons;
        painting = new BackgroundTask("The day could not be drawn", worker, owner, session.log());
        fishing.historiesProperty().addListener((property, before, now) -> refresh());
        lessons.lessonsProperty().addListener((property, before, now) -> refresh());
    }

    /** The day as a strip; empty while nothing was noted, or before {@link #show}. */
    ReadOnlyObjectProperty<Optional<Image>> stripProperty() {
        return strip.getReadOnlyProperty();
    }

    /** What visits gave by depth; empty while there are none, or before {@link #show}. */
    ReadOnlyObjectProperty<Optional<Image>> barsProperty() {
        return bars.getReadOnlyProperty();
    }

    /**
     * Paints from now on, so wide and for that theme.
     *
     * @param width points; nothing is painted while it is 0
     */
    void show(double width, boolean darkTheme) {
        widthPoints = Math.floor(width);
        dark = darkTheme;
        refresh();
    }

    private void refresh() {
        if (widthPoints <= 0) {
            return;
        }
        Question question = new Question(
                fishing.historiesProperty().get(), lessons.lessonsProperty().get(), widthPoints, dark);
        if (asked.filter(question::equals).isPresent()) {
            return;
        }
        asked = Optional.of(question);
        Peg peg = session.peg();
        painting.latest(
                monitor -> painted(peg, question),
                new BackgroundTask.Outcome<>(
                        done -> {
                            strip.set(done.strip());
                            bars.set(done.bars());
                        },
                        why -> {
                            strip.set(Optional.empty());
                            bars.set(Optional.empty());
                        }));
    }

    private static Painted painted(Peg peg, Question question) {
        Theme theme = question.dark() ? Themes.DARK : Themes.LIGHT;
        double width = question.widthPoints();
        return new Painted(
                DayStrip.of(peg, question.day(), width, LetterOutlines.MEASURE).map(drawing -> image(drawing, theme)),
                question.lessons()
                        .flatMap(known -> CatchByDepth.of(
                                peg, known.byDepth(), known.bandMetres(), width, LetterOutlines.MEASURE))
                        .map(drawing -> image(drawing, theme)));
    }

    private static Image image(Drawing drawing, Theme theme) {
        return Pixels.of(PngWriter.image(drawing, theme, PIXELS_PER_POINT));
    }
}
