package insidelift.console.page;

import static java.util.concurrent.TimeUnit.SECONDS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** A real browser without a window, driven by the Chrome DevTools Protocol. */
final class Browser implements AutoCloseable {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "chrome");
  private static final int PATIENCE_SECONDS = 90;

  private final Process process;
  private final WebSocket socket;
  private final AtomicInteger last = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
  private final Map<String, CompletableFuture<JsonNode>> events = new ConcurrentHashMap<>();
  private String session = "";

  private Browser(Process process, URI address) {
    this.process = process;
    this.socket =
        HttpClient.newHttpClient().newWebSocketBuilder().buildAsync(address, new Ear()).join();
  }

  /** The browser of this machine, if it has one: a name on the path. */
  static Optional<Path> here() {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1))
        .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  static Browser start(Path program, Path profile) {
    List<String> command =
        new ArrayList<>(
            List.of(
                program.toString(),
                "--headless",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile));
    if ("root".equals(System.getProperty("user.name"))) {
      // The browser's own sandbox refuses to work for root, as in most build containers.
      command.add("--no-sandbox");
    }
    command.add("about:blank");
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectErrorStream(false)
              .start();
      Browser browser = new Browser(process, address(process));
      browser.attach();
      return browser;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The browser tells on standard error where it listens. */
  private static URI address(Process process) throws IOException {
    String mark = "DevTools listening on ";
    BufferedReader err = process.errorReader(StandardCharsets.UTF_8);
    for (String line = err.readLine(); line != null; line = err.readLine()) {
      if (line.startsWith(mark)) {
        Thread drain = new Thread(() -> err.lines().forEach(more -> {}), "browser's messages");
        drain.setDaemon(true);
        drain.start();
        return URI.create(line.substring(mark.length()));
      }
    }
    throw new IOException("the browser ended before it listened");
  }

  private void attach() {
    String target =
        ask("Target.createTarget", Map.of("url", "about:blank")).path("targetId").asText();
    session =
        ask("Target.attachToTarget", Map.of("targetId", target, "flatten", true))
            .path("sessionId")
            .asText();
    ask("Page.enable", Map.of());
  }

  /** Shows a page at a size in CSS pixels, light or dark. */
  void show(Path page, int width, int height, boolean dark) {
    ask(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    ask(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            "screen",
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    CompletableFuture<JsonNode> loaded = new CompletableFuture<>();
    events.put("Page.loadEventFired", loaded);
    ask("Page.navigate", Map.of("url", page.toUri().toString()));
    wait(loaded, "the page to load");
  }

  /**
   * Shows the page that is open as it is printed, in dark surroundings, at a width in CSS pixels.
   */
  void asOnPaper(int width, int height) {
    ask(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    ask(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            "print",
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", "dark"))));
  }

  /** Runs a script in the page and gives its value. The page itself has none, and allows none. */
  JsonNode run(String script) {
    JsonNode answer =
        ask(
            "Runtime.evaluate",
            Map.of("expression", script, "returnByValue", true, "awaitPromise", true));
    if (answer.has("exceptionDetails")) {
      throw new AssertionError(answer.path("exceptionDetails").toString());
    }
    return answer.path("result").path("value");
  }

  /** The page as PDF on paper of a size in inches, with the margins that the page asks for. */
  byte[] print(double width, double height) {
    ask("Emulation.setEmulatedMedia", Map.of("media", "print"));
    JsonNode answer =
        ask(
            "Page.printToPDF",
            Map.of("paperWidth", width, "paperHeight", height, "printBackground", false));
    return Base64.getDecoder().decode(answer.path("data").asText());
  }

  private JsonNode ask(String method, Map<String, Object> parameters) {
    int id = last.incrementAndGet();
    ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
    message.set("params", JSON.valueToTree(parameters));
    if (!session.isEmpty()) {
      message.put("sessionId", session);
    }
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    waiting.put(id, answer);
    socket.sendText(message.toString(), true).join();
    JsonNode got = wait(answer, method);
    if (got.has("error")) {
      throw new AssertionError(method + ": " + got.path("error"));
    }
    return got.path("result");
  }

  private static JsonNode wait(CompletableFuture<JsonNode> answer, String what) {
    return answer
        .orTimeout(PATIENCE_SECONDS, SECONDS)
        .exceptionally(
            e -> {
              throw new AssertionError("waited in vain for " + what, e);
            })
        .join();
  }

  @Override
  public void close() {
    socket.abort();
    process.descendants().forEach(ProcessHandle::destroy);
    process.destroy();
    try {
      if (!process.waitFor(10, SECONDS)) {
        process.destroyForcibly().waitFor();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Takes answers and events off the line. */
  private final class Ear implements WebSocket.Listener {

    private final StringBuilder message = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean end) {
      message.append(data);
      if (end) {
        take(message.toString());
        message.setLength(0);
      }
      from.request(1);
      return null;
    }

    private void take(String text) {
      try {
        JsonNode node = JSON.readTree(text);
        CompletableFuture<JsonNode> waits =
            node.has("id")
                ? waiting.remove(node.path("id").asInt())
                : events.remove(node.path("method").asText());
        if (waits != null) {
          waits.complete(node);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
