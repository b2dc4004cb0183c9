package pegbed.report.drawing;

/** What the coordinates of an item are. A {@link View} turns each of them into points on the sheet. */
public sealed interface Frame {
    /** Metres on the water, y straight out: the item grows with the map. */
    Frame WATER = new Water();

    /** Points on the sheet from its top left corner, y down: titles and legends. */
    Frame SHEET = new Sheet();

    /** Points about a place on the water, y down: symbols and labels, which keep their size. */
    static Frame at(double xMetres, double yMetres) {
        return new At(xMetres, yMetres);
    }

    /** See {@link #WATER}. */
    record Water() implements Frame {}

    /** See {@link #SHEET}. */
    record Sheet() implements Frame {}

    /**
     * See {@link #at}.
     *
     * @param xMetres metres to the right of the seat
     * @param yMetres metres straight out
     */
    record At(double xMetres, double yMetres) implements Frame {}
}
