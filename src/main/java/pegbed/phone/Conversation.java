package pegbed.phone;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.guidance.NextReading;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.Notation;
import pegbed.report.drawing.CanvasPainting;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.DrawingCanvas;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;
import pegbed.report.drawing.View;
import pegbed.session.ReadingEdits;
import pegbed.session.VisitEdits;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.Moments;
import pegbed.storage.peg.Opened;
import pegbed.storage.peg.PegReader;
import pegbed.wording.Caution;

/**
 * What a page and the core say to each other: JSON in, JSON out. Whatever is asked, an answer comes: a refusal is
 * {@code {"refused": sentence}}, and nothing has changed then. Moments ({@code now}) are ISO 8601 with seconds and
 * offset, such as {@code 2026-05-02T09:14:05+01:00}. Places are metres from the seat, {@code x} to the right.
 *
 * <table>
 * <caption>Requests, by their member {@code do}</caption>
 * <tr><th>do<th>members<th>answer
 * <tr><td>open<td>name, text, neighbours: [{name, text}]<td>state, and damage where some could not be read
 * <tr><td>form<td><td>what a new peg is asked: see {@link NewPeg}
 * <tr><td>new<td>venue, water, number, near: [3 distances], far: [3] or none, pole, units<td>state, text
 * <tr><td>text<td><td>text: the peg file
 * <tr><td>state<td><td>state
 * <tr><td>understood<td>line<td>understood
 * <tr><td>add<td>line, now<td>understood, text, state
 * <tr><td>undo, redo<td><td>done: what was, text, state
 * <tr><td>map<td>provisional<td>shown: whether there is a map now, deepest, doubt, question; state
 * <tr><td>plan<td><td>target, deepest, flats, slopes, lines, rigs, shortfalls, notes, warnings, cautions
 * <tr><td>next<td><td>where, aim, why, line, stop, x, y
 * <tr><td>wheels<td>x, y of a place, or none for the proposed one<td>distance, clock, marks, bottoms, depth, wholes, here
 * <tr><td>depths<td>distance, direction (both as typed), from<td>expected, keys, here
 * <tr><td>target<td>metres or typed, or neither for half the deepest; settled; now<td>text, state
 * <tr><td>visit<td>now<td>begins today's visit: text, state
 * <tr><td>level<td>board (typed), dugOut, now; each or none<td>sentences, checks; text and state where something changed
 * <tr><td>place<td>x, y: CSS pixels of a tap on the map<td>words, x, y of the nearest place that the wheels have
 * <tr><td>camera<td>zoom, x, y; or panX, panY (CSS pixels); or all<td>all: whether all of the peg is seen
 * <tr><td>day<td>now<td>lines: [{title, state, fished, x, y}] or noLines, taps: [{kind, words}], stop, fishing,
 *     kindsOfFish, outlook: what is likely of the lines, warning, example, strip: the picture's title, cautions; wants a plan
 * <tr><td>dayTap<td>kind (of taps, or stop), x, y of the line, fish: its kind or none, now<td>noted, text, state
 * <tr><td>dayLine<td>line (an event, typed), now<td>noted, text, state
 * <tr><td>cautions<td><td>cautions: [{title, words}]
 * </table>
 */
public final class Conversation {
    /** The file's bytes are not kept, so nothing is compared with what it held. */
    private static final Fingerprint UNKNOWN = new Fingerprint("");

    /** A dragged target goes by half centimetres. */
    private static final double TARGETS_A_METRE = 200;

    private Optional<PhonePeg> open = Optional.empty();
    private MapPicture picture = new MapPicture();

    /** Answers a request. Never throws. */
    public String ask(String request) {
        try {
            return answer(Request.of(request)).toString();
        } catch (InputException refused) {
            return refusal(refused.getMessage());
        } catch (RuntimeException unforeseen) {
            return refusal("Something went wrong inside Pegbed (" + unforeseen
                    + "); what was confirmed is kept. Try again, or undo the last change.");
        }
    }

    private static String refusal(String sentence) {
        return new JsonText().put("refused", sentence).toString();
    }

    private JsonText answer(Request request) throws InputException {
        return switch (request.words("do")) {
            case "open" -> open(request);
            case "form" -> NewPeg.form();
            case "new" -> begin(request);
            case "text" -> new JsonText().put("text", peg().text());
            case "state" -> new JsonText().put("state", StateAnswer.of(peg(), request));
            case "understood" -> new JsonText().put("understood", peg().understood(request.words("line")));
            case "add" ->
                changed(new JsonText().put("understood", peg().add(request.words("line"), moment(request))), request);
            case "undo" -> undone(peg().undoLabel(), peg().undo(), request);
            case "redo" -> undone(peg().redoLabel(), peg().redo(), request);
            case "map" -> map(request);
            case "plan" -> PlanAnswer.of(peg());
            case "next" -> next();
            case "wheels" -> wheels(request);
            case "depths" -> depths(request);
            case "target" -> target(request);
            case "visit" -> visit(request);
            case "level" -> level(request);
            case "place" -> place(request);
            case "camera" -> camera(request);
            case "cautions" -> cautions();
            case "day" -> new FishingAnswer(peg(), moment(request)).lines();
            case "dayTap" ->
                changed(
                        new FishingAnswer(peg(), moment(request))
                                .tap(request.words("kind"), at(request), request.words("fish")),
                        request);
            case "dayLine" -> changed(new FishingAnswer(peg(), moment(request)).typed(request.words("line")), request);
            default ->
                throw new InputException(
                        "The page asked for '" + request.words("do") + "', which there is not; load it again.");
        };
    }

    private PhonePeg peg() throws InputException {
        return open.orElseThrow(() -> new InputException("No peg is open; open one, or begin a new one."));
    }

    private static OffsetDateTime moment(Request request) throws InputException {
        return Moments.read(request.words("now"))
                .orElseThrow(() -> new InputException(
                        "The page did not say what time it is, such as 2026-05-02T09:14:05+01:00; load it again."));
    }

    private JsonText open(Request request) throws InputException {
        Opened opened = read(request);
        List<Peg> others = new ArrayList<>();
        for (Request each : request.objects("neighbours")) {
            try {
                if (read(each) instanceof Opened.Whole sound) {
                    others.add(sound.peg());
                }
            } catch (InputException noPeg) {
                // One file must not stop the answers about another.
            }
        }
        take(new PhonePeg(opened.peg(), Neighbours.of(opened.peg(), others)));
        JsonText answer = new JsonText();
        if (opened instanceof Opened.Recovered damaged) {
            answer.put(
                    "damage",
                    damaged.inWords(request.words("name"))
                            + "; what could be read is here, and the file as it was is kept.");
        }
        return answer.put("state", StateAnswer.of(peg(), request));
    }

    private static Opened read(Request file) throws InputException {
        String name = file.words("name").isBlank() ? "The peg" : file.words("name");
        return PegReader.read(name, file.words("text").getBytes(StandardCharsets.UTF_8), UNKNOWN);
    }

    private void take(PhonePeg other) {
        open = Optional.of(other);
        picture = new MapPicture();
    }

    private JsonText begin(Request request) throws InputException {
        take(new PhonePeg(NewPeg.of(request), List.of()));
        return changed(new JsonText(), request);
    }

    private JsonText changed(JsonText answer, Request request) throws InputException {
        return answer.put("text", peg().text()).put("state", StateAnswer.of(peg(), request));
    }

    private JsonText undone(Optional<String> label, boolean done, Request request) throws InputException {
        return changed(done ? new JsonText().put("done", label) : new JsonText(), request);
    }

    private JsonText map(Request request) throws InputException {
        boolean shown = true;
        if (request.flag("provisional")) {
            shown = peg().mapSoon();
        } else {
            peg().map();
        }
        return MapAnswer.of(peg(), shown).put("state", StateAnswer.of(peg(), request));
    }

    private JsonText next() throws InputException {
        NextReading next = peg().next();
        return MapAnswer.of(peg().peg(), next);
    }

    private JsonText wheels(Request request) throws InputException {
        WheelsAnswer wheels = new WheelsAnswer(peg());
        return wheels.all(at(request).orElseGet(wheels::begin));
    }

    private static Optional<Place> at(Request request) throws InputException {
        return request.number("x").isPresent()
                ? Optional.of(new Place(request.needed("x"), request.needed("y")))
                : Optional.empty();
    }

    private JsonText depths(Request request) throws InputException {
        WheelsAnswer wheels = new WheelsAnswer(peg());
        OptionalDouble from = request.number("from");
        return wheels.depths(
                wheels.place(request.words("distance"), request.words("direction")),
                from.isPresent() ? Optional.of((int) from.getAsDouble()) : Optional.empty());
    }

    private JsonText target(Request request) throws InputException {
        OptionalDouble metres = request.number("metres");
        if (metres.isPresent()) {
            metres = OptionalDouble.of(Math.round(metres.getAsDouble() * TARGETS_A_METRE) / TARGETS_A_METRE);
        } else if (!request.words("typed").isBlank()) {
            metres = OptionalDouble.of(Notation.of(peg().peg()).depth(request.words("typed")));
        }
        peg().edit(ReadingEdits.target(metres), moment(request));
        if (request.flag("settled")) {
            peg().endBurst();
        }
        return changed(new JsonText(), request);
    }

    private JsonText visit(Request request) throws InputException {
        OffsetDateTime now = moment(request).withNano(0);
        peg().edit(VisitEdits.begin(peg().peg(), now), now);
        return changed(new JsonText(), request);
    }

    private JsonText level(Request request) throws InputException {
        boolean changes = false;
        if (!request.words("board").isBlank()) {
            double metres = Notation.of(peg().peg()).height(request.words("board"));
            changes = peg().edit(VisitEdits.board(OptionalDouble.of(metres)), moment(request));
        }
        if (request.flag("dugOut")) {
            if (peg().peg().visits().size() < 2) {
                throw new InputException("This is the first visit, so there are no readings from before the digging;"
                        + " begin today's visit first.");
            }
            changes |= peg().edit(VisitEdits.dugOut(true), moment(request));
        }
        JsonText answer = VisitAnswer.of(peg());
        return changes ? changed(answer, request) : answer;
    }

    private JsonText place(Request request) throws InputException {
        View view = picture.camera().view();
        WheelsAnswer wheels = new WheelsAnswer(peg());
        return wheels.here(
                wheels.nearest(new Place(view.xMetres(request.needed("x")), view.yMetres(request.needed("y")))));
    }

    private JsonText camera(Request request) {
        OptionalDouble zoom = request.number("zoom");
        if (request.flag("all")) {
            picture.camera().showAll();
        } else {
            picture.camera()
                    .pan(
                            request.number("panX").orElse(0),
                            request.number("panY").orElse(0));
            if (zoom.isPresent()) {
                View view = picture.camera().view();
                picture.camera()
                        .zoom(
                                zoom.getAsDouble(),
                                request.number("x").orElse(view.widthPoints() / 2),
                                request.number("y").orElse(view.heightPoints() / 2));
            }
        }
        return new JsonText().put("all", picture.camera().showsAll());
    }

    private static JsonText cautions() {
        return new JsonText()
                .put(
                        "cautions",
                        Arrays.stream(Caution.values())
                                .map(each -> new JsonText()
                                        .put("title", each.title())
                                        .put("words", each.longForm()))
                                .toList());
    }

    /**
     * Paints the open peg's map on a canvas. Never throws.
     *
     * @param widthPoints of the canvas, CSS pixels
     * @param heightPoints of the canvas, CSS pixels
     * @param options JSON: {@code theme} ({@code light}, {@code dark} or {@code contrast}), {@code here} ({x, y}: a
     *     cross at a place), {@code flats} (flat spots in place of the lines, which are drawn otherwise once they are
     *     known), {@code moving} (while fingers are on the map, which is quicker)
     * @return JSON: {@code all}, whether all of the peg is seen; or {@code refused}
     */
    public String paint(
            DrawingCanvas canvas, double widthPoints, double heightPoints, String options, TextMeasure measure) {
        try {
            Request wish = Request.of(options);
            Optional<Place> here =
                    wish.object("here").isPresent() ? at(wish.object("here").get()) : Optional.empty();
            picture.paint(
                    peg(),
                    new MapPicture.Wish(
                            widthPoints,
                            heightPoints,
                            theme(wish.words("theme")),
                            here,
                            wish.flag("flats"),
                            wish.flag("moving")),
                    measure,
                    canvas);
            return new JsonText().put("all", picture.camera().showsAll()).toString();
        } catch (InputException refused) {
            return refusal(refused.getMessage());
        } catch (RuntimeException unforeseen) {
            return refusal("The map could not be painted (" + unforeseen + ").");
        }
    }

    /** A canvas whose size is told once it is known how high a picture is. */
    @FunctionalInterface
    public interface Sheet {
        /** An empty canvas so high, CSS pixels. */
        DrawingCanvas high(double heightPoints);
    }

    /**
     * Paints the day's fishing as a strip. Never throws.
     *
     * @param sheet where
     * @param widthPoints of the sheet, CSS pixels
     * @param options JSON: {@code theme} as for the map, and {@code now}
     * @return JSON: {@code height}, CSS pixels, 0 where there is nothing to paint; or {@code refused}
     */
    public String paintDay(Sheet sheet, double widthPoints, String options, TextMeasure measure) {
        try {
            Request wish = Request.of(options);
            Optional<Drawing> strip = new FishingAnswer(peg(), moment(wish)).strip(widthPoints, measure);
            strip.ifPresent(drawing -> CanvasPainting.paint(
                    drawing,
                    drawing.view(),
                    theme(wish.words("theme")),
                    sheet.high(drawing.view().heightPoints())));
            return new JsonText()
                    .put(
                            "height",
                            strip.map(drawing -> drawing.view().heightPoints()).orElse(0.0))
                    .toString();
        } catch (InputException refused) {
            return refusal(refused.getMessage());
        } catch (RuntimeException unforeseen) {
            return refusal("The day could not be drawn (" + unforeseen + ").");
        }
    }

    private static Theme theme(String name) {
        return switch (name) {
            case "dark" -> Themes.DARK;
            case "contrast" -> Themes.HIGH_CONTRAST;
            default -> Themes.LIGHT;
        };
    }
}
