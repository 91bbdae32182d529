package frillbook.press;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** The package being written; what is deflated already goes in as it is. */
final class PackageWriter implements AutoCloseable {
  /**
   * Of every zip entry; local, so that no time zone shows in it. Not the earliest time an entry can
   * have, which Java takes for an earlier one and stamps with the zone.
   */
  private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(2025, 1, 1, 0, 0);

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 19);
  private final ZipArchiveOutputStream zip = new ZipArchiveOutputStream(bytes);
  private final Deflater deflater;
  private byte[] deflated = new byte[1 << 18];

  PackageWriter(Deflater deflater) {
    this.deflater = deflater;
  }

  void add(Part.Finished part) {
    add(part.name(), part.size(), part.crc(), part.deflated(), part.deflated().length);
  }

  void add(String name, XmlBuffer text) {
    CRC32 crc = new CRC32();
    crc.update(text.bytes(), 0, text.size());
    add(name, text.size(), crc.getValue(), deflated, deflate(text));
  }

  /** How many bytes it comes to. */
  private int deflate(XmlBuffer text) {
    deflater.reset();
    deflater.setInput(text.bytes(), 0, text.size());
    deflater.finish();
    int size = 0;
    while (!deflater.finished()) {
      if (size == deflated.length) {
        deflated = java.util.Arrays.copyOf(deflated, 2 * size);
      }
      size += deflater.deflate(deflated, size, deflated.length - size);
    }
    return size;
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

  byte[] finished() {
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
