package benchful.plans.pages;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;

import benchful.SampleData;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.web.Visitor;
import benchful.web.tasks.Asker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.net.Socket;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Pages while something is worked out, fails, or is waited for by nobody. One class has a number of students that no other has. */
@QuarkusTest
@Timeout(120)
class ComputingPagesTest {
    private static int unlike = 20;

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    EntityManager database;

    private long id;
    private int headcount;
    private Visitor tutor;

    @BeforeEach
    void oneClassOfItsOwn() {
        data.onlySamples();
        id = data.classTitled("Knotted strand, Saturday");
        headcount = unlike++;
        QuarkusTransaction.requiringNew().run(() -> database.createNativeQuery("update craft_class set setup = jsonb_set(setup, '{headcount}', cast(cast(:n as text) as jsonb)) where id = :id")
                .setParameter("n", headcount).setParameter("id", id).executeUpdate());
        tutor = new Visitor(address);
    }

    /** Before it plans this class; others are planned as ever. */
    private void whilePlanning(Consumer<LessonRequest> what) {
        LessonPlanner real = new SolverPlanner();
        QuarkusMock.installMockForType((LessonPlanner) request -> {
            if (request.headcount() == headcount) {
                what.accept(request);
            }
            return real.plan(request);
        }, LessonPlanner.class);
    }

    @Test
    void showsTheOthersWhereTheProgramFailsAtOneClass() {
        for (Throwable failure : List.of(new IllegalStateException("java.lang.Oops"), new StackOverflowError(), new OutOfMemoryError("Java heap space"))) {
            whilePlanning(request -> ComputingPagesTest.<RuntimeException>raise(failure));
            assertThat(tutor.open("/").status()).isEqualTo(200);
            assertThat(tutor.rows("table")).anyMatch(r -> r.contains("“Knotted strand, Saturday afternoon” can’t be worked out")).anyMatch(r -> r.contains("Order from"));
            tutor.open("/classes/" + id);
            assertThat(tutor.status()).isEqualTo(200);
            assertThat(tutor.page().text()).contains("It can’t be planned now").doesNotContain("Oops").doesNotContain("java.lang");
            assertThat(tutor.page().select("button").eachText()).contains("Remove this class");
            List.of("/documents", "/review", "/suggestions", "/comparison").forEach(page ->
                    assertThat(tutor.open("/classes/" + id + page).status()).as(page).isLessThan(500));
            assertThat(tutor.open("/orders/new").status()).isEqualTo(200);
        }
    }

    @Test
    void answersProgramsWithAReferenceWhereItFails() {
        byte[] file = tutor.open("/classes/" + id + "/file").bytes();
        whilePlanning(request -> ComputingPagesTest.<RuntimeException>raise(new IllegalStateException("java.lang.Oops")));
        given().contentType("application/yaml").body(file).when().post("/api/plan").then().statusCode(422).body("detail", containsString("reference"));
    }

    @Test
    void holdsNoConnectionWhileItWorksOut() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        whilePlanning(request -> {
            begun.countDown();
            await(go);
        });
        ExecutorService visitors = Executors.newFixedThreadPool(40);
        try {
            List<CompletableFuture<Integer>> waiting = IntStream.range(0, 40)
                    .mapToObj(i -> CompletableFuture.supplyAsync(() -> new Visitor(address).open("/classes/" + id).status(), visitors)).toList();
            await(begun);
            TimeUnit.SECONDS.sleep(2);
            assertThat(tutor.open("/suppliers").status()).as("a page that works nothing out").isEqualTo(200);
            assertThat(waiting).as("all still wait").noneMatch(CompletableFuture::isDone);
            go.countDown();
            assertThat(waiting).extracting(CompletableFuture::join).containsOnly(200);
        } finally {
            go.countDown();
            visitors.shutdownNow();
        }
    }

    @Test
    void endsTheWorkWhenTheClientHasGone() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch ended = new CountDownLatch(1);
        whilePlanning(request -> {
            begun.countDown();
            try {
                while (true) {
                    Asker.check();
                    TimeUnit.MILLISECONDS.sleep(20);
                }
            } catch (CancellationException givenUp) {
                ended.countDown();
                throw givenUp;
            } catch (InterruptedException e) {
                throw new CancellationException("interrupted");
            }
        });
        try (Socket browser = new Socket(address.getHost(), address.getPort())) {
            ask(browser, "/classes/" + id);
            assertThat(begun.await(30, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(ended.await(10, TimeUnit.SECONDS)).as("given up").isTrue();
        whilePlanning(request -> { });
        assertThat(tutor.open("/classes/" + id).page().select("#fit-answer").text()).as("planned for whoever comes next").isNotEmpty();
    }

    private void ask(Socket browser, String path) throws IOException {
        browser.getOutputStream().write("GET %s HTTP/1.1\r\nHost: %s:%d\r\n\r\n".formatted(path, address.getHost(), address.getPort()).getBytes(StandardCharsets.US_ASCII));
        browser.getOutputStream().flush();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @SuppressWarnings("unchecked")
    private static <T extends Throwable> void raise(Throwable failure) throws T {
        throw (T) failure;
    }
}
