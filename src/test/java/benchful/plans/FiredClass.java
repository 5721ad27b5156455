package benchful.plans;

import benchful.classes.ClassFile;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.StepKind;
import benchful.projects.Step;
import java.util.List;

/** Loads in kilns, written as a class of one student. */
public final class FiredClass {
    private FiredClass() {}

    public static ClassFile of(LessonRequest firings) {
        SmallClass written = SmallClass.of(1);
        for (RoomTool kiln : firings.room()) {
            written.sharedTool(kiln.name()).brings(kiln.name(), kiln.count());
        }
        firings.steps().forEach(load -> written.step(Step.of(load.id(), load.title(), StepKind.WAIT).withLasts(load.length())
                .withTools(load.uses().stream().map(u -> new Step.ToolUse(u.tool(), u.units())).toList()).withAfter(after(load.id(), firings.links()))));
        return written.file();
    }

    private static List<Step.After> after(String load, List<Link> links) {
        return links.stream().filter(link -> link.to().equals(load)).map(link -> new Step.After(link.from(), null, null)).toList();
    }
}
