package benchful.projects;

import benchful.core.SkillLevel;
import io.quarkus.qute.TemplateData;

/** A project as a line of a list to choose from. */
@TemplateData
public record ProjectLine(Long id, String name, String craft, SkillLevel level, boolean sample) {}
