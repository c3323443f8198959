package bagclock.demo;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.ClockState;
import bagclock.core.heat.Answer;
import bagclock.core.heat.FindingCode;
import bagclock.core.heat.Verdict;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Level;
import bagclock.core.standard.Standard;
import bagclock.desk.Desk;
import bagclock.desk.ItemQuery;
import bagclock.desk.ItemRow;
import bagclock.ledger.Item;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demonstration shows everything that a visitor should be able to see. */
class HarrowQuayTest {
    private static final Instant NOW = Instant.parse("2026-03-12T14:20:31.123456789Z");

    private static Database database;
    private static Desk desk;
    private static List<ItemRow> items;
    private static List<Answer> answers;

    @BeforeAll
    static void open() {
        database = Engine.H2.fresh();
        desk = new Desk(database, Standard.load(Edition.J_STD_033D), (tx, topic) -> {});
        HarrowQuay.open(desk, NOW);
        items = desk.items(ItemQuery.OPEN.page(0, 500), NOW).rows();
        answers = new ArrayList<>();
        for (ItemRow row : items) {
            answers.add(desk.mayHeat(row.item().tag(), Optional.empty(), NOW));
        }
    }

    @AfterAll
    static void close() {
        database.close();
    }

    @Test
    void everyVerdictOccurs() {
        assertThat(answers).extracting(Answer::verdict).contains(Verdict.values());
    }

    @Test
    void everyClockStateOccurs() {
        assertThat(answers).extracting(Answer::clock).contains(ClockState.values());
    }

    @Test
    void everyLevelOccursAndAnUnknownOne() {
        List<String> levels = Stream.concat(
                        Stream.of(""), Arrays.stream(Level.values()).map(Level::code))
                .toList();

        assertThat(items).extracting(ItemRow::level).containsAll(levels);
    }

    /** The rows of the list are worked out from running sums, the answers by replay; both end lives at one time. */
    @Test
    void theListAgreesWithTheAnswers() {
        for (int i = 0; i < items.size(); i++) {
            Optional<Instant> byAnswer = answers.get(i).floorLife().endsAt();
            boolean hasRow = byAnswer.isPresent() && items.get(i).clock() == ClockState.RUNNING;
            if (hasRow && !answers.get(i).has(FindingCode.INSIDE_LABEL_TIME)) {
                assertThat(items.get(i).endsAt()).as(items.get(i).item().tag()).isEqualTo(byAnswer);
            }
        }
    }

    @Test
    void itemsAreInEveryKindOfPlace() {
        assertThat(items)
                .extracting(row -> row.item().where())
                .contains(Item.Where.BAG, Item.Where.FLOOR, Item.Where.CABINET, Item.Where.OVEN, Item.Where.BOARD);
    }

    @Test
    void theTellingReasonsOccur() {
        assertThat(answers.stream().flatMap(answer -> answer.reasons().stream()).map(reason -> reason.code()))
                .contains(
                        FindingCode.LEVEL_UNKNOWN,
                        FindingCode.BAG_SEALED,
                        FindingCode.SHELF_LIFE_PASSED,
                        FindingCode.BODY_NOT_MEASURED,
                        FindingCode.BODY_WITHOUT_BAKE_ROW,
                        FindingCode.NO_BAKE_ALLOWED,
                        FindingCode.FLOOR_LIFE_USED,
                        FindingCode.EXPOSURE_UNKNOWN,
                        FindingCode.PART_WETTED,
                        FindingCode.BAG_DAMAGED,
                        FindingCode.CARD_WET,
                        FindingCode.LEVEL_6_BAKE_FIRST,
                        FindingCode.IN_OVEN,
                        FindingCode.BAKE_END_NOT_RECORDED,
                        FindingCode.DRY_REST,
                        FindingCode.AIR_DECLARED,
                        FindingCode.INSIDE_LABEL_TIME);
    }
}
