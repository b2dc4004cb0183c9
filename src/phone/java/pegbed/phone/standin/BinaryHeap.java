package pegbed.phone.standin;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * Stands for {@code java.util.PriorityQueue} where the order of equals counts: the binary heap that the JDK's class uses
 * (J. W. J. Williams, Algorithm 232: Heapsort, 1964), sifted in the same way.
 */
public final class BinaryHeap<E extends Comparable<E>> {
    private final List<E> heap = new ArrayList<>();

    public boolean isEmpty() {
        return heap.isEmpty();
    }

    public boolean add(Object item) {
        @SuppressWarnings("unchecked") // a heap is filled by one class alone
        E added = (E) item;
        heap.add(added);
        int at = heap.size() - 1;
        while (at > 0) {
            int parent = (at - 1) >>> 1;
            if (added.compareTo(heap.get(parent)) >= 0) {
                break;
            }
            heap.set(at, heap.get(parent));
            at = parent;
        }
        heap.set(at, added);
        return true;
    }

    public Object remove() {
        if (heap.isEmpty()) {
            throw new NoSuchElementException();
        }
        E first = heap.get(0);
        E last = heap.remove(heap.size() - 1);
        int size = heap.size();
        if (size > 0) {
            siftDown(last, size);
        }
        return first;
    }

    private void siftDown(E item, int size) {
        int at = 0;
        while (at < size >>> 1) {
            int child = 2 * at + 1;
            int right = child + 1;
            if (right < size && heap.get(child).compareTo(heap.get(right)) > 0) {
                child = right;
            }
            if (item.compareTo(heap.get(child)) <= 0) {
                break;
            }
            heap.set(at, heap.get(child));
            at = child;
        }
        heap.set(at, item);
    }
}
