package pegbed.model;

/**
 * What a peg is called.
 *
 * @param venue the fishery, may be empty
 * @param water the water of that fishery, may be empty
 * @param number the peg's number or name on that water, may be empty
 */
public record PegName(String venue, String water, String number) {
    /** One line for headings, such as {@code Tansy Cut, peg 9}; never empty. */
    public String title() {
        String peg = number.isBlank() ? "" : "peg " + number;
        if (!water.isBlank()) {
            return peg.isEmpty() ? water : water + ", " + peg;
        }
        if (!venue.isBlank()) {
            return peg.isEmpty() ? venue : venue + ", " + peg;
        }
        return peg.isEmpty() ? "A peg without a name" : "Peg " + number;
    }
}
