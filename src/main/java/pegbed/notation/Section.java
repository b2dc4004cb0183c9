package pegbed.notation;

import pegbed.model.Pole;

/**
 * A distance as the joints of a pole say it.
 *
 * @param number the section at whose end the joint is, from 1
 * @param beyondMetres metres beyond that joint; negative short of it
 */
public record Section(int number, double beyondMetres) {
    /** The last joint before a distance, or the first joint; a joint nearer than the tolerance behind counts too. */
    public static Section of(Pole pole, double distanceMetres, double toleranceMetres) {
        int number = 1;
        for (int i = 0; i < pole.jointMetres().size(); i++) {
            if (pole.jointMetres().get(i) <= distanceMetres + toleranceMetres) {
                number = i + 1;
            }
        }
        return new Section(number, distanceMetres - pole.jointMetres().get(number - 1));
    }

    /** Such as {@code s6 + 1.0} with the given sign between, or {@code s6} alone where the offset rounds to nothing. */
    public String print(String prefix, String blank, String unit, int minDecimals, int maxDecimals) {
        double rounded = Double.parseDouble(Numbers.print(beyondMetres, 0, maxDecimals));
        String joint = prefix + number;
        if (rounded == 0) {
            return joint;
        }
        return joint
                + blank
                + (rounded < 0 ? "-" : "+")
                + blank
                + Numbers.print(Math.abs(rounded), minDecimals, maxDecimals)
                + unit;
    }
}
