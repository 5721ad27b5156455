package benchful.findings;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.learning.TooFew;
import io.quarkus.qute.TemplateData;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A tool that students waited for.
 *
 * @param classes in which they did
 * @param tooFew of these classes that which had the most for each student; null where nobody wrote down how many there were, or there were as many as can be in use
 * @param there how many a class has: the one that is asked about, or else that one
 * @param wanted how many are proposed for it
 * @param evidence the reviews that it comes from, each with how many were too few
 * @param refused whether the tutor refused just this and nothing new is known
 */
@TemplateData
public record ToolFinding(String tool, int classes, TooFew tooFew, int there, int wanted, String evidence, boolean refused) implements ForClass {
    private static final String KEY = "tool:";

    static String key(String tool) {
        return KEY + tool;
    }

    /** As it is before a class is asked about. */
    static ToolFinding of(String tool, int classes, TooFew tooFew, String evidence, boolean refused) {
        return tooFew == null ? new ToolFinding(tool, classes, null, 0, 0, evidence, refused)
                : new ToolFinding(tool, classes, tooFew, tooFew.there(), tooFew.more(tooFew.students()), evidence, refused);
    }

    @Override
    public String key() {
        return key(tool);
    }

    @Override
    public String title() {
        return tool;
    }

    @Override
    public Setting now() {
        return Setting.there(there);
    }

    @Override
    public Setting proposed() {
        return Setting.there(wanted);
    }

    @Override
    public boolean differs() {
        return tooFew != null && wanted > there;
    }

    /** One more for as many students, but no more than can be in use at once; nothing where nobody wrote down how many the class has. */
    @Override
    public ToolFinding of(ClassFile file) {
        Integer has = file.tools().get(tool);
        if (has == null || tooFew == null) {
            return new ToolFinding(tool, classes, null, 0, 0, evidence, refused);
        }
        return new ToolFinding(tool, classes, tooFew, has, Math.min(tooFew.more(file.setup().headcount()), file.atOnce(tool)), evidence, refused);
    }

    @Override
    public ClassSetup in(ClassFile file) {
        ToolFinding here = of(file);
        if (!here.differs()) {
            return file.setup();
        }
        int room = file.venue() == null ? 0 : file.venue().tools().getOrDefault(tool, 0);
        Map<String, Integer> brought = new LinkedHashMap<>(file.setup().tools());
        brought.put(tool, here.wanted - room);
        return file.setup().withTools(brought);
    }
}
