package io.github.readfall.series.autosave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StateFolderTest {

  /** Linux as the XDG Base Directory Specification 0.8 has it. */
  @ParameterizedTest
  @CsvSource({
    "Linux, '', '', /home/ann/.local/state/readfall",
    "Linux, XDG_STATE_HOME, /var/ann, /var/ann/readfall",
    "Linux, XDG_STATE_HOME, not/absolute, /home/ann/.local/state/readfall",
    "Linux, XDG_STATE_HOME, '', /home/ann/.local/state/readfall",
    "Linux, XDG_CONFIG_HOME, /etc/ann, /home/ann/.local/state/readfall",
    "FreeBSD, '', '', /home/ann/.local/state/readfall",
    "Mac OS X, XDG_STATE_HOME, /var/ann, /home/ann/Library/Application Support/Readfall",
    "Windows 11, LOCALAPPDATA, /c/local, /c/local/Readfall",
    "Windows 11, '', '', /home/ann/AppData/Local/Readfall",
  })
  void stateIsKeptWhereTheSystemHasIt(String system, String key, String value, String expected) {
    Map<String, String> environment = key.isEmpty() ? Map.of() : Map.of(key, value);
    Map<String, String> properties = Map.of("os.name", system, "user.home", "/home/ann");
    assertEquals(Path.of(expected), StateFolder.of(environment, properties));
    Map<String, String> given = new HashMap<>(properties);
    given.put("readfall.state", "/tmp/own");
    assertEquals(Path.of("/tmp/own"), StateFolder.of(environment, given));
  }
}
