package io.github.readfall.type.font;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/**
 * Every face that lettering may be set in: the bundled open ones and the person's own. Bundled
 * files are opened when they are first needed, the person's own at once, to report what is wrong
 * with them.
 *
 * <p>Safe to share between threads.
 */
public final class FontShelf {

  private static final Set<String> ENDINGS =
      Set.of(".ttf", ".otf", ".ttc", ".otc", ".woff", ".woff2");

  /** Least weight of a bold face (OpenType, usWeightClass: 600 is semi-bold). */
  private static final int LEAST_BOLD = 600;

  private final FontManifest manifest;
  private final List<FaceFile> files;
  private final Map<FaceFile, Face> own;

  /** Shared by all shelves that stem from one: a bundled face is opened once for all of them. */
  private final ConcurrentMap<FaceFile, Face> bundled;

  private FontShelf(
      FontManifest manifest,
      List<FaceFile> files,
      Map<FaceFile, Face> own,
      ConcurrentMap<FaceFile, Face> bundled) {
    this.manifest = manifest;
    this.files = List.copyOf(files);
    this.own = Map.copyOf(own);
    this.bundled = bundled;
  }

  /**
   * A shelf, and everything wrong with the person's own files. A faulty file is left out.
   *
   * @param shelf with every face that can be used
   * @param findings one for each file that cannot
   */
  public record Stocked(FontShelf shelf, List<Finding> findings) {
    public Stocked {
      findings = List.copyOf(findings);
    }
  }

  /**
   * The bundled faces alone.
   *
   * @param folder the {@code fonts-open} folder
   * @throws FaceException if its manifest cannot be read
   */
  public static FontShelf bundled(Path folder) throws FaceException {
    FontManifest manifest = FontManifest.read(folder);
    return new FontShelf(manifest, manifest.files(), Map.of(), new ConcurrentHashMap<>());
  }

  /**
   * This shelf with the person's own faces before the bundled ones.
   *
   * @param ownFolder the series' {@code fonts} folder; need not exist
   */
  public Stocked with(Path ownFolder) {
    List<FaceFile> all = new ArrayList<>();
    Map<FaceFile, Face> faces = new HashMap<>(own);
    List<Finding> findings = new ArrayList<>();
    for (Path path : fontFiles(ownFolder, findings)) {
      try {
        FaceFile file = describe(path);
        faces.put(file, Face.open(file));
        all.add(file);
      } catch (FaceException e) {
        findings.add(unusable(path, e));
      }
    }
    all.addAll(files);
    return new Stocked(new FontShelf(manifest, all, faces, bundled), findings);
  }

  private static Finding unusable(Path path, FaceException e) {
    Path name = path.getFileName();
    return Finding.of(
        "font/unusable",
        Severity.WARNING,
        Where.everywhere(),
        e.getMessage(),
        "Replace or remove fonts/" + name + "; the other faces are used meanwhile.");
  }

  private static List<Path> fontFiles(Path folder, List<Finding> findings) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> entries =
        Files.newDirectoryStream(folder, FontShelf::looksLikeFont)) {
      entries.forEach(found::add);
    } catch (IOException e) {
      findings.add(
          Finding.of(
              "font/unusable",
              Severity.WARNING,
              Where.everywhere(),
              "The folder " + folder + " cannot be read, so its faces are not used.",
              "Check that it is yours to read."));
    }
    found.sort(Comparator.naturalOrder());
    return found;
  }

  /**
   * Returns true for the name of a font, usable or not: unusable fonts are reported, not
   * overlooked.
   */
  private static boolean looksLikeFont(Path path) {
    String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    return ENDINGS.stream().anyMatch(name::endsWith);
  }

  private static FaceFile describe(Path path) throws FaceException {
    FontHeader header = FontHeader.read(path);
    Path name = path.getFileName();
    return new FaceFile(
        "fonts/" + name,
        path,
        header.family().orElse(String.valueOf(name)),
        header.weight(),
        header.italic(),
        false,
        "");
  }

  public FontManifest manifest() {
    return manifest;
  }

  public List<FaceFile> files() {
    return files;
  }

  /**
   * The face that a style asks for. A file is taken as it is, whatever its weight, unless a bold or
   * an italic is wanted; then its family decides.
   *
   * @param name a family's name, in any case, or a file as reports name it
   * @param weight 100 to 900; the nearest there is
   * @param italic wanted; an upright face is used if the family has no italic
   */
  public Optional<FaceFile> find(String name, int weight, boolean italic) {
    String wanted = name.toLowerCase(Locale.ROOT);
    Optional<FaceFile> byFile =
        files.stream()
            .filter(file -> file.id().toLowerCase(Locale.ROOT).equals(wanted))
            .findFirst();
    String family = byFile.map(FaceFile::family).orElse(name).toLowerCase(Locale.ROOT);
    if (byFile.isPresent() && weight < LEAST_BOLD && !italic) {
      return byFile;
    }
    return files.stream()
        .filter(file -> file.family().toLowerCase(Locale.ROOT).equals(family))
        .min(
            Comparator.comparing((FaceFile file) -> file.italic() != italic)
                .thenComparing(file -> Math.abs(file.weight() - weight)));
  }

  /** The faces to try for a script, the preferred one first, in the nearest weight and slant. */
  public List<FaceFile> chain(String script, int weight, boolean italic) {
    return manifest.chain(script).stream()
        .flatMap(family -> find(family, weight, italic).stream())
        .toList();
  }

  /**
   * Opens a face, once.
   *
   * @throws FaceException if the file is damaged or gone
   */
  public Face open(FaceFile file) throws FaceException {
    Face known = own.getOrDefault(file, bundled.get(file));
    if (known != null) {
      return known;
    }
    Face fresh = Face.open(file);
    Face first = bundled.putIfAbsent(file, fresh);
    return first == null ? fresh : first;
  }
}
