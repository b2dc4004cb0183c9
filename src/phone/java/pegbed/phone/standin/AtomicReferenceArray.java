package pegbed.phone.standin;

/** Stands for {@code java.util.concurrent.atomic.AtomicReferenceArray}, for one thread. */
public class AtomicReferenceArray<E> {
    private final Object[] items;

    public AtomicReferenceArray(int length) {
        items = new Object[length];
    }

    @SuppressWarnings("unchecked") // only items of this type are put in
    public E get(int index) {
        return (E) items[index];
    }

    public void set(int index, E item) {
        items[index] = item;
    }

    public E getAndSet(int index, E item) {
        E before = get(index);
        items[index] = item;
        return before;
    }

    public int length() {
        return items.length;
    }
}
