/** General methods for a surface through scattered depths, against which the model is measured. */
package pegbed.bench.methods;
