package io.github.readfall;

import static java.util.stream.Collectors.joining;

import io.github.readfall.RoomsTable.Room;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Draws rooms as boxes in layers, each above all rooms that it imports, as an SVG. */
final class RoomsPicture {

  private static final int WIDTH = 860;
  private static final int EDGE = 24;
  private static final int BOX_WIDTH = 330;
  private static final int TEXT_LEFT = 14;
  private static final int TEXT_WIDTH = 48; // characters of the small type
  private static final int TOP = 26;
  private static final int LINE = 17;
  private static final int GAP = 34;
  private static final int FOOT = 40;

  /** Fills and borders from the bottom to the top; the layers share them evenly. */
  private static final List<String> FILLS =
      List.of("#e9eef4", "#e3eff5", "#e2f2ee", "#eaf3e0", "#f6f1de", "#f9e9de");

  private record Box(Room room, double x, double y, double height) {

    double middle() {
      return x + BOX_WIDTH / 2.0;
    }

    double bottom() {
      return y + height;
    }
  }

  private final Map<String, Room> rooms = new LinkedHashMap<>();

  RoomsPicture(List<Room> rooms) {
    rooms.forEach(room -> this.rooms.put(room.name(), room));
  }

  /** The imports of a room that do not follow from its other imports. */
  Set<String> ownImports(Room room) {
    Set<String> own = new TreeSet<>(room.imports());
    room.imports().forEach(name -> own.removeAll(allImports(rooms.get(name))));
    return own;
  }

  private Set<String> allImports(Room room) {
    Set<String> all = new TreeSet<>(room.imports());
    room.imports().forEach(name -> all.addAll(allImports(rooms.get(name))));
    return all;
  }

  private int layer(Room room) {
    return room.imports().stream().mapToInt(name -> layer(rooms.get(name)) + 1).max().orElse(0);
  }

  String svg() {
    Map<Integer, List<Room>> layers = new TreeMap<>((a, b) -> b - a);
    rooms
        .values()
        .forEach(room -> layers.computeIfAbsent(layer(room), n -> new ArrayList<>()).add(room));
    Map<String, Box> boxes = new LinkedHashMap<>();
    double y = EDGE;
    for (List<Room> layer : layers.values()) {
      double height = layer.stream().mapToDouble(RoomsPicture::height).max().orElse(0);
      double step = (double) WIDTH / layer.size();
      for (int i = 0; i < layer.size(); i++) {
        double x = step * (i + 0.5) - BOX_WIDTH / 2.0;
        boxes.put(layer.get(i).name(), new Box(layer.get(i), x, y, height));
      }
      y += height + GAP;
    }
    return page(boxes, y - GAP + FOOT, layers.size());
  }

  private static double height(Room room) {
    return TOP + 10 + LINE * (double) lines(room).size();
  }

  private static List<String> lines(Room room) {
    List<String> lines = new ArrayList<>();
    for (String name : room.subpackages()) {
      int last = lines.size() - 1;
      if (last >= 0 && lines.get(last).length() + name.length() + 3 <= TEXT_WIDTH) {
        lines.set(last, lines.get(last) + " · " + name);
      } else {
        lines.add(name);
      }
    }
    return lines;
  }

  private String page(Map<String, Box> boxes, double height, int layers) {
    String arrows =
        boxes.values().stream()
            .flatMap(
                box -> ownImports(box.room()).stream().map(name -> arrow(box, boxes.get(name))))
            .collect(joining());
    String drawn = boxes.values().stream().map(box -> box(box, layers)).collect(joining());
    String head =
        """
        <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%2$.0f" viewBox="0 0 %1$d %2$.0f" font-family="sans-serif">
        <title>The rooms of the code</title>
        <desc>Each room is above those that it imports. Arrows that follow from others are left out.</desc>
        <defs><marker id="tip" viewBox="0 0 10 10" refX="9" refY="5" markerWidth="8" markerHeight="8" orient="auto"><path d="M0 0.8 L10 5 L0 9.2 Z" fill="#55606e"/></marker></defs>
        <rect width="%1$d" height="%2$.0f" fill="#ffffff"/>
        """;
    String foot =
        """
        <text x="%.1f" y="%.1f" font-size="13" fill="#55606e" text-anchor="middle">An arrow points to what is imported; arrows that follow from others are left out.</text>
        </svg>
        """;
    return format(head, WIDTH, height) + arrows + drawn + format(foot, WIDTH / 2.0, height - 14);
  }

  private static String arrow(Box from, Box to) {
    double lean = Math.signum(to.middle() - from.middle()) * BOX_WIDTH * 0.2;
    double x1 = from.middle() + lean;
    double x2 = to.middle() - lean;
    double y1 = from.bottom();
    double y2 = to.y() - 1;
    double half = (y2 - y1) / 2;
    return format(
        "<path d=\"M%.1f %.1f C%.1f %.1f %.1f %.1f %.1f %.1f\" fill=\"none\" stroke=\"#55606e\""
            + " stroke-width=\"1.6\" marker-end=\"url(#tip)\"/>\n",
        x1, y1, x1, y1 + half, x2, y2 - half, x2, y2);
  }

  private String box(Box box, int layers) {
    String fill = FILLS.get(layer(box.room()) * FILLS.size() / layers);
    StringBuilder text = new StringBuilder();
    text.append(
        format(
            "<rect x=\"%.1f\" y=\"%.1f\" width=\"%d\" height=\"%.1f\" rx=\"8\" fill=\"%s\""
                + " stroke=\"#8793a3\" stroke-width=\"1.2\"/>\n",
            box.x(), box.y(), BOX_WIDTH, box.height(), fill));
    List<String> lines = lines(box.room());
    double free = box.height() - TOP - 10 - LINE * (double) lines.size();
    double y = box.y() + free / 2 + TOP - 3;
    text.append(
        format(
            "<text x=\"%.1f\" y=\"%.1f\" font-size=\"17\" font-weight=\"bold\""
                + " fill=\"#1d2733\">%s</text>\n",
            box.x() + TEXT_LEFT, y, box.room().name()));
    for (int i = 0; i < lines.size(); i++) {
      text.append(
          format(
              "<text x=\"%.1f\" y=\"%.1f\" font-size=\"12.5\" fill=\"#3c4756\">%s</text>\n",
              box.x() + TEXT_LEFT, y + LINE * (i + 1.0) + 1, lines.get(i)));
    }
    return text.toString();
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
