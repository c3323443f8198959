package bagclock.desk;

import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.Finding;
import bagclock.core.heat.StepCode;
import bagclock.core.heat.Verdict;
import bagclock.core.standard.Citation;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** An answer that was acted on, as it is kept: codes and values, no words. */
final class AnswerText {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private AnswerText() {}

    static String of(Answer answer) {
        ObjectNode json = JSON.createObjectNode();
        json.put("verdict", answer.verdict().code());
        answer.until().ifPresent(until -> json.put("until", until.toString()));
        json.put("clock", answer.clock().code());
        json.put("usedHours", answer.floorLife().usedHours().toPlainString());
        answer.floorLife().totalHours().ifPresent(total -> json.put("totalHours", total.toPlainString()));
        answer.floorLife().endsAt().ifPresent(end -> json.put("endsAt", end.toString()));
        ArrayNode reasons = json.putArray("reasons");
        answer.reasons().forEach(finding -> write(finding, reasons.addObject()));
        if (answer.verdict() == Verdict.BAKE) {
            ArrayNode bakes = json.putArray("bakes");
            answer.bakes().stream()
                    .filter(BakeOffer::isAllowed)
                    .map(offer -> source(offer.citation()))
                    .forEach(bakes::add);
        }
        ArrayNode next = json.putArray("next");
        answer.next().stream().map(StepCode::name).forEach(next::add);
        return json.toString();
    }

    private static void write(Finding finding, ObjectNode json) {
        json.put("code", finding.code().name());
        ArrayNode parts = json.putArray("parts");
        finding.parts().forEach(part -> parts.add(KeptAnswer.written(part)));
        finding.citation()
                .ifPresent(cell -> json.put("source", source(cell))
                        .put("status", cell.status().name()));
    }

    /** Names a cell as kept answers do. */
    static String source(Citation cell) {
        return cell.document() + ", " + cell.table() + ", " + cell.row() + ", " + cell.column();
    }
}
