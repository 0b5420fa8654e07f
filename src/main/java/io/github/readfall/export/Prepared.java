package io.github.readfall.export;

import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.job.LanguagesProof;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.polyglot.EditionReader;
import io.github.readfall.series.EpisodeFiles;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An order with all that it needs: its episode read, set and checked.
 *
 * @param proof of the episode, in every language that is needed
 * @param batches the files to be written
 */
public record Prepared(LanguagesProof proof, List<Batch> batches) {

  public Prepared {
    batches = List.copyOf(batches);
  }

  /**
   * Reads, sets and checks an episode for an order.
   *
   * @throws UnusablePath if its files, a translation or a picture of its art cannot be read
   */
  public static Prepared of(Order order, EpisodeFiles files, Proofer proofer) throws UnusablePath {
    List<String> there = files.languages();
    List<String> asked = order.languages(there);
    EditionReader reader = new EditionReader(Optional.empty());
    LanguagesProof proof =
        proofer.languages(
            files,
            (its, episode) -> {
              refuseMissing(asked, there, its, episode.script().language());
              return reader.readAll(its, episode, asked);
            });
    List<FinishedStrip> strips = FinishedStrips.of(files, proof);
    List<String> problems = strips.get(0).art().problems();
    if (!problems.isEmpty()) {
      throw new UnusablePath(problems.get(0));
    }
    refuseUnknown(order.wish(), strips.get(0));
    return new Prepared(proof, order.batches(strips));
  }

  private static void refuseUnknown(Order.Wish wish, FinishedStrip strip) throws UnusablePath {
    Set<String> known = strip.galley().style().deliveries().keySet();
    if (wish.delivery().isPresent() && !known.contains(wish.delivery().get())) {
      throw new UnusablePath(
          "There is no delivery "
              + wish.delivery().get()
              + ": there are "
              + String.join(", ", known)
              + ", and those that you name in series.toml, such as [delivery.wide].");
    }
  }

  private static void refuseMissing(
      List<String> asked, List<String> there, EpisodeFiles files, String own) throws UnusablePath {
    for (String tag : asked) {
      if (!tag.equals(own) && !there.contains(tag)) {
        throw new UnusablePath(
            "There is no translation "
                + tag
                + " in "
                + files.languagesFolder()
                + ": take one in with readfall languages in.");
      }
    }
  }
}
