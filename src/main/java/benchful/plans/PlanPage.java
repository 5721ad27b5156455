package benchful.plans;

import benchful.classes.CraftClass;
import benchful.core.SkillLevel;
import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.Lane;
import benchful.projects.ProjectSheet;
import benchful.web.SheetForm;
import io.quarkus.qute.TemplateData;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the page of a class shows, from top to bottom as the tutor works. */
@TemplateData
public record PlanPage(CraftClass craftClass, ClassFile file, ClassPlan plan, SheetForm form) {

    public ProjectSheet project() {
        return file.project();
    }

    public LessonPlan lesson() {
        return plan.lesson();
    }

    public MaterialsPlan materials() {
        return plan.materials();
    }

    public String picture() {
        return PlanPicture.of(plan.lesson(), plan.breaks()).svg();
    }

    public List<String> levels() {
        return SkillLevel.names();
    }

    public List<String> sizeNames() {
        return file.project().sizes().stream().map(s -> s.name()).toList();
    }

    /** Kits with the same contents, shown once. */
    @TemplateData
    public record KitGroup(List<Kit> kits) {
        public Kit first() {
            return kits.get(0);
        }

        public String titles() {
            return kits.stream().map(Kit::title).collect(Collectors.joining(", "));
        }
    }

    public List<KitGroup> kitGroups() {
        Map<List<Kit.Content>, List<Kit>> groups = plan.materials().kits().stream()
                .collect(Collectors.groupingBy(Kit::contents, LinkedHashMap::new, Collectors.toList()));
        return groups.values().stream().map(KitGroup::new).toList();
    }

    /** One block with the number it has in the picture. */
    @TemplateData
    public record Line(int number, Block block) {
        public boolean waits() {
            return block.lane() != Lane.CLASS;
        }

        public boolean atHome() {
            return block.lane() == Lane.HOME;
        }
    }

    public List<Line> lines() {
        Map<String, Integer> numbers = StepNumbers.of(plan.lesson());
        return plan.lesson().blocks().stream().map(b -> new Line(numbers.getOrDefault(b.step(), 0), b)).toList();
    }
}
