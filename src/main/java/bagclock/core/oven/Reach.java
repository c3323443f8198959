package bagclock.core.oven;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * What can be part of a plan that costs no more than a known one: at which minutes a run may begin that one lot leads and
 * another is in. A lot leads a run if none in it needs longer.
 */
public final class Reach {
    private final Map<Seat, BitSet> starts;
    private final PriceSearch search;
    private final Cells cells;
    private final double spare;

    /** A lot in a run; the leader's own seat has it twice. */
    private record Seat(int lot, int leader, int oven, int temperature) {}

    private Reach(Map<Seat, BitSet> starts, PriceSearch search, double spare) {
        this.starts = starts;
        this.search = search;
        this.cells = search.priced().cells();
        this.spare = spare;
    }

    /**
     * After a search for prices.
     *
     * @param most what the known plan costs, no more than the one that the search began with
     */
    public static Reach of(PriceSearch search, long most) {
        Reach reach = new Reach(new HashMap<>(), search, search.spare(most));
        for (int oven = 0; oven < search.ovens().size(); oven++) {
            for (PricedRun run : search.ovens().get(oven).runs()) {
                reach.add(oven, run);
                reach.addAfterAll(oven, run);
            }
        }
        return reach;
    }

    private void add(int oven, PricedRun run) {
        PricedOven priced = search.ovens().get(oven);
        for (int start = 0; start < cells.count(); start++) {
            double more = priced.around(run, start) - priced.onward();
            if (more - run.left(start) > spare || !run.load(start)) {
                continue;
            }
            int at = start;
            run.pairs((leader, lot) -> {
                if (more - run.leftWith(leader, lot) <= spare) {
                    allow(run, oven, leader, lot).set(at);
                }
            });
        }
    }

    /** Runs that end after the last cell. */
    private void addAfterAll(int oven, PricedRun run) {
        if (search.ovens().get(oven).isClosedFrom(cells.count())) {
            return;
        }
        int first = cells.count();
        while (first > 0 && run.end(first - 1) > cells.count()) {
            first--;
        }
        int from = first;
        run.pairs((leader, lot) -> {
            if (search.afterAll(run.lots()[leader]) <= spare && search.afterAll(run.lots()[lot]) <= spare) {
                allow(run, oven, leader, lot).set(from, cells.count() + 2);
            }
        });
    }

    private BitSet allow(PricedRun run, int oven, int leader, int lot) {
        Seat seat = new Seat(run.lots()[lot], run.lots()[leader], oven, run.temperature());
        return starts.computeIfAbsent(seat, none -> new BitSet());
    }

    /**
     * First and last minutes of the spans in which the run may begin, one after the other; empty: never.
     *
     * @param last no run begins later
     */
    public long[] starts(int lot, int leader, int oven, int temperature, int last) {
        BitSet at = starts.getOrDefault(new Seat(lot, leader, oven, temperature), new BitSet());
        LongStream.Builder spans = LongStream.builder();
        for (int from = at.nextSetBit(0); from >= 0; ) {
            int to = at.nextClearBit(from) - 1;
            spans.add(cells.start(from)).add(to > cells.count() ? Math.max(last, cells.last(to)) : cells.last(to));
            from = at.nextSetBit(to + 1);
        }
        return spans.build().toArray();
    }
}
