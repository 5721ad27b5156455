package benchful.documents.handout;

import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassSetup;
import benchful.core.SkillLevel;
import benchful.core.needs.Take;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.plans.materials.kits.Kit;
import benchful.projects.MaterialLine;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** For whom handouts are printed: each student, or anybody who makes a size. */
public final class Readers {
    private Readers() {}

    /** Where the handout of a kit is found under the class's address. */
    public static String path(Kit kit) {
        return "/handout.pdf?kit=" + kit.number();
    }

    /** One for each kit that somebody takes home; left-handed texts and large print for those who asked. */
    public static List<Handouts.Reader> eachKit(PrintSource source, Version version) {
        return source.needs().kits().stream().filter(kit -> kit.taker() == Take.Taker.STUDENT).map(kit -> of(source, kit, version)).toList();
    }

    /** For one kit, whoever it is for. */
    public static Handouts.Reader of(PrintSource source, Kit kit, Version version) {
        ClassSetup.Student student = student(source, kit);
        boolean leftHanded = student != null && Boolean.TRUE.equals(student.leftHanded());
        boolean large = student != null && Boolean.TRUE.equals(student.largePrint());
        String seat = kit.seat() == null ? "" : ", seat " + kit.seat();
        return new Handouts.Reader(kit.title() + seat, kit.size(), kit.contents(), kit.bench(), level(source, student), leftHanded, large ? Version.LARGE : version, path(kit));
    }

    /** One for each size, for anybody: the contents are the first such kit's, its choices left open. */
    public static List<Handouts.Reader> eachSize(PrintSource source, Version version) {
        Map<String, Handouts.Reader> readers = new LinkedHashMap<>();
        for (Kit kit : source.needs().kits()) {
            readers.putIfAbsent(kit.size(), new Handouts.Reader("", kit.size(), open(source, kit, kit.contents()), open(source, kit, kit.bench()), level(source, null),
                    false, version, path(kit)));
        }
        return List.copyOf(readers.values());
    }

    private static List<Kit.Content> open(PrintSource source, Kit kit, List<Kit.Content> contents) {
        return contents.stream().map(content -> open(source, kit, content)).toList();
    }

    /** Where another material was chosen, the project's own stands for the choice; where kits of the size have different variants, what they are variants of. */
    private static Kit.Content open(PrintSource source, Kit kit, Kit.Content content) {
        return content.choice() == null ? content : new Kit.Content(named(source, kit, content), content.amount(), content.pieces(), content.each(), content.rectangle(), content.choice(), null,
                content.insteadOf(), content.note());
    }

    private static String named(PrintSource source, Kit kit, Kit.Content content) {
        Set<String> variants = variants(source, content.material());
        long had = source.needs().kits().stream().filter(other -> Objects.equals(other.size(), kit.size()))
                .flatMap(other -> Stream.concat(other.contents().stream(), other.bench().stream())).map(Kit.Content::material).filter(variants::contains).distinct().count();
        String material = had > 1 ? whole(source, content.material()) : content.material();
        return source.file().project().materials().stream().filter(line -> line.offered().contains(material)).map(MaterialLine::material).findFirst().orElse(material);
    }

    /** The names of all variants of what this is a variant of. */
    private static Set<String> variants(PrintSource source, String material) {
        String whole = whole(source, material);
        return source.file().materials().stream().filter(each -> whole.equals(each.variantOf())).map(MaterialSpec::name).collect(Collectors.toSet());
    }

    private static String whole(PrintSource source, String material) {
        return source.file().materials().stream().filter(each -> each.name().equals(material) && each.variantOf() != null).map(MaterialSpec::variantOf).findFirst().orElse(material);
    }

    private static SkillLevel level(PrintSource source, ClassSetup.Student student) {
        return student == null || student.level() == null ? source.file().setup().level() : student.level();
    }

    /** What is known of the student a kit is for; null for anybody. */
    public static ClassSetup.Student student(PrintSource source, Kit kit) {
        return source.file().setup().students().stream()
                .filter(student -> student.name() != null && student.name().equals(kit.name())).findFirst().orElse(null);
    }
}
