package pegbed.storage.peg;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pegbed.model.BankPoint;
import pegbed.model.Bottom;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Hazard;
import pegbed.model.Mark;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Visit;

/** Objects of the peg file to records. Each throws {@link IllegalArgumentException} where the object makes no sense. */
public final class ElementParser {
    private static final Map<String, Bottom> BOTTOMS = words(Bottom.values(), Bottom::word);
    private static final Map<String, Hazard.Kind> KINDS = words(Hazard.Kind.values(), Hazard.Kind::word);

    private ElementParser() {}

    public static <T> Map<String, T> words(T[] meanings, Function<T, String> word) {
        Map<String, T> words = new LinkedHashMap<>();
        Arrays.stream(meanings).forEach(meaning -> words.put(word.apply(meaning), meaning));
        return words;
    }

    static Reading reading(Fields fields) {
        Typed typed = fields.typed();
        Place place = fields.place();
        double depthMetres = fields.needed("depth_m", 0, Reading.DEEPEST_METRES);
        Precision precision = new Precision(
                fields.number("sd_distance_m", 0, 5).orElse(Precision.PLAIN.sdDistanceMetres()),
                fields.number("sd_direction_deg", 0, 45).orElse(Precision.PLAIN.sdAngleDegrees()));
        Bottom bottom = fields.oneOf("bottom", BOTTOMS).orElse(Bottom.UNKNOWN);
        return new Reading(
                typed,
                place,
                precision,
                depthMetres,
                bottom,
                fields.words("note"),
                fields.time("time"),
                fields.extras());
    }

    static BankPoint bankPoint(Fields fields) {
        Typed typed = fields.typed();
        return new BankPoint(
                fields.place(), fields.number("depth_m", 0, Reading.DEEPEST_METRES), typed, fields.extras());
    }

    static Mark mark(Fields fields) {
        return new Mark(fields.words("name"), fields.place(), fields.extras());
    }

    /** A hazard of a kind that can't be read stays a hazard. */
    static Hazard hazard(Fields fields) {
        if (!fields.has("kind")) {
            fields.trouble("kind is missing; taken for other.");
        }
        Hazard.Kind kind = fields.oneOf("kind", KINDS).orElse(Hazard.Kind.OTHER);
        Typed typed = fields.typed();
        List<Place> outline = fields.places("outline_m");
        double radiusMetres = fields.number("radius_m", 0, 100).orElse(0);
        return new Hazard(kind, outline, radiusMetres, fields.words("note"), typed, fields.extras());
    }

    static Visit visit(Fields fields, List<Reading> readings, List<DayEvent> events) {
        return new Visit(
                fields.time("start"),
                fields.number("board_to_water_m", -5, 5),
                fields.flag("afresh"),
                readings,
                new Day(fields.object("conditions").map(DayElements::conditions).orElse(Conditions.NONE), events),
                fields.words("note"),
                fields.extras());
    }
}
