package benchful.documents;

import benchful.assessments.AssessmentPrint;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.needs.Take;
import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.HazardNotes;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.PdfReading;
import benchful.hazards.LibraryFile;
import benchful.plans.ClassPlan;
import benchful.plans.ComputedPlans;
import benchful.plans.HazardIndex;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.Requirements;
import benchful.plans.materials.kits.Kit;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import benchful.projects.pictures.Picture;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.Engine;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.ReflectionValueResolver;
import io.quarkus.qute.TemplateLocator;
import io.quarkus.qute.Variant;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The sample classes as print-outs see them, read from their files without the program around them. */
public final class PrintSamples {
    private static final Path SAMPLES = Path.of("sample-classes");

    private PrintSamples() {}

    /** The templates, read from the class path. */
    public static PrintTemplates templates() {
        return new PrintTemplates(Engine.builder()
                .addDefaults()
                .addValueResolver(new ReflectionValueResolver())
                .addResultMapper(new HtmlEscaper(List.of("text/html")))
                .addLocator(PrintSamples::template)
                .build());
    }

    private static Optional<TemplateLocator.TemplateLocation> template(String id) {
        String name = "templates/" + (id.endsWith(".html") ? id : id + ".html");
        InputStream in = PrintSamples.class.getClassLoader().getResourceAsStream(name);
        return in == null ? Optional.empty() : Optional.of(new TemplateLocator.TemplateLocation() {
            @Override
            public Reader read() {
                return new InputStreamReader(in, StandardCharsets.UTF_8);
            }

            @Override
            public Optional<Variant> getVariant() {
                return Optional.of(Variant.forContentType("text/html"));
            }
        });
    }

    public static ClassFile strand() {
        return file("classes/knotted-strand-saturday.yaml", "projects/knotted-strand.yaml", "venues/boatshed-studio.yaml");
    }

    /** One class of each sample project: the files of class, project and venue. */
    public static List<List<String>> all() {
        return Stream.concat(Stream.of(List.of("classes/knotted-strand-saturday.yaml", "projects/knotted-strand.yaml", "venues/boatshed-studio.yaml")), others().stream()).toList();
    }

    /** One class of each other sample project: the files of class, project and venue. */
    public static List<List<String>> others() {
        return List.of(
                List.of("classes/card-holders-saturday.yaml", "projects/stitched-card-holder.yaml", "venues/boatshed-studio.yaml"),
                List.of("classes/family-bracelets-sunday.yaml", "projects/stretch-bracelet.yaml", "venues/village-hall.yaml"),
                List.of("classes/plant-hangers-sunday.yaml", "projects/macrame-hanger.yaml", "venues/village-hall.yaml"),
                List.of("classes/resin-pendants-two-evenings.yaml", "projects/resin-pendant.yaml", "venues/boatshed-studio.yaml"),
                List.of("classes/riveted-bookmark-day.yaml", "projects/riveted-bookmark.yaml", "venues/boatshed-studio.yaml"),
                List.of("classes/wire-earrings-evening.yaml", "projects/coiled-wire-earrings.yaml", "venues/boatshed-studio.yaml"),
                List.of("classes/leaf-print-dishes-two-evenings.yaml", "projects/leaf-print-dish.yaml", "venues/boatshed-studio.yaml"),
                List.of("classes/pamphlet-notebooks-saturday.yaml", "projects/pamphlet-notebook.yaml", "venues/village-hall.yaml"));
    }

    /** As {@link #source}, with the pictures of its project. */
    public static PrintSource source(List<String> files) {
        return source(file(files.get(0), files.get(1), files.get(2)), files.get(1).replaceAll("projects/|\\.yaml", ""));
    }

    public static ClassFile file(String klass, String project, String venue) {
        try {
            ObjectNode whole = SpecFormat.yaml().createObjectNode();
            whole.set("project", tree(project));
            whole.set("class", tree(klass).get("class"));
            whole.set("venue", tree(venue));
            JsonNode catalogue = tree("catalogue.yaml");
            whole.set("materials", catalogue.get("materials"));
            whole.set("suppliers", catalogue.get("suppliers"));
            return SpecFormat.yaml().treeToValue(whole, ClassFile.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode tree(String name) throws IOException {
        return SpecFormat.yaml().readTree(Files.readString(SAMPLES.resolve(name)));
    }

    public static PrintSource source(ClassFile file, String pictures) {
        return new PrintSource(file, ComputedPlans.of(file), pictures(file, pictures), HazardNotes.of(LibraryFile.byId().values()),
                AssessmentPrint.draft(file, List.copyOf(LibraryFile.byId().values().stream().filter(h -> HazardIndex.withRoom(file).ids().contains(h.id())).toList())));
    }

    /** The project of these files without its class: one piece of each size. */
    public static PrintSource alone(List<String> files) {
        PrintSource taught = source(files);
        ProjectSpec project = taught.file().project();
        Map<String, Integer> sizes = project.sizes().stream().collect(Collectors.toMap(Size::name, size -> 1));
        ClassFile nobody = new ClassFile(project, ClassSetup.plain(null, List.of(), sizes.size(), project.level(), sizes, "GBP"), null, taught.file().materials(), List.of());
        return new PrintSource(nobody, new KitsAlone(Requirements.of(nobody)), taught.pictures(), taught.hazards(), null);
    }

    private static Map<String, Picture> pictures(ClassFile file, String folder) {
        return file.project().pictures().stream().map(picture -> loaded(picture, folder)).collect(Collectors.toMap(Picture::name, p -> p));
    }

    private static Picture loaded(Picture picture, String folder) {
        try {
            byte[] content = Files.readAllBytes(SAMPLES.resolve("pictures").resolve(folder).resolve(picture.name() + ".svg"));
            return new Picture(picture.name(), picture.mediaType(), picture.alt(), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static PdfReading printed(PrintOut what, PrintSource source, PrintOptions options) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new DocumentService(templates()).write(what, source, options, out);
        return PdfReading.of(out.toByteArray());
    }

    /** The same class with this many kits. */
    static PrintSource many(PrintSource source, int count) {
        MaterialsPlan m = source.materials();
        List<Kit> kits = IntStream.rangeClosed(1, count).mapToObj(i -> {
            Kit kit = m.kits().get((i - 1) % m.kits().size());
            return new Kit(i, Take.Taker.STUDENT, kit.title() + " " + i, kit.name(), String.valueOf(i), kit.size(), kit.contents(), kit.bench(), kit.mass());
        }).toList();
        return new PrintSource(source.file(), ClassPlan.of(source.plan().timing(), m.withKits(kits), source.plan().advice()), source.pictures(), source.hazards(), null);
    }

    static byte[] labels(PrintSource source, int kits, LabelSetting setting) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintOptions options = new PrintOptions(setting.sheet().paper(), Version.NORMAL, false, setting, null);
        new DocumentService(templates()).write(PrintOut.LABELS, many(source, kits), options, out);
        return out.toByteArray();
    }
}
