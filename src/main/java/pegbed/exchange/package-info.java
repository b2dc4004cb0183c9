/** Files for other programs: GeoJSON, GeoPackage, GeoTIFF and CSV of what is known of pegs, and readings from these. */
package pegbed.exchange;
