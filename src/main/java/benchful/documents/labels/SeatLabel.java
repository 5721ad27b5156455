package benchful.documents.labels;

/**
 * What the label of a place at the bench says, before it is fitted.
 *
 * @param name the student's, or "Student 5"
 * @param seat "Seat 3"; empty where seats have no numbers
 * @param piece the size and the project's name
 */
record SeatLabel(String name, String seat, String piece) {}
