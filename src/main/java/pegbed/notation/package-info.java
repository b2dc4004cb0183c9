/** The short way in which people say readings, read and written. */
package pegbed.notation;
