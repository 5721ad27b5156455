package benchful.documents.paper;

/**
 * How a print-out is wanted.
 *
 * @param eachStudent handouts: one for each student, with name, own size and own texts; else one for each size
 * @param labels where labels are stuck
 * @param address the address under which phones reach the class's handouts, no slash at the end; null for no codes
 */
public record PrintOptions(Paper paper, Version version, boolean eachStudent, LabelSetting labels, String address) {}
