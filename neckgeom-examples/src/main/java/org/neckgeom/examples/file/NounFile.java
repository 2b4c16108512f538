package org.neckgeom.examples.file;

import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Table;

/** A YAML file read by the table of keys of its noun: the one way from text to values. */
public final class NounFile {

    private NounFile() {}

    /**
     * Reads a text into its noun, or refuses it with all its errors.
     *
     * @param <T> what the file describes
     * @param file the file's name, for the places
     * @param text the file's text, YAML 1.2
     * @param table its keys
     * @return the thing; never half of it
     * @throws FileRefused with all problems, in the order of their lines
     */
    public static <T> T read(String file, String text, Table<T> table) {
        Problems problems = new Problems();
        YamlText.Document document = YamlText.read(file, text, problems);
        T read = null;
        try {
            read = table.read(Tree.of(document.plain()));
        } catch (Refusal refusal) {
            for (Fault fault : refusal.faults()) {
                problems.add(document.place(fault.path()), fault.toString());
            }
        }
        problems.refuseIfAny(file);
        return read;
    }
}
