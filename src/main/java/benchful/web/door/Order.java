package benchful.web.door;

/** In which order requests pass what stands before the pages; higher comes first. The platform's own limit of size has 2. */
final class Order {
    static final int HEADERS = 300;
    static final int DOOR = 200;
    static final int SIZE = 100;
    static final int AFTER_PLATFORM = 1;

    private Order() {}
}
