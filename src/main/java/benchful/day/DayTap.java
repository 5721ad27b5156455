package benchful.day;

import benchful.core.day.Tap;
import benchful.web.StoredEntity;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import java.time.LocalDateTime;
import java.util.List;

/** One line of the log of a class. It is written once and never changed; the id that was drawn where it was tapped keeps it single. */
@Entity
public class DayTap extends StoredEntity {
    @ManyToOne(optional = false, fetch = FetchType.LAZY)
    ClassDay day;

    String tap;

    LocalDateTime at;

    @Enumerated(EnumType.STRING)
    Tap.Kind kind;

    String step;

    int number;

    String text;

    protected DayTap() {}

    static DayTap of(ClassDay day, Tap told) {
        DayTap tap = new DayTap();
        tap.day = day;
        tap.tap = told.id();
        tap.at = told.at();
        tap.kind = told.kind();
        tap.step = told.step();
        tap.number = told.number();
        tap.text = told.text();
        return tap;
    }

    static List<Tap> of(ClassDay day) {
        return DayTap.<DayTap>list("day = ?1 order by at, tap", day).stream().map(DayTap::told).toList();
    }

    private Tap told() {
        return new Tap(tap, at, kind, step, number, text);
    }
}
