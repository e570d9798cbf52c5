package org.stillroom.studio.recipefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Files damaged at random are read or refused; nothing else happens. */
class RecipeFuzzTest {
    private static final int CASES = Boolean.getBoolean("stillroom.long") ? 20_000 : 200;
    private static final byte[] LIKELY = ":,{}[]\"'#&*!|>%@`-? \n\t\r0159.~\\é".getBytes(StandardCharsets.UTF_8);

    private final List<byte[]> originals = Examples.files().stream()
            .map(file -> Examples.text(file).getBytes(StandardCharsets.UTF_8))
            .toList();

    @Test
    @Tag("property")
    void aDamagedFileIsReadOrRefusedWithItsProblems() {
        int refused = 0;
        for (int seed = 0; seed < CASES; seed++) {
            byte[] damaged = damaged(new Random(seed));
            RecipeReading reading = read(seed, damaged);
            if (reading instanceof RecipeReading.Refused told) {
                refused++;
                assertThat(told.problems()).as("seed %d", seed).isNotEmpty().allSatisfy(finding -> {
                    assertThat(finding.message()).isNotBlank();
                    assertThat(finding.remedy()).isNotBlank();
                });
            } else if (reading instanceof RecipeReading.Understood understood) {
                String written = RecipeWriter.write(understood.recipe());
                assertThat(Examples.recipe(written)).as("seed %d", seed).isEqualTo(understood.recipe());
            }
        }
        assertThat(refused).as("damage that is noticed").isBetween(CASES / 4, CASES - 1);
    }

    private static RecipeReading read(int seed, byte[] damaged) {
        try {
            return Examples.reader().read(damaged);
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError(
                    "seed " + seed + " broke the reader:\n" + new String(damaged, StandardCharsets.UTF_8), e);
        }
    }

    private byte[] damaged(Random random) {
        List<Byte> bytes = toList(originals.get(random.nextInt(originals.size())));
        int times = 1 + random.nextInt(4);
        for (int i = 0; i < times; i++) {
            int at = random.nextInt(bytes.size());
            switch (random.nextInt(5)) {
                case 0 -> bytes.set(at, (byte) random.nextInt(256));
                case 1 -> bytes.set(at, LIKELY[random.nextInt(LIKELY.length)]);
                case 2 -> bytes.add(at, LIKELY[random.nextInt(LIKELY.length)]);
                case 3 -> bytes.remove(at);
                default ->
                    bytes.addAll(at, List.copyOf(bytes.subList(0, Math.min(bytes.size(), 1 + random.nextInt(200)))));
            }
        }
        byte[] damaged = new byte[bytes.size()];
        for (int i = 0; i < damaged.length; i++) {
            damaged[i] = bytes.get(i);
        }
        return damaged;
    }

    private static List<Byte> toList(byte[] bytes) {
        List<Byte> list = new ArrayList<>(bytes.length);
        for (byte b : bytes) {
            list.add(b);
        }
        return list;
    }
}
