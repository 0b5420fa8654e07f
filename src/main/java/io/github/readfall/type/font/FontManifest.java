package io.github.readfall.type.font;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/**
 * The content of {@code fonts-open/fonts.toml}: the bundled faces.
 *
 * @param folder the {@code fonts-open} folder
 * @param families in the order of their folders
 * @param chains names of the families to try for a script (ISO 15924 code; {@code Zyyy} for signs),
 *     the preferred one first
 * @param dialogue the default dialogue family
 * @param effects the default family of sound effects
 */
public record FontManifest(
    Path folder,
    List<Family> families,
    Map<String, List<String>> chains,
    String dialogue,
    String effects) {

  /**
   * One family, in one folder with its licence text.
   *
   * @param name as people know it
   * @param folder its folder's name
   * @param source the package the files were taken from, unchanged
   * @param version as the files state it
   * @param licence SPDX identifier
   * @param copyright the line the licence asks to be kept
   * @param scripts ISO 15924 codes it is meant for
   * @param faces its files
   */
  public record Family(
      String name,
      String folder,
      String source,
      String version,
      String licence,
      String copyright,
      List<String> scripts,
      List<FaceFile> faces) {
    public Family {
      scripts = List.copyOf(scripts);
      faces = List.copyOf(faces);
    }
  }

  private static final String SIGNS = "Zyyy";

  public FontManifest {
    families = List.copyOf(families);
    chains = Map.copyOf(chains);
  }

  /**
   * Reads the manifest.
   *
   * @throws FaceException where it is not there or does not read
   */
  static FontManifest read(Path folder) throws FaceException {
    Path file = folder.resolve("fonts.toml");
    try {
      TomlParseResult toml = Toml.parse(file);
      if (toml.hasErrors()) {
        throw new FaceException(file + " does not read: " + toml.errors().get(0).getMessage());
      }
      return new FontManifest(
          folder,
          families(folder, toml),
          chains(toml),
          name(toml, "dialogue"),
          name(toml, "effects"));
    } catch (IOException e) {
      throw new FaceException(
          file + " is not there: keep the folder fonts-open beside the program's own.");
    }
  }

  private static String name(TomlTable toml, String role) {
    return toml.getString("defaults." + role, () -> "");
  }

  private static List<Family> families(Path folder, TomlTable toml) {
    List<Family> families = new ArrayList<>();
    for (TomlTable family : tables(toml, "family")) {
      String name = family.getString("name", () -> "");
      String place = family.getString("folder", () -> "");
      families.add(
          new Family(
              name,
              place,
              family.getString("source", () -> ""),
              family.getString("version", () -> ""),
              family.getString("licence", () -> ""),
              family.getString("copyright", () -> ""),
              strings(family.getArrayOrEmpty("scripts")),
              faces(folder, family, name, place)));
    }
    return families;
  }

  private static List<FaceFile> faces(Path folder, TomlTable family, String name, String place) {
    List<FaceFile> faces = new ArrayList<>();
    for (TomlTable face : tables(family, "face")) {
      String file = face.getString("file", () -> "");
      faces.add(
          new FaceFile(
              "fonts-open/" + place + "/" + file,
              folder.resolve(place).resolve(file),
              name,
              Math.toIntExact(face.getLong("weight", () -> 400L)),
              face.getBoolean("italic", () -> false),
              family.getBoolean("barred-capital-i", () -> false),
              face.getString("sha256", () -> "")));
    }
    return faces;
  }

  private static Map<String, List<String>> chains(TomlTable toml) {
    TomlTable table = toml.getTableOrEmpty("chains");
    Map<String, List<String>> chains = new HashMap<>();
    for (String script : table.keySet()) {
      chains.put(script, strings(table.getArrayOrEmpty(script)));
    }
    return chains;
  }

  private static List<TomlTable> tables(TomlTable parent, String key) {
    TomlArray array = parent.getArrayOrEmpty(key);
    List<TomlTable> tables = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      tables.add(array.getTable(i));
    }
    return tables;
  }

  private static List<String> strings(TomlArray array) {
    return array.toList().stream().map(String::valueOf).toList();
  }

  /** Every file of every family. */
  List<FaceFile> files() {
    return families.stream().flatMap(family -> family.faces().stream()).toList();
  }

  /** The families to try for a script, then those for signs. */
  List<String> chain(String script) {
    List<String> names = new ArrayList<>(chains.getOrDefault(script, List.of()));
    names.addAll(chains.getOrDefault(SIGNS, List.of()));
    return names.stream().distinct().toList();
  }
}
