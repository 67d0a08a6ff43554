package org.deckplanreview.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.deckplanreview.submission.ReadLog;
import org.deckplanreview.submission.Woven;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the code to the table of packages in DEVELOPERS.md. */
class ArchitectureTest {

    private static final String ROOT = "org.deckplanreview";
    private static final String[] CORE = {
        ROOT + ".kernel..",
        ROOT + ".measure..",
        ROOT + ".formula..",
        ROOT + ".provenance..",
        ROOT + ".submission..",
        ROOT + ".layout..",
        ROOT + ".loadpath..",
        ROOT + ".vocabulary..",
        ROOT + ".ruleset..",
        ROOT + ".method..",
        ROOT + ".assessment..",
        ROOT + ".report..",
        ROOT + ".review..",
        ROOT + ".rendering..",
        ROOT + ".schedule.."
    };

    private static JavaClasses code;
    private static Map<String, Set<String>> mayUse;

    @BeforeAll
    static void read() throws IOException {
        code = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(ROOT);
        mayUse = table(Files.readString(Path.of("DEVELOPERS.md")));
    }

    @Test
    void every_package_stands_in_the_table_and_every_row_has_a_package() {
        Set<String> packages = new TreeSet<>();
        code.forEach(c -> packages.add(feature(c)));
        assertThat(packages).isEqualTo(mayUse.keySet());
    }

    @Test
    void packages_use_only_what_the_table_lets_them() {
        for (String name : mayUse.keySet()) {
            Set<String> allowed = closure(name);
            DescribedPredicate<JavaClass> notAllowed = new DescribedPredicate<>("packages other than " + allowed) {
                @Override
                public boolean test(JavaClass c) {
                    return c.getPackageName().startsWith(ROOT + ".") && !allowed.contains(feature(c));
                }
            };
            noClasses()
                    .that()
                    .resideInAPackage(ROOT + "." + name + "..")
                    .should()
                    .dependOnClassesThat(notAllowed)
                    .check(code);
        }
    }

    @Test
    void every_package_says_what_lives_there() throws IOException {
        try (Stream<Path> folders = Files.walk(Path.of("src/main/java/org/deckplanreview"))) {
            List<Path> silent = folders.filter(Files::isDirectory)
                    .filter(ArchitectureTest::hasJava)
                    .filter(f -> !Files.exists(f.resolve("package-info.java")))
                    .toList();
            assertThat(silent).isEmpty();
        }
    }

    @Test
    void json_stays_out_of_geometry_statics_and_judgement() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        ROOT + ".layout..",
                        ROOT + ".loadpath..",
                        ROOT + ".method..",
                        ROOT + ".schedule..",
                        ROOT + ".assessment..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.fasterxml..", "org.json..", "org.everit..")
                .check(code);
    }

    @Test
    void http_stays_in_api() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + ".api..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("jakarta.ws.rs..", "org.jboss.resteasy..")
                .check(code);
    }

    @Test
    void the_core_uses_nothing_that_differs_between_runs() {
        noClasses()
                .that()
                .resideInAnyPackage(CORE)
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Random")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.UUID")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.HashMap")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.HashSet")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.time.Clock")
                .orShould()
                .callMethodWhere(new Unsteady())
                .check(code);
    }

    @Test
    void methods_know_no_ruleset() {
        classes()
                .that()
                .resideInAPackage(ROOT + ".ruleset..")
                .should()
                .onlyBeAccessed()
                .byClassesThat()
                .resideOutsideOfPackages(ROOT + ".method..", ROOT + ".layout..", ROOT + ".loadpath..")
                .check(code);
    }

    @Test
    void only_the_records_of_a_submission_tell_what_is_read() {
        classes()
                .that()
                .areNotAnnotatedWith(Woven.class)
                .and()
                .resideOutsideOfPackage(ROOT + ".weaving..")
                .should(notCall(ReadLog.class, "read"))
                .check(code);
    }

    /** What a record reads of itself by a field would not count as read. */
    @Test
    void records_of_a_submission_read_their_values_by_accessors() {
        List<String> byField = code.stream()
                .filter(c -> c.isAnnotatedWith(Woven.class))
                .flatMap(c -> c.getFieldAccessesFromSelf().stream())
                .filter(access -> access.getAccessType() == JavaFieldAccess.AccessType.GET)
                .filter(access -> !isAccessorOrCopy(access)
                        && !access.getOrigin().getName().equals("displayLabel"))
                .filter(access -> !access.getTargetOwner().isAssignableTo(Comparable.class))
                .map(JavaFieldAccess::getDescription)
                .toList();

        assertThat(byField).isEmpty();
    }

    private static boolean isAccessorOrCopy(JavaFieldAccess access) {
        JavaCodeUnit reader = access.getOrigin();
        return reader.isConstructor()
                || reader.getName().equals(access.getTarget().getName())
                || reader.getRawReturnType().equals(access.getTargetOwner());
    }

    private static ArchCondition<JavaClass> notCall(Class<?> owner, String method) {
        return new ArchCondition<>("not call " + owner.getSimpleName() + "." + method) {
            @Override
            public void check(JavaClass c, ConditionEvents events) {
                c.getMethodCallsFromSelf().stream()
                        .filter(call -> call.getTargetOwner().isEquivalentTo(owner)
                                && call.getName().equals(method))
                        .forEach(call -> events.add(SimpleConditionEvent.violated(call, call.getDescription())));
            }
        };
    }

    /** Calls whose result depends on the clock, the seed of hashed sets, or the processor's own functions. */
    private static final class Unsteady extends DescribedPredicate<JavaCall<?>> {
        private static final Set<String> MATH =
                Set.of("pow", "exp", "log", "log10", "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "cbrt");

        Unsteady() {
            super("calls that differ between runs");
        }

        @Override
        public boolean test(JavaCall<?> call) {
            String owner = call.getTargetOwner().getFullName();
            String name = call.getName();
            boolean clock = name.equals("now") && owner.startsWith("java.time.")
                    || owner.equals("java.lang.System")
                            && (name.equals("currentTimeMillis") || name.equals("nanoTime"));
            boolean processor = owner.equals("java.lang.Math") && MATH.contains(name);
            boolean random = owner.equals("java.lang.Math") && name.equals("random");
            return clock || processor || random;
        }
    }

    private static boolean hasJava(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(f -> f.toString().endsWith(".java"));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String feature(JavaClass c) {
        String rest = c.getPackageName().substring(ROOT.length() + 1);
        return rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
    }

    /** Itself, what its row names, and what those may use. */
    private static Set<String> closure(String name) {
        Set<String> all = new TreeSet<>();
        add(name, all);
        return all;
    }

    private static void add(String name, Set<String> all) {
        if (all.add(name)) {
            mayUse.getOrDefault(name, Set.of()).forEach(n -> add(n, all));
        }
    }

    private static Map<String, Set<String>> table(String markdown) {
        Map<String, Set<String>> rows = new TreeMap<>();
        Matcher m =
                Pattern.compile("(?m)^\\| `([a-z]+)` \\|[^|]*\\|([^|]*)\\|$").matcher(markdown);
        while (m.find()) {
            Set<String> uses = new TreeSet<>();
            Matcher u = Pattern.compile("`([a-z]+)`").matcher(m.group(2));
            while (u.find()) {
                uses.add(u.group(1));
            }
            rows.put(m.group(1), uses);
        }
        assertThat(rows).as("rows of the table in DEVELOPERS.md").isNotEmpty();
        return rows;
    }
}
