package frillbook.press;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Random;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

/** Read back by the JDK's own reader, which compares sizes and checksums. */
class PackageWriterTest {
  private static byte[] noise(int size) {
    byte[] noise = new byte[size];
    new Random(3).nextBytes(noise);
    return noise;
  }

  /** Noise cannot be made smaller: more than the writer begins with room for. */
  @Test
  void partsOfAnySizeAreReadBackInTheirOrder() throws IOException {
    byte[] large = noise(900_000);
    byte[] small = noise(10);
    byte[] zip;
    try (PackageWriter out = new PackageWriter(5)) {
      out.add("large.bin", large, large.length);
      out.add("small.bin", small, small.length);
      out.add("half.bin", large, 450_000);
      zip = out.finished();
    }
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      assertEquals("large.bin", in.getNextEntry().getName());
      assertArrayEquals(large, in.readAllBytes());
      assertEquals("small.bin", in.getNextEntry().getName());
      assertArrayEquals(small, in.readAllBytes());
      assertEquals("half.bin", in.getNextEntry().getName());
      assertEquals(450_000, in.readAllBytes().length);
      assertNull(in.getNextEntry());
    }
  }
}
