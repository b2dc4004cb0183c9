/** Lines and rigs. */
package pegbed.ui.plan;
