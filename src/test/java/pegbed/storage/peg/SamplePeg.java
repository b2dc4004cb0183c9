package pegbed.storage.peg;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.Limits;
import pegbed.model.LineCounts;
import pegbed.model.LinePin;
import pegbed.model.LineWishes;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Position;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.RigTemplate;
import pegbed.model.RigWishes;
import pegbed.model.Shot;
import pegbed.model.ShotGroup;
import pegbed.model.StartLine;
import pegbed.model.Typed;
import pegbed.model.Units;
import pegbed.model.Visit;
import pegbed.model.Wishes;

/** A peg with every field in use; invented data. */
public final class SamplePeg {
    private SamplePeg() {}

    public static Peg peg() {
        return new Peg(
                new PegName("Mallowfield Pools", "Tansy Cut", "9"),
                Optional.of(new Position(52.123456, -1.987654, 312.5, OptionalDouble.of(4))),
                new Units(Units.Depth.CENTIMETRES, Units.Distance.METRES),
                new Pole(List.of(2.6, 4.0, 5.5, 7.0, 8.5, 10.0, 11.5, 13.0)),
                banks(),
                new Limits(OptionalDouble.of(-7.5), OptionalDouble.of(6)),
                List.of(
                        new Mark("leaning post", Place.polar(13.5, -20), Extras.NONE),
                        new Mark("white pipe", Place.polar(13.2, 14), extras("seen_from", "\"seat\""))),
                List.of(
                        new Hazard(
                                Hazard.Kind.SNAG,
                                List.of(new Place(3.5, 4.2)),
                                0.5,
                                "old stake",
                                new Typed("5.5", "40R", ""),
                                Extras.NONE),
                        new Hazard(
                                Hazard.Kind.LILIES_OR_REEDS,
                                List.of(new Place(-7, 0.5), new Place(-4, 0.6), new Place(-5.5, 2)),
                                0,
                                "",
                                Typed.NOTHING,
                                extras("height_m", "1.20"))),
                wishes(),
                List.of(
                        visit("2026-05-02T07:30:00+01:00", OptionalDouble.of(0.42), 7),
                        visit("2026-06-13T06:05:00+01:00", OptionalDouble.of(0.5), 4)),
                extras("log", "{\"kept\": [1e2, 1.10, true],\n    \"odd\": \"\\u00e9\"}"));
    }

    private static Wishes wishes() {
        LineWishes lines = new LineWishes(
                new LineCounts(2, 3, 0, 1, 1),
                OptionalInt.of(5),
                Optional.of(StartLine.MARGIN),
                List.of(
                        new LinePin(Place.polar(11, -15), extras("since", "\"May\"")),
                        LinePin.at(Place.polar(3, 78.5))),
                List.of(LinePin.at(Place.polar(9, 20))));
        RigTemplate slope = new RigTemplate(
                "bank \"slope\"",
                1.2,
                RigTemplate.Ground.SLOPE,
                "4×12",
                0.2,
                0.06,
                0.1,
                List.of(
                        new ShotGroup(1, Shot.NO_10, 0.1, 0.1, extras("soft", "true")),
                        ShotGroup.spread(4, Shot.NO_10, 0.15, 0.45)),
                extras("line", "\"0.14 mm\""));
        RigTemplate bare =
                new RigTemplate("bare", 30, RigTemplate.Ground.LEVEL, "", 0.4, 0, 0.15, List.of(), Extras.NONE);
        return new Wishes(
                OptionalDouble.of(0.762),
                lines,
                new RigWishes(OptionalInt.of(2), OptionalDouble.of(0), List.of(slope, bare)),
                true,
                extras("mood", "[1, {\"a\": null}]"));
    }

    private static Banks banks() {
        return new Banks(
                List.of(BankPoint.at(-8, 0.6), BankPoint.at(0, 0.5), BankPoint.at(8, 0.7)),
                List.of(
                        BankPoint.at(-9, 13.4),
                        new BankPoint(
                                Place.polar(13, 3.3),
                                OptionalDouble.of(0.2),
                                new Typed("13", "3.3", "8in"),
                                extras("sure", "false")),
                        BankPoint.at(9, 13.1)),
                List.of(
                        List.of(BankPoint.at(0, 6), BankPoint.at(1, 7), BankPoint.at(-1, 7)),
                        List.of(BankPoint.at(4, 8), BankPoint.at(5, 8), BankPoint.at(5, 9))));
    }

    private static Visit visit(String start, OptionalDouble boardToWaterMetres, int count) {
        OffsetDateTime begin = OffsetDateTime.parse(start);
        List<Reading> readings = IntStream.range(0, count)
                .mapToObj(i -> new Reading(
                        i % 2 == 0 ? new Typed("s" + i, "@leaning post+" + i, "5'" + i) : Typed.NOTHING,
                        Place.polar(2 + i, -40 + 11.3 * i),
                        i % 3 == 0 ? Precision.PLAIN : new Precision(0.1, 1.5),
                        0.3048 * (2 + i / 12.0),
                        Bottom.values()[i % Bottom.values().length],
                        i == 2 ? "weed, \"soft\" – \u00e9\n\u6c34 \uD83D\uDC1F" : "",
                        i % 2 == 0 ? Optional.of(begin.plusMinutes(i)) : Optional.empty(),
                        i == 3 ? extras("plummet_g", "30") : Extras.NONE))
                .toList();
        return new Visit(Optional.of(begin), boardToWaterMetres, readings, "dry week", extras("wind", "\"light\""));
    }

    public static Extras extras(String name, String json) {
        return new Extras(Map.of(name, json));
    }
}
