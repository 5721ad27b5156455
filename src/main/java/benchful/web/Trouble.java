package benchful.web;

import io.quarkus.qute.TemplateData;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jboss.logging.Logger;

/**
 * One thing that could not be worked out or shown, while all others were: why, in words, and where it can be mended.
 *
 * @param what      in words that begin a sentence: "“Saturday strands”", "The project “Plant hanger”"
 * @param why       as it stands within a sentence, without its stop
 * @param reference under which the log tells more
 */
@TemplateData
public record Trouble(String what, String why, String reference, List<Mend> mends) {
    private static final Logger LOG = Logger.getLogger(Trouble.class);

    public Trouble {
        mends = List.copyOf(mends);
    }

    /** A page on which something may be mended. */
    @TemplateData
    public record Mend(String words, String path) {}

    /**
     * Words a failure, and writes it to the log, once.
     *
     * @param mends where it may lie, beside what the failure itself names
     */
    public static Trouble of(String what, List<Mend> mends, Throwable failure) {
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.errorf(failure, "Fault %s at %s", reference, what);
        Optional<Unusable> named = unusable(failure);
        List<Mend> all = new ArrayList<>(named.filter(u -> u.path() != null).map(u -> new Mend("Mend " + u.what(), u.path())).stream().toList());
        mends.stream().filter(m -> all.stream().noneMatch(a -> a.path().equals(m.path()))).forEach(all::add);
        return new Trouble(what, named.map(Unusable::getMessage).orElseGet(() -> why(failure)), reference, all);
    }

    private static Optional<Unusable> unusable(Throwable failure) {
        return causes(failure).filter(Unusable.class::isInstance).map(Unusable.class::cast).findFirst();
    }

    private static String why(Throwable failure) {
        return causes(failure).anyMatch(VirtualMachineError.class::isInstance)
                ? "it takes more memory than the program has" : "the program itself failed at it";
    }

    private static Stream<Throwable> causes(Throwable failure) {
        return Stream.iterate(failure, Objects::nonNull, Throwable::getCause);
    }

    public String sentence() {
        return "%s can’t be worked out: %s (reference %s).".formatted(what, why, reference);
    }
}
