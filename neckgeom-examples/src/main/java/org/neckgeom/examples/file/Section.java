package org.neckgeom.examples.file;

import java.util.Map;
import java.util.function.Supplier;

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
        return make(place, making);
    }

    /**
     * Makes something of one key's value. What the making refuses becomes a problem of that key.
     *
     * @param <T> what is made
     * @param key a key of this section's shape
     * @param making asks for values and makes the thing
     * @return the thing, or unusable when a value was missing or the making refused
     */
    public <T> Found<T> make(Key<?> key, Supplier<T> making) {
        return make(places.getOrDefault(key.name(), place), making);
    }

    private <T> Found<T> make(Place there, Supplier<T> making) {
        try {
            return Found.of(making.get());
        } catch (Found.NotThere missing) {
            return Found.unusable();
        } catch (IllegalArgumentException | ArithmeticException refused) {
            problem(there, refused.getMessage());
            return Found.unusable();
        }
    }

    /**
     * Notes a problem of the section as a whole.
     *
     * @param sentence what was found and what is allowed
     */
    public void problem(String sentence) {
        problem(place, sentence);
    }

    /**
     * Notes a problem inside one key's value.
     *
     * @param key a key of this section's shape
     * @param sentence what was found and what is allowed, to be read after the key's path and a colon
     */
    public void problemIn(Key<?> key, String sentence) {
        problem(places.getOrDefault(key.name(), place), sentence);
    }

    private void problem(Place there, String sentence) {
        problems.add(there, (there.path().isEmpty() ? "" : there.path() + ": ") + sentence);
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
