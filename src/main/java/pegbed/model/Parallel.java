package pegbed.model;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * The one place through which the core uses several cores. Work that is handed over here must not depend on the order
 * in which it is done; where there is one thread only, as in a web page, it is done in turn, with the same results.
 */
public final class Parallel {
    private Parallel() {}

    /**
     * Does a piece of work for each index, and returns when all are done.
     *
     * @param count indexes are 0 to count − 1
     */
    public static void each(int count, IntConsumer work) {
        // Boxed: the library of the compiler for a page has no parallel stream of int.
        IntStream.range(0, count).boxed().parallel().forEach(work::accept);
    }

    /** What a function makes of each item, in the items' order. */
    public static <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> work) {
        return items.stream().parallel().<R>map(work).toList();
    }

    /** Two results that are worked out beside each other. */
    public static <A, B> Both<A, B> both(Supplier<A> first, Supplier<B> second) {
        Object[] results = new Object[2];
        each(2, i -> results[i] = (i == 0 ? first : second).get());
        @SuppressWarnings("unchecked") // each result was put there by its own supplier
        Both<A, B> both = new Both<>((A) results[0], (B) results[1]);
        return both;
    }

    /** The results of two pieces of work. */
    public record Both<A, B>(A first, B second) {}
}
