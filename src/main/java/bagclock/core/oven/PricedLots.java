package bagclock.core.oven;

/**
 * What each lot pays for being baked, and what it costs when it comes out late. Whatever the prices, all of them together,
 * less what the best day of each oven earns with them, are no more than the cost of any plan.
 */
final class PricedLots {
    private final Problem problem;
    private final Cells cells;
    private final double[][] late;
    private final double[] prices;

    /**
     * Nobody pays.
     *
     * @param most a lot that alone costs more is in no plan that counts
     */
    PricedLots(Problem problem, Cells cells, long most) {
        this.problem = problem;
        this.cells = cells;
        this.prices = new double[problem.lots().length];
        this.late = new double[prices.length][cells.count() + 1];
        for (int lot = 0; lot < prices.length; lot++) {
            for (int cell = 0; cell <= cells.count(); cell++) {
                long cost = problem.lateness(lot, cells.start(cell));
                late[lot][cell] = cost > most ? Double.POSITIVE_INFINITY : cost;
            }
        }
    }

    void pay(double[] all) {
        System.arraycopy(all, 0, prices, 0, prices.length);
    }

    double price(int lot) {
        return prices[lot];
    }

    Problem problem() {
        return problem;
    }

    Cells cells() {
        return cells;
    }

    /** What the lot costs at least that comes out in a cell; infinite if no plan that counts has it so. */
    double late(int lot, int cell) {
        return late[lot][cell];
    }

    /** What the lot leaves over in an oven between two cells. */
    double worth(int lot, int oven, int start, int end) {
        return prices[lot] - cost(lot, oven, start, end);
    }

    /** What the lot costs there, whatever it pays. */
    double cost(int lot, int oven, int start, int end) {
        return late[lot][end] + moved(lot, oven, start);
    }

    private double moved(int lot, int oven, int cell) {
        Problem.Anchor anchor = problem.anchor();
        boolean isSurely = anchor.price() > 0
                && anchor.isMoved(lot, oven, cells.start(cell))
                && anchor.isMoved(lot, oven, cells.last(cell))
                && (anchor.oven()[lot] != oven || isOnOneSide(anchor.start()[lot], cell));
        return isSurely ? anchor.price() : 0;
    }

    private boolean isOnOneSide(int start, int cell) {
        return start < cells.start(cell) || start > cells.last(cell);
    }
}
