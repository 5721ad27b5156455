package benchful.reviews;

import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import java.util.List;

/** A review that takes a sheet from its form. */
record ReviewTarget(Review review) implements SpecPost.Target<ReviewSpec> {

    @Override
    public long version() {
        return review.version();
    }

    @Override
    public ReviewSpec stored() {
        return review.sheet();
    }

    @Override
    public List<Fault> faults(ReviewSpec sheet) {
        return List.of();
    }

    @Override
    public String save(ReviewSpec sheet) {
        review.replace(sheet);
        review.persistAndFlush();
        return "/classes/" + review.craftClass().id() + "/review";
    }
}
