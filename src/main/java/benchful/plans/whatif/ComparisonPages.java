package benchful.plans.whatif;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.CraftClass;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.plans.ClassPlan;
import benchful.plans.pictures.PlanPicture;
import benchful.plans.stored.PlanService;
import benchful.web.Pages;
import benchful.web.door.Costly;
import benchful.web.forms.Difference;
import benchful.web.forms.FormTree;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A class as it is and up to three what-ifs, side by side; nothing is stored until one is taken. */
@Path("/classes/{id: \\d+}/comparison")
@Produces(MediaType.TEXT_HTML)
class ComparisonPages {
    private static final int MOST = 3;

    private final PlanService plans;

    ComparisonPages(PlanService plans) {
        this.plans = plans;
    }

    @CheckedTemplate(basePath = "plans")
    static class Templates {
        static native TemplateInstance comparison(Comparison page);

        private Templates() {}
    }

    /** @param with what-ifs as {@link WhatIf#sent}; one with a fault is named with it and left out */
    @GET
    @Costly
    public TemplateInstance show(@PathParam("id") long id, @QueryParam("with") List<String> with) {
        Table table = new Table(existing(id));
        return table.page(whatIfs(with), null);
    }

    /** One more what-if, from fields typed. */
    @POST
    @Costly
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response add(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        Table table = new Table(existing(id));
        List<WhatIf> before = whatIfs(typed.getOrDefault("with", List.of()));
        WhatIf one = WhatIf.typed(typed, table.stored);
        SpecReader.Reading<ClassSetup> reading = table.reading(one);
        if (reading instanceof SpecReader.Faulty<ClassSetup> faulty) {
            return Pages.faulty(table.page(before, SpecForm.faulty(faulty.tree(), faulty.faults(), table.craftClass.version())));
        }
        return Pages.seeOther("/classes/" + id + "/comparison?" + query(Stream.concat(before.stream(), Stream.of(one)).toList()));
    }

    /** The last few, so that one more pushes the oldest out. */
    private static List<WhatIf> whatIfs(List<String> sent) {
        List<WhatIf> whatIfs = sent.stream().map(WhatIf::read).filter(w -> !w.fields().isEmpty()).distinct().toList();
        return whatIfs.subList(Math.max(0, whatIfs.size() - MOST), whatIfs.size());
    }

    private static String query(List<WhatIf> whatIfs) {
        return whatIfs.stream().map(w -> "with=" + w.inAddress()).collect(Collectors.joining("&"));
    }

    private CraftClass existing(long id) {
        return plans.craftClass(id).orElseThrow(NotFoundException::new);
    }

    /** One class's comparison in the making. */
    private final class Table {
        private final CraftClass craftClass;
        private final ClassFile file;
        private final SpecReader<ClassSetup> reader;
        private final JsonNode stored;

        Table(CraftClass craftClass) {
            this.craftClass = craftClass;
            this.file = plans.file(craftClass);
            this.reader = SetupRules.reader(file.project());
            this.stored = reader.written(craftClass.setup());
        }

        SpecReader.Reading<ClassSetup> reading(WhatIf whatIf) {
            return reader.tree(over(whatIf));
        }

        private ObjectNode over(WhatIf whatIf) {
            return whatIf.over(new FormTree(reader.schema()), stored);
        }

        /** @param form null for a fresh one */
        TemplateInstance page(List<WhatIf> whatIfs, SpecForm form) {
            List<Comparison.Column> columns = new ArrayList<>();
            columns.add(column("As it is", null, List.of(), file));
            List<Fault> faults = new ArrayList<>();
            for (WhatIf whatIf : whatIfs) {
                SpecReader.Reading<ClassSetup> reading = reading(whatIf);
                if (reading instanceof SpecReader.Read<ClassSetup> read) {
                    columns.add(column("What if " + columns.size(), whatIf, changes(read.sheet()), file.with(read.sheet())));
                } else {
                    faults.addAll(((SpecReader.Faulty<ClassSetup>) reading).faults());
                }
            }
            SpecForm fresh = SpecForm.faulty(stored, faults, craftClass.version());
            return Templates.comparison(new Comparison(craftClass, columns, form == null ? fresh : form));
        }

        private List<Difference> changes(ClassSetup setup) {
            return Difference.between(stored, reader.written(setup));
        }

        private Comparison.Column column(String name, WhatIf whatIf, List<Difference> changes, ClassFile other) {
            ClassPlan plan = plans.plan(other);
            String picture = plan.lesson() == null ? "" : PlanPicture.of(plan.timing()).sized(640, 13).named(name.replace(' ', '-')).svg();
            return new Comparison.Column(name, whatIf, changes, plan, picture);
        }
    }
}
