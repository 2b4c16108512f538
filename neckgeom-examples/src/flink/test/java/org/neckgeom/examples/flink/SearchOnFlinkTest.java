package org.neckgeom.examples.flink;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.examples.DesignSearch;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;

class SearchOnFlinkTest {

    private static final int DESIGNS = 40;

    @Test
    void answers_areThoseOfTheSearchHere() throws Exception {
        Job job = NeckFile.read("octave-mandolin.yaml");
        List<String> wanted = DesignSearch.WOODS.stream()
                .map(wood -> wood.name() + ": "
                        + DesignSearch.search(job, wood).designs(DESIGNS).result())
                .toList();

        List<SearchOnFlink.Found> found = SearchOnFlink.answers(Document.PLAN.json(job), DESIGNS, 2);

        assertThat(found).extracting(one -> one.text).isEqualTo(wanted).hasSize(3).doesNotHaveDuplicates();
    }
}
