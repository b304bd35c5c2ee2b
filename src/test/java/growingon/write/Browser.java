package growingon.write;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A Chromium without a window, spoken to by its own debugging protocol. */
public final class Browser {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern LISTENING = Pattern.compile("DevTools listening on ws://([^/]+)/");

  private final Process process;
  private final WebSocket socket;
  private final Map<Integer, CompletableFuture<JsonNode>> asked = new ConcurrentHashMap<>();
  private final List<String> complaints = new CopyOnWriteArrayList<>();
  private final CompletableFuture<Void> loaded = new CompletableFuture<>();
  private int last;

  private Browser(Process process, String address) throws IOException, InterruptedException {
    this.process = process;
    HttpClient client = HttpClient.newHttpClient();
    HttpRequest targets =
        HttpRequest.newBuilder(URI.create("http://" + address + "/json/list")).build();
    JsonNode page = JSON.readTree(client.send(targets, BodyHandlers.ofString()).body()).get(0);
    this.socket =
        client
            .newWebSocketBuilder()
            .buildAsync(URI.create(page.get("webSocketDebuggerUrl").asText()), new Ear())
            .join();
  }

  /** The browser's program, if there is one on the path. */
  public static Optional<Path> program() {
    String path = System.getenv().getOrDefault("PATH", "");
    return Stream.of("chromium", "chromium-browser", "google-chrome")
        .flatMap(
            name -> Stream.of(path.split(java.io.File.pathSeparator)).map(f -> Path.of(f, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  public static Browser start(Path program, Path profile) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--hide-scrollbars",
                "--user-data-dir=" + profile,
                "--remote-debugging-port=0",
                "about:blank")
            .redirectErrorStream(true)
            .start();
    BufferedReader said = process.inputReader(StandardCharsets.UTF_8);
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      Matcher listening = LISTENING.matcher(line);
      if (listening.find()) {
        // What it says later is read and dropped, so that it never waits for a reader.
        Thread drain = new Thread(() -> said.lines().forEach(any -> {}), "browser-output");
        drain.setDaemon(true);
        drain.start();
        return new Browser(process, listening.group(1));
      }
    }
    throw new IOException("the browser did not start");
  }

  /** Opens a file with the network off, at a width in pixels, and waits until it is loaded. */
  public void open(Path file, int width) {
    send("Page.enable", JSON.createObjectNode());
    send("Runtime.enable", JSON.createObjectNode());
    send("Log.enable", JSON.createObjectNode());
    send("Network.enable", JSON.createObjectNode());
    send(
        "Network.emulateNetworkConditions",
        JSON.createObjectNode()
            .put("offline", true)
            .put("latency", 0)
            .put("downloadThroughput", 0)
            .put("uploadThroughput", 0));
    width(width);
    send("Page.navigate", JSON.createObjectNode().put("url", file.toUri().toString()));
    loaded.orTimeout(60, TimeUnit.SECONDS).join();
  }

  void width(int pixels) {
    send(
        "Emulation.setDeviceMetricsOverride",
        JSON.createObjectNode()
            .put("width", pixels)
            .put("height", 900)
            .put("deviceScaleFactor", 1)
            .put("mobile", false));
  }

  public void media(String media) {
    send("Emulation.setEmulatedMedia", JSON.createObjectNode().put("media", media));
  }

  /** What an expression gives; a promise is waited for. */
  public JsonNode value(String expression) {
    JsonNode answer =
        send(
            "Runtime.evaluate",
            JSON.createObjectNode()
                .put("expression", expression)
                .put("returnByValue", true)
                .put("awaitPromise", true));
    if (answer.has("exceptionDetails")) {
      throw new IllegalStateException(answer.get("exceptionDetails").toString());
    }
    return answer.get("result").path("value");
  }

  /** The page printed, as a PDF. */
  public byte[] print() {
    JsonNode answer =
        send(
            "Page.printToPDF",
            JSON.createObjectNode().put("preferCSSPageSize", true).put("printBackground", false));
    return java.util.Base64.getDecoder().decode(answer.get("data").asText());
  }

  /** What the console and the log complain of. */
  List<String> complaints() {
    return List.copyOf(complaints);
  }

  private synchronized JsonNode send(String method, ObjectNode parameters) {
    int number = ++last;
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    asked.put(number, answer);
    ObjectNode message = JSON.createObjectNode().put("id", number).put("method", method);
    message.set("params", parameters);
    socket.sendText(message.toString(), true).join();
    return answer.orTimeout(120, TimeUnit.SECONDS).join();
  }

  private void heard(JsonNode message) {
    if (message.has("id")) {
      CompletableFuture<JsonNode> answer = asked.remove(message.get("id").asInt());
      if (answer == null) {
        return;
      }
      if (message.has("error")) {
        answer.completeExceptionally(new IllegalStateException(message.get("error").toString()));
      } else {
        answer.complete(message.get("result"));
      }
      return;
    }
    switch (message.path("method").asText()) {
      case "Page.loadEventFired" -> loaded.complete(null);
      case "Log.entryAdded", "Runtime.exceptionThrown", "Runtime.consoleAPICalled" ->
          complaints.add(message.get("params").toString());
      default -> {
        // other news of the browser is not asked for
      }
    }
  }

  /** Puts the parts of a message together. */
  private final class Ear implements WebSocket.Listener {
    private final StringBuilder heard = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean isLast) {
      heard.append(part);
      if (isLast) {
        String whole = heard.toString();
        heard.setLength(0);
        try {
          heard(JSON.readTree(whole));
        } catch (IOException broken) {
          complaints.add(broken.toString());
        }
      }
      from.request(1);
      return null;
    }
  }

  /** Ends the browser and what it has started. */
  public void close() throws InterruptedException {
    List<ProcessHandle> children = new ArrayList<>(process.descendants().toList());
    socket.sendText("{\"id\": 0, \"method\": \"Browser.close\"}", true).join();
    if (!process.waitFor(20, TimeUnit.SECONDS)) {
      process.destroyForcibly();
    }
    socket.abort();
    children.forEach(ProcessHandle::destroyForcibly);
  }
}
