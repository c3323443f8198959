package bagclock.core.oven;

/** Finds the earliest time for one run: when its door is opened, and who goes in and out then. Reused for each run. */
final class DoorDay {
    private static final int MOST_TRIES = 2_000;

    private final Problem problem;
    private int[] in = new int[8];
    private int[] out = new int[8];
    private int[] needs = new int[8];
    private int start;
    private int end;
    private int shut;

    DoorDay(Problem problem) {
        this.problem = problem;
    }

    /** When the lot at this place of the run goes in. */
    int inAt(int at) {
        return in[at];
    }

    /** When it comes out. */
    int outAt(int at) {
        return out[at];
    }

    /** When the last of them comes out. */
    int end() {
        return end;
    }

    /** Minutes of the run until it is ready to be opened. */
    int shut() {
        return shut;
    }

    /**
     * The earliest time from a minute on, with the change directly before it in time that the oven is in service.
     *
     * @return false if there is none
     */
    boolean fit(Problem.Terms terms, int oven, Batch batch, int free, int change) {
        if (!batch.isSound(problem, oven)) {
            return false;
        }
        grow(batch.size());
        int from = Math.max(free + change, batch.isOpened() ? firstRelease(batch) : batch.release());
        for (int tries = 0; tries < MOST_TRIES && from < Problem.NEVER; tries++) {
            start = attended(from);
            int again = batch.isOpened() ? letInAndOut(terms, oven, batch) : keepShut(terms, batch);
            if (again > 0) {
                from = again;
                continue;
            }
            int clear = afterBlock(terms.blocked(), start - change, end);
            if (clear < 0) {
                return true;
            }
            from = clear >= Problem.NEVER ? Problem.NEVER : Math.max(clear + change, start + 1);
        }
        return false;
    }

    private void grow(int size) {
        if (in.length < size) {
            in = new int[size * 2];
            out = new int[size * 2];
            needs = new int[size * 2];
        }
    }

    private int firstRelease(Batch batch) {
        int first = Problem.NEVER;
        for (int at = 0; at < batch.size(); at++) {
            first = Math.min(first, problem.lots()[batch.lot(at)].release());
        }
        return first;
    }

    /** All in and all out together; a later start to try if they would wait too long for somebody to open. */
    private int keepShut(Problem.Terms terms, Batch batch) {
        shut = terms.shut(batch.least());
        end = attended(start + shut);
        int tooLong = end - start - terms.shut(batch.most());
        if (tooLong > 0) {
            return start + tooLong;
        }
        for (int at = 0; at < batch.size(); at++) {
            in[at] = start;
            out[at] = end;
        }
        return 0;
    }

    /** Lots join when they can and leave when they are done; each opening makes the others longer. */
    private int letInAndOut(Problem.Terms terms, int oven, Batch batch) {
        int left = batch.size();
        for (int at = 0; at < batch.size(); at++) {
            in[at] = Problem.NEVER;
            out[at] = Problem.NEVER;
            int release = problem.lots()[batch.lot(at)].release();
            needs[at] = release <= start ? start : attended(release);
        }
        int moment = start;
        while (left > 0) {
            left -= passDoor(terms, oven, batch, moment);
            int next = Problem.NEVER;
            for (int at = 0; at < batch.size(); at++) {
                boolean isDone = out[at] != Problem.NEVER;
                int event = isDone ? Problem.NEVER : in[at] == Problem.NEVER ? needs[at] : attended(needs[at]);
                next = Math.min(next, event);
            }
            moment = left > 0 ? next : moment;
        }
        end = moment;
        shut = isTogether(batch) ? terms.shut(batch.least()) : end - start;
        return tooLong(terms, oven, batch);
    }

    /** Whether nobody came or left in between. */
    private boolean isTogether(Batch batch) {
        for (int at = 0; at < batch.size(); at++) {
            if (in[at] != start || out[at] != end) {
                return false;
            }
        }
        return true;
    }

    /** One opening: who is due goes in or out, who stays needs longer. Returns how many left. */
    private int passDoor(Problem.Terms terms, int oven, Batch batch, int moment) {
        int leaving = 0;
        for (int at = 0; at < batch.size(); at++) {
            if (out[at] != Problem.NEVER) {
                continue;
            }
            if (in[at] == Problem.NEVER) {
                if (needs[at] == moment) {
                    in[at] = moment;
                    int[][] least = problem.lots()[batch.lot(at)].least();
                    needs[at] = moment + terms.shut(least[oven][batch.temperature()]);
                }
            } else if (needs[at] <= moment) {
                out[at] = moment;
                leaving++;
            } else {
                needs[at] += problem.recovery();
            }
        }
        return leaving;
    }

    private int tooLong(Problem.Terms terms, int oven, Batch batch) {
        for (int at = 0; at < batch.size(); at++) {
            int most = problem.lots()[batch.lot(at)].most()[oven][batch.temperature()];
            int over = out[at] - in[at] - terms.shut(most);
            if (over > 0) {
                return start + over;
            }
        }
        return 0;
    }

    private int attended(int moment) {
        int[] spans = problem.attended();
        for (int i = 0; i < spans.length; i += 2) {
            if (moment <= spans[i + 1]) {
                return Math.max(moment, spans[i]);
            }
        }
        return moment;
    }

    /** End of the first span out of service that touches from..to; below 0 if none does. */
    private static int afterBlock(int[] blocked, int from, int to) {
        for (int i = 0; i < blocked.length; i += 2) {
            if (blocked[i] < to && from < blocked[i + 1]) {
                return blocked[i + 1];
            }
        }
        return Problem.NO;
    }
}
