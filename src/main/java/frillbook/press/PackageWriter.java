package frillbook.press;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** The package being written; what is deflated already goes in as it is. */
public final class PackageWriter implements AutoCloseable {
  /**
   * Of every zip entry; local, so that no time zone shows in it. Not the earliest time an entry can
   * have, which Java takes for an earlier one and stamps with the zone.
   */
  private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(2025, 1, 1, 0, 0);

  /** Parts up to this size are deflated harder, which takes little time and saves two kilobytes. */
  private static final int SMALL = 130_000;

  private static final int HARDER = 2;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 19);
  private final ZipArchiveOutputStream zip = new ZipArchiveOutputStream(bytes);
  private final Deflater deflater;
  private final int level;
  private byte[] deflated = new byte[1 << 18];

  /**
   * Begins one.
   *
   * @param level of deflating, 1 to 9; that of small parts is two higher
   */
  public PackageWriter(int level) {
    this.level = level;
    this.deflater = new Deflater(level, true);
  }

  void add(Part.Finished part) {
    add(part.name(), part.size(), part.crc(), part.deflated(), part.deflated().length);
  }

  void add(String name, XmlBuffer text) {
    add(name, text.bytes(), text.size());
  }

  /** Deflates the first {@code size} of {@code bytes} into a part. */
  public void add(String name, byte[] bytes, int size) {
    CRC32 crc = new CRC32();
    crc.update(bytes, 0, size);
    int length = deflate(bytes, size);
    add(name, size, crc.getValue(), deflated, length);
  }

  /** How many bytes it comes to. */
  private int deflate(byte[] bytes, int size) {
    deflater.reset();
    deflater.setLevel(size > SMALL ? level : Math.min(Deflater.BEST_COMPRESSION, level + HARDER));
    deflater.setInput(bytes, 0, size);
    deflater.finish();
    int length = 0;
    while (!deflater.finished()) {
      if (length == deflated.length) {
        deflated = Arrays.copyOf(deflated, 2 * length);
      }
      length += deflater.deflate(deflated, length, deflated.length - length);
    }
    return length;
  }

  private void add(String name, int size, long crc, byte[] content, int length) {
    ZipArchiveEntry entry = new ZipArchiveEntry(name);
    entry.setMethod(ZipArchiveEntry.DEFLATED);
    entry.setTimeLocal(ENTRY_TIME);
    entry.setSize(size);
    entry.setCrc(crc);
    entry.setCompressedSize(length);
    try {
      zip.addRawArchiveEntry(entry, new ByteArrayInputStream(content, 0, length));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The bytes of the whole. */
  public byte[] finished() {
    try {
      zip.finish();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  @Override
  public void close() {
    deflater.end();
  }
}
