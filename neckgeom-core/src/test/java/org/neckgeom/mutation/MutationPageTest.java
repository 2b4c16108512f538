package org.neckgeom.mutation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The check of mutation testing itself, with mistakes made up for it. */
class MutationPageTest {

    private static final Mutant LIVING =
            new Mutant("channel.Stop", "at", "ConditionalsBoundaryMutator", "SURVIVED", false);
    private static final Mutant FOUND = new Mutant("channel.Stop", "at", "MathMutator", "KILLED", true);

    private static MutationPage page(int found, int living, String... reasons) {
        List<Mutant> all = new java.util.ArrayList<>(Collections.nCopies(found, FOUND));
        all.addAll(Collections.nCopies(living, LIVING));
        return new MutationPage(
                Map.of("core", all),
                new Reasons(List.of(reasons).stream().map(Reasons.Reason::parse).toList()));
    }

    @Test
    void faults_areNoneAt85PercentWithTheCurrentPage() {
        MutationPage page = page(85, 15);

        assertThat(page.faults(page.text(), page.summary())).isEmpty();
        assertThat(page.text())
                .contains("| channel | 100 | 85 | 15 | 0 | 85.0 % |")
                .contains("| channel.Stop | 100 | 15 | at: boundary 15 |  |");
    }

    @Test
    void faults_nameAModuleThatFindsLess() {
        MutationPage page = page(849, 151);

        assertThat(page.faults(page.text(), page.summary()))
                .containsExactly("core: 849 of 1000 mistakes found, fewer than 85.0 %");
        assertThat(page(0, 0).faults(page(0, 0).text(), page(0, 0).summary())).hasSize(1);
    }

    @Test
    void faults_sayWhenThePageIsOld() {
        assertThat(page(90, 10).faults(page(91, 9).text(), page(90, 10).summary()))
                .singleElement()
                .asString()
                .contains("MUTATION.md differs");
    }

    @Test
    void reasons_standBesideWhatTheyExplain_andMustExplainSomething() {
        MutationPage page = page(90, 10, "channel.Stop;at;boundary;both give the same there", "*;*;sign;never");

        assertThat(page.text()).contains("at: boundary 10 | both give the same there |");
        assertThat(page.faults(page.text(), page.summary()))
                .singleElement()
                .asString()
                .contains("a reason without an undetected mutant")
                .contains("kind=sign");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Reasons.Reason.parse("channel.Stop;at"))
                .withMessageContaining("channel.Stop;at");
    }

    @Test
    void read_takesTheFilesOfAllPackages(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("channel"));
        Files.writeString(folder.resolve("channel").resolve("mutations.xml"), """
                <mutations partial="true">
                <mutation detected='false' status='SURVIVED'><sourceFile>Stop.java</sourceFile>\
                <mutatedClass>org.neckgeom.channel.Stop$Part</mutatedClass><mutatedMethod>lambda$at$3</mutatedMethod>\
                <mutator>org.pitest.mutationtest.engine.gregor.mutators.ConditionalsBoundaryMutator</mutator></mutation>
                <mutation detected='true' status='TIMED_OUT'><sourceFile>Stop.java</sourceFile>\
                <mutatedClass>org.neckgeom.channel.Stop</mutatedClass><mutatedMethod>at</mutatedMethod>\
                <mutator>org.pitest.mutationtest.engine.gregor.mutators.returns.NullReturnValsMutator</mutator></mutation>
                </mutations>
                """);

        List<Mutant> all = Mutant.read(folder);

        assertThat(all)
                .containsExactly(
                        new Mutant("channel.Stop.Part", "at", "ConditionalsBoundaryMutator", "SURVIVED", false),
                        new Mutant("channel.Stop", "at", "NullReturnValsMutator", "TIMED_OUT", true));
        assertThat(all).extracting(Mutant::kind).containsExactly("boundary", "result");
        assertThat(all).extracting(Mutant::area).containsOnly("channel");
    }

    @Test
    void read_failsWhereNothingWasTried(@TempDir Path folder) {
        assertThatThrownBy(() -> Mutant.read(folder))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("no mutations.xml");
    }

    @Test
    void faults_sayWhatTheReadmeShould() {
        MutationPage page = page(1700, 205);

        assertThat(page.faults(page.text(), "says nothing"))
                .containsExactly("README.md should say: 1,700 of 1,905 in core (89.2 %)");
        assertThat(page.faults(page.text(), "found: 1,700 of 1,905\nin core (89.2 %)."))
                .isEmpty();
    }
}
