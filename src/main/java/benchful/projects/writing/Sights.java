package benchful.projects.writing;

import benchful.projects.ProjectSpec;

/** Shows what a project prints as. Print-outs answer it, so that what is seen while writing is what is printed. */
public interface Sights {
    /**
     * Nothing is stored. Ends early where nobody waits for it any more.
     *
     * @param whole with the contents of its pictures
     * @param size of the project; another, or none, stands for the first
     */
    Preview.Sight of(ProjectSpec whole, String size);
}
