package pegbed.notation;

import java.util.List;
import java.util.stream.Stream;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Units;

/** Invented pegs for the tests of the notation. */
public final class Pegs {
    /** A 16 m pole, a straight far bank 13 m out, four marks on it; feet and sections. */
    public static final Peg TANSY = Peg.EMPTY
            .withBanks(far(-12, 13, 12, 13))
            .withMarks(List.of(
                    mark("gate", -7, 13),
                    mark("leaning post", -2, 13),
                    mark("white pipe", 3, 13),
                    mark("split ash", 6, 13)));

    private Pegs() {}

    public static Banks far(double... xy) {
        return new Banks(
                List.of(),
                Stream.iterate(0, i -> i < xy.length, i -> i + 2)
                        .map(i -> BankPoint.at(xy[i], xy[i + 1]))
                        .toList(),
                List.of());
    }

    public static Mark mark(String name, double xMetres, double yMetres) {
        return new Mark(name, new Place(xMetres, yMetres), Extras.NONE);
    }

    public static Peg with(Peg peg, Units.Depth depth, Units.Distance distance) {
        return peg.withUnits(new Units(depth, distance));
    }

    /** The same peg with left and right exchanged. */
    public static Peg mirrored(Peg peg) {
        List<BankPoint> far = peg.banks().far().stream()
                .map(point ->
                        BankPoint.at(-point.place().xMetres(), point.place().yMetres()))
                .toList();
        return peg.withBanks(new Banks(List.of(), far, List.of()))
                .withMarks(peg.marks().stream()
                        .map(mark -> mark(
                                mark.name(),
                                -mark.place().xMetres(),
                                mark.place().yMetres()))
                        .toList());
    }
}
