package org.neckgeom.examples;

import java.util.stream.Collectors;
import org.neckgeom.form.Statement;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;

/** A section of a plan with all its rows and notes, where its own {@code toString} ends at what JShell prints. */
final class Sections {

    private Sections() {}

    static String whole(Job job, SectionCode code) {
        PlanSection section = job.plan().section(code).orElseThrow();
        int width = section.rows().stream()
                .mapToInt(row -> row.label().length())
                .max()
                .orElse(0);
        String rows = section.rows().stream()
                .map(row -> row.label() + " ".repeat(width - row.label().length() + 2) + row.value() + "\n")
                .collect(Collectors.joining());
        return rows + section.notes().stream().map(Statement::toString).collect(Collectors.joining("\n"));
    }
}
