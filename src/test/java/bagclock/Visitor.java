package bagclock;

import bagclock.platform.Role;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A visitor without a script: keeps cookies, follows nothing by itself, and sends a form with its hidden fields. */
public final class Visitor {
    private final String root;
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    /** A visitor of the site at this port who has not signed in. */
    public Visitor(int port) {
        this.root = "http://localhost:" + port;
    }

    /** A visitor of the demonstration who has signed in with one click. */
    public static Visitor ofDemo(int port, Role role) {
        Visitor visitor = new Visitor(port);
        visitor.submit("/sign-in", "/sign-in/demo", "role", role.name());
        return visitor;
    }

    /** Fetches a page with the given headers, names and values in turn. */
    public HttpResponse<String> get(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(root + path));
        return send(headers.length == 0 ? request : request.headers(headers));
    }

    /** Fetches a file. */
    public HttpResponse<byte[]> file(String path) {
        try {
            return client.send(HttpRequest.newBuilder(URI.create(root + path)).build(), BodyHandlers.ofByteArray());
        } catch (IOException | InterruptedException failure) {
            throw new AssertionError(failure);
        }
    }

    /** The page as a document. */
    public Document page(String path) {
        return Jsoup.parse(get(path).body(), root + path);
    }

    /** Fills the form with this action on a page and sends it: names and values in turn. */
    public HttpResponse<String> submit(String path, String action, String... filled) {
        Element form =
                page(path).selectFirst("form[action=" + action + "], form:has(button[formaction=" + action + "])");
        if (form == null) {
            throw new AssertionError(path + " has no form for " + action);
        }
        List<String> fields = new ArrayList<>();
        for (Element hidden : form.select("input[type=hidden]")) {
            fields.add(hidden.attr("name"));
            fields.add(hidden.attr("value"));
        }
        fields.addAll(List.of(filled));
        return post(action, fields.toArray(String[]::new));
    }

    /** Sends these fields and nothing else: names and values in turn. */
    public HttpResponse<String> post(String path, String... fields) {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < fields.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(fields[i])
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return send(HttpRequest.newBuilder(URI.create(root + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body.toString())));
    }

    /** A file in a form. */
    public record FilePart(String field, String name, String content) {}

    /** Sends the form at this address with a file: names and values of the other fields in turn. */
    public HttpResponse<String> upload(String path, FilePart file, String... fields) {
        return uploadFrom(path, path, file, fields);
    }

    /** Sends a form that stands on another page. */
    public HttpResponse<String> uploadFrom(String page, String path, FilePart file, String... fields) {
        return uploadFrom(page, path, List.of(file), fields);
    }

    /** Sends a form that stands on another page, with files. */
    public HttpResponse<String> uploadFrom(String page, String path, List<FilePart> files, String... fields) {
        String boundary = "part-of-a-form";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        Element token = page(page).selectFirst("main input[name=csrf]");
        part(body, boundary, "name=\"csrf\"", token == null ? "" : token.val());
        for (int i = 0; i < fields.length; i += 2) {
            part(body, boundary, "name=\"" + fields[i] + "\"", fields[i + 1]);
        }
        files.forEach(file -> part(
                body, boundary, "name=\"" + file.field() + "\"; filename=\"" + file.name() + "\"", file.content()));
        body.writeBytes(("--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return send(HttpRequest.newBuilder(URI.create(root + path))
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(BodyPublishers.ofByteArray(body.toByteArray())));
    }

    private static void part(ByteArrayOutputStream body, String boundary, String what, String content) {
        String head = "--" + boundary + "\r\nContent-Disposition: form-data; " + what + "\r\n\r\n";
        body.writeBytes(head.getBytes(StandardCharsets.UTF_8));
        body.writeBytes(content.getBytes(StandardCharsets.UTF_8));
        body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
    }

    /** Sends a call of the API with a token of its own. */
    public HttpResponse<String> call(String path, String token, String json) {
        return send(HttpRequest.newBuilder(URI.create(root + path))
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(json)));
    }

    /** Where an answer sends the visitor; empty when it doesn't. */
    public static String target(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException failure) {
            throw new AssertionError(failure);
        }
    }
}
