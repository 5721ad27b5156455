package benchful.bin;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;

/** Empties the bin of what is thirty days old, when the program starts and once a day. */
@ApplicationScoped
class BinSweep {
    private final Bin bin;

    BinSweep(Bin bin) {
        this.bin = bin;
    }

    @Scheduled(every = "24h")
    void sweep() {
        bin.sweep();
    }
}
