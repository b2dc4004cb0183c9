package pegbed.model;

/**
 * Shot of one size on a rig: together where both ends are the same, else spread evenly between them.
 *
 * @param count how many, 1 to {@value #MOST}
 * @param shot their size
 * @param lowestMetres from the hook up to the lowest of them, metres, 0 to 10
 * @param highestMetres from the hook up to the highest, metres; not less
 * @param extras fields of a later version
 */
public record ShotGroup(int count, Shot shot, double lowestMetres, double highestMetres, Extras extras) {
    /** The most shot in one group. */
    public static final int MOST = 50;

    public ShotGroup {
        Check.within(count, 1, MOST, "The number of shot");
        Check.within(lowestMetres, 0, 10, "The height of the lowest shot in metres");
        Check.within(highestMetres, lowestMetres, 10, "The height of the highest shot in metres");
    }

    /** Shot together at one place. */
    public static ShotGroup bulk(int count, Shot shot, double metres) {
        return new ShotGroup(count, shot, metres, metres, Extras.NONE);
    }

    /** Shot spread evenly. */
    public static ShotGroup spread(int count, Shot shot, double lowestMetres, double highestMetres) {
        return new ShotGroup(count, shot, lowestMetres, highestMetres, Extras.NONE);
    }

    /** Their weight together, grams. */
    public double grams() {
        return count * shot.grams();
    }
}
