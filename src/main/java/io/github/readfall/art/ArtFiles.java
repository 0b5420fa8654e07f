package io.github.readfall.art;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The pages of an episode's art, in natural order: page2 before page10.
 *
 * @param pages PNG and JPEG files
 * @param problems one sentence for each file that cannot be used
 */
public record ArtFiles(List<Path> pages, List<String> problems) {

  private static final String FOLDER = "art";
  private static final List<String> READ = List.of(".png", ".jpg", ".jpeg");
  private static final List<String> PICTURES = List.of(".webp", ".gif", ".tif", ".tiff", ".bmp");

  public ArtFiles {
    pages = List.copyOf(pages);
    problems = List.copyOf(problems);
  }

  /** The folder of the art of an episode: {@code art}, beside its script. */
  public static Path folder(Path script) {
    return script.resolveSibling(FOLDER);
  }

  /** The art of the episode with this script; none if it has no such folder. */
  public static ArtFiles of(Path script) {
    return in(folder(script));
  }

  /** The art in a folder; none if there is no such folder. */
  public static ArtFiles in(Path folder) {
    List<Path> pages = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      return new ArtFiles(pages, problems);
    }
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, Files::isRegularFile)) {
      for (Path file : files) {
        sort(file, pages, problems);
      }
    } catch (IOException e) {
      problems.add("The folder " + folder + " cannot be read: check its permissions.");
    }
    pages.sort(Comparator.comparing(UnreadableReason::name, NaturalOrder::compare));
    problems.sort(Comparator.naturalOrder());
    return new ArtFiles(pages, problems);
  }

  /**
   * The files that a person named: pages in the given order, those of a folder in natural order.
   */
  public static ArtFiles named(List<Path> paths) {
    List<Path> pages = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (Path path : paths) {
      if (Files.isDirectory(path)) {
        ArtFiles inside = ArtFiles.in(path);
        pages.addAll(inside.pages());
        problems.addAll(inside.problems());
      } else {
        pages.add(path);
      }
    }
    return new ArtFiles(pages, problems);
  }

  private static void sort(Path file, List<Path> pages, List<String> problems) {
    String name = UnreadableReason.name(file).toLowerCase(Locale.ROOT);
    if (name.startsWith(".")) {
      return; // hidden: a file manager's own
    }
    if (READ.stream().anyMatch(name::endsWith)) {
      pages.add(file);
    } else if (PICTURES.stream().anyMatch(name::endsWith)) {
      problems.add(
          "The picture "
              + UnreadableReason.name(file)
              + " is of a kind that Readfall does not read: save it as PNG.");
    }
  }
}
