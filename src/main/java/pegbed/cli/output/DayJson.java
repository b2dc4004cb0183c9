package pegbed.cli.output;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pegbed.day.Estimate;
import pegbed.day.LineHistory;
import pegbed.day.LineOdds;
import pegbed.day.LineRate;
import pegbed.model.Conditions;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.session.DayAnswer;
import pegbed.session.VisitLessons;

/** A day's log as JSON. */
public final class DayJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private DayJson() {}

    /**
     * The log and what it says of its lines.
     *
     * @param visit which visit, from 0
     * @param lessons what finished visits teach, if the bottom is known
     */
    public static ObjectNode of(Peg peg, int visit, DayAnswer answer, Optional<VisitLessons> lessons) {
        ObjectNode top = NODES.objectNode();
        top.put("visit", visit + 1);
        peg.visits().get(visit).start().ifPresent(start -> top.put("start", start.toString()));
        Conditions conditions = answer.day().conditions();
        ObjectNode day = top.putObject("conditions");
        put(day, "air_c", conditions.airCelsius(), 1);
        put(day, "water_c", conditions.waterCelsius(), 1);
        day.put("wind", conditions.wind());
        day.put("colour", conditions.colour());
        ArrayNode events = top.putArray("events");
        answer.day().events().forEach(event -> events.add(event(answer, event)));
        ArrayNode lines = top.putArray("lines");
        answer.rates().forEach(rate -> lines.add(line(rate)));
        top.set("odds", odds(answer.odds()));
        top.put("earlier_visits", answer.prior().visits());
        lessons.ifPresent(known -> {
            top.set("lessons", LessonsJson.of(known));
            LessonsJson.putTarget(top, peg, known);
        });
        return top;
    }

    private static ObjectNode event(DayAnswer answer, DayEvent event) {
        ObjectNode node = NODES.objectNode();
        node.put("time", event.time().toString());
        node.put("event", event.kind().word());
        event.line().ifPresent(place -> {
            put(node, place);
            answer.histories().at(place).ifPresent(line -> put(node, line.number()));
        });
        node.put("what", event.name());
        node.put("amount", event.amount());
        node.put("count", event.count());
        put(node, "weight_kg", event.weightKilograms(), 3);
        node.put("note", event.note());
        return node;
    }

    private static ObjectNode line(LineRate rate) {
        LineHistory line = rate.line();
        ObjectNode node = NODES.objectNode();
        put(node, line.number());
        put(node, line.place());
        node.put("fished_minutes", Output.rounded(line.fishedMinutes(), 1));
        node.put("fish", line.fish());
        node.put("lost", line.lost());
        node.put("bites", line.bites());
        node.put("weighed", line.weighed());
        node.put("weight_kg", Output.rounded(line.kilograms(), 3));
        node.put("fished_now", line.fishedNow());
        put(node, "minutes_since_fished", line.minutesSinceFished(), 1);
        put(node, "minutes_since_fed", line.minutesSinceFed(), 1);
        node.put("told", rate.told());
        node.set("fish_an_hour", estimate(rate.fishAnHour()));
        rate.kilogramsAnHour().ifPresent(weight -> node.set("kg_an_hour", estimate(weight)));
        return node;
    }

    private static ObjectNode odds(LineOdds odds) {
        ObjectNode node = NODES.objectNode();
        node.put("saying", odds.saying().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        node.put("expected_fish", Output.rounded(odds.expectedHere(), 2));
        ArrayNode others = node.putArray("others");
        for (LineOdds.Other other : odds.others()) {
            ObjectNode line = others.addObject();
            put(line, other.line().number());
            put(line, other.line().place());
            line.put("odds", Output.rounded(other.odds(), 3));
            line.put("expected_fish", Output.rounded(other.expected(), 2));
        }
        put(node, "leave_in_minutes", odds.leaveInMinutes(), 0);
        return node;
    }

    private static ObjectNode estimate(Estimate estimate) {
        ObjectNode node = NODES.objectNode();
        node.put("mean", Output.rounded(estimate.mean(), 2));
        node.put("low", Output.rounded(estimate.low(), 2));
        node.put("high", Output.rounded(estimate.high(), 2));
        return node;
    }

    private static void put(ObjectNode node, OptionalInt number) {
        if (number.isPresent()) {
            node.put("line", number.getAsInt());
        }
    }

    private static void put(ObjectNode node, Place place) {
        node.put("x_m", Output.rounded(place.xMetres(), 2));
        node.put("y_m", Output.rounded(place.yMetres(), 2));
    }

    private static void put(ObjectNode node, String name, OptionalDouble value, int decimals) {
        if (value.isPresent()) {
            node.put(name, Output.rounded(value.getAsDouble(), decimals));
        }
    }
}
