package io.github.readfall.dist;

import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * What a process left behind when it had ended.
 *
 * @param status its exit status
 * @param out its standard output, which must be UTF-8
 * @param err its standard error, likewise
 */
record Ran(int status, String out, String err) {

  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin");

  /**
   * Runs a shell script in an environment that has a PATH to this Java, what is given, and nothing
   * else.
   *
   * @param folder where to run it
   */
  static Ran script(Path folder, Map<String, String> environment, String script)
      throws IOException, InterruptedException {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    ProcessBuilder builder = new ProcessBuilder(List.of("/bin/sh", "-c", script));
    String path = builder.environment().getOrDefault("PATH", "");
    builder.environment().clear();
    builder.environment().put("PATH", JAVA + File.pathSeparator + path);
    builder.environment().putAll(environment);
    builder.directory(folder.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
    int status = builder.start().waitFor();
    return new Ran(status, taken(out), taken(err));
  }

  private static String taken(Path file) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
    Files.delete(file);
    return StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
  }
}
