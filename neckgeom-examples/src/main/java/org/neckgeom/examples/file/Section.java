package org.neckgeom.examples.file;

import java.util.Map;
import java.util.function.Supplier;
import org.neckgeom.fault.Refusal;

/** A map of the file that has been checked against its {@link Shape}: what it holds, key by key. */
public final class Section {

    private final Shape shape;
    private final Place place;
    private final Map<String, Found<?>> values;
    private final Map<String, Place> places;
    private final Problems problems;

    Section(Shape shape, Place place, Map<String, Found<?>> values, Map<String, Place> places, Problems problems) {
        this.shape = shape;
        this.place = place;
        this.values = values;
        this.places = places;
        this.problems = problems;
    }

    /**
     * What stands under a key.
     *
     * @param <T> the type of its value
     * @param key a key of this section's shape
     * @return the value, absent, or unusable
     */
    @SuppressWarnings("unchecked") // the shape read the value with this very key's kind
    public <T> Found<T> at(Key<T> key) {
        if (!shape.keys().contains(key)) {
            throw new IllegalArgumentException("key must be one of " + shape.keys() + ", but was " + key);
        }
        return (Found<T>) values.get(key.name());
    }

    /**
     * Makes something of this section's values. What the making refuses becomes a problem of this section.
     *
     * @param <T> what is made
     * @param making asks for values and makes the thing
     * @return the thing, or unusable when a value was missing or the making refused
     */
    public <T> Found<T> make(Supplier<T> making) {
        try {
            return Found.of(making.get());
        } catch (Found.NotThere missing) {
            return Found.unusable();
        } catch (Refusal refused) {
            problem(refused);
            return Found.unusable();
        } catch (IllegalArgumentException | ArithmeticException refused) {
            problem(refused.getMessage());
            return Found.unusable();
        }
    }

    /**
     * Notes a problem of the section as a whole.
     *
     * @param sentence what was found and what is allowed
     */
    public void problem(String sentence) {
        problems.add(place, (place.path().isEmpty() ? "" : place.path() + ": ") + sentence);
    }

    /**
     * Notes what was refused: where its path leads to, and else of the section as a whole.
     *
     * @param refused with the path of its fault
     */
    public void problem(Refusal refused) {
        String above = place.path().isEmpty() ? "" : place.path() + ".";
        String path = refused.faults().get(0).path();
        Place there = problems.place(above + path, places.getOrDefault(path, place));
        if (there.equals(place)) {
            problem(refused.getMessage());
        } else {
            problems.add(there, above + refused.getMessage());
        }
    }

    /**
     * Notes a problem of one key's value.
     *
     * @param key a key of this section's shape
     * @param sentence what was found and what is allowed, to be read after the key's path
     */
    public void problem(Key<?> key, String sentence) {
        Place there = places.getOrDefault(key.name(), place);
        problems.add(there, (there.path().isEmpty() ? key.name() : there.path()) + " " + sentence);
    }

    /**
     * Notes a problem of something inside a value that has no section of its own.
     *
     * @param path from the top of the file, such as {@code blank.length}
     * @param sentence what was found and what is allowed, to be read after the path
     */
    public void problemAt(String path, String sentence) {
        problems.add(problems.place(path, place), path + " " + sentence);
    }

    /**
     * Where the section starts.
     *
     * @return its place
     */
    public Place place() {
        return place;
    }
}
