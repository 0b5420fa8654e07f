package io.github.readfall.lettering.toml;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The ways to change one value in a text with nothing else touched; the caller checks that the
 * meaning is right.
 *
 * @param text of the file
 * @param blocks of the file
 */
public record TomlChanges(String text, List<TomlBlock> blocks) {

  public TomlChanges {
    blocks = List.copyOf(blocks);
  }

  /** The entry at a path; empty if there is none, or if it is in a list. */
  public Optional<TomlEntry> entry(List<String> path) {
    return entries().filter(entry -> entry.path().equals(path)).findFirst();
  }

  private Stream<TomlEntry> entries() {
    return tables().flatMap(block -> block.entries().stream()).flatMap(TomlEntry::all);
  }

  private Stream<TomlBlock> tables() {
    return blocks.stream().filter(block -> !block.isList());
  }

  /** The text with another value in place of one that is there. */
  public String replaced(TomlEntry entry, String value) {
    return spliced(entry.valueStart(), entry.valueEnd(), value);
  }

  /** The text without an entry; a comment after it stays. */
  public String without(TomlEntry entry) {
    Optional<TomlEntry> braces =
        entries().filter(outer -> outer.inner().contains(entry)).findFirst();
    if (braces.isPresent()) {
      return withoutInner(braces.get().inner(), entry);
    }
    int lineEnd = TomlScan.lineEnd(text, entry.valueEnd());
    int note = text.indexOf('#', entry.valueEnd());
    return note >= 0 && note < lineEnd
        ? spliced(entry.start(), note, "")
        : spliced(TomlScan.lineStart(text, entry.start()), lineEnd, "");
  }

  private String withoutInner(List<TomlEntry> inner, TomlEntry entry) {
    int place = inner.indexOf(entry);
    if (place + 1 < inner.size()) {
      return spliced(entry.start(), inner.get(place + 1).start(), "");
    }
    int start = place > 0 ? inner.get(place - 1).valueEnd() : entry.start();
    return spliced(start, entry.valueEnd(), "");
  }

  /** The text with a value that is not there yet, in every way that may do, the best first. */
  public List<String> added(List<String> path, String value) {
    List<String> table = path.subList(0, path.size() - 1);
    List<String> ways = new ArrayList<>();
    tables()
        .filter(block -> block.path().equals(table))
        .forEach(
            block -> {
              belowItsNote(block, path, value).ifPresent(ways::add);
              ways.add(below(block, path, value));
            });
    besideItsLike(table, path, value).ifPresent(ways::add);
    inBraces(path, value).ifPresent(ways::add);
    ways.add(atTheEnd(table, path, value));
    return ways;
  }

  /** Below the line of a block that shows the key with a # before it. */
  private Optional<String> belowItsNote(TomlBlock block, List<String> path, String value) {
    String key = TomlValue.key(path.get(path.size() - 1));
    Matcher note =
        Pattern.compile("(?m)^([ \\t]*)#[ \\t]*" + Pattern.quote(key) + "[ \\t]*=").matcher(text);
    note.region(block.bodyStart(), block.bodyEnd());
    return note.find()
        ? Optional.of(line(note.start(), note.group(1), key, value))
        : Optional.empty();
  }

  /** Below the last entry of a block, or its header. */
  private String below(TomlBlock block, List<String> path, String value) {
    String key = TomlValue.key(path.get(path.size() - 1));
    if (block.entries().isEmpty()) {
      return lineAt(block.bodyStart(), "", key, value);
    }
    return below(block.entries().get(block.entries().size() - 1), key, value);
  }

  private String below(TomlEntry entry, String key, String value) {
    String indent = text.substring(TomlScan.lineStart(text, entry.start()), entry.start());
    return line(entry.valueEnd(), indent, key, value);
  }

  /** The text with the value below the last entry whose dotted key is in the same table. */
  private Optional<String> besideItsLike(List<String> table, List<String> path, String value) {
    Optional<String> beside = Optional.empty();
    for (TomlBlock block : tables().filter(b -> b.path().size() < table.size()).toList()) {
      for (TomlEntry entry : block.entries()) {
        if (entry.isBelow(table)) {
          String key = dotted(path.subList(block.path().size(), path.size()));
          beside = Optional.of(below(entry, key, value));
        }
      }
    }
    return beside;
  }

  /** The text with the value in the innermost braces on the path. */
  private Optional<String> inBraces(List<String> path, String value) {
    return entries()
        .filter(entry -> entry.inline() && TomlEntry.startsWith(path, entry.path()))
        .max(Comparator.comparingInt(entry -> entry.path().size()))
        .map(
            braces -> {
              String said = dotted(path.subList(braces.path().size(), path.size())) + " = " + value;
              List<TomlEntry> inner = braces.inner();
              return inner.isEmpty()
                  ? spliced(braces.valueStart(), braces.valueEnd(), "{ " + said + " }")
                  : inserted(inner.get(inner.size() - 1).valueEnd(), ", " + said);
            });
  }

  private String atTheEnd(List<String> table, List<String> path, String value) {
    String end = lineEnding();
    boolean isOpen = !text.isEmpty() && !text.endsWith("\n");
    String before = (isOpen ? end : "") + (text.isBlank() ? "" : end);
    String header = table.isEmpty() ? "" : "[" + dotted(table) + "]" + end;
    String key = TomlValue.key(path.get(path.size() - 1));
    return text + before + header + key + " = " + value + end;
  }

  /** A line of its own below the line of a place. */
  private String line(int place, String indent, String key, String value) {
    return lineAt(TomlScan.lineEnd(text, place), indent, key, value);
  }

  private String lineAt(int at, String indent, String key, String value) {
    String before = at > 0 && at == text.length() && !text.endsWith("\n") ? lineEnding() : "";
    return inserted(at, before + indent + key + " = " + value + lineEnding());
  }

  /** The line ending of this text. */
  private String lineEnding() {
    int first = text.indexOf('\n');
    return first > 0 && text.charAt(first - 1) == '\r' ? "\r\n" : "\n";
  }

  private static String dotted(List<String> path) {
    return path.stream().map(TomlValue::key).collect(joining("."));
  }

  private String inserted(int at, String more) {
    return spliced(at, at, more);
  }

  private String spliced(int start, int end, String instead) {
    return text.substring(0, start) + instead + text.substring(end);
  }
}
