/**
 * A drawing as an immutable list of items in metres, what each of them means, and the themes that give them colours and
 * pens. A painter walks the list in order; it needs to know fills, strokes and texts, and nothing of pegs.
 */
package pegbed.report.drawing;
