package kitwright.history;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiConsumer;

/**
 * The git program, asked in one folder. It is only asked: no call changes the repository, starts a
 * pager, a hook or a watcher, or waits for a person.
 */
final class Git {
  private static final List<String> ASKING =
      List.of(
          "git",
          "--no-pager",
          "--no-optional-locks",
          "-c",
          "core.quotePath=false",
          "-c",
          "core.fsmonitor=false",
          "-c",
          "log.showSignature=false");

  /** Set inside a hook, where they would lead away from the ledger's folder. */
  private static final List<String> LEADING_AWAY =
      List.of("GIT_DIR", "GIT_WORK_TREE", "GIT_PREFIX", "GIT_OBJECT_DIRECTORY");

  private final Path folder;

  Git(Path folder) {
    this.folder = folder;
  }

  /** What git said. */
  static final class Said {
    private final int code;
    private final byte[] out;
    private final String err;

    private Said(int code, byte[] out, String err) {
      this.code = code;
      this.out = out;
      this.err = err;
    }

    /** As if it had refused without a word. */
    static Said refused() {
      return new Said(1, new byte[0], "");
    }

    String err() {
      return err;
    }

    boolean isWell() {
      return code == 0;
    }

    String text() {
      return new String(out, StandardCharsets.UTF_8);
    }

    List<String> lines() {
      return text().lines().toList();
    }

    /** The parts that nought bytes end. */
    List<String> parts() {
      String text = text();
      return text.isEmpty() ? List.of() : List.of(text.split("\0"));
    }
  }

  /** Asks, and gives what it answered, refusals too. */
  Said ask(String... words) throws NoHistory {
    return ask(List.of(), List.of(words));
  }

  /** Asks what must be answered. */
  Said must(String... words) throws NoHistory {
    Said said = ask(words);
    if (!said.isWell()) {
      throw new NoHistory(
          "Git does not answer (" + firstLine(said.err()) + ").",
          "Run “git fsck” in " + folder + " and mend what it names.");
    }
    return said;
  }

  static String firstLine(String err) {
    return err.lines().findFirst().orElse("it says nothing").replaceFirst("^fatal: ", "");
  }

  /** The contents of blobs, by their names; one process for all. */
  Map<String, byte[]> blobs(Collection<String> names) throws NoHistory {
    Map<String, byte[]> all = new LinkedHashMap<>();
    if (!names.isEmpty()) {
      List<String> lines = List.copyOf(names);
      Said said = ask(lines, List.of("cat-file", "--batch"));
      split(said.out, lines.size(), all::put);
    }
    if (all.size() < names.size()) {
      throw lacks(names.size() - all.size());
    }
    return all;
  }

  /** The SHA-256 of blobs, by their names; one process for all, and no content is kept. */
  Map<String, String> digests(Collection<String> names) throws NoHistory {
    Map<String, String> all = new LinkedHashMap<>();
    if (!names.isEmpty()) {
      List<String> lines = List.copyOf(names);
      ask(lines, List.of("cat-file", "--batch"), out -> digests(out, all));
    }
    if (all.size() < names.size()) {
      throw lacks(names.size() - all.size());
    }
    return all;
  }

  private static void digests(InputStream out, Map<String, String> all) throws IOException {
    MessageDigest digest = sha256();
    byte[] some = new byte[1 << 16];
    for (String head = line(out); !head.isEmpty(); head = line(out)) {
      String[] parts = head.split(" ");
      if (parts.length == 3) {
        long left = Long.parseLong(parts[2]);
        while (left > 0) {
          int read = out.read(some, 0, (int) Math.min(left, some.length));
          if (read < 0) {
            return;
          }
          digest.update(some, 0, read);
          left -= read;
        }
        all.put(parts[0], HexFormat.of().formatHex(digest.digest()));
        line(out);
      }
    }
  }

  /** A line without its end; empty where there is none any more. */
  private static String line(InputStream out) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int sign = out.read(); sign >= 0 && sign != '\n'; sign = out.read()) {
      line.write(sign);
    }
    return line.toString(StandardCharsets.UTF_8);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private NoHistory lacks(int many) {
    return new NoHistory(
        "Git lacks " + many + " of the files of that commit.",
        "Fetch them, or run “git fsck” in " + folder + " and mend what it names.");
  }

  /**
   * What {@code cat-file --batch} writes: a line of name, sort and size, the bytes, a line feed.
   */
  private static void split(byte[] out, int many, BiConsumer<String, byte[]> take) {
    int at = 0;
    for (int i = 0; i < many && at < out.length; i++) {
      int end = at;
      while (end < out.length && out[end] != '\n') {
        end++;
      }
      String[] head = new String(out, at, end - at, StandardCharsets.UTF_8).split(" ");
      at = end + 1;
      if (head.length == 3) {
        int size = Integer.parseInt(head[2]);
        byte[] content = new byte[size];
        System.arraycopy(out, at, content, 0, Math.min(size, out.length - at));
        take.accept(head[0], content);
        at += size + 1;
      }
    }
  }

  private Said ask(List<String> lines, List<String> words) throws NoHistory {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Said said = ask(lines, words, from -> from.transferTo(out));
    return new Said(said.code, out.toByteArray(), said.err);
  }

  /** What is done with what git prints, while it prints. */
  private interface Reading {
    void read(InputStream out) throws IOException;
  }

  /** Asks with what it shall read; what it prints is taken by the reading alone. */
  private Said ask(List<String> lines, List<String> words, Reading reading) throws NoHistory {
    List<String> command = new ArrayList<>(ASKING);
    command.addAll(words);
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    Map<String, String> environment = builder.environment();
    LEADING_AWAY.forEach(environment::remove);
    environment.put("LC_ALL", "C.UTF-8");
    environment.put("GIT_TERMINAL_PROMPT", "0");
    try {
      return said(builder.start(), lines, reading);
    } catch (IOException absent) {
      throw new NoHistory(
          "The program git could not be started.", "Install git; the ledger’s past lies with it.");
    }
  }

  private static Said said(Process git, List<String> lines, Reading reading) throws IOException {
    CompletableFuture<String> err =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return new String(git.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
              } catch (IOException closed) {
                throw new UncheckedIOException(closed);
              }
            });
    CompletableFuture<Void> fed = CompletableFuture.runAsync(() -> feed(git, lines));
    try (InputStream out = new BufferedInputStream(git.getInputStream())) {
      reading.read(out);
    }
    fed.join();
    try {
      return new Said(git.waitFor(), new byte[0], err.join());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException(stopped);
    }
  }

  private static void feed(Process git, List<String> lines) {
    try (OutputStream in = git.getOutputStream()) {
      for (String line : lines) {
        in.write((line + "\n").getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException gone) {
      // It ended before it had read everything; its answer tells why.
    }
  }
}
