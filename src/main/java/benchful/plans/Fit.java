package benchful.plans;

import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Tells whether a class fits its hours. The first page asks it of the same classes at each visit, so what was found to fit is
 * remembered by all that it was planned from; a class that was not found to fit is tried again.
 */
@ApplicationScoped
public class Fit {
    private static final int REMEMBERED = 200;

    private final LessonPlanner lessons;
    private final Set<LessonRequest> fitting = Collections.synchronizedSet(Collections.newSetFromMap(new Latest()));

    Fit(LessonPlanner lessons) {
        this.lessons = lessons;
    }

    public boolean of(ClassFile file) {
        LessonRequest request = ClassPlanner.request(file);
        if (fitting.contains(request)) {
            return true;
        }
        boolean fits = lessons.plan(request) instanceof Planned planned && planned.plan().fits();
        if (fits) {
            fitting.add(request);
        }
        return fits;
    }

    /** Forgets what was found first. */
    private static final class Latest extends LinkedHashMap<LessonRequest, Boolean> {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<LessonRequest, Boolean> eldest) {
            return size() > REMEMBERED;
        }
    }
}
