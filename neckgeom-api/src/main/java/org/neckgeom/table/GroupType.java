package org.neckgeom.table;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.LengthStyle;

/** A noun as a group of its keys. */
final class GroupType<V> extends Type<V> {
    private final Table<V> table;
    private final @Nullable Supplier<Form<V>> form;

    GroupType(Table<V> table, @Nullable Supplier<Form<V>> form) {
        this.table = Objects.requireNonNull(table, "table");
        this.form = form;
    }

    @Override
    @Nullable
    V read(Object data, String path, Faults faults) {
        return table.read(data, path, faults);
    }

    @Override
    Object write(V value, Spelling spelling) {
        return table.plain(value, spelling);
    }

    @Override
    Kind<V> kind() {
        if (form != null) {
            return Kind.answer(form.get());
        }
        return table.hasForm() ? Kind.answer(table.form()) : super.kind();
    }

    @Override
    V in(V value, LengthStyle style) {
        return table.in(value, style);
    }

    @Override
    Optional<LengthStyle> style(V value) {
        return table.split(value).firstStyle();
    }

    @Override
    Map<String, Object> schema(Spelling spelling) {
        return table.schema(spelling);
    }

    @Override
    public String allowed() {
        return table.allowed();
    }

    @Override
    Optional<Table<?>> inside() {
        return Optional.of(table);
    }

    /** The keys of the noun. */
    Table<V> table() {
        return table;
    }
}
