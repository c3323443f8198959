package bagclock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bad requests: every problem named by its field, so that a misspelt field can't pass silently. */
class RefusedRequestsTest {
    private static String withPart(String fields) {
        return "{\"part\":{" + fields + "},\"at\":\"2026-03-05T00:00:00Z\"}";
    }

    private static String withHistory(String events) {
        return "{\"part\":{\"level\":\"3\"},\"history\":[" + events + "],\"at\":\"2026-03-05T00:00:00Z\"}";
    }

    private static String event(String time, String rest) {
        return "{\"at\":\"2026-03-0" + time + ":00:00Z\",\"event\":" + rest + "}";
    }

    private static void assertProblem(String request, String problem) {
        assertThat(Asked.problems(request)).anySatisfy(said -> assertThat(said).contains(problem));
    }

    /** Unknown fields are refused by name, wherever they stand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"levle\":\"3\",\"at\":\"2026-03-05T00:00:00Z\"} | levle is not a field",
                "{\"part\":{\"thickness\":1},\"at\":\"2026-03-05T00:00:00Z\"} | part.thickness is not a field",
                "{\"climate\":{\"defualt\":1},\"at\":\"2026-03-05T00:00:00Z\"} | climate.defualt is not a field",
                "{\"rules\":{\"gap\":1},\"at\":\"2026-03-05T00:00:00Z\"} | rules.gap is not a field",
                "{\"heat\":{\"at\":\"2026-03-05T00:00:00Z\",\"peakC\":1}} | heat.peakC is not a field",
                "{\"history\":[{\"at\":\"2026-03-01T00:00:00Z\",\"event\":\"wetted\",\"zone\":\"a\"}],"
                        + "\"at\":\"2026-03-05T00:00:00Z\"} | history[0].zone is not a field",
                "{\"part\":{\"ratings\":[{\"level\":\"3\",\"peak\":2}]},\"at\":\"2026-03-05T00:00:00Z\"}"
                        + " | part.ratings[0].peak is not a field",
                "{\"board\":{\"color\":1},\"at\":\"2026-03-05T00:00:00Z\"} | board.color is not a field",
                "{\"board\":{\"parts\":[{\"loc\":1}]},\"at\":\"2026-03-05T00:00:00Z\"} | board.parts[0].loc is not"
            })
    void anUnknownFieldIsRefusedByName(String request, String problem) {
        assertProblem(request, problem);
    }

    /** %RH 0 to 100, C -60 to 500, mm above 0 to 100, hours to 1,000,000, passes and bakes 0 to 1000. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"classificationC\":500.1 | part.classificationC must be a number -60 to 500",
                "\"maxBakeC\":-60.1 | part.maxBakeC must be",
                "\"thicknessMm\":0 | part.thicknessMm must be a number above 0 to 100",
                "\"lengthMm\":100.1 | part.lengthMm must be",
                "\"widthMm\":-1 | part.widthMm must be",
                "\"floorLifeHours\":1000000.1 | part.floorLifeHours must be",
                "\"floorLifeHours\":0 | part.floorLifeHours must be",
                "\"bakedHoursOver90C\":-1 | part.bakedHoursOver90C must be",
                "\"bakes\":1001 | part.bakes must be",
                "\"bakes\":1.5 | part.bakes must be a whole number",
                "\"reflowPasses\":-1 | part.reflowPasses must be",
                "\"maxReflowPasses\":\"3\" | part.maxReflowPasses must be a number",
                "\"level\":\"7\" | part.level is not a word of the contract: \"7\"",
                "\"level\":3 | part.level must be a text",
                "\"body\":\"unknown\" | part.body is not a word",
                "\"leadFree\":\"yes\" | part.leadFree must be true or false",
                "\"carrierMaxC\":\"tray\" | part.carrierMaxC is not a word",
                "\"carrierMaxC\":501 | part.carrierMaxC must be",
                "\"makerBakes\":5 | part.makerBakes must be a list",
                "\"makerBakes\":[5] | part.makerBakes[0] must be an object",
                "\"makerBakes\":[{\"hours\":5}] | part.makerBakes[0].temperatureC is required",
                "\"makerBakes\":[{\"temperatureC\":125}] | part.makerBakes[0].hours is required",
                "\"makerBakes\":[{\"temperatureC\":125,\"hours\":0}] | part.makerBakes[0].hours must be",
                "\"floorLifeTable\":[{\"temperatureC\":30,\"rhPercent\":101,\"hours\":1}] | rhPercent must be",
                "\"floorLifeTable\":[{\"temperatureC\":30,\"rhPercent\":60}] | floorLifeTable[0].hours is required",
                "\"level\":\"3\",\"ratings\":[{\"level\":\"3\",\"peakC\":260}] | part.ratings cannot stand beside",
                "\"classificationC\":260,\"ratings\":[{\"level\":\"3\",\"peakC\":260}] | cannot stand beside"
            })
    void whatIsOutOfRangeIsRefused(String field, String problem) {
        assertProblem(withPart(field), problem);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"at\":\"2026-03-05T00:00:00\" | at must be an ISO 8601 time with offset",
                "\"at\":\"2026-02-30T00:00:00Z\" | at must be an ISO 8601 time",
                "\"at\":\"1899-12-31T00:00:00Z\" | at must lie between",
                "\"at\":\"3000-01-01T00:00:00Z\" | at must lie between",
                "\"at\":5 | at must be a text",
                "\"part\":{} | at is required",
                "\"heat\":{\"minutes\":5} | heat.at is required",
                "\"heat\":{\"at\":\"2026-03-05T00:00:00Z\"},\"at\":\"2026-03-05T00:00:01Z\" | at must equal heat.at",
                "\"heat\":{\"at\":\"2026-03-05T00:00:00Z\",\"minutes\":-1} | heat.minutes must be",
                "\"heat\":{\"at\":\"2026-03-05T00:00:00Z\",\"purpose\":\"rework\"} | heat.purpose is not a word",
                "\"rules\":{\"excursionMinutes\":61},\"at\":\"2026-03-05T00:00:00Z\" | rules.excursionMinutes must be",
                "\"climate\":{\"default\":{\"temperatureC\":25,\"rhPercent\":-1}},\"at\":\"2026-03-05T00:00:00Z\""
                        + " | climate.default.rhPercent must be"
            })
    void timesPlansAndRulesAreChecked(String fields, String problem) {
        assertProblem("{" + fields + "}", problem);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"zone\":\"a\",\"at\":\"2026-03-01T00:00:00Z\",\"temperatureC\":20} | rhPercent is required",
                "{\"at\":\"2026-03-01T00:00:00Z\",\"temperatureC\":20,\"rhPercent\":50} | zone is required",
                "{\"zone\":\"a\",\"temperatureC\":20,\"rhPercent\":50} | at is required",
                "{\"zone\":\"a\",\"at\":\"2026-03-01T00:00:00Z\",\"rhPercent\":50} | temperatureC is required",
                "{\"zone\":\"a\",\"at\":\"2026-03-01T00:00:00Z\",\"temperatureC\":20,\"dewPointC\":21}"
                        + " | dewPointC must not lie above",
                "{\"zone\":\"a\",\"at\":\"2026-03-01T00:00:00Z\",\"temperatureC\":20,\"dewPointC\":9,\"rhPercent\":50}"
                        + " | dewPointC cannot stand beside",
                "{\"zone\":\"a\",\"at\":\"2026-03-02T00:00:00Z\",\"temperatureC\":20,\"rhPercent\":50},"
                        + "{\"zone\":\"a\",\"at\":\"2026-03-01T00:00:00Z\",\"temperatureC\":20,\"rhPercent\":50}"
                        + " | climate.readings[1].at must be later",
                "{\"zone\":\"a\",\"at\":\"2026-03-02T00:00:00Z\",\"temperatureC\":20,\"rhPercent\":50},"
                        + "{\"zone\":\"a\",\"at\":\"2026-03-02T00:00:00Z\",\"temperatureC\":20,\"rhPercent\":50}"
                        + " | climate.readings[1].at must be later"
            })
    void readingsAreChecked(String readings, String problem) {
        assertProblem("{\"climate\":{\"readings\":[" + readings + "]},\"at\":\"2026-03-05T00:00:00Z\"}", problem);
    }

    @Test
    void readingsOfTwoZonesNeedNotAscendTogether() {
        String readings = """
                {"zone":"a","at":"2026-03-02T00:00:00Z","temperatureC":20,"rhPercent":50},
                {"zone":"b","at":"2026-03-01T00:00:00Z","temperatureC":20,"rhPercent":50}""";

        assertThat(Asked.answer("{\"climate\":{\"readings\":[" + readings + "]},\"at\":\"2026-03-05T00:00:00Z\"}")
                        .get("verdict")
                        .asText())
                .isEqualTo("hold");
    }

    @Test
    void aHistoryThatCannotBeIsRefused() {
        String floor = event("2T00", "\"to-floor\"");
        assertProblem(withHistory(floor + "," + event("1T00", "\"to-floor\"")), "history: ");
        assertProblem(withHistory(event("6T00", "\"to-floor\"")), "later than the moment");
        assertProblem(withHistory(event("1T00", "\"sealed\"") + "," + floor), "bag is closed");
        assertProblem(withHistory(floor + "," + event("3T00", "\"opened\"")), "no bag is closed");
        assertProblem(withHistory(floor + "," + event("3T00", "\"bake-ended\"")), "no bake has begun");
        assertProblem(withHistory(floor + "," + event("3T00", "\"sealed\"")), "resealed");
        String started = event("3T00", "\"bake-started\",\"temperatureC\":125");
        assertProblem(withHistory(floor + "," + started + "," + event("4T00", "\"to-floor\"")), "in an oven");
        assertProblem(
                withHistory(floor + "," + started + "," + event("3T05", "\"bake-ended\",\"hoursAtTemperature\":5.1")),
                "more than the stay");
        assertProblem(withHistory(event("1T00", "\"bake-started\"")), "history[0].temperatureC is required");
        assertProblem(withHistory(event("1T00", "\"baked\"")), "history[0].event is not an event of the contract");
        assertProblem(withHistory("{\"at\":\"2026-03-01T00:00:00Z\"}"), "history[0].event is required");
        assertProblem(withHistory("{\"event\":\"wetted\"}"), "history[0].at is required");
    }

    /** Sealed straight after a bake that counted for none of the ratings. */
    @Test
    void sealingAfterABakeThatDidNotCountIsRefused() {
        String history = event("1T00", "\"to-floor\"") + "," + event("2T00", "\"bake-started\",\"temperatureC\":125")
                + "," + event("2T10", "\"bake-ended\",\"hoursAtTemperature\":1") + "," + event("2T11", "\"sealed\"");

        assertProblem(
                withHistory(history)
                        .replace("\"level\":\"3\"", "\"level\":\"3\",\"thicknessMm\":1.2,\"body\":\"leaded\""),
                "sealed");
    }

    @Test
    void cardsAreChecked() {
        String opened = "\"opened\",\"bag\":\"sound\",\"card\":";
        assertProblem(withHistory(event("1T00", opened + "{\"10\":\"blue\"}")), "card.10 is not a word");
        assertProblem(
                withHistory(event("1T00", opened + "{\"ten\":\"dry\"}")), "card.ten is not the humidity of a spot");
        assertProblem(withHistory(event("1T00", opened + "{\"101\":\"dry\"}")), "card.101 is not the humidity");
        assertProblem(withHistory(event("1T00", opened + "\"dry\"")), "history[0].card must be an object");
        assertProblem(withHistory(event("1T00", "\"opened\",\"bag\":\"torn\"")), "history[0].bag is not a word");
        assertProblem(
                withHistory(event("2T00", "\"opened\",\"cardReadAt\":\"2026-03-01T00:00:00Z\"")),
                "before the bag was opened");
        assertProblem(
                withHistory(event("2T00", "\"opened\",\"cardReadAt\":\"2026-03-06T00:00:00Z\"")),
                "later than the moment");
    }

    @Test
    void aBoardStandsInPlaceOfPartAndHistory() {
        assertProblem("{\"board\":{},\"part\":{},\"at\":\"2026-03-05T00:00:00Z\"}", "board cannot stand beside");
        assertProblem(
                "{\"board\":{\"history\":[" + event("1T00", "\"wetted\"") + "]},\"at\":\"2026-03-05T00:00:00Z\"}",
                "board.history holds bakes of the board only");
        assertProblem(
                "{\"board\":{\"parts\":[{\"fate\":\"gone\"}]},\"at\":\"2026-03-05T00:00:00Z\"}",
                "board.parts[0].fate is not a word");
        assertProblem(
                "{\"board\":{\"ownBake\":{\"temperatureC\":125}},\"at\":\"2026-03-05T00:00:00Z\"}",
                "board.ownBake.hours is required");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5", "\"text\"", "null", "true"})
    void whatIsNeitherObjectNorArrayIsRefused(String request) {
        assertThat(Asked.problems(request)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "{\"at\":}", "{\"at\":\"2026-03-05T00:00:00Z\"} {}", "{\"at\":1,\"at\":2}"})
    void whatIsNotJsonIsRefused(String request) {
        assertProblem(request, "not JSON");
    }

    /** In an array the place of the bad request is named, and none is answered. */
    @Test
    void inAnArrayTheBadRequestIsNamed() {
        String good = "{\"at\":\"2026-03-05T00:00:00Z\"}";

        assertThat(Asked.problems("[" + good + ",{\"at\":1},7]"))
                .anySatisfy(said -> assertThat(said).startsWith("[1] at"))
                .anySatisfy(said -> assertThat(said).startsWith("[2] "))
                .noneSatisfy(said -> assertThat(said).startsWith("[0]"));
    }

    @Test
    void everyProblemIsSaidAtOnce() {
        assertThat(Asked.problems("{\"part\":{\"level\":\"9\",\"thicknessMm\":0,\"x\":1}}"))
                .hasSize(4);
    }
}
