package bagclock.desk;

import bagclock.core.heat.BoardAnswer;
import bagclock.core.heat.BoardQuestion;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;

/**
 * The answer about a board, with what it was worked out from.
 *
 * @param notices what was missing
 * @param items tags of the items, by location
 * @param sources of the parts without an item, by location; none where what was told of it can't all be true
 * @param versions of every fact, by its name
 * @param readings of each zone that counted: code, number of readings, the last one's time
 * @param sha256 over everything that the answer rests on, in hexadecimal
 */
public record BoardReply(
        BoardAnswer answer,
        BoardQuestion question,
        Set<BoardNotice> notices,
        Map<String, String> items,
        Map<String, BoardSource> sources,
        SortedMap<String, Integer> versions,
        List<String> readings,
        String sha256) {}
