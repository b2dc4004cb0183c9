/** Lines to fish and the fewest rigs that serve them. */
package pegbed.plan;
