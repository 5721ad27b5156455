package benchful.backups.archive;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream that ends after so many bytes, whatever would follow. */
final class Bounded extends FilterInputStream {
    private long left;

    Bounded(InputStream in, long most) {
        super(in);
        this.left = most;
    }

    @Override
    public int read() throws IOException {
        int read = left > 0 ? super.read() : -1;
        left -= read < 0 ? 0 : 1;
        return read;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int read = left > 0 ? super.read(bytes, from, (int) Math.min(length, left)) : -1;
        left -= Math.max(read, 0);
        return read;
    }
}
