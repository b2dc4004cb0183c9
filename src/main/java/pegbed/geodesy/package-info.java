/**
 * From a peg's plane to the earth and back: WGS 84, UTM, and a position from marks that are known. Projections by
 * Apache SIS, which is loaded by this package alone, and only when it is used.
 */
package pegbed.geodesy;
