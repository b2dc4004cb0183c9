package pegbed.session;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Visit;

/** Invented pegs for the tests. */
public final class Pegs {
    private Pegs() {}

    /** Banks 0.5 m and 13 m out, two marks, no readings. */
    public static Peg bare() {
        return Peg.EMPTY
                .withName(new PegName("Mallowfield Pools", "Tansy Cut", "9"))
                .withBanks(new Banks(
                        List.of(BankPoint.at(-9, 0.6), BankPoint.at(0, 0.5), BankPoint.at(9, 0.7)),
                        List.of(BankPoint.at(-11, 13.2), BankPoint.at(0, 13), BankPoint.at(11, 13.3)),
                        List.of()))
                .withMarks(List.of(
                        new Mark("leaning post", new Place(-3, 13.1), Extras.NONE),
                        new Mark("white pipe", new Place(4, 13.1), Extras.NONE)));
    }

    /** The bare peg with readings of an invented dish, in rows of directions. */
    public static Peg plumbed(int count) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double distance = 2 + 10 * ((i * 0.618) % 1);
            double angle = -50 + 100 * ((i * 0.414) % 1);
            Place place = Place.polar(distance, angle);
            double share = Math.min(1, Math.max(0, (place.yMetres() - 0.5) / 12.5));
            readings.add(Reading.of(distance, angle, 0.25 + 1.4 * Math.sqrt(Math.sin(Math.PI * share) + 1e-9)));
        }
        return bare().withToday(visit -> visit.withReadings(readings));
    }

    static Peg visitTwice(Peg peg) {
        List<Visit> visits = new ArrayList<>(peg.visits());
        visits.add(Visit.EMPTY);
        return peg.withVisits(visits);
    }
}
