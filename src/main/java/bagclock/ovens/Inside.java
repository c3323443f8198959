package bagclock.ovens;

import java.util.List;

/**
 * What is in the ovens.
 *
 * @param boards those on which no part has an item
 */
record Inside(List<Load> loads, List<BoardIn> boards) {
    Inside {
        loads = List.copyOf(loads);
        boards = List.copyOf(boards);
    }

    List<Load> loadsOf(String oven) {
        return loads.stream().filter(load -> load.oven().code().equals(oven)).toList();
    }

    List<BoardIn> boardsOf(String oven) {
        return boards.stream().filter(board -> board.oven().equals(oven)).toList();
    }

    /** Positions that are taken in an oven: one by each item, and by each board without one. */
    int taken(String oven) {
        return loadsOf(oven).stream().mapToInt(load -> load.items().size()).sum()
                + boardsOf(oven).size();
    }
}
