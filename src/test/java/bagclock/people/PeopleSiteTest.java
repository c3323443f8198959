package bagclock.people;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import bagclock.platform.Settings;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PeopleSiteTest {
    private static final String PASSWORD = "tide gauge and teapot";

    private static Site demo;

    @BeforeAll
    static void start() {
        demo = start(true);
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    private static Site start(boolean isDemo) {
        Settings settings = new Settings(
                "localhost", 0, Path.of("target"), Engine.H2.freshUrl(), ZoneId.of("Europe/Berlin"), isDemo);
        return Site.start(settings, Clock.systemUTC());
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, mode = EnumSource.Mode.EXCLUDE, names = "ANYONE")
    void oneClickSignsInAndThePageSaysThatItIsADemonstration(Role role) {
        Visitor visitor = Visitor.ofDemo(demo.port(), role);

        assertThat(visitor.get("/").statusCode()).isEqualTo(303);
        assertThat(visitor.page("/no-such-page").text()).contains("Demonstration", "Sign out");
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"ANYONE", "ADMINISTRATOR"})
    void onlyAnAdministratorSeesThePeople(Role role) {
        HttpResponse<String> answer = Visitor.ofDemo(demo.port(), role).get("/people");

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).doesNotContain("demo-planner");
    }

    @Test
    void theFirstStartMakesAnAdministratorAndRealSitesHaveNoOneClick() {
        try (Site site = start(false)) {
            Visitor visitor = new Visitor(site.port());
            String code = site.firstStartCode().orElseThrow();
            assertThat(visitor.page("/sign-in").select("a[href=/first-start]")).hasSize(1);

            HttpResponse<String> refused = visitor.submit(
                    "/first-start",
                    "/first-start",
                    "code",
                    code,
                    "display",
                    "",
                    "signInName",
                    "X Y",
                    "password",
                    "short");
            Document page = Jsoup.parse(refused.body());
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(page.select("[aria-invalid=true]").eachAttr("name"))
                    .containsExactly("display", "signInName", "password");
            assertThat(page.select("input[name=code]").val()).isEqualTo(code);
            assertThat(page.select("input[name=password]").val()).isEmpty();

            HttpResponse<String> made = visitor.submit(
                    "/first-start",
                    "/first-start",
                    "code",
                    code,
                    "display",
                    "First",
                    "signInName",
                    "First",
                    "password",
                    PASSWORD);
            assertThat(made.statusCode()).isEqualTo(303);
            assertThat(visitor.get("/people").statusCode()).isEqualTo(200);
            assertThat(visitor.get("/first-start").statusCode()).isEqualTo(404);
            assertThat(new Visitor(site.port())
                            .submit("/sign-in", "/sign-in", "name", "first", "password", PASSWORD)
                            .statusCode())
                    .isEqualTo(303);
            Visitor stranger = new Visitor(site.port());
            String token = stranger.page("/sign-in").select("input[name=csrf]").val();
            assertThat(stranger.post("/sign-in/demo", "csrf", token, "role", "CLERK")
                            .statusCode())
                    .isEqualTo(404);
        }
    }

    @Test
    void anAdministratorAddsSomeoneWhoThenSignsIn() {
        Visitor administrator = Visitor.ofDemo(demo.port(), Role.ADMINISTRATOR);

        HttpResponse<String> added = administrator.submit(
                "/people/new",
                "/people",
                "display",
                "Bench <two>",
                "signInName",
                "bench.two",
                "roles",
                "TECHNICIAN",
                "roles",
                "CLERK",
                "password",
                PASSWORD);
        String path = Visitor.target(added);
        assertThat(path).matches("/people/[0-9a-f-]{36}\\?done=added");
        Document page = administrator.page(path);
        assertThat(page.select("h1").text()).isEqualTo("Bench <two>");
        assertThat(page.select("[role=status]").text()).contains("was added");
        assertThat(page.select("input[name=roles][checked]").eachAttr("value")).containsExactly("CLERK", "TECHNICIAN");

        String person = path.replaceAll("\\?.*", "");
        HttpResponse<String> badge = administrator.submit(person, person + "/badge", "badge", "HQ-0042", "pin", "4711");
        assertThat(Visitor.target(badge)).endsWith("?done=badge");
        HttpResponse<String> retired = administrator.submit(person, person + "/retire");
        assertThat(Visitor.target(retired)).endsWith("?done=retired");
        assertThat(administrator.page("/people").text()).contains("retired since");
    }

    @Test
    void aTakenNameIsRefusedBesideItsFieldAndNothingElseIsLost() {
        HttpResponse<String> answer = Visitor.ofDemo(demo.port(), Role.ADMINISTRATOR)
                .submit(
                        "/people/new",
                        "/people",
                        "display",
                        "Copy",
                        "signInName",
                        "demo-clerk",
                        "roles",
                        "PLANNER",
                        "password",
                        PASSWORD);
        Document page = Jsoup.parse(answer.body());

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(page.select("#signInName-error").text()).contains("Another person");
        assertThat(page.select("#signInName").attr("aria-describedby")).contains("signInName-error");
        assertThat(page.select("#display").val()).isEqualTo("Copy");
        assertThat(page.select("input[value=PLANNER][checked]")).hasSize(1);
    }

    @Test
    void afterSignInThePageThatWasWantedIsShown() {
        Visitor visitor = new Visitor(demo.port());
        String signIn = Visitor.target(visitor.get("/people?a=b"));

        assertThat(signIn).isEqualTo("/sign-in?next=%2Fpeople%3Fa%3Db");
        HttpResponse<String> entered = visitor.submit(signIn, "/sign-in/demo", "role", "ADMINISTRATOR");
        assertThat(Visitor.target(entered)).isEqualTo("/people?a=b");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"//elsewhere.example/", "/\\elsewhere.example", "https://elsewhere.example/", "javascript:x"})
    void signInLeadsToNoOtherSite(String next) {
        Visitor visitor = new Visitor(demo.port());
        String token = visitor.page("/sign-in").select("input[name=csrf]").val();

        HttpResponse<String> entered = visitor.post("/sign-in/demo", "csrf", token, "role", "CLERK", "next", next);

        assertThat(Visitor.target(entered)).isEqualTo("/");
    }

    @Test
    void signingOutEndsTheSessionEvenForWhoKeptTheCookie() {
        Visitor visitor = Visitor.ofDemo(demo.port(), Role.ADMINISTRATOR);
        assertThat(visitor.get("/people").statusCode()).isEqualTo(200);

        visitor.submit("/people", "/sign-out");

        assertThat(Visitor.target(visitor.get("/people"))).startsWith("/sign-in");
    }

    @Test
    void aRefusedSignInKeepsTheNameAndSaysWhatToDo() {
        try (Site site = start(false)) {
            Visitor visitor = new Visitor(site.port());
            String code = site.firstStartCode().orElseThrow();
            visitor.submit(
                    "/first-start",
                    "/first-start",
                    "code",
                    code,
                    "display",
                    "A",
                    "signInName",
                    "aa",
                    "password",
                    PASSWORD);
            Visitor other = new Visitor(site.port());

            HttpResponse<String> refused = other.submit("/sign-in", "/sign-in", "name", "aa", "password", "wrong");
            Document page = Jsoup.parse(refused.body());

            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(page.select("[role=alert]").text()).contains("don't belong together");
            assertThat(page.select("#name").val()).isEqualTo("aa");
        }
    }

    @Test
    void aPersonChangesTheOwnPasswordAndOtherSessionsEnd() {
        try (Site site = start(false)) {
            Visitor visitor = new Visitor(site.port());
            String code = site.firstStartCode().orElseThrow();
            visitor.submit(
                    "/first-start",
                    "/first-start",
                    "code",
                    code,
                    "display",
                    "A",
                    "signInName",
                    "aa",
                    "password",
                    PASSWORD);
            Visitor elsewhere = new Visitor(site.port());
            elsewhere.submit("/sign-in", "/sign-in", "name", "aa", "password", PASSWORD);

            HttpResponse<String> wrong =
                    visitor.submit("/account", "/account", "current", "no", "password", "another long password");
            assertThat(Jsoup.parse(wrong.body()).select("#current-error")).hasSize(1);
            visitor.submit("/account", "/account", "current", PASSWORD, "password", "another long password");

            assertThat(visitor.get("/people").statusCode()).isEqualTo(200);
            assertThat(elsewhere.get("/people").statusCode()).isEqualTo(303);
        }
    }
}
