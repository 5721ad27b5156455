package benchful.documents;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.plans.Advice;
import benchful.plans.PlanParts;
import benchful.plans.Timing;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.Requirements;
import benchful.studio.Paper;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PrintOutTest {
    private static PrintSource strand;

    @BeforeAll
    static void read() {
        strand = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
    }

    @ParameterizedTest
    @EnumSource
    void isFilledFromWhatWasWorkedOutForIt(PrintOut what) {
        Watched prepared = new Watched(strand.plan());
        what.prepare(prepared);
        Watched filled = new Watched(strand.plan());
        PrintSource watched = new PrintSource(strand.file(), filled, strand.pictures(), strand.hazards(), strand.assessment());
        new DocumentService(PrintSamples.templates()).parts(what, watched, new PrintOptions(Paper.A4, Version.NORMAL, true, LabelSetting.of(LabelStock.COMMON.get(0)), null)).forEach(part -> part.manuscript().get());
        assertThat(filled.asked).isEqualTo(prepared.asked);
    }

    /** Remembers which parts of a plan were asked for. */
    private static final class Watched implements PlanParts {
        private final Set<Part> asked = EnumSet.noneOf(Part.class);
        private final PlanParts plan;

        Watched(PlanParts plan) {
            this.plan = plan;
        }

        @Override
        public Requirements needs() {
            asked.add(Part.NEEDS);
            return plan.needs();
        }

        @Override
        public MaterialsPlan materials() {
            asked.add(Part.MATERIALS);
            return plan.materials();
        }

        @Override
        public Timing timing() {
            asked.add(Part.TIMING);
            return plan.timing();
        }

        @Override
        public List<Advice> advice() {
            asked.add(Part.ADVICE);
            return plan.advice();
        }
    }
}
