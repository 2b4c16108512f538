package org.neckgeom.examples;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.neckgeom.plan.Job;
import org.neckgeom.state.ShopLog;
import org.neckgeom.text.Words;

/** The shop's log as a file of JSON lines, read whole and written whole. */
final class ShopLogFile {

    private ShopLogFile() {}

    /** Reads a log that must be there. */
    static ShopLog read(Path file) throws Unwritable {
        try {
            return ShopLog.read(Files.readString(file));
        } catch (NoSuchFileException e) {
            throw new Unwritable("there is no shop log " + file);
        } catch (IOException e) {
            throw new Unwritable("the shop log " + file + " can't be read");
        } catch (IllegalArgumentException e) {
            throw new Unwritable("the shop log " + file + " can't be used: " + e.getMessage());
        }
    }

    /** Adds the readings of a job that the log has not, a log that is not there yet being empty; returns how many. */
    static String add(Path file, Job job) throws Unwritable {
        ShopLog before = Files.exists(file) ? read(file) : ShopLog.of(List.of());
        ShopLog after =
                before.with(job.log(LocalDate.now(ZoneId.systemDefault()).toString()));
        int more = after.entries().size() - before.entries().size();
        if (more > 0) {
            OutputFiles.write(Map.of(file, after.jsonLines().getBytes(StandardCharsets.UTF_8)));
        }
        return "shop log " + Words.shown(file.toString()) + ": " + more + (more == 1 ? " line" : " lines") + " added, "
                + after.entries().size() + " in all\n";
    }
}
