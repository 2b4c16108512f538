package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Statement;
import org.neckgeom.order.Condition;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.shop.Caution;

/**
 * Every stable code is in {@code src/test/resources/api/codes.txt}: programs read them. A new one is approved by
 * {@code -Dneckgeom.approve=true}; one that was released stays.
 */
class CodesTest {

    /** The section whose rows are budgets. */
    private static final String BUDGETS = "errors";

    private final Set<String> codes = new TreeSet<>();

    @Test
    void codes_areTheApprovedOnes() throws IOException, URISyntaxException, IllegalAccessException {
        addFormsOfTypes();
        addWalked();
        addOrder();
        addOfSources(SourceCodes.ofMain());
        ApprovedList list = ApprovedList.of("codes", "the list of codes", UnaryOperator.identity());

        assertThat(list.approved().stream().filter(code -> !codes.contains(code)))
                .as("a stable code may not go: programs read it; give it back, and let a new thing have a new code")
                .isEmpty();
        list.hold(String.join("\n", codes) + "\n");
    }

    private void add(String kind, Object code) {
        codes.add(kind + " " + code);
    }

    private void add(String kind, Collection<String> all) {
        all.forEach(code -> add(kind, code));
    }

    /** The constants of all types, whether an answer of it is at hand or not. */
    private void addFormsOfTypes() throws IOException, URISyntaxException, IllegalAccessException {
        for (Class<?> type : EveryAnswerTest.types()) {
            for (Field field : type.getDeclaredFields()) {
                if (field.getType() == Form.class && Modifier.isStatic(field.getModifiers())) {
                    field.setAccessible(true);
                    addForm((Form<?>) field.get(null));
                }
            }
        }
    }

    private void addForm(Form<?> form) {
        Map<String, Object> schema = form.schema();
        addForm(form.name(), schema);
        ((Map<?, ?>) schema.get("$defs")).forEach((name, inside) -> addForm(name.toString(), (Map<?, ?>) inside));
    }

    /** What every form states in its schema: what it finds, its notes, and the codes that its facts can have. */
    private void addForm(String name, Map<?, ?> schema) {
        if (!(schema.get("properties") instanceof Map<?, ?> properties) || !properties.containsKey("answer")) {
            return;
        }
        if (((Map<?, ?>) properties.get("answer")).containsKey("const")) {
            add("form", name);
            properties.forEach(
                    (key, line) -> enums((Map<?, ?>) line).forEach(code -> add("form " + name, key + " " + code)));
        }
    }

    private static Stream<?> enums(Map<?, ?> line) {
        Map<?, ?> one = line.get("items") instanceof Map<?, ?> items ? items : line;
        return one.get("enum") instanceof List<?> codes ? codes.stream() : Stream.empty();
    }

    /** What answers at hand have, whole plans among them. */
    private void addWalked() {
        for (List<Object> answers : EveryAnswerTest.Made.MILLIMETRES.walk().values()) {
            for (Object answer : answers) {
                if (answer instanceof PlanCheck check) {
                    addCheck(check);
                } else if (answer instanceof PlanSection section) {
                    addSection(section);
                } else if (answer instanceof Statement statement) {
                    add("statement", statement.code());
                } else if (answer instanceof Caution caution) {
                    add("caution", caution.code());
                } else if (answer instanceof Job plan) {
                    plan.plan().checks().forEach(this::addCheck);
                    plan.plan().sections().forEach(this::addSection);
                    plan.plan().cautions().forEach(caution -> add("caution", caution.code()));
                    BenchCard.operations(plan).forEach(operation -> addCard(BenchCard.of(plan, operation.name())));
                } else if (answer instanceof Answer other) {
                    addForm(other.form());
                }
            }
        }
    }

    private void addCard(BenchCard card) {
        card.settings().forEach(this::addSection);
        card.limits().forEach(this::addStatement);
        Stream.concat(card.trial().stream(), card.readings().stream())
                .forEach(question -> add("question", question.code()));
    }

    private void addCheck(PlanCheck check) {
        add("check", check.code().code());
        Stream.of(check.result(), check.limit(), check.action()).forEach(this::addStatement);
    }

    private void addSection(PlanSection section) {
        add("section", section.code());
        section.notes().forEach(this::addStatement);
        for (PlanSection.Row row : section.rows()) {
            addStatement(row.named());
            addStatement(row.answer());
            if (section.code().equals(BUDGETS)) {
                add("budget", row.key());
            }
        }
    }

    private void addStatement(Answer answer) {
        if (answer instanceof Statement statement) {
            add("statement", statement.code());
        }
    }

    private void addOrder() throws IllegalAccessException {
        List<Operation> operations = new ArrayList<>(OrderOfWork.forNeck().operations());
        operations.addAll(OrderOfWork.forNeck().headSawnOut().operations());
        for (Operation operation : operations) {
            add("operation", operation.code());
            Stream.of(operation.needs(), operation.blockers(), operation.takesAway(), operation.puts())
                    .flatMap(List::stream)
                    .forEach(condition -> add("condition", condition.code()));
        }
        for (Field field : Condition.class.getFields()) {
            add("condition", ((Condition) field.get(null)).code());
        }
    }

    /** What no sample reaches: sources have every case. */
    private void addOfSources(SourceCodes sources) {
        add("fault", sources.given("(?:Refusal\\.of|Refusal\\.because|NoAnswer\\.because|refused|new Fault)", 1));
        Stream.of(CheckCode.values()).forEach(check -> add("check", check.code()));
        // What a check of the slot has as its action.
        Stream.of(SlotStep.values()).forEach(step -> add("statement", step.code()));
        Stream.of(SectionCode.values()).forEach(section -> add("section", section.code()));
        add("caution", sources.given("new Caution", 0));
        add("question", sources.given("BenchAsk\\.(?:length|choice|angle)", 0));
        add("statement", sources.given("(?:Statement\\.of|plan\\.words|draft\\.words|draft\\.note)", 0));
        add("statement", sources.given("Clearance\\.of", 2));
        add("statement", sources.given("Clearance\\.of", 4));
    }

    @Test
    void sources_giveLiteralsChoicesAndConstants() {
        SourceCodes sources = SourceCodes.of("""
                static final String RULE = "by-name";
                // Refusal.of("a", "in-a-comment", "b");
                throw Refusal.of(name(1, "x"), "at-least", "be, \\" 0", given);
                throw Refusal.of(name, size > 1 ? "at-most" : "range", "");
                throw Refusal.of(name, RULE, "");
                throw Refusal.of(name, "no code", "");
                throw Refusal.of(name, "prefix-" + more, "");
                throw Refusal.of(faults);
                """);

        assertThat(sources.given("Refusal\\.of", 1)).containsExactly("at-least", "at-most", "by-name", "range");
    }
}
