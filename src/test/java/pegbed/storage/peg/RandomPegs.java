package pegbed.storage.peg;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Supplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Bottom;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
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

/** Random pegs with any field set or not, odd letters and odd numbers. */
public class RandomPegs extends DomainContextBase {
    private static final String[] WORDS = {
        "",
        "post",
        "s6+0.5",
        "5'6\"",
        "\\",
        "\"",
        "\n",
        "\r\n",
        "\t",
        "\u0000",
        "\u001F",
        "\u007F",
        "\u2028",
        "\uFEFF",
        "\u00e9",
        "\u6c34",
        "\uD83D\uDC1F",
        "\uD83D",
        "\uDC1F",
        "\uFFFF",
        "</script>",
        ",",
        ";",
        "=1+1",
        "  "
    };

    private static final String[] JSONS = {
        "1",
        "-0.0",
        "1e400",
        "1.10",
        "true",
        "null",
        "\"\"",
        "\"\\uD83D\"",
        "[]",
        "{}",
        "[1, [2, {\"x\": []}]]",
        "{\"a\":\n 1}"
    };

    @Provide
    Arbitrary<Peg> pegs() {
        return Arbitraries.randoms().map(random -> new Maker(random).peg());
    }

    /** Makes one peg from a source of chance. */
    private record Maker(Random random) {
        Peg peg() {
            List<Mark> marks = new ArrayList<>();
            for (int i = 0; i < random.nextInt(3); i++) {
                marks.add(new Mark("mark " + i + words(), polar(), extras()));
            }
            return new Peg(
                    new PegName(words(), words(), words()),
                    maybe(() -> new Position(number(-90, 90), number(-180, 180), number(0, 360), maybeNumber(0, 1000))),
                    new Units(any(Units.Depth.values()), any(Units.Distance.values())),
                    pole(),
                    new Banks(bank(), bank(), list(this::bank)),
                    new Limits(maybeNumber(-20, -1), maybeNumber(1, 20)),
                    marks,
                    list(this::hazard),
                    new Wishes(maybeNumber(0, 30), lines(), rigs(), random.nextBoolean(), extras()),
                    visits(),
                    extras());
        }

        LineWishes lines() {
            LineCounts counts = new LineCounts(upTo(6), upTo(6), upTo(6), upTo(6), upTo(6));
            return new LineWishes(
                    random.nextBoolean() ? LineCounts.USUAL : counts,
                    maybeFrom1(12),
                    random.nextBoolean() ? Optional.empty() : Optional.of(StartLine.values()[upTo(3)]),
                    list(this::pin),
                    list(this::pin));
        }

        LinePin pin() {
            return new LinePin(place(), extras());
        }

        RigWishes rigs() {
            return new RigWishes(maybeFrom1(12), maybeNumber(0, 1), list(this::template));
        }

        RigTemplate template() {
            return new RigTemplate(
                    "rig" + words(),
                    number(0.1, 30),
                    any(RigTemplate.Ground.values()),
                    words(),
                    number(0.01, 50),
                    number(0, 1),
                    number(0.02, 2),
                    list(this::shots),
                    extras());
        }

        ShotGroup shots() {
            double lowest = number(0, 10);
            return new ShotGroup(
                    1 + random.nextInt(50), any(Shot.values()), lowest, any(lowest, number(lowest, 10)), extras());
        }

        int upTo(int most) {
            return random.nextInt(most + 1);
        }

        OptionalInt maybeFrom1(int most) {
            return random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(most)) : OptionalInt.empty();
        }

        List<Visit> visits() {
            List<Visit> visits = new ArrayList<>(list(this::visit));
            visits.add(visit());
            return visits;
        }

        Visit visit() {
            return new Visit(
                    maybe(this::time),
                    maybeNumber(-5, 5),
                    random.nextBoolean(),
                    list(this::reading),
                    new Day(random.nextBoolean() ? Conditions.NONE : conditions(), list(this::event)),
                    words(),
                    extras());
        }

        Conditions conditions() {
            return new Conditions(maybeNumber(-40, 60), maybeNumber(-5, 45), words(), words(), extras());
        }

        DayEvent event() {
            DayEvent.Kind kind = any(DayEvent.Kind.values());
            boolean fish = kind == DayEvent.Kind.FISH;
            return new DayEvent(
                    time(),
                    kind,
                    kind.onLine() || random.nextBoolean() ? Optional.of(place()) : Optional.empty(),
                    words(),
                    words(),
                    kind.countsFish() ? 1 + random.nextInt(999) : 1,
                    fish ? maybeNumber(0.001, 1000) : OptionalDouble.empty(),
                    "n" + words(),
                    extras());
        }

        Reading reading() {
            return new Reading(
                    typed(),
                    random.nextBoolean() ? polar() : place(),
                    random.nextBoolean() ? Precision.PLAIN : new Precision(number(0, 5), number(0, 45)),
                    number(0, 30),
                    any(Bottom.values()),
                    words(),
                    maybe(this::time),
                    extras());
        }

        Hazard hazard() {
            List<Place> outline = new ArrayList<>();
            for (int i = any(1, 3, 4, 7); i > 0; i--) {
                outline.add(place());
            }
            return new Hazard(any(Hazard.Kind.values()), outline, number(0, 100), words(), typed(), extras());
        }

        List<BankPoint> bank() {
            return list(() -> new BankPoint(place(), maybeNumber(0, 30), typed(), extras()));
        }

        Pole pole() {
            TreeSet<Double> joints = new TreeSet<>();
            joints.add(number(0.3, 30));
            joints.addAll(list(() -> number(0.3, 30)));
            return new Pole(new ArrayList<>(joints));
        }

        Place place() {
            return new Place(number(-60, 60), number(-60, 60));
        }

        Place polar() {
            return Place.polar(number(0, 60), number(-180, 180));
        }

        Typed typed() {
            Typed typed = new Typed(words(), words(), words());
            return random.nextBoolean() ? Typed.NOTHING : typed;
        }

        OffsetDateTime time() {
            return OffsetDateTime.of(
                    2000 + random.nextInt(90),
                    1 + random.nextInt(12),
                    1 + random.nextInt(28),
                    random.nextInt(24),
                    random.nextInt(60),
                    any(0, random.nextInt(60)),
                    any(0, random.nextInt(1_000_000_000)),
                    any(ZoneOffset.UTC, ZoneOffset.ofTotalSeconds(900 * (random.nextInt(100) - 50))));
        }

        /** Round numbers, numbers with a long tail, and the very ends. */
        double number(double least, double most) {
            double tail = least + (most - least) * random.nextDouble();
            double round = Math.round(tail * 100) / 100.0;
            double tiny = least <= 0 ? Math.nextUp(0.0) * random.nextInt(1000) : least;
            return any(tail, Math.min(most, Math.max(least, round)), least, most, tiny);
        }

        String words() {
            StringBuilder words = new StringBuilder();
            for (int i = 0; i < any(0, 0, 1, 4); i++) {
                words.append(any(WORDS));
            }
            return words.toString();
        }

        Extras extras() {
            Map<String, String> raw = new LinkedHashMap<>();
            for (int i = 0; i < any(0, 0, 0, 2); i++) {
                raw.put("later " + i + any("", "\"", "\n", "\u00e9", "\uD83D\uDC1F"), any(JSONS));
            }
            return new Extras(raw);
        }

        OptionalDouble maybeNumber(double least, double most) {
            return random.nextBoolean() ? OptionalDouble.of(number(least, most)) : OptionalDouble.empty();
        }

        <T> Optional<T> maybe(Supplier<T> maker) {
            return random.nextBoolean() ? Optional.of(maker.get()) : Optional.empty();
        }

        <T> List<T> list(Supplier<T> maker) {
            List<T> list = new ArrayList<>();
            for (int i = any(0, 0, 1, 3); i > 0; i--) {
                list.add(maker.get());
            }
            return list;
        }

        @SafeVarargs
        @SuppressWarnings("varargs")
        final <T> T any(T... choices) {
            return choices[random.nextInt(choices.length)];
        }
    }
}
