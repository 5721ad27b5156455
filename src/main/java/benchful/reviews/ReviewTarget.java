package benchful.reviews;

import benchful.core.Fault;
import benchful.web.forms.SheetPost;
import java.util.List;

/** A review that takes a sheet from its form. */
record ReviewTarget(Review review) implements SheetPost.Target<ReviewSheet> {

    @Override
    public long version() {
        return review.version();
    }

    @Override
    public ReviewSheet stored() {
        return review.sheet();
    }

    @Override
    public List<Fault> faults(ReviewSheet sheet) {
        return List.of();
    }

    @Override
    public String save(ReviewSheet sheet) {
        review.replace(sheet);
        review.persistAndFlush();
        return "/classes/" + review.craftClass().id() + "/review";
    }
}
