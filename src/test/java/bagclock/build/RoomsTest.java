package bagclock.build;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.NullMarked;

/** The walls between the rooms, as DEVELOPERS.md lists them. */
@AnalyzeClasses(packages = "bagclock", importOptions = DoNotIncludeTests.class)
class RoomsTest {
    private static final String TEMPLATES = "bagclock.templates..";

    /** What a feature may use; a room that is not here is a feature. */
    private static final String[] SHARED = {
        "bagclock.core..",
        "bagclock.desk..",
        "bagclock.register..",
        "bagclock.readings..",
        "bagclock.ledger..",
        "bagclock.scan..",
        "bagclock.logfile..",
        "bagclock.platform.."
    };

    private static final Set<String> CLOCKS = Set.of(
            "java.time.Instant.now",
            "java.time.LocalDate.now",
            "java.time.LocalTime.now",
            "java.time.LocalDateTime.now",
            "java.time.OffsetDateTime.now",
            "java.time.ZonedDateTime.now",
            "java.time.Year.now",
            "java.time.ZoneId.systemDefault",
            "java.time.Clock.systemUTC",
            "java.time.Clock.systemDefaultZone",
            "java.time.Clock.system",
            "java.lang.System.currentTimeMillis");

    @ArchTest
    static final ArchRule CORE_IS_PURE = classes()
            .that()
            .resideInAPackage("bagclock.core..")
            .and()
            .resideOutsideOfPackage("bagclock.core.standard")
            .should()
            .onlyDependOnClassesThat(pure())
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule THE_TABLE_READER_MAY_READ_FILES = classes()
            .that()
            .resideInAPackage("bagclock.core.standard")
            .should()
            .onlyDependOnClassesThat(pure().or(resideInAnyPackage("java.io", "java.nio.charset")))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule QUANTITIES_KNOW_NO_STANDARD =
            noDependency("quantity", "standard", "exposure", "diffusion", "estimate", "heat", "oven");

    @ArchTest
    static final ArchRule THE_STANDARD_KNOWS_NO_HISTORY =
            noDependency("standard", "exposure", "diffusion", "estimate", "heat", "oven");

    @ArchTest
    static final ArchRule EXPOSURE_KNOWS_NO_HEAT = noDependency("exposure", "diffusion", "estimate", "heat", "oven");

    @ArchTest
    static final ArchRule DIFFUSION_STANDS_BESIDE = noDependency("diffusion", "exposure", "estimate", "heat", "oven");

    /** An estimate is drawn beside an answer, never in it: only what draws it may know it. */
    @ArchTest
    static final ArchRule NOTHING_THAT_DECIDES_KNOWS_THE_ESTIMATE = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "bagclock.core.diffusion..",
                    "bagclock.core.estimate..",
                    "bagclock.stock..",
                    "bagclock.whatif..",
                    TEMPLATES)
            .and()
            .doNotHaveFullyQualifiedName("bagclock.platform.EstimateTexts")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("bagclock.core.diffusion..", "bagclock.core.estimate..");

    @ArchTest
    static final ArchRule THE_ESTIMATE_KNOWS_NO_VERDICT = noDependency("estimate", "heat", "oven");

    @ArchTest
    static final ArchRule HEAT_KNOWS_NO_OVEN = noDependency("heat", "diffusion", "estimate", "oven");

    @ArchTest
    static final ArchRule NO_CYCLES_IN_CORE =
            slices().matching("bagclock.core.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule NO_CYCLES_BETWEEN_ROOMS =
            slices().matching("bagclock.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule PLATFORM_KNOWS_CORE_ONLY = roomKnowsOnly("platform", "core");

    @ArchTest
    static final ArchRule THE_REGISTER_KNOWS_NO_OTHER_STORE = roomKnowsOnly("register", "core", "platform");

    @ArchTest
    static final ArchRule READINGS_KNOW_NO_OTHER_STORE = roomKnowsOnly("readings", "core", "logfile", "platform");

    @ArchTest
    static final ArchRule FILES_OF_LOGGERS_KNOW_NO_OTHER_ROOM = roomKnowsOnly("logfile");

    @ArchTest
    static final ArchRule THE_LEDGER_KNOWS_NO_OTHER_STORE = roomKnowsOnly("ledger", "core", "platform");

    @ArchTest
    static final ArchRule THE_DESK_KNOWS_NO_FEATURE =
            roomKnowsOnly("desk", "core", "platform", "register", "readings", "ledger");

    @ArchTest
    static final ArchRule SCANS_ARE_READ_WITHOUT_STORES_AND_WEB = classes()
            .that()
            .resideInAPackage("bagclock.scan..")
            .should()
            .onlyDependOnClassesThat(pure().or(resideInAnyPackage("bagclock.scan..")))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule NO_FEATURE_USES_ANOTHER = slices().matching("bagclock.(*)..")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(alwaysTrue(), resideInAnyPackage(SHARED))
            .ignoreDependency(resideInAnyPackage(TEMPLATES), alwaysTrue())
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule SQL_STAYS_IN_STORES = noClasses()
            .that(areNot("a store", "Store"))
            .and()
            .resideOutsideOfPackage("bagclock.platform")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.jdbi..", "java.sql..", "javax.sql..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule HTTP_STAYS_IN_ROUTES_AND_FORMS = noClasses()
            .that(areNot("routes or a form", "Routes", "Form"))
            .and()
            .resideOutsideOfPackages("bagclock", "bagclock.platform", TEMPLATES)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("io.javalin..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule TEMPLATES_ARE_RENDERED_BY_PLATFORM = noClasses()
            .that()
            .resideOutsideOfPackages("bagclock.platform", TEMPLATES)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("gg.jte..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule THE_CLOCK_IS_HANDED_IN = noClasses()
            .that(describe("are not Main", type -> !outermost(type).equals("bagclock.Main")))
            .should()
            .accessTargetWhere(describe("the system's clock or zone is asked", RoomsTest::asksTheSystem))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule NOBODY_PRINTS = noClasses()
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule NO_OLD_DATES =
            noClasses().should().dependOnClassesThat().haveFullyQualifiedName("java.util.Date");

    @ArchTest
    static final ArchRule STATICS_ARE_FINAL = fields().that()
            .areStatic()
            .and()
            .areDeclaredInClassesThat()
            .resideOutsideOfPackage(TEMPLATES)
            .should()
            .beFinal();

    @ArchTest
    static void everyPackageIsNullMarked(JavaClasses classes) {
        List<String> unmarked = classes.stream()
                .map(JavaClass::getPackage)
                .distinct()
                .filter(room -> !room.getName().startsWith("bagclock.templates"))
                .filter(room -> !room.isAnnotatedWith(NullMarked.class))
                .map(JavaPackage::getName)
                .sorted()
                .toList();

        assertThat(unmarked).as("packages without @NullMarked").isEmpty();
    }

    private static DescribedPredicate<JavaClass> pure() {
        return resideInAnyPackage(
                        "java.lang..", "java.time..", "java.util..", "java.math..", "org.jspecify..", "bagclock.core..")
                .and(describe("no logging", type -> !type.getPackageName().startsWith("java.util.logging")))
                .or(describe(
                        "arrays of primitives",
                        type -> type.getBaseComponentType().isPrimitive()));
    }

    private static ArchRule noDependency(String room, String... others) {
        String[] packages = new String[others.length];
        for (int i = 0; i < others.length; i++) {
            packages[i] = "bagclock.core." + others[i] + "..";
        }
        return noClasses()
                .that()
                .resideInAPackage("bagclock.core." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages)
                .allowEmptyShould(true);
    }

    private static ArchRule roomKnowsOnly(String room, String... others) {
        Set<String> known = Set.of(others);
        return noClasses()
                .that()
                .resideInAPackage("bagclock." + room + "..")
                .should()
                .dependOnClassesThat(describe("another room than " + known, type -> {
                    String name = type.getPackageName();
                    if (!name.startsWith("bagclock")) {
                        return false;
                    }
                    String[] parts = name.split("\\.");
                    return parts.length == 1 || !(parts[1].equals(room) || known.contains(parts[1]));
                }))
                .allowEmptyShould(true);
    }

    private static DescribedPredicate<JavaClass> areNot(String what, String... endings) {
        return describe("are not " + what, type -> {
            String name = outermost(type);
            return List.of(endings).stream().noneMatch(name::endsWith);
        });
    }

    private static boolean asksTheSystem(JavaAccess<?> access) {
        return CLOCKS.contains(access.getTargetOwner().getFullName() + "." + access.getName());
    }

    private static String outermost(JavaClass type) {
        return type.getName().split("\\$", 2)[0];
    }
}
