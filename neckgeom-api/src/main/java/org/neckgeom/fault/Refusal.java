package org.neckgeom.fault;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Thrown for a value, a text or a combination that is not valid, with all its faults. The message is one sentence for
 * people; {@link #faults} has the same for programs.
 */
public final class Refusal extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    /** An immutable list of the JDK's, which can be written as {@code Throwable} asks. */
    @SuppressWarnings("serial")
    private final List<Fault> faults;

    private Refusal(String message, List<Fault> faults) {
        super(message);
        this.faults = faults;
    }

    /**
     * {@return the refusal of a value: {@code PATH must MUST, but was GIVEN}; to be thrown}
     *
     * @param path of the value
     * @param rule its code
     * @param must such as {@code be more than 0 mm}
     * @param given what was given
     */
    public static Refusal of(String path, String rule, String must, Object given) {
        return of(path, rule, must, "was", given);
    }

    /**
     * {@return the refusal of a value: {@code PATH must MUST, but VERB GIVEN}; to be thrown}
     *
     * @param path of the value
     * @param rule its code
     * @param must such as {@code be 1 or more}
     * @param verb such as {@code were}; empty where what was given has its own
     * @param given what was given; may be empty
     */
    public static Refusal of(String path, String rule, String must, String verb, Object given) {
        String value = String.valueOf(Objects.requireNonNull(given, "given"));
        String found = (Objects.requireNonNull(verb, "verb") + " " + value).strip();
        Fault fault = new Fault(path, rule, must, value.isEmpty() ? found : value);
        return new Refusal(path + " must " + must + ", but " + found, List.of(fault));
    }

    /**
     * {@return a refusal in a sentence of its own; to be thrown}
     *
     * @param path of the value
     * @param rule its code
     * @param sentence what is wrong, and what to do
     */
    public static Refusal because(String path, String rule, String sentence) {
        return new Refusal(sentence, List.of(new Fault(path, rule, sentence, "")));
    }

    /**
     * {@return a refusal with several faults, each a sentence of its message; to be thrown}
     *
     * @param faults 1 or more
     */
    public static Refusal of(List<Fault> faults) {
        Objects.requireNonNull(faults, "faults").forEach(fault -> Objects.requireNonNull(fault, "fault"));
        if (faults.isEmpty()) {
            throw of("faults", "at-least", "be 1 or more", "there were none", "");
        }
        return new Refusal(faults.stream().map(Fault::toString).collect(Collectors.joining("; ")), List.copyOf(faults));
    }

    /**
     * {@return this refusal with what brought it about}
     *
     * @param cause thrown by code that is not ours
     */
    public Refusal causedBy(Throwable cause) {
        initCause(cause);
        return this;
    }

    /**
     * {@return the same refusal at a place, such as one of a document, with each path under it, and a sentence that
     * begins with it}
     *
     * @param place path of the whole, such as {@code design.scale}
     */
    public Refusal at(String place) {
        Objects.requireNonNull(place, "place");
        List<Fault> placed = faults.stream()
                .map(fault -> new Fault(
                        fault.path().isEmpty() ? place : place + "." + fault.path(),
                        fault.rule(),
                        fault.must(),
                        fault.given()))
                .toList();
        return new Refusal(place + ": " + getMessage(), List.copyOf(placed));
    }

    /** {@return what is wrong, in the order it was found; 1 or more} */
    public List<Fault> faults() {
        return faults;
    }
}
