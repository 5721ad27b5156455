package benchful.findings;

import benchful.projects.ProjectSpec;

/** What classes showed of one thing that stands in a project: the minutes of a step, the calls for help at it, what spoils of a material, or how long a level takes. */
public sealed interface Learned permits StepFinding, HelpFinding, MaterialFinding, LevelFinding {

    /** Tells it from all others of its project: a step's short name, or {@code help:}, {@code material:} or {@code level:} and a name. */
    String key();

    String title();

    /** As it stands in the project. */
    Setting now();

    Setting proposed();

    /** The reviews that it comes from, each with its version. */
    String evidence();

    int classes();

    /** Whether what is proposed differs so much from what stands in the project that it should be changed there. */
    boolean differs();

    /** Whether the tutor refused just this and nothing new is known. */
    boolean refused();

    default boolean open() {
        return differs() && !refused();
    }

    /** The project with what is proposed. */
    ProjectSpec in(ProjectSpec project);
}
