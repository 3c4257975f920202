package sternwright.app.issued;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import sternwright.job.JobCard;

/** Job cards as they were issued, and what has been written on them. */
@Repository
public class IssuedCards {
    private static final String LINE =
            "select id, boat_id, boat_name, first_day, last_day, issued_at, issued_by, finished_at, finished_by from job_card ";

    private final JdbcClient jdbc;
    private final Clock clock;

    IssuedCards(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * Issues a card. One for the same visit that is still open is kept and named again, so that a second press makes no second
     * card.
     *
     * @param card the card
     * @param by who issues it
     * @return its name in addresses
     */
    @Transactional
    public String issue(JobCard card, String by) {
        String id = card.number();
        for (int n = 2; ; n++) {
            Optional<IssuedCard> there = find(id);
            if (there.isEmpty()) {
                break;
            }
            if (there.get().open()) {
                return id;
            }
            id = card.number() + "-" + n;
        }
        jdbc.sql("insert into job_card (id, boat_id, boat_name, first_day, last_day, content, issued_at, issued_by)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)")
                .params(
                        id,
                        card.boat().id(),
                        card.boat().name(),
                        card.from().toString(),
                        card.to().toString(),
                        IssuedText.of(card),
                        clock.millis(),
                        by)
                .update();
        return id;
    }

    /**
     * A card as lists name it.
     *
     * @param id its name
     * @return empty if there is none
     */
    public Optional<IssuedCard> find(String id) {
        return jdbc.sql(LINE + "where id = ?")
                .param(id)
                .query((row, n) -> line(row))
                .optional();
    }

    /**
     * What stands on a card.
     *
     * @param id its name
     * @return empty if there is none
     */
    public Optional<JobCard> content(String id) {
        return jdbc.sql("select content from job_card where id = ?")
                .param(id)
                .query(String.class)
                .optional()
                .map(t -> IssuedText.read(t, JobCard.class));
    }

    /**
     * Cards, the open ones first by day, then the finished ones, the newest first.
     *
     * @param from how many to leave out
     * @param most how many at most
     * @return the cards
     */
    public List<IssuedCard> lines(int from, int most) {
        return jdbc.sql(
                        LINE + "order by case when finished_at is null then 0 else 1 end,"
                                + " case when finished_at is null then first_day else '' end, finished_at desc, id limit ? offset ?")
                .params(most, from)
                .query((row, n) -> line(row))
                .list();
    }

    /**
     * How many cards there are.
     *
     * @return at least 0
     */
    public long count() {
        return jdbc.sql("select count(*) from job_card").query(Long.class).single();
    }

    /**
     * What has been written on a card so far.
     *
     * @param id its name
     * @return texts by the field they stand in
     */
    public Map<String, String> notes(String id) {
        Map<String, String> notes = new LinkedHashMap<>();
        jdbc.sql("select field, says from job_card_note where card_id = ? order by field")
                .param(id)
                .query((row, n) -> notes.put(row.getString(1), row.getString(2)))
                .list();
        return notes;
    }

    /**
     * Writes on an open card; what stood in the fields before is written over.
     *
     * @param id its name
     * @param notes texts by the field they stand in; an empty one clears the field
     * @param by who writes
     * @return false if the card is finished or not there; nothing is written then
     */
    @Transactional
    public boolean write(String id, Map<String, String> notes, String by) {
        if (find(id).filter(IssuedCard::open).isEmpty()) {
            return false;
        }
        notes.forEach((field, says) -> jdbc.sql(
                        "insert into job_card_note (card_id, field, says, said_by, at) values (?, ?, ?, ?, ?)"
                                + " on conflict (card_id, field) do update set says = excluded.says,"
                                + " said_by = excluded.said_by, at = excluded.at")
                .params(id, field, says, by, clock.millis())
                .update());
        return true;
    }

    /**
     * Closes a card once its work is in the history.
     *
     * @param id its name
     * @param by who recorded it
     * @param minutes time spent, null if not said
     * @return false if it was closed already
     */
    public boolean finish(String id, String by, @Nullable Integer minutes) {
        return jdbc.sql(
                                "update job_card set finished_at = ?, finished_by = ?, spent_min = ? where id = ? and finished_at is"
                                        + " null")
                        .param(clock.millis())
                        .param(by)
                        .param(minutes)
                        .param(id)
                        .update()
                == 1;
    }

    private static IssuedCard line(ResultSet row) throws SQLException {
        long finished = row.getLong(8);
        boolean open = row.wasNull();
        return new IssuedCard(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                LocalDate.parse(row.getString(4)),
                LocalDate.parse(row.getString(5)),
                Instant.ofEpochMilli(row.getLong(6)),
                row.getString(7),
                open ? null : Instant.ofEpochMilli(finished),
                row.getString(9));
    }
}
