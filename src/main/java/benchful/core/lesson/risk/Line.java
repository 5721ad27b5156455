package benchful.core.lesson.risk;

/** Students in a line, first come first served. */
final class Line {

    private final int[] students;
    private int size;

    Line(int capacity) {
        students = new int[capacity];
    }

    void clear() {
        size = 0;
    }

    boolean isEmpty() {
        return size == 0;
    }

    int size() {
        return size;
    }

    int get(int place) {
        return students[place];
    }

    void add(int student) {
        students[size++] = student;
    }

    /** Takes a student out who may stand in it. */
    void remove(int student) {
        for (int i = size - 1; i >= 0; i--) {
            if (students[i] == student) {
                take(i);
            }
        }
    }

    int take(int place) {
        int student = students[place];
        System.arraycopy(students, place + 1, students, place, --size - place);
        return student;
    }
}
