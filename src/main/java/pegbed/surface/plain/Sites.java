package pegbed.surface.plain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Puts sites in an order that does not depend on how they came, and makes one of those that share a place. */
final class Sites {
    private static final Comparator<Site> BY_PLACE = Comparator.comparingDouble(Site::xMetres)
            .thenComparingDouble(Site::yMetres)
            .thenComparingDouble(Site::depthMetres);

    private Sites() {}

    /** Sorted by place; sites at the same place become one with their mean depth. */
    static List<Site> merged(List<Site> sites) {
        List<Site> sorted = new ArrayList<>(sites);
        sorted.sort(BY_PLACE);
        double near = Tolerance.SAME_SITE * extent(sorted);
        List<Place> places = new ArrayList<>();
        // The places just behind the sweep over x, by y; no two share a y, or they would be one.
        TreeMap<Double, Place> behind = new TreeMap<>();
        int passed = 0;
        for (Site site : sorted) {
            while (passed < places.size() && places.get(passed).first.xMetres() < site.xMetres() - near) {
                behind.remove(places.get(passed++).first.yMetres());
            }
            Map.Entry<Double, Place> same = behind.ceilingEntry(site.yMetres() - near);
            if (same != null && same.getKey() <= site.yMetres() + near) {
                same.getValue().add(site);
            } else {
                Place place = new Place(site);
                places.add(place);
                behind.put(site.yMetres(), place);
            }
        }
        return places.stream().map(Place::site).toList();
    }

    /** The sites at one place: the first of them and the sum of their depths. */
    private static final class Place {
        private final Site first;
        private double sumMetres;
        private int count;

        Place(Site first) {
            this.first = first;
            add(first);
        }

        void add(Site site) {
            sumMetres += site.depthMetres();
            count++;
        }

        Site site() {
            return count == 1 ? first : new Site(first.xMetres(), first.yMetres(), sumMetres / count);
        }
    }

    /** The longer side of the box round the sites, metres; 0 without sites. */
    static double extent(List<Site> sites) {
        double xMin = Double.POSITIVE_INFINITY;
        double yMin = Double.POSITIVE_INFINITY;
        double xMax = Double.NEGATIVE_INFINITY;
        double yMax = Double.NEGATIVE_INFINITY;
        for (Site site : sites) {
            xMin = Math.min(xMin, site.xMetres());
            yMin = Math.min(yMin, site.yMetres());
            xMax = Math.max(xMax, site.xMetres());
            yMax = Math.max(yMax, site.yMetres());
        }
        return sites.isEmpty() ? 0 : Math.max(xMax - xMin, yMax - yMin);
    }
}
