package insidelift.engine.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Where a writer's bytes go; a disk that fails can stand in for it. */
public interface AppendTarget extends Closeable {

  /** Opens the end of a file. */
  interface Opener {
    /** The end of that file, which is made if it is not there. */
    AppendTarget open(Path file) throws IOException;
  }

  /** Writes all bytes at the end. */
  void write(ByteBuffer bytes) throws IOException;

  /** Returns when all that was written is on the disk. */
  void force() throws IOException;

  /** Cuts the file to a length. */
  void cut(long length) throws IOException;

  /** The end of a file on disk. */
  static AppendTarget onDisk(Path file) throws IOException {
    FileChannel channel = OwnFiles.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    channel.position(channel.size());
    return new AppendTarget() {
      @Override
      public void write(ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
      }

      @Override
      public void force() throws IOException {
        channel.force(true);
      }

      @Override
      public void cut(long length) throws IOException {
        channel.truncate(length);
      }

      @Override
      public void close() throws IOException {
        channel.close();
      }
    };
  }
}
