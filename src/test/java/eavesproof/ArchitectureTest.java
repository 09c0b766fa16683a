package eavesproof;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between the packages, and the one home of each library. */
class ArchitectureTest {

    /** Package, what it may know of this project, what it may know of the world outside. */
    private static final String TABLE =
            """
            quantity     |                                                         |
            job          | quantity                                                |
            hydraulics   | quantity                                                | Hipparchus
            survey       | quantity job hydraulics                                 |
            rules        | quantity                                                |
            check        | quantity job survey rules                               |
            check.drools | quantity job survey rules check                         | Drools files compiled
            judge        | quantity survey rules check                             |
            setout       | quantity job survey judge                               |
            findings     | quantity job survey rules check judge setout            |
            drawing      | quantity job survey judge setout findings               | Java2D files
            report       | quantity job survey rules check judge setout findings drawing | FreeMarker XML files
            report.photo | quantity report                                         | Java2D Images files
            report.pdf   | quantity job survey rules judge setout findings drawing report | PDF Keys Java2D XML files waiting
            exchange     | quantity job survey rules check judge setout findings   | Jackson files
            app          | *                                                       | Java
            app.cli      | * app                                                   | Java CommonsCLI
            """;

    /** Even the purest may use these: no files, no threads, no window. */
    private static final List<String> PURE =
            List.of(
                    "java.lang..",
                    "java.math",
                    "java.nio.charset",
                    "java.security",
                    "java.text",
                    "java.time..",
                    "java.util",
                    "java.util.function",
                    "java.util.regex",
                    "java.util.stream",
                    "org.jspecify.annotations");

    private static Stream<String> outside(String name) {
        return switch (name) {
            case "CommonsCLI" -> Stream.of("org.apache.commons.cli");
            case "compiled" ->
                    Stream.of("java.util.concurrent..", "java.util.jar", "java.util.zip");
            case "Drools" -> Stream.of("org.drools..", "org.kie..");
            case "files" -> Stream.of("java.io", "java.nio..");
            case "Hipparchus" -> Stream.of("org.hipparchus..");
            case "FreeMarker" -> Stream.of("freemarker..");
            case "Images" -> Stream.of("javax.imageio..");
            case "Jackson" -> Stream.of("com.fasterxml.jackson..");
            case "Java" -> Stream.of("java..");
            case "Java2D" -> Stream.of("java.awt..");
            case "Keys" -> Stream.of("java.security..", "javax.security.auth.x500");
            case "PDF" ->
                    Stream.of(
                            "com.openhtmltopdf..",
                            "org.apache.fontbox..",
                            "org.apache.pdfbox..",
                            "org.apache.xmpbox..",
                            "org.bouncycastle..");
            case "waiting" -> Stream.of("java.util.concurrent");
            case "XML" -> Stream.of("javax.xml..", "org.w3c.dom..", "org.xml.sax..");
            default ->
                    throw new IllegalArgumentException("not a name for something outside: " + name);
        };
    }

    record Home(String name, List<String> knows, List<String> outside) {

        static Home read(String line) {
            String[] cells = line.split("\\|", -1);
            return new Home(cells[0].strip(), words(cells[1]), words(cells[2]));
        }

        private static List<String> words(String cell) {
            return Stream.of(cell.strip().split(" +")).filter(word -> !word.isEmpty()).toList();
        }

        String[] allowed() {
            Stream<String> ours =
                    Stream.concat(Stream.of(name), knows.stream().flatMap(Home::spelledOut))
                            .map(known -> "eavesproof." + known);
            Stream<String> theirs = outside.stream().flatMap(ArchitectureTest::outside);
            return Stream.of(PURE.stream(), ours, theirs)
                    .flatMap(packages -> packages)
                    .toArray(String[]::new);
        }

        private static Stream<String> spelledOut(String known) {
            return known.equals("*")
                    ? TABLE.lines().map(line -> line.split("\\|")[0].strip()).filter(Home::belowApp)
                    : Stream.of(known);
        }

        private static boolean belowApp(String name) {
            return !name.equals("app") && !name.startsWith("app.");
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** Rules compiled by the build are printed by a machine, and named by what they hold. */
    private static final ImportOption NO_LAYERS =
            location -> !location.contains("/eavesproof/layer/");

    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .withImportOption(NO_LAYERS)
                    .importPackages("eavesproof");

    /** Raise this as the code grows: a scan that misses classes proves nothing about them. */
    private static final int AT_LEAST = 60;

    static Stream<Home> homes() {
        return TABLE.lines().map(Home::read);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("homes")
    void eachPackageKnowsOnlyWhatTheTableAllows(Home home) {
        classes()
                .that()
                .resideInAPackage("eavesproof." + home.name())
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(home.allowed())
                .check(CLASSES);
    }

    @Test
    void theTableNamesEveryPackageAndNoOther() {
        Set<String> named = new TreeSet<>();
        homes().forEach(home -> named.add("eavesproof." + home.name()));
        Set<String> seen = new TreeSet<>();
        CLASSES.forEach(one -> seen.add(one.getPackageName()));
        assertEquals(seen, named);
    }

    @Test
    void everyPackageSaysWhatItAnswers() {
        homes().forEach(
                        home ->
                                assertTrue(
                                        CLASSES.contain(
                                                "eavesproof." + home.name() + ".package-info"),
                                        home::name));
    }

    @Test
    void enoughClassesWereSeen() {
        assertTrue(CLASSES.size() >= AT_LEAST, () -> "saw only " + CLASSES.size() + " classes");
    }

    @Test
    void noPackageComesBackToItself() {
        slices().matching("eavesproof.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void namesSayWhatAClassIs() {
        noClasses()
                .should()
                .haveNameMatching(".*(Util|Utils|Impl|Helper|Manager|Common)(\\$.*)?")
                .check(CLASSES);
    }

    @Test
    void onlyTheEdgeKnowsTheTimeAndTheMachine() {
        noClasses()
                .that()
                .resideOutsideOfPackage("eavesproof.app..")
                .should()
                .callMethodWhere(
                        target(
                                        nameMatching(
                                                "now|today|currentTimeMillis|nanoTime|getenv|getProperty"))
                                .and(target(owner(nameMatching("java\\.(lang|time)\\..*")))))
                .check(CLASSES);
    }

    @Test
    void powersAndTrigonometryAreTheSameOnEveryMachine() {
        noClasses()
                .that()
                .resideOutsideOfPackage("eavesproof.drawing")
                .should()
                .callMethodWhere(
                        target(owner(type(Math.class)))
                                .and(
                                        target(
                                                nameMatching(
                                                        "pow|exp|log.*|cbrt|hypot|a?(sin|cos|tan)h?|atan2|expm1"))))
                .because("only StrictMath promises the last bit")
                .check(CLASSES);
    }
}
