package bagclock.ledger;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Writes the text of an entry, and hashes it after the hash before it. */
final class Chain {
    /** Stands before the first entry of an item. */
    static final String START = "0".repeat(64);

    private static final ObjectMapper JSON = JsonMapper.builder().build();
    private static final int FORMAT = 1;

    private Chain() {}

    static String payload(Draft draft, int seq, Stamp stamp) {
        ObjectNode json = JSON.createObjectNode();
        json.put("format", FORMAT)
                .put("tag", draft.tag())
                .put("seq", seq)
                .put("happenedAt", draft.happenedAt().toString())
                .put("recordedAt", stamp.recordedAt().toString())
                .put("who", stamp.who())
                .put("key", stamp.key());
        draft.corrects().ifPresent(corrected -> json.put("corrects", corrected));
        json.put("act", draft.act().word());
        ActJson.write(draft.act(), json.putObject("told"));
        return json.toString();
    }

    static JsonNode read(String payload) {
        try {
            return JSON.readTree(payload);
        } catch (JsonProcessingException failure) {
            throw new IllegalStateException("an entry can't be read: " + payload, failure);
        }
    }

    static Act act(JsonNode payload) {
        return ActJson.read(payload.path("act").asText(), payload.path("told"));
    }

    /** SHA-256 of the previous hash and the payload, in hexadecimal. */
    static String hash(String previousHash, String payload) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(previousHash.getBytes(StandardCharsets.US_ASCII));
            return HexFormat.of().formatHex(digest.digest(payload.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
