package bagclock.platform;

import java.time.Instant;
import java.util.List;

/** The notices of {@link Live}, oldest first. */
final class NoticeStore {
    void add(Transaction tx, String topic, Instant toldAt) {
        tx.handle()
                .createUpdate("insert into live_notice (topic, told_at) values (:topic, :toldAt)")
                .bind("topic", topic)
                .bind("toldAt", toldAt)
                .execute();
    }

    long newest(Transaction tx) {
        return tx.handle()
                .createQuery("select coalesce(max(id), 0) from live_notice")
                .mapTo(Long.class)
                .one();
    }

    List<Notice> after(Transaction tx, long id) {
        return tx.handle()
                .createQuery("select id, topic from live_notice where id > :id order by id")
                .bind("id", id)
                .mapTo(Notice.class)
                .list();
    }

    void deleteBefore(Transaction tx, Instant limit) {
        tx.handle()
                .createUpdate("delete from live_notice where told_at < :limit")
                .bind("limit", limit)
                .execute();
    }
}
