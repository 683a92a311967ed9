package org.berrywatt.server;

import static com.tngtech.archunit.core.domain.properties.CanBeAnnotated.Predicates.annotatedWith;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.persistence.Entity;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullMarked;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.repository.Repository;
import org.springframework.modulith.core.ApplicationModules;
import org.springframework.stereotype.Controller;

/** The rules of the backend's house, so that they hold tomorrow, too. */
@AnalyzeClasses(packages = "org.berrywatt.server", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule entitiesStayInTheirFeature =
            classes().that(are(annotatedWith(Entity.class))).should().notBePublic();

    @ArchTest
    static final ArchRule repositoriesStayInTheirFeature =
            classes().that().areAssignableTo(Repository.class).should().notBePublic();

    @ArchTest
    static final ArchRule controllersStayInTheirFeature =
            classes().that().areMetaAnnotatedWith(Controller.class).should().notBePublic();

    @ArchTest
    static final ArchRule whatABeanNeedsComesThroughItsConstructor =
            noFields().should().beAnnotatedWith(Autowired.class);

    @ArchTest
    static final ArchRule featuresFormNoCycle =
            slices().matching("org.berrywatt.server.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule featuresAreFlat = noClasses().should().resideInAPackage("org.berrywatt.server.*.*..");

    @ArchTest
    static final ArchRule onlyThePlatformTouchesTheDatabasesProcess = noClasses()
            .that()
            .resideOutsideOfPackage("org.berrywatt.server.platform")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("io.zonky..");

    @ArchTest
    static final ArchRule onlyAccessSpeaksOfSpringSecurity = noClasses()
            .that()
            .resideOutsideOfPackage("org.berrywatt.server.access")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.springframework.security..");

    @ArchTest
    static void everyPackageSaysThatNothingIsNullUnlessMarked(JavaClasses server) {
        var unmarked = server.stream()
                .map(type -> type.getPackage())
                .filter(place -> !place.isAnnotatedWith(NullMarked.class))
                .map(place -> place.getName())
                .collect(Collectors.toSet());
        assertThat(unmarked).isEmpty();
    }

    @ArchTest
    static void featuresKeepToTheirAllowedDependencies(JavaClasses server) {
        ApplicationModules.of(Berrywatt.class).verify();
    }
}
