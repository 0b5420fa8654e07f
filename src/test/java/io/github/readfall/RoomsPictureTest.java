package io.github.readfall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.RoomsTable.Room;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Checks that docs/pictures/rooms.svg shows the table of rooms in DEVELOPERS.md; with {@code
 * -Dgolden=accept} it redraws the picture instead.
 */
class RoomsPictureTest {

  private static final boolean ACCEPT = "accept".equals(System.getProperty("golden"));
  private static final Path PICTURE = Path.of("docs/pictures/rooms.svg");

  @Test
  void thePictureShowsTheTable() throws IOException {
    String drawn = new RoomsPicture(RoomsTable.rooms()).svg();
    if (ACCEPT) {
      Files.writeString(PICTURE, drawn);
    }
    assertEquals(drawn, Files.readString(PICTURE), "redraw it with -Dgolden=accept");
  }

  @Test
  void arrowsThatFollowFromOthersAreLeftOut() {
    Room base = new Room("base", List.of(), List.of(), List.of());
    Room script = new Room("script", List.of(), List.of("base"), List.of());
    Room strip = new Room("strip", List.of(), List.of("base", "script"), List.of());
    RoomsPicture picture = new RoomsPicture(List.of(base, script, strip));
    assertEquals(Set.of("script"), picture.ownImports(strip));
    assertEquals(Set.of("base"), picture.ownImports(script));
  }
}
