package io.github.readfall.script;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The declared speakers, found by name in any case. */
public final class Cast {

  private final List<CastMember> members;
  private final Map<String, String> nameByFolded;

  Cast(List<CastMember> members) {
    this.members = List.copyOf(members);
    Map<String, String> names = new HashMap<>();
    members.forEach(member -> names.putIfAbsent(Letters.fold(member.name()), member.name()));
    this.nameByFolded = Map.copyOf(names);
  }

  /** Reads {@code Ilse, Old Wouter (elder)}. */
  public static Cast of(String value) {
    List<CastMember> members = new ArrayList<>();
    for (String part : CommaList.parts(value)) {
      int open = 0;
      while (open < part.length() && !Brackets.opens(part.charAt(open))) {
        open++;
      }
      String name = Letters.collapse(part.substring(0, open));
      if (!name.isEmpty()) {
        members.add(new CastMember(name, voice(part, open)));
      }
    }
    return new Cast(members);
  }

  private static String voice(String part, int open) {
    if (open == part.length()) {
      return "";
    }
    int close = open + 1;
    while (close < part.length() && !Brackets.closes(part.charAt(close))) {
      close++;
    }
    return Letters.collapse(part.substring(open + 1, close));
  }

  public boolean isEmpty() {
    return members.isEmpty();
  }

  public List<CastMember> members() {
    return members;
  }

  public List<String> names() {
    return members.stream().map(CastMember::name).toList();
  }

  public boolean has(String name) {
    return nameByFolded.containsKey(Letters.fold(name));
  }

  /** The name as declared; as given where it is not. */
  public String canonical(String name) {
    return nameByFolded.getOrDefault(Letters.fold(name), name);
  }

  /** Length of the longest name, in code points. */
  public int longestName() {
    return members.stream()
        .mapToInt(m -> m.name().codePointCount(0, m.name().length()))
        .max()
        .orElse(0);
  }
}
