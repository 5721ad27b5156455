package benchful.plans.pages;

import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.classes.Promise;
import benchful.core.SkillLevel;
import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.Proof;
import benchful.core.lesson.risk.Risk;
import benchful.core.lesson.risk.Risk.BlockRisk;
import benchful.plans.BetweenMeetings;
import benchful.plans.ClassPlan;
import benchful.plans.HoursVerdict;
import benchful.plans.StepNumbers;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.kits.Kit;
import benchful.plans.pictures.PlanPicture;
import benchful.plans.whatif.WhatIf;
import benchful.projects.ProjectSpec;
import benchful.stock.sources.Sources;
import benchful.web.Formats;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What the page of a class shows, from top to bottom as the tutor works.
 *
 * @param file as it is stored, or with what is tried
 * @param wishes null where the class can't be planned
 * @param tried what is tried and stored nowhere; null for the class as it is
 * @param kept the change that was just kept and can be taken back; null where there is none
 * @param proof how good the order of the steps is, by the longest search for it; null where the class can't be planned
 * @param experience what earlier classes of the project showed and the tutor noted
 */
@TemplateData
public record PlanView(CraftClass craftClass, ClassFile file, ClassPlan plan, OwnWishes wishes, SpecForm form, Trial tried, Trial kept, Proof proof, Experience.Known experience) {

    public ProjectSpec project() {
        return file.project();
    }

    public LessonPlan lesson() {
        return plan.lesson();
    }

    public MaterialsPlan materials() {
        return plan.materials();
    }

    /** What-ifs that its inputs are compared with; none on the class's own page. */
    public List<WhatIf> compared() {
        return List.of();
    }

    /** "nine in ten": the share of such classes that keep the times of the plan. */
    public String promised() {
        return HoursVerdict.share(plan.risk().promise());
    }

    public String picture() {
        return PlanPicture.of(plan.timing()).svg();
    }

    public List<String> promises() {
        return Promise.names();
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
        Map<List<Object>, List<Kit>> groups = plan.materials().kits().stream()
                .collect(Collectors.groupingBy(kit -> List.of(kit.size(), kit.contents()), LinkedHashMap::new, Collectors.toList()));
        return groups.values().stream().map(KitGroup::new).toList();
    }

    /** What is missing and nobody in the catalogue sells. */
    public Sources sources() {
        return Sources.of(plan.materials().unsold().stream().map(MaterialsPlan.MaterialPlan::bought), file.setup().currency(), "/classes/" + craftClass.id());
    }

    /** The steps that decide the end, one after the other: "1 Welcome (10 min), 3 Knot the strand (1 h 40 min)". */
    public String chain() {
        Map<String, Integer> numbers = StepNumbers.of(plan.lesson());
        return plan.lesson().criticalChain().stream()
                .map(b -> "%d %s (%s)".formatted(numbers.get(b.step()), b.title(), Formats.words(b.length()))).collect(Collectors.joining(", then "));
    }

    /**
     * One block with the number it has in the picture.
     *
     * @param risk what the simulated classes came to
     */
    @TemplateData
    public record Line(int number, Block block, BlockRisk risk, int classes) {
        /** Why it could start so much later, or not at all. */
        public String slackReason() {
            if (block.critical()) {
                return "Each minute it starts later, the class ends later.";
            }
            return "It could start as late as %s, and all that follows is still expected to end when it does now.".formatted(Formats.clockAfter(block.start().plus(block.slack()), block.start()));
        }

        public String riskReason() {
            String left = risk.unfinished() < 0.005 ? "" : " On average %s of the students have not finished then.".formatted(Formats.percent(risk.unfinished()));
            return "Of %d simulated classes half begin it by %s and are through with it by %s, nine in ten by %s.%s"
                    .formatted(classes, Formats.clock(risk.likelyStart()), Formats.clockAfter(risk.likelyEnd(), risk.likelyStart()),
                            Formats.clockAfter(risk.lateEnd(), risk.likelyStart()), left);
        }

        public boolean waits() {
            return block.lane() != Lane.CLASS;
        }

        /** Whether it goes on when the class has made all, so that nothing could be late for it. */
        public boolean goesOn() {
            return atHome() || block.slack().isZero() && !block.critical();
        }

        public boolean atHome() {
            return block.lane() == Lane.HOME;
        }
    }

    public List<Line> lines() {
        Map<String, Integer> numbers = StepNumbers.of(plan.lesson());
        return plan.lesson().blocks().stream().filter(b -> b.lane() != Lane.OUTSIDE).map(b -> line(b, numbers)).toList();
    }

    /** What goes on while no meeting is held. */
    public List<BetweenMeetings.Item> outside() {
        return BetweenMeetings.of(project(), lesson());
    }

    private Line line(Block block, Map<String, Integer> numbers) {
        Risk risk = plan.risk();
        BlockRisk simulated = risk.blocks().stream()
                .filter(r -> r.step().equals(block.step()) && r.group() == block.group()).findFirst().orElseThrow();
        return new Line(numbers.get(block.step()), block, simulated, risk.classes());
    }
}
