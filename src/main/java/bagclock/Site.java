package bagclock;

import bagclock.assess.AssessRoutes;
import bagclock.bench.BenchRoutes;
import bagclock.boards.BoardsRoutes;
import bagclock.climate.ClimateRoutes;
import bagclock.climate.SensorRoutes;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.demo.HarrowQuay;
import bagclock.demo.OvenRuns;
import bagclock.demo.Wanted;
import bagclock.desk.Desk;
import bagclock.labels.LabelRoutes;
import bagclock.ovens.OvensRoutes;
import bagclock.ovens.ToldNeed;
import bagclock.ovens.ToldRun;
import bagclock.parts.PartsRoutes;
import bagclock.people.AccountRoutes;
import bagclock.people.Accounts;
import bagclock.people.PeopleRoutes;
import bagclock.people.SignInRoutes;
import bagclock.people.SignIns;
import bagclock.platform.Database;
import bagclock.platform.ErrorPages;
import bagclock.platform.Gate;
import bagclock.platform.Live;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.SecurityHeaders;
import bagclock.platform.Settings;
import bagclock.platform.Texts;
import bagclock.stock.StockRoutes;
import bagclock.tables.TablesRoutes;
import bagclock.wall.WallRoutes;
import bagclock.whatif.WhatIfRoutes;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.staticfiles.Location;
import io.javalin.json.JavalinJackson;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** One running site: database, pages and web server, wired by constructors. Closing it ends all of them. */
public final class Site implements AutoCloseable {
    private static final long LARGEST_REQUEST_BYTES = 20_000_000;

    private final Database database;
    private final Live live;
    private final Desk desk;
    private final Optional<String> firstStartCode;
    private final OvensRoutes ovens;
    private final Javalin server;

    private Site(Settings settings, Optional<Tls> tls, Clock clock) {
        this.database = Database.open(settings.databaseUrl());
        this.live = new Live(database, clock);
        Messages messages = Messages.load();
        Pages pages = new Pages(settings, messages);
        Texts texts = new Texts(settings.siteZone(), messages);
        Accounts accounts = new Accounts(database);
        SignIns signIns = new SignIns(database);
        if (settings.demo()) {
            accounts.addDemoPeople(messages, clock.instant());
        }
        this.firstStartCode = accounts.firstStartCode();
        Standard shipped = Standard.load(Edition.J_STD_033D);
        this.desk = new Desk(database, shipped, live::tell);
        this.ovens = new OvensRoutes(new OvensRoutes.Rooms(database, live), desk, pages, texts, clock);
        List<Consumer<RoutesConfig>> routes = List.of(
                SecurityHeaders::register,
                new Gate(signIns, messages, clock)::register,
                new ErrorPages(pages, messages)::register,
                live::register,
                new AssessRoutes(AssessCommand.contract(() -> desk.standard(clock.instant())), settings, messages)
                        ::register,
                new SignInRoutes(accounts, signIns, pages, messages, new SignInRoutes.Site(settings, clock))::register,
                new AccountRoutes(accounts, signIns, pages, messages, clock)::register,
                new SensorRoutes(database, desk, pages, texts, clock)::register,
                new PeopleRoutes(accounts, pages, messages, texts, clock)::register);
        List<Consumer<RoutesConfig>> features = features(pages, texts, shipped, clock);
        this.server = Javalin.create(config -> {
            configure(config, Stream.concat(routes.stream(), features.stream()).toList());
            tls.ifPresent(own -> config.jetty.addConnector(
                    (jetty, http) -> own.connector(jetty, http, settings.address(), settings.port())));
        });
    }

    private List<Consumer<RoutesConfig>> features(Pages pages, Texts texts, Standard shipped, Clock clock) {
        return List.of(
                new BenchRoutes(desk, new Names(database), pages, texts, clock)::register,
                new BoardsRoutes(database, desk, pages, texts, clock)::register,
                new ClimateRoutes(database, desk, pages, texts, clock)::register,
                new StockRoutes(database, desk, pages, texts, clock)::register,
                new WhatIfRoutes(database, desk, pages, texts, clock)::register,
                new LabelRoutes(database, desk, pages, texts, clock)::register,
                new WallRoutes(database, desk, pages, texts, clock)::register,
                new TablesRoutes(database, shipped, desk, pages, new TablesRoutes.SiteWords(texts, clock))::register,
                new PartsRoutes(database, desk, pages, texts, clock)::register,
                ovens::register);
    }

    /** Opens the database, brings its schema up to date and listens. Port 0 takes any free one. */
    public static Site start(Settings settings, Clock clock) {
        return start(settings, Optional.empty(), clock);
    }

    /** As {@link #start(Settings, Clock)}; with a certificate over TLS only. */
    public static Site start(Settings settings, Optional<Tls> tls, Clock clock) {
        return listening(new Site(settings, tls, clock), settings, tls.isPresent());
    }

    /** As {@link #start}, with the invented shop of the demonstration in it. */
    public static Site demo(Settings settings, Clock clock) {
        Site site = new Site(settings, Optional.empty(), clock);
        Instant now = clock.instant();
        HarrowQuay.open(site.desk, now);
        site.ovens.keep(
                OvenRuns.at(now).stream()
                        .map(run -> new ToldRun(
                                run.tags(),
                                run.who(),
                                run.chart().map(text -> new ToldRun.ChartText("tall-oven.csv", text))))
                        .toList(),
                now);
        site.ovens.keepNeeds(
                Wanted.at(now).stream()
                        .map(wanted -> new ToldNeed(wanted.tag(), wanted.by(), wanted.weight()))
                        .toList(),
                Wanted.TOLD_BY,
                now);
        site.ovens.publishFirst(OvenRuns.PLANNED_BY, now);
        return listening(site, settings, false);
    }

    private static Site listening(Site site, Settings settings, boolean isSecure) {
        try {
            if (isSecure) {
                site.server.start();
            } else {
                site.server.start(settings.address(), settings.port());
            }
        } catch (RuntimeException failure) {
            site.close();
            throw failure;
        }
        return site;
    }

    /** The port it listens on. */
    public int port() {
        return server.port();
    }

    /** The one-time code for the first account, as long as nobody has one. */
    public Optional<String> firstStartCode() {
        return firstStartCode;
    }

    @Override
    public void close() {
        live.close();
        ovens.close();
        server.stop();
        database.close();
    }

    private static void configure(JavalinConfig config, List<Consumer<RoutesConfig>> routes) {
        config.startup.showJavalinBanner = false;
        config.http.maxRequestSize = LARGEST_REQUEST_BYTES;
        config.jsonMapper(new JavalinJackson(JsonMapper.builder().build(), false));
        config.staticFiles.add(files -> {
            files.hostedPath = "/public";
            files.directory = "/public";
            files.location = Location.CLASSPATH;
            files.headers = Map.of("Cache-Control", "no-cache", "Service-Worker-Allowed", "/");
        });
        routes.forEach(feature -> feature.accept(config.routes));
    }
}
