package benchful.findings;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;

/** Something that each class of a project has for itself, so that the next one is asked about it. */
public sealed interface ForClass extends Learned permits BreakFinding, ToolFinding {

    /** The class with what is proposed; as it is where that does not concern it, or does not fit in. */
    ClassSetup in(ClassFile file);

    /** The same as it concerns this class. */
    ForClass of(ClassFile file);
}
