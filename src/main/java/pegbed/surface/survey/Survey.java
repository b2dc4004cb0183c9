package pegbed.surface.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbed.geometry.BankCoordinates;
import pegbed.geometry.PegWater;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Precision;
import pegbed.model.Visit;

/**
 * All that the model is given: soundings, the water they lie in, and the levels of their visits.
 *
 * @param soundings all of them, in the order in which they were taken
 * @param water the peg's water; empty for open water without banks
 * @param levels the visits' levels against the first, at which the banks were drawn
 * @param shown index of the visit at whose level every depth is given
 */
public record Survey(List<Sounding> soundings, Optional<PegWater> water, Levels levels, int shown) {
    public Survey {
        soundings = List.copyOf(soundings);
    }

    /** A survey whose depths are given at the level of its latest visit. */
    public Survey(List<Sounding> soundings, Optional<PegWater> water, Levels levels) {
        this(soundings, water, levels, levels.visits() - 1);
    }

    /**
     * The survey of a peg, at the level of its latest visit; visits at the end of which nothing but fishing is known,
     * neither a reading nor the board, are passed over, so that what is tapped while fishing moves nothing.
     *
     * @throws InputException if the banks can't be used
     */
    public static Survey of(Peg peg) throws InputException {
        return of(peg, PegWater.of(peg));
    }

    /** As {@link #of(Peg)} of a peg whose water is known. */
    public static Survey of(Peg peg, PegWater water) {
        List<Sounding> soundings = new ArrayList<>();
        int afresh = afresh(peg.visits());
        for (int visit = 0; visit < peg.visits().size(); visit++) {
            for (var reading : peg.visits().get(visit).readings()) {
                Sounding sounding = Sounding.of(reading, visit);
                soundings.add(visit < afresh ? sounding.changed(Double.POSITIVE_INFINITY) : sounding);
            }
        }
        for (BankPoint point : edges(peg.banks())) {
            point.depthMetres()
                    .ifPresent(depth -> soundings.add(new Sounding(
                            point.place().xMetres(),
                            point.place().yMetres(),
                            depth,
                            Sounding.SOFT_SD_METRES,
                            Precision.PLAIN,
                            0)));
        }
        return new Survey(soundings, Optional.of(water), Levels.of(peg.visits(), 0), shown(peg.visits()));
    }

    private static int shown(List<Visit> visits) {
        int shown = visits.size() - 1;
        while (shown > 0 && visits.get(shown).isFishedOnly()) {
            shown--;
        }
        return shown;
    }

    /** Index of the latest visit before which the bottom was dug out; 0 if it never was. */
    private static int afresh(List<Visit> visits) {
        int latest = 0;
        for (int v = 1; v < visits.size(); v++) {
            latest = visits.get(v).afresh() ? v : latest;
        }
        return latest;
    }

    /** The soundings that still say something of the bottom. */
    public List<Sounding> used() {
        return soundings.stream().filter(Sounding::isUsed).toList();
    }

    /** This survey with other soundings, one for one. */
    public Survey withSoundings(List<Sounding> others) {
        return new Survey(others, water, levels, shown);
    }

    /** Open water without banks, all at one level. */
    public static Survey open(List<Sounding> soundings) {
        return new Survey(soundings, Optional.empty(), Levels.same(1));
    }

    private static List<BankPoint> edges(Banks banks) {
        List<BankPoint> all = new ArrayList<>(banks.near());
        all.addAll(banks.far());
        banks.islands().forEach(all::addAll);
        return all;
    }

    /** Coordinates that follow the banks, where there are any. */
    public BankCoordinates coordinates() {
        return water.map(w -> (BankCoordinates) w).orElse(BankCoordinates.OPEN);
    }

    /** Indices of the used soundings in an order that does not depend on the order in which they were taken. */
    public int[] canonicalOrder() {
        return java.util.stream.IntStream.range(0, soundings.size())
                .filter(i -> soundings.get(i).isUsed())
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(
                                i -> soundings.get(i).yMetres())
                        .thenComparingDouble(i -> Math.abs(soundings.get(i).xMetres()))
                        .thenComparingDouble(i -> soundings.get(i).xMetres())
                        .thenComparingDouble(i -> soundings.get(i).depthMetres())
                        .thenComparingInt(i -> soundings.get(i).visit())
                        .thenComparingDouble(i -> soundings.get(i).sdDepthMetres())
                        .thenComparingDouble(i -> soundings.get(i).precision().sdDistanceMetres())
                        .thenComparingDouble(i -> soundings.get(i).precision().sdAngleDegrees())
                        .thenComparingDouble(i -> soundings.get(i).changeSdMetres()))
                .mapToInt(i -> i)
                .toArray();
    }
}
