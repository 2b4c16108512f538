package org.neckgeom.jackson;

import com.fasterxml.jackson.annotation.JsonFormat;
import java.lang.reflect.Modifier;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.BudgetKeys;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Key;
import org.neckgeom.table.QuantityType;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationConfig;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JacksonModule;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.deser.Deserializers;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.Serializers;

/**
 * The library's values in Jackson, to be copied by a program that uses it. Every value is written and read by the library's own
 * codec: a noun by its table of keys, an amount by its type, an answer by its form. Answers are written alone: they follow from
 * what was given.
 *
 * <p>A mapper that refuses a name given twice needs {@code StreamReadFeature.STRICT_DUPLICATE_DETECTION}.
 */
public final class NeckgeomModule extends SimpleModule {

    private static final long serialVersionUID = 1L;
    private static final String OURS = "org.neckgeom.";
    private static final String VALUE = "value";

    private static final Form<Object> ANY = Form.of(VALUE).fact(VALUE, Kind.ANY, "any value", value -> value);

    private static final Map<Class<?>, Table<?>> AMOUNTS = new LinkedHashMap<>();

    static {
        amount(Length.class, Types.LENGTH);
        amount(Angle.class, Types.ANGLE);
        amount(Force.class, Types.FORCE);
        amount(Dimensionless.class, Types.PERCENT);
        amount(Temperature.class, Types.TEMPERATURE);
        amount(Pressure.class, Types.PRESSURE);
        amount(Speed.class, Types.SPEED);
    }

    /** For a mapper's builder. */
    public NeckgeomModule() {
        super("neckgeom");
    }

    /** An amount is read as a document with one key. */
    private static <Q extends Quantity<Q>> void amount(Class<Q> quantity, QuantityType<Q> type) {
        AMOUNTS.put(quantity, One.table(type));
    }

    /** A document with one key. */
    private record One<Q extends Quantity<Q>>(Amount<Q> value) {

        static <Q extends Quantity<Q>> Table<One<Q>> table(QuantityType<Q> type) {
            Object[] key = new Object[1];
            Table<One<Q>> table = Table.of("", "an amount", values -> new One<>(values.at(key(key))), one -> {
                throw new UnsupportedOperationException("read only");
            });
            key[0] = table.needed(VALUE, type, "the amount");
            return table;
        }

        @SuppressWarnings("unchecked") // the one key that is put there
        private static <Q extends Quantity<Q>> Key<One<Q>, Amount<Q>> key(Object[] of) {
            return (Key<One<Q>, Amount<Q>>) of[0];
        }
    }

    /**
     * {@return the table of keys by which values of a type are read; nothing for an answer}
     *
     * @param type of the value
     */
    public static Optional<Table<?>> table(Class<?> type) {
        if (Budget.class.isAssignableFrom(type)) {
            return Optional.of(BudgetKeys.TABLE);
        }
        for (Class<?> each = type; each != null && each.getName().startsWith(OURS); each = each.getSuperclass()) {
            try {
                return Modifier.isPublic(each.getModifiers())
                        ? Optional.of((Table<?>) each.getField("TABLE").get(null))
                        : Optional.empty();
            } catch (NoSuchFieldException none) {
                continue;
            } catch (IllegalAccessException closed) {
                throw new AssertionError(closed);
            }
        }
        return Optional.empty();
    }

    /**
     * {@return a value as the library writes it: maps, lists, texts, numbers, booleans}
     *
     * @param value of any type of the library
     */
    public static Object plain(Object value) {
        return table(value.getClass()).map(table -> written(table, value)).orElseGet(() -> facts(value));
    }

    private static Object facts(Object value) {
        Object whole = Tree.of(ANY.data(value, LengthStyle.MILLIMETRES)).plain();
        return Objects.requireNonNull(((Map<?, ?>) Objects.requireNonNull(whole)).get(VALUE));
    }

    @SuppressWarnings("unchecked") // the table of the value's own type
    private static <T> Object written(Table<T> table, Object value) {
        return Objects.requireNonNull(table.write((T) value, Spelling.JSON).plain());
    }

    @Override
    public void setupModule(JacksonModule.SetupContext context) {
        super.setupModule(context);
        context.addSerializers(new Serializers.Base() {
            @Override
            public ValueSerializer<?> findSerializer(
                    SerializationConfig config,
                    JavaType type,
                    BeanDescription.Supplier described,
                    JsonFormat.Value format) {
                return isOurs(type) ? new Writer() : null;
            }
        });
        context.addDeserializers(new Deserializers.Base() {
            @Override
            public ValueDeserializer<?> findBeanDeserializer(
                    JavaType type, DeserializationConfig config, BeanDescription.Supplier described) {
                return isOurs(type) ? new Reader(type) : null;
            }

            @Override
            public boolean hasDeserializerFor(DeserializationConfig config, Class<?> type) {
                return type.getName().startsWith(OURS);
            }
        });
    }

    private static boolean isOurs(JavaType type) {
        return type.getRawClass().getName().startsWith(OURS);
    }

    /** Writes what the library writes. */
    private static final class Writer extends ValueSerializer<Object> {

        @Override
        public void serialize(Object value, JsonGenerator out, SerializationContext context) {
            context.writeValue(out, plain(value));
        }
    }

    /** Reads what the library reads. */
    private static final class Reader extends ValueDeserializer<Object> {

        private final JavaType type;

        Reader(JavaType type) {
            this.type = type;
        }

        @Override
        public Object deserialize(JsonParser in, DeserializationContext context) {
            Object given = context.readValue(in, Object.class);
            try {
                if (type.hasRawClass(Amount.class)) {
                    Table<?> amounts =
                            AMOUNTS.get(type.containedTypeOrUnknown(0).getRawClass());
                    return ((One<?>) found(amounts).read(Tree.of(Map.of(VALUE, given)))).value();
                }
                return found(table(type.getRawClass()).orElse(null)).read(Tree.of(given));
            } catch (Refusal refusal) {
                throw DatabindException.from(in, refusal.getMessage(), refusal);
            }
        }

        private Table<?> found(Table<?> table) {
            if (table == null) {
                throw Refusal.because(
                        type.getRawClass().getSimpleName(),
                        "written-only",
                        type.getRawClass().getSimpleName() + " is written only: it follows from what was given");
            }
            return table;
        }
    }
}
