package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.Uncommented;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;

/** Neck files and JSON as they were written before their keys had the names of today: they are read to equal plans. */
class OldNecksTest {

    private static final Path BEFORE = Path.of("src/test/resources/keys-before");

    static Stream<String> names() {
        return ShippedNecks.names().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void shippedNecks_ofBefore_readToEqualPlans(String name) throws IOException {
        String old = Files.readString(BEFORE.resolve(name));

        assertThat(old).contains("width at nut:", "end play:", "wood left:").isNotEqualTo(ShippedNecks.text(name));
        assertThat(NeckFile.parse(name, old)).isEqualTo(NeckFile.read(name));
        assertThat(Document.hash(NeckFile.parse(name, old))).isEqualTo(Document.hash(NeckFile.read(name)));
    }

    /** The comments of the octave mandolin's file, uncommented, have keys that no neck has live. */
    @Test
    void commentedBlocks_ofBefore_readToEqualPlans() throws IOException {
        String old = Files.readString(BEFORE.resolve(ShippedNecks.DEFAULT));
        String now = ShippedNecks.text(ShippedNecks.DEFAULT);
        for (List<String> keys : List.of(
                List.of("readings", "trial cuts"),
                List.of("workmanship", "workmanship"),
                List.of("as made", "measured"))) {
            String oldBlock = Uncommented.block(old, keys.get(0));
            String newBlock = Uncommented.block(now, keys.get(1));

            assertThat(oldBlock).isNotEqualTo(old);
            assertThat(NeckFile.parse("old.yaml", oldBlock))
                    .as(keys.get(0))
                    .isEqualTo(NeckFile.parse("new.yaml", newBlock))
                    .isNotEqualTo(NeckFile.parse("new.yaml", now));
        }
    }

    @Test
    void jsonOfVersion2_ofBefore_readsToAnEqualPlan() throws IOException {
        String old = Files.readString(BEFORE.resolve("octave-mandolin.json"));
        Job read = Document.PLAN.read(old);

        assertThat(old).contains("\"widthAtNut\"", "\"firstDepth\"", "\"endPlay\"");
        assertThat(Document.PLAN.read(Document.PLAN.json(read))).isEqualTo(read);
        assertThat(Document.PLAN.json(read))
                .contains("\"nutWidth\"", "\"depths\"")
                .doesNotContain("\"widthAtNut\"");
    }

    /** A bar was a kind of rod. */
    @Test
    void aBar_ofBefore_isABar() throws IOException {
        String old = Files.readString(BEFORE.resolve(ShippedNecks.DEFAULT))
                .replace("kind: two-way ", "kind: carbon bar ")
                .replaceFirst("\n  adjusted at:[^\n]*", "");
        String now = ShippedNecks.text(ShippedNecks.DEFAULT)
                .replace("\ntruss rod:", "\nbar:")
                .replace("kind: two-way ", "material: carbon ")
                .replaceFirst("\n  adjuster:[^\n]*", "");

        assertThat(NeckFile.parse("old.yaml", old)).isEqualTo(NeckFile.parse("new.yaml", now));
        assertThat(NeckFile.parse("old.yaml", old)
                        .neck()
                        .channel()
                        .orElseThrow()
                        .rod())
                .isEmpty();
    }
}
