package benchful.findings;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.ClassSetup.Break;
import benchful.core.learning.BreakLength;
import benchful.web.Times;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What classes showed of breaks that were planned for so long.
 *
 * @param evidence the reviews that it comes from, each with what it says of such breaks
 * @param refused whether the tutor refused just this and nothing new is known
 */
@TemplateData
public record BreakFinding(Duration planned, BreakLength length, String evidence, boolean refused) implements ForClass {
    /** Less than a tenth is not worth a change of the plan (common practice, no source). */
    private static final int TENTH = 10;

    static String key(Duration planned) {
        return "break:" + planned;
    }

    @Override
    public String key() {
        return key(planned);
    }

    /** "Breaks of 10 min". */
    @Override
    public String title() {
        return "Breaks of " + Times.words(planned);
    }

    @Override
    public Setting now() {
        return Setting.lasts(planned);
    }

    @Override
    public Setting proposed() {
        return Setting.lasts(length.of(planned));
    }

    @Override
    public int classes() {
        return length.seen().size();
    }

    public Duration least() {
        return length.shortest(planned);
    }

    public Duration most() {
        return length.longest(planned);
    }

    @Override
    public boolean differs() {
        Duration change = length.of(planned).minus(planned).abs();
        return !change.isZero() && change.multipliedBy(TENTH).compareTo(planned) >= 0;
    }

    @Override
    public BreakFinding of(ClassFile file) {
        return this;
    }

    @Override
    public ClassSetup in(ClassFile file) {
        ClassSetup setup = file.setup();
        ClassSetup changed = setup.withBreaks(setup.breaks().stream().map(b -> b.lasts().equals(planned) ? b.lasting(length.of(planned)) : b).toList());
        ClassSetup.Rest rest = setup.rest();
        ClassSetup both = rest != null && rest.lasts().equals(planned) ? changed.withRest(new ClassSetup.Rest(rest.after(), length.of(planned), rest.meeting())) : changed;
        return fits(both.breaks(), setup) ? both : setup;
    }

    /** Whether each break lies in the meetings that it lay in, and is over before the next one. */
    private static boolean fits(List<Break> changed, ClassSetup setup) {
        boolean held = IntStream.range(0, changed.size())
                .allMatch(i -> setup.meetings().stream().allMatch(m -> !m.holds(setup.breaks().get(i)) || m.holds(changed.get(i))));
        List<Break> fixed = changed.stream().filter(b -> !b.mayMove()).sorted(Comparator.comparing(Break::at)).toList();
        return held && IntStream.range(1, fixed.size())
                .allMatch(i -> Duration.between(fixed.get(i - 1).at(), fixed.get(i).at()).compareTo(fixed.get(i - 1).lasts()) >= 0);
    }
}
