package benchful.plans.pages;

import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.CraftClass;
import benchful.classes.Photographs;
import benchful.classes.SetupRules;
import benchful.classes.SetupTarget;
import benchful.core.lesson.Proof;
import benchful.plans.ClassFileReader;
import benchful.plans.ClassPlan;
import benchful.plans.stored.PlanService;
import benchful.plans.whatif.AdviceTasks;
import benchful.plans.whatif.LongerSearch;
import benchful.plans.whatif.WhatIf;
import benchful.stock.StockLedger;
import benchful.web.Formats;
import benchful.web.Pages;
import benchful.web.forms.Difference;
import benchful.web.forms.FormTree;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The page of a class: will it fit, what to buy and pack, what to print; and the few inputs that are tried out most. */
@Path("/classes/{id: \\d+}")
@Produces(MediaType.TEXT_HTML)
class PlanPages {
    private final PlanService plans;
    private final ClassFileReader files;
    private final StockLedger ledger;
    private final AdviceTasks advice;
    private final LongerSearch searches;
    private final Removals removals;
    private final Experience experience;
    private final Photographs photographs;

    PlanPages(PlanService plans, ClassFileReader files, StockLedger ledger, AdviceTasks advice, LongerSearch searches, Removals removals, Experience experience,
            Photographs photographs) {
        this.photographs = photographs;
        this.experience = experience;
        this.plans = plans;
        this.files = files;
        this.ledger = ledger;
        this.advice = advice;
        this.searches = searches;
        this.removals = removals;
    }

    @CheckedTemplate(basePath = "plans")
    static class Templates {
        static native TemplateInstance show(PlanView page);

        private Templates() {}
    }

    /**
     * @param tried as {@link WhatIf#sent}: shown as if it were so, and stored nowhere; none for the class as it is
     * @param undo what takes the last change back, as {@link WhatIf#sent}, offered until the class is changed again
     * @param version of the class after that change
     */
    @GET
    public TemplateInstance show(@PathParam("id") long id, @QueryParam("tried") String tried, @QueryParam("undo") String undo,
            @QueryParam("version") String version) {
        Bench bench = new Bench(plans.craftClass(id).orElseThrow(NotFoundException::new));
        boolean undoable = undo != null && Pages.number(version).equals(Optional.of(bench.craftClass.version()));
        return tried == null ? bench.page(bench.form(), undoable ? bench.kept(WhatIf.read(undo)) : null) : bench.trial(WhatIf.read(tried));
    }

    /** Shows what the class would be with other values in the small form on its page; nothing is stored. */
    @POST
    @Path("trial")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response attempt(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        Bench bench = new Bench(plans.craftClass(id).orElseThrow(NotFoundException::new));
        WhatIf whatIf = WhatIf.typed(typed, bench.stored);
        if (bench.reading(whatIf) instanceof SpecReader.Faulty<ClassSetup> faulty) {
            return Pages.faulty(bench.page(SpecForm.faulty(faulty.tree(), faulty.faults(), bench.craftClass.version()), null));
        }
        return Pages.seeOther("/classes/" + id + (whatIf.fields().isEmpty() ? "" : "?tried=" + whatIf.inAddress()));
    }

    /**
     * All that the plan is computed from, in one file that {@code POST /api/plan} takes. Pictures of the project are named in it, as its own file
     * carries them; photographs of finished pieces are carried.
     */
    @GET
    @Path("file")
    @Produces("application/yaml")
    @Transactional
    public Response file(@PathParam("id") long id) {
        CraftClass craftClass = Pages.existing(CraftClass.class, id);
        return Response.ok(files.yaml(plans.file(craftClass).withPhotos(photographs.of(craftClass))))
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"class-%d.yaml\"".formatted(id))
                .build();
    }

    /** Changes only what stands in the small form on the page, or what a suggestion or a what-if changes; all else stays. */
    @POST
    @Path("inputs")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response change(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        Bench bench = new Bench(Pages.existing(CraftClass.class, id));
        WhatIf undo = WhatIf.typed(typed, bench.stored).reversed(bench.stored);
        SetupTarget target = new SetupTarget(bench.craftClass, bench.craftClass.venue());
        return new SpecPost<>(bench.reader, form -> bench.page(form, null)).changed(typed, new KeptChange(target, undo));
    }

    /** What it had reserved is released while the ledger still knows for which class that was. */
    @POST
    @Path("removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        Thing thing = new Thing("class", "%s, %s".formatted(craftClass.title(), Formats.words(craftClass.startsAt().toLocalDate())), "/classes/" + id);
        return removals.remove(thing, "/classes", () -> {
            ledger.reserve(id, Map.of(), "Released, as the class was removed");
            craftClass.delete();
        });
    }

    /** One class on its page. */
    private final class Bench {
        private final CraftClass craftClass;
        private final SpecReader<ClassSetup> reader;
        private final JsonNode stored;

        Bench(CraftClass craftClass) {
            this.craftClass = craftClass;
            this.reader = SetupRules.reader(craftClass.project().toSpec());
            this.stored = reader.written(craftClass.setup());
        }

        SpecReader.Reading<ClassSetup> reading(WhatIf whatIf) {
            return reader.tree(whatIf.over(new FormTree(reader.schema()), stored));
        }

        SpecForm form() {
            return SpecForm.of(stored, craftClass.version());
        }

        /** @param kept the change that can be taken back; null where there is none */
        TemplateInstance page(SpecForm form, Trial kept) {
            ClassFile file = plans.file(craftClass);
            advice.keepOnlyFor(craftClass, file);
            ClassPlan plan = plan(file);
            return Templates.show(new PlanView(craftClass, file, plan, wishes(file, plan), form, null, kept, proof(file, plan), experience.of(craftClass, file, plan.lesson())));
        }

        /** What can't be tried any more is told in the form. */
        TemplateInstance trial(WhatIf whatIf) {
            SpecReader.Reading<ClassSetup> reading = reading(whatIf);
            if (reading instanceof SpecReader.Faulty<ClassSetup> faulty) {
                return page(SpecForm.faulty(faulty.tree(), faulty.faults(), craftClass.version()), null);
            }
            ClassSetup setup = ((SpecReader.Read<ClassSetup>) reading).sheet();
            List<Difference> changes = Difference.between(stored, reader.written(setup));
            ClassFile file = plans.file(craftClass).with(setup);
            if (changes.isEmpty()) {
                return page(form(), null);
            }
            ClassPlan plan = plan(file);
            return Templates.show(new PlanView(craftClass, file, plan, wishes(file, plan), SpecForm.of(reading.tree(), craftClass.version()), Trial.of(whatIf, changes, file.project()), null, proof(file, plan),
                    experience.of(craftClass, file, plan.lesson())));
        }

        Trial kept(WhatIf undo) {
            List<Difference> changes = Difference.between(undo.over(new FormTree(reader.schema()), stored), stored);
            return changes.isEmpty() ? null : Trial.of(undo, changes, craftClass.project().toSpec());
        }

        private Proof proof(ClassFile file, ClassPlan plan) {
            if (plan.lesson() == null) {
                return null;
            }
            Proof own = plan.lesson().proof();
            return own.isShortest() ? own : searches.proof(craftClass.id(), file, plan.lesson()).orElse(own);
        }

        private OwnWishes wishes(ClassFile file, ClassPlan plan) {
            return plan.lesson() == null ? null : OwnWishes.of(file, plan.lesson(), plans);
        }

        private ClassPlan plan(ClassFile file) {
            return plans.plan(file);
        }
    }
}
