package benchful.bin;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;

/** Forgets what was removed or saved over thirty days ago, when the program starts and once a day. */
@ApplicationScoped
class BinSweep {
    private final Bin bin;
    private final EarlierVersions earlier;

    BinSweep(Bin bin, EarlierVersions earlier) {
        this.bin = bin;
        this.earlier = earlier;
    }

    @Scheduled(every = "24h", delayed = "1m")
    void sweep() {
        bin.sweep();
        earlier.sweep();
    }
}
