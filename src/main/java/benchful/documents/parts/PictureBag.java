package benchful.documents.parts;

import benchful.documents.paper.Version;
import benchful.documents.pdf.Manuscript;
import benchful.projects.pictures.Picture;
import benchful.web.phones.SquareCode;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** The pictures that a manuscript uses, gathered while it is filled. */
public final class PictureBag {
    private final Map<String, byte[]> pictures = new LinkedHashMap<>();

    private final Version version;

    public PictureBag(Version version) {
        this.version = version;
    }

    /** Takes up a drawing and answers the name to use it under. */
    public String drawing(String name, String svg) {
        return put(name + ".svg", thrifty() ? LowInk.drawing(svg) : svg);
    }

    /** A sign of ISO 7010 or a pictogram of the GHS. */
    String sign(String code, String svg) {
        return put("sign-" + code + ".svg", thrifty() ? LowInk.sign(svg) : svg);
    }

    public String code(String name, String address) {
        return put(name + ".png", SquareCode.png(address));
    }

    /** A picture of the project, right-sized for paper; without content where it can't be drawn safely, so that it is left out. */
    public String picture(Picture picture) {
        String ending = switch (picture.mediaType()) {
            case "image/svg+xml" -> ".svg";
            case "image/png" -> ".png";
            default -> ".jpg";
        };
        String name = Manuscript.OF_PROJECT + picture.name() + ending;
        return pictures.containsKey(name) ? name : put(name, picture.drawable().map(PrintPictures::sized).orElse(new byte[0]));
    }

    public Map<String, byte[]> all() {
        return pictures;
    }

    /** The same in dots: drawn once, it is printed on hundreds of labels. */
    public String stampedSign(String code, String svg) {
        String name = "sign-" + code + ".png";
        return pictures.containsKey(name) ? name : put(name, Stamps.png(thrifty() ? LowInk.sign(svg) : svg));
    }

    private boolean thrifty() {
        return version == Version.LOW_INK;
    }

    private String put(String name, String svg) {
        return put(name, svg.getBytes(StandardCharsets.UTF_8));
    }

    private String put(String name, byte[] content) {
        pictures.put(name, content);
        return name;
    }
}
