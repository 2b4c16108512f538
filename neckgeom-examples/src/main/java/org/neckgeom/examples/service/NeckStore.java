package org.neckgeom.examples.service;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.neckgeom.channel.CentringRound;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;
import org.neckgeom.table.Spelling;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * Necks, and the trial cuts read at the machine, in one SQLite file. A neck is kept as {@link Job#TABLE} writes it, without its
 * cuts; a cut as {@link CentringRound#TABLE} does, by an id that its writer chose. What is written is written whole, and is on
 * disk before the caller is answered.
 */
final class NeckStore implements AutoCloseable {

    static final int MOST_NECKS = 1000;

    private static final int VERSION = 1;

    /** Marks the file as one of this service: SQLite's application_id. */
    private static final int MARK = 0x6e67656f;

    private static final int WAIT_MS = 10_000;
    private static final String CUTS = "trialCuts";

    private static final List<String> TABLES = List.of(
            "create table neck(name text primary key, document text not null) strict",
            "create table cut(place integer primary key autoincrement, neck text not null references neck(name),"
                    + " id text not null, document text not null, unique(neck, id)) strict",
            "pragma application_id = " + MARK,
            "pragma user_version = " + VERSION);

    private final Connection connection;

    private NeckStore(Connection connection) {
        this.connection = connection;
    }

    /** Whether something is new, and the job as it is now. */
    record Kept(boolean isNew, Job job) {}

    /** What one transaction does. */
    private interface Work<T> {
        T done() throws SQLException, Refused;
    }

    /**
     * {@return the store in a file, which is made where there is none}
     *
     * @param file where it is
     * @throws Refused if the file is of another program or of a later version
     */
    static NeckStore open(Path file) throws SQLException, Refused {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(WAIT_MS);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        NeckStore store = new NeckStore(source.getConnection());
        try {
            store.written(() -> {
                store.laidOut(file);
                return true;
            });
            return store;
        } catch (SQLException | Refused unusable) {
            store.close();
            throw unusable;
        }
    }

    private void laidOut(Path file) throws SQLException, Refused {
        int mark = number("pragma application_id");
        int version = number("pragma user_version");
        boolean isEmpty = number("select count(*) from sqlite_schema") == 0;
        if (isEmpty && mark == 0) {
            try (Statement statement = connection.createStatement()) {
                for (String table : TABLES) {
                    statement.execute(table);
                }
            }
        } else if (mark != MARK || version != VERSION) {
            throw Refused.because(
                    409,
                    file + " must be a file of this service, version " + VERSION + ", but was "
                            + (mark == MARK ? "version " + version : "another program's"));
        }
    }

    private int number(String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            return row.getInt(1);
        }
    }

    /** All of it or nothing. */
    private synchronized <T> T written(Work<T> work) throws SQLException, Refused {
        connection.setAutoCommit(false);
        try {
            T done = work.done();
            connection.commit();
            return done;
        } catch (Refusal refusal) {
            connection.rollback();
            throw Refused.of(refusal);
        } catch (SQLException | Refused | RuntimeException broken) {
            connection.rollback();
            throw broken;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    /** The names of all necks, in alphabetical order. */
    synchronized List<String> names() throws SQLException {
        return texts("select name from neck order by name");
    }

    /** The cuts of a neck, each by its id, in the order in which they were kept. */
    synchronized Map<String, Tree> cuts(String neck) throws SQLException, Refused {
        neck(neck);
        List<String> ids = texts("select id from cut where neck = ? order by place", neck);
        List<Tree> trees = cutTrees(neck);
        Map<String, Tree> cuts = new LinkedHashMap<>();
        for (int i = 0; i < ids.size(); i++) {
            cuts.put(ids.get(i), trees.get(i));
        }
        return cuts;
    }

    /** A neck with its cuts. */
    synchronized Job job(String neck) throws SQLException, Refused {
        return job(neck(neck), cutTrees(neck));
    }

    /**
     * Keeps a neck.
     *
     * @param name of the neck
     * @param job its description, with no cuts or with those that are kept
     * @param before the hash of the job that it replaces, needed where there is another of this name
     */
    Kept keep(String name, Job job, Optional<String> before) throws SQLException, Refused {
        return written(() -> {
            Optional<String> old = texts("select document from neck where name = ?", name).stream()
                    .findFirst();
            List<Tree> cuts = cutTrees(name);
            if (!job.steps().isEmpty() && !job.steps().equals(steps(cuts))) {
                throw Refused.because(409, "The trial cuts are not those kept: give each by itself, or none here.");
            }
            Job now = job(withoutCuts(job), cuts);
            Optional<String> kept =
                    old.isPresent() ? Optional.of(Document.hash(job(old.get(), cuts))) : Optional.empty();
            boolean isSame = kept.filter(Document.hash(now)::equals).isPresent();
            if (!isSame && (kept.isPresent() || before.isPresent()) && !kept.equals(before)) {
                throw Refused.because(
                        412,
                        kept.isPresent()
                                ? "Another neck named " + name + " is kept: read it, and give its ETag as If-Match."
                                : "No neck named " + name + " is kept: leave out If-Match.");
            }
            if (kept.isEmpty() && number("select count(*) from neck") >= MOST_NECKS) {
                throw Refused.because(507, "The service keeps at most " + MOST_NECKS + " necks.");
            }
            update(
                    "insert into neck(name, document) values(?, ?)"
                            + " on conflict(name) do update set document = excluded.document",
                    name,
                    withoutCuts(job));
            return new Kept(kept.isEmpty(), now);
        });
    }

    /**
     * Keeps a trial cut, or a move of the fence with the cut after it. The same one under the same id is kept once.
     *
     * @param neck whose it is
     * @param id chosen by its writer
     * @param round what was done and read
     */
    Kept keep(String neck, String id, CentringRound round) throws SQLException, Refused {
        return written(() -> {
            String document = Json.of(CentringRound.TABLE.write(round, Spelling.JSON));
            String own = neck(neck);
            List<String> before = texts("select document from cut where neck = ? and id = ?", neck, id);
            if (!before.isEmpty() && !before.get(0).equals(document)) {
                throw Refused.because(409, "A cut with id " + id + " is kept, and its readings are others.");
            }
            if (before.isEmpty()) {
                update("insert into cut(neck, id, document) values(?, ?, ?)", neck, id, document);
            }
            return new Kept(before.isEmpty(), job(own, cutTrees(neck)));
        });
    }

    private String neck(String name) throws SQLException, Refused {
        return texts("select document from neck where name = ?", name).stream()
                .findFirst()
                .orElseThrow(() -> Refused.because(404, "No neck named " + name + " is kept."));
    }

    private List<Tree> cutTrees(String neck) throws SQLException {
        return texts("select document from cut where neck = ? order by place", neck).stream()
                .map(Json::read)
                .toList();
    }

    private static List<CentringStep> steps(List<Tree> cuts) {
        return cuts.stream()
                .flatMap(cut -> CentringRound.TABLE.read(cut).steps().stream())
                .toList();
    }

    private static String withoutCuts(Job job) {
        Map<Object, Object> neck = keys(Job.TABLE.write(job, Spelling.JSON));
        neck.remove(CUTS);
        return Json.of(neck);
    }

    private static Job job(String neck, List<Tree> cuts) {
        Map<Object, Object> whole = keys(Json.read(neck));
        if (!cuts.isEmpty()) {
            whole.put(CUTS, cuts);
        }
        return Job.TABLE.read(Tree.of(whole));
    }

    private static Map<Object, Object> keys(Tree tree) {
        return new LinkedHashMap<>((Map<?, ?>) Objects.requireNonNull(tree.plain()));
    }

    private List<String> texts(String sql, String... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values);
                ResultSet rows = statement.executeQuery()) {
            List<String> texts = new ArrayList<>();
            while (rows.next()) {
                texts.add(rows.getString(1));
            }
            return texts;
        }
    }

    private void update(String sql, String... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values)) {
            statement.executeUpdate();
        }
    }

    private PreparedStatement prepared(String sql, String... values) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        for (int i = 0; i < values.length; i++) {
            statement.setString(i + 1, values[i]);
        }
        return statement;
    }

    @Override
    public synchronized void close() throws SQLException {
        connection.close();
    }
}
