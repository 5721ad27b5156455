package benchful.findings;

import benchful.projects.ProjectSpec;

/** Something of a project's sheet: the minutes of a step, the calls for help at it, what spoils of a material, or how long a level takes. */
public sealed interface ForSheet extends Learned permits StepFinding, HelpFinding, MaterialFinding, LevelFinding {

    /** The project with what is proposed. */
    ProjectSpec in(ProjectSpec project);
}
