package benchful.findings;

import benchful.findings.Finding.Decided;
import java.util.List;
import java.util.stream.Stream;

/** What was decided of a project's findings, the latest first. */
record History(List<Decided> decided) {

    /** What was typed: what stands in the project, and where that was taken from classes, what stood there before. */
    Setting typed(String key, Setting now) {
        Setting typed = now;
        for (Decided one : decided) {
            if (one.taken() && one.key().equals(key) && one.after().equals(typed)) {
                typed = one.before();
            }
        }
        return typed;
    }

    /** Whether just this was refused, whichever class was asked about it. */
    boolean refused(String key, String evidence) {
        return refusals(key, evidence).findAny().isPresent();
    }

    /** Whether just this was refused. */
    boolean refused(String key, Setting now, String evidence) {
        return refusals(key, evidence).anyMatch(d -> d.before().equals(now));
    }

    private Stream<Decided> refusals(String key, String evidence) {
        return decided.stream().filter(d -> !d.taken() && d.key().equals(key) && d.evidence().equals(evidence));
    }
}
