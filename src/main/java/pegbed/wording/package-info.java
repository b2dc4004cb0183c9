/** Answers said in the words and units of the person. */
package pegbed.wording;
