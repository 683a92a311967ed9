package org.berrywatt;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethodWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Stream;

/** The rules of this module: a line of packages, nothing of a framework, the same result for the same input. */
@AnalyzeClasses(packages = "org.berrywatt", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

    /** The line of packages: each sees its own step and the steps before it. A new package gets its place here. */
    private static final List<Set<String>> LINE = List.of(
            Set.of("quantity", "statistics", "uncertainty"),
            Set.of("light", "meter", "curve"),
            Set.of("cell"),
            Set.of("safety"),
            Set.of("reading"),
            Set.of("normalise"),
            Set.of("leaderboard", "findings", "plan"));

    private static final Set<String> TIME_OF_DAY = Set.of("now", "system", "systemUTC", "systemDefaultZone", "tick");

    @ArchTest
    static final ArchRule packagesHaveNoCycles =
            slices().matching("org.berrywatt.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule everyClassSeesOnlyItsStepAndThoseBefore =
            classes().that(not(resideInAPackage("org.berrywatt.contract.."))).should(followTheLine());

    @ArchTest
    static final ArchRule contractSeesNoScience =
            noClasses().that().resideInAPackage("..contract..").should().dependOnClassesThat(science());

    @ArchTest
    static final ArchRule scienceSeesNoContract =
            noClasses().that(science()).should().dependOnClassesThat().resideInAPackage("org.berrywatt.contract..");

    @ArchTest
    static final ArchRule nothingButTheJdkAndNumericalLibraries = classes()
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                    "org.berrywatt..",
                    "java.lang..",
                    "java.math..",
                    "java.text..",
                    "java.time..",
                    "java.util..",
                    "java.io..",
                    "java.nio.charset..",
                    "java.net",
                    "javax.measure..",
                    "tech.units.indriya..",
                    "org.hipparchus..",
                    "org.apache.commons.rng..",
                    "org.jspecify.annotations.."));

    @ArchTest
    static final ArchRule noLogging =
            noClasses().should().dependOnClassesThat().resideInAPackage("java.util.logging..");

    @ArchTest
    static final ArchRule noClock = noClasses().should(callMethodWhere(asksForTheTime()));

    @ArchTest
    static final ArchRule noRandomWithoutSeed = noClasses()
            .should()
            .callConstructor(Random.class)
            .orShould()
            .callConstructor(SplittableRandom.class)
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callMethod(java.util.UUID.class, "randomUUID")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(SecureRandom.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(ThreadLocalRandom.class);

    @ArchTest
    static final ArchRule noPrinting = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule noChangingState = fields().that().areStatic().should().beFinal();

    @ArchTest
    static final ArchRule everyPackageSaysWhatMayBeNull = classes().should(resideInANullMarkedPackage());

    private static DescribedPredicate<JavaClass> science() {
        return resideInAPackage("org.berrywatt..").and(not(resideInAPackage("org.berrywatt.contract..")));
    }

    private static DescribedPredicate<JavaMethodCall> asksForTheTime() {
        return DescribedPredicate.describe("asks for the time", call -> {
            String owner = call.getTargetOwner().getName();
            boolean ofTime = owner.startsWith("java.time.") && TIME_OF_DAY.contains(call.getName());
            return ofTime
                    || Set.of("currentTimeMillis", "nanoTime").contains(call.getName())
                    || owner.equals(Clock.class.getName());
        });
    }

    private static ArchCondition<JavaClass> followTheLine() {
        return new ArchCondition<>("see only its own step of the line and those before") {
            @Override
            public void check(JavaClass one, ConditionEvents events) {
                if (step(one) < 0) {
                    events.add(SimpleConditionEvent.violated(one, one.getName() + " has no place in the line"));
                }
                seen(one)
                        .filter(other -> step(other) > step(one))
                        .forEach(other -> events.add(SimpleConditionEvent.violated(
                                one, one.getName() + " sees " + other.getName() + ", which comes later")));
            }
        };
    }

    private static Stream<JavaClass> seen(JavaClass one) {
        return one.getDirectDependenciesFromSelf().stream()
                .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                .filter(other -> other.getPackageName().startsWith("org.berrywatt."))
                .distinct();
    }

    private static int step(JavaClass one) {
        String name = one.getPackageName().replaceFirst("^org\\.berrywatt\\.?", "");
        return LINE.indexOf(
                LINE.stream().filter(step -> step.contains(name)).findFirst().orElse(Set.of()));
    }

    private static ArchCondition<JavaClass> resideInANullMarkedPackage() {
        return new ArchCondition<>("reside in a package annotated with NullMarked") {
            @Override
            public void check(JavaClass one, ConditionEvents events) {
                boolean marked = one.getPackage().isAnnotatedWith("org.jspecify.annotations.NullMarked");
                events.add(new SimpleConditionEvent(one, marked, one.getPackageName() + " needs @NullMarked"));
            }
        };
    }
}
