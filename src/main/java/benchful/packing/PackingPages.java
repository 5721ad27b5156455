package benchful.packing;

import benchful.catalogue.Overdrawn;
import benchful.classes.CraftClass;
import benchful.plans.stored.PlanService;
import benchful.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Packing the kits of a class and ticking them off. */
@Path("/classes/{id: \\d+}/packing")
@Produces(MediaType.TEXT_HTML)
class PackingPages {
    /** What stands for every box where a box's number may stand. */
    private static final String ALL = "all";

    private final Packer packer;
    private final PlanService plans;

    PackingPages(Packer packer, PlanService plans) {
        this.packer = packer;
        this.plans = plans;
    }

    @CheckedTemplate(basePath = "packing")
    static class Templates {
        static native TemplateInstance show(long id, String title, PackingList list, List<Overdrawn> overdrawn);

        private Templates() {}
    }

    @GET
    public TemplateInstance show(@PathParam("id") long id) {
        return plans.before(id, plans::needs, () -> shown(id));
    }

    private TemplateInstance shown(long id) {
        CraftClass craftClass = Pages.existing(CraftClass.class, id);
        PackingList list = packer.list(craftClass);
        return Templates.show(id, craftClass.title(), list, Overdrawn.among(list.materials()));
    }

    /**
     * Follows only what the packer changed in any box of the form: what was ticked and is not any more is put back, what was
     * not and is now is packed. What somebody else ticked meanwhile stays. A tick that is sent by itself, as it is made, is a
     * form of one box that holds nothing else.
     */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return plans.before(id, plans::materials, () -> updated(id, form));
    }

    private Response updated(long id, MultivaluedMap<String, String> form) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        List<String> kits = form.getOrDefault("kit", List.of());
        packer.change(craftClass, IntStream.rangeClosed(1, kits.size()).mapToObj(number -> changed(kits.get(number - 1), number, form)).toList());
        return Pages.seeOther("/classes/" + id + "/packing" + place(Stream.of("whole", "none", "place").map(form::getFirst).filter(Objects::nonNull).findFirst().orElse("")));
    }

    /** @param number of the box on the form, which its fields' names end in */
    private static BoxChange changed(String kit, int number, MultivaluedMap<String, String> form) {
        if (Set.of(String.valueOf(number), ALL).contains(String.valueOf(form.getFirst("whole")))) {
            return BoxChange.whole(kit);
        }
        List<String> was = Optional.ofNullable(form.getFirst("was-" + number)).map(lines -> lines.lines().toList()).orElse(List.of());
        if (String.valueOf(number).equals(form.getFirst("none"))) {
            return BoxChange.of(kit, List.of(), was);
        }
        List<String> ticked = form.getOrDefault("ticked-" + number, List.of());
        return BoxChange.of(kit, without(ticked, was), without(was, ticked));
    }

    private static List<String> without(List<String> all, List<String> some) {
        return all.stream().filter(m -> !some.contains(m)).toList();
    }

    private static String place(String place) {
        return Pages.number(place).map(n -> "#box-" + n).orElse("");
    }
}
