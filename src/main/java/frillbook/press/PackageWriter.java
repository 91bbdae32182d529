package frillbook.press;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * The package being written, a zip file (ISO/IEC 21320-1); what is deflated already goes in as it
 * is, which the JDK's own writer does not offer.
 */
public final class PackageWriter implements AutoCloseable {
  private static final int LOCAL_HEADER = 0x04034b50;
  private static final int CENTRAL_HEADER = 0x02014b50;
  private static final int END = 0x06054b50;

  /** The version of the format that knows deflated entries, 2.0. */
  private static final short VERSION = 20;

  /** Names are in UTF-8. */
  private static final short FLAGS = 1 << 11;

  private static final short DEFLATED = 8;

  /** Of every entry, the start of 2025-01-01: seconds below, years since 1980 on top. */
  private static final int TIME = (45 << 9 | 1 << 5 | 1) << 16;

  /** The longest header without the name. */
  private static final int LONGEST = 46;

  /** Parts up to this size are deflated harder, which takes little time and saves two kilobytes. */
  private static final int SMALL = 130_000;

  private static final int HARDER = 2;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 19);
  private final ByteArrayOutputStream directory = new ByteArrayOutputStream(1 << 13);
  private final ByteBuffer header = ByteBuffer.allocate(LONGEST).order(ByteOrder.LITTLE_ENDIAN);
  private int entries;
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
    byte[] letters = name.getBytes(StandardCharsets.UTF_8);
    int offset = bytes.size();
    header.putInt(LOCAL_HEADER);
    describe(size, crc, length, letters.length);
    put(header, bytes);
    bytes.writeBytes(letters);
    bytes.write(content, 0, length);
    header.putInt(CENTRAL_HEADER).putShort(VERSION);
    describe(size, crc, length, letters.length);
    // No comment, the first disk, no attributes.
    header.putShort((short) 0).putShort((short) 0).putShort((short) 0).putInt(0).putInt(offset);
    put(header, directory);
    directory.writeBytes(letters);
    entries++;
  }

  /** What both headers of an entry say. */
  private void describe(int size, long crc, int length, int nameLength) {
    header.putShort(VERSION).putShort(FLAGS).putShort(DEFLATED).putInt(TIME);
    header.putInt((int) crc).putInt(length).putInt(size);
    // No extra field.
    header.putShort((short) nameLength).putShort((short) 0);
  }

  private static void put(ByteBuffer header, ByteArrayOutputStream out) {
    out.write(header.array(), 0, header.position());
    header.clear();
  }

  /** The bytes of the whole. */
  public byte[] finished() {
    int offset = bytes.size();
    bytes.writeBytes(directory.toByteArray());
    // On one disk, which has all entries.
    header.putInt(END).putInt(0).putShort((short) entries).putShort((short) entries);
    header.putInt(directory.size()).putInt(offset).putShort((short) 0);
    put(header, bytes);
    return bytes.toByteArray();
  }

  @Override
  public void close() {
    deflater.end();
  }
}
