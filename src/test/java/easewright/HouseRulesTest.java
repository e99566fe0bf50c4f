package easewright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import easewright.svg.SvgProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The walls between the rooms, as DEVELOPERS.md draws them. */
class HouseRulesTest {
    /** Each room may import only rooms above it. */
    private static final List<String> ROOMS = List.of(
            "geom",
            "topology",
            "pattern",
            "svg",
            "backdrop",
            "measure",
            "suggest",
            "ease",
            "alter",
            "check",
            "draft",
            "history",
            "text",
            "print");

    private static final String[] CORE = ROOMS.stream()
            .filter(room -> !room.equals("print") && !room.equals("backdrop"))
            .map(room -> "easewright." + room + "..")
            .toArray(String[]::new);

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("easewright");

    @Test
    void roomsHaveNoCycles() {
        slices().matching("easewright.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void roomsLookUpwardsOnly() {
        LayeredArchitecture house =
                layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
        for (String room : ROOMS) {
            house = house.layer(room).definedBy("easewright." + room + "..");
        }
        house = house.layer("command").definedBy("easewright.command..");
        house = house.layer("editor").definedBy("easewright.editor..");
        for (int i = 0; i < ROOMS.size(); i++) {
            String[] allowed = new String[ROOMS.size() - i - 1 + 2];
            for (int j = i + 1; j < ROOMS.size(); j++) {
                allowed[j - i - 1] = ROOMS.get(j);
            }
            allowed[allowed.length - 2] = "command";
            allowed[allowed.length - 1] = "editor";
            house = house.whereLayer(ROOMS.get(i)).mayOnlyBeAccessedByLayers(allowed);
        }
        house.whereLayer("command")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("editor")
                .mayNotBeAccessedByAnyLayer()
                .check(CLASSES);
    }

    @Test
    void suggestionsAreMadeFromWhatLiesOnTheSheetAlone() {
        noClasses()
                .that()
                .resideInAPackage("easewright.suggest..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("easewright.svg..")
                .check(CLASSES);
    }

    /** Else two that differ in a component that was added later would pass for the same. */
    @Test
    void aComparisonThatIsSpeltOutLooksAtEveryComponent() {
        List<String> forgotten = new ArrayList<>();
        for (JavaClass each : CLASSES) {
            Set<String> seen = each.isRecord()
                    ? each.getMethod("equals", Object.class).getFieldAccesses().stream()
                            .map(access -> access.getTarget().getName())
                            .collect(Collectors.toSet())
                    : Set.of();
            for (JavaField field : each.getFields()) {
                boolean component = !field.getModifiers().contains(JavaModifier.STATIC);
                if (component && !seen.isEmpty() && !seen.contains(field.getName())) {
                    forgotten.add(field.getFullName());
                }
            }
        }
        assertThat(forgotten).isEmpty();
    }

    @Test
    void savingAndDrawingsDoNotKnowEachOther() {
        noClasses()
                .that()
                .resideInAPackage("easewright.svg")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("easewright.svg.disk..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAPackage("easewright.svg.disk..")
                .should()
                .dependOnClassesThat(resideInAPackage("easewright.svg").and(not(type(SvgProblem.class))))
                .check(CLASSES);
    }

    @Test
    void onlyTopologySeesJts() {
        noClasses()
                .that()
                .resideOutsideOfPackage("easewright.topology..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.locationtech.jts..")
                .check(CLASSES);
    }

    @Test
    void onlySvgReadsXml() {
        noClasses()
                .that()
                .resideOutsideOfPackage("easewright.svg..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.xml.sax..", "javax.xml..", "com.ctc.wstx..")
                .check(CLASSES);
    }

    @Test
    void onlyBackdropSeesBatik() {
        noClasses()
                .that()
                .resideOutsideOfPackage("easewright.backdrop..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.batik..", "org.w3c.dom..")
                .check(CLASSES);
    }

    @Test
    void onlyPrintSeesPdfBox() {
        noClasses()
                .that()
                .resideOutsideOfPackage("easewright.print..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.pdfbox..")
                .check(CLASSES);
    }

    @Test
    void coreHasNoScreenAndNoConsole() {
        noClasses()
                .that()
                .resideInAnyPackage(CORE)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAnyPackage(CORE)
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(CLASSES);
    }

    @Test
    void commandsLoadNoWindow() {
        noClasses()
                .that()
                .resideInAPackage("easewright.command..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx..")
                .check(CLASSES);
    }
}
