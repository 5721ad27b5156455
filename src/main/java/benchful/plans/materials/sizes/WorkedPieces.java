package benchful.plans.materials.sizes;

import benchful.projects.PieceWorking;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.stream.Collectors;

/** Lets project pages show a piece as plans work it out. */
@ApplicationScoped
class WorkedPieces implements PieceWorking {
    @Override
    public Piece work(ProjectSpec project, Size size) {
        SizedPiece piece = PieceSizer.size(project, size);
        return new Piece(
                piece.values(),
                piece.lines().stream().collect(Collectors.toMap(SizedPiece.Line::line, l -> new Amount(l.each(), l.pieces(), l.rectangle()))),
                piece.repeats(),
                piece.faults());
    }
}
