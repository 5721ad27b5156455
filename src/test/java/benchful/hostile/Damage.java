package benchful.hostile;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.SplittableRandom;

/** Damages a good file as disks, torn connections and unfriendly people do: one to three times, the same for the same seed. */
final class Damage {
    private Damage() {}

    static byte[] of(byte[] good, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] damaged = good;
        for (int times = random.nextInt(1, 4); times > 0; times--) {
            damaged = once(damaged, random);
        }
        return damaged;
    }

    private static byte[] once(byte[] bytes, SplittableRandom random) {
        int from = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, from + random.nextInt(1, 200));
        return switch (random.nextInt(7)) {
            case 0 -> Arrays.copyOf(bytes, from);
            case 1 -> joined(Arrays.copyOf(bytes, from), Arrays.copyOfRange(bytes, to, bytes.length));
            case 2 -> joined(Arrays.copyOf(bytes, to), Arrays.copyOfRange(bytes, from, bytes.length));
            case 3 -> joined(bytes, noise(random));
            case 4 -> joined(Arrays.copyOf(bytes, from), noise(random), Arrays.copyOfRange(bytes, to, bytes.length));
            default -> flipped(bytes, random);
        };
    }

    private static byte[] noise(SplittableRandom random) {
        byte[] noise = new byte[random.nextInt(1, 300)];
        random.nextBytes(noise);
        return noise;
    }

    private static byte[] flipped(byte[] bytes, SplittableRandom random) {
        byte[] flipped = bytes.clone();
        for (int i = 0; i < 4 && flipped.length > 0; i++) {
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return flipped;
    }

    static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }
}
