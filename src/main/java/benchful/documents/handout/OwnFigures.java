package benchful.documents.handout;

import benchful.core.quantity.Quantity;
import benchful.documents.parts.Amounts;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.ProjectSpec;
import benchful.projects.pictures.Picture;
import benchful.web.Blanks;
import benchful.web.Formats;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** What the blanks of texts and drawings stand for in the reader's own piece. */
final class OwnFigures {
    private static final String UNKNOWN = "–";

    private final ProjectSpec project;
    private final SizedPiece piece;
    private final Amounts amounts;

    OwnFigures(ProjectSpec project, SizedPiece piece, Amounts amounts) {
        this.project = project;
        this.piece = piece;
        this.amounts = amounts;
    }

    String in(String text) {
        return Blanks.filled(text, this::of);
    }

    Picture in(Picture picture) {
        if (!picture.mediaType().equals("image/svg+xml")) {
            return picture;
        }
        String drawn = Blanks.drawn(new String(picture.content(), StandardCharsets.UTF_8), this::of);
        return new Picture(picture.name(), picture.mediaType(), in(picture.alt()), drawn.getBytes(StandardCharsets.UTF_8));
    }

    private Optional<String> of(String blank) {
        return project.valueNamed(blank).map(name -> Optional.ofNullable(piece.values().get(name)).map(amounts::words).orElse(UNKNOWN))
                .or(() -> Optional.of(project.linesNamed(blank)).filter(lines -> !lines.isEmpty()).map(this::taken));
    }

    private String taken(List<Integer> lines) {
        List<String> words = piece.lines().stream().filter(line -> lines.contains(line.line())).map(this::words).toList();
        return words.isEmpty() ? "none" : String.join(" and ", words);
    }

    private String words(SizedPiece.Line line) {
        Quantity each = line.each().measurable();
        if (line.rectangle() != null) {
            return Formats.several(line.pieces() == null ? 1 : line.pieces(), amounts.words(line.rectangle()));
        }
        return line.pieces() == null || line.pieces() == 1 ? amounts.words(each) : "%d × %s".formatted(line.pieces(), amounts.words(each));
    }
}
