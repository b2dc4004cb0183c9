/**
 * What the library of the compiler for the page lacks, for one thread. {@link
 * pegbed.phone.standin.StandIns} puts these classes in the place of those of the same simple name.
 */
package pegbed.phone.standin;
