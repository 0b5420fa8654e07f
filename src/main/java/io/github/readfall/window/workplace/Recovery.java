package io.github.readfall.window.workplace;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.series.autosave.OpenText;
import io.github.readfall.series.autosave.Recovered;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.NoticeBar;
import java.util.List;

/** Offers unsaved changes from windows that crashed, one after the other, the newest first. */
final class Recovery {

  private final String topic;
  private final DiskWork disk;
  private final WorkPage page;
  private final NoticeBar notices;

  /**
   * A recovery that offers nothing yet.
   *
   * @param topic of its notices; {@code TOPIC.offer} and {@code TOPIC.older} are the keys of their
   *     sentences
   */
  Recovery(String topic, DiskWork disk, WorkPage page, NoticeBar notices) {
    this.topic = topic;
    this.disk = disk;
    this.page = page;
    this.notices = notices;
  }

  /** Offers the next unsaved changes, if there are any. */
  void offerNext() {
    disk.open().get().flatMap(kept -> kept.recovered().stream().findFirst()).ifPresent(this::offer);
  }

  private void offer(Recovered recovered) {
    notices.show(
        new Notice(
            topic,
            Wording.of(topic + (recovered.scriptIsNewer() ? ".older" : ".offer")),
            List.of(
                new Notice.Action(Wording.of("recovered.restore"), () -> restore(recovered)),
                new Notice.Action(Wording.of("recovered.toFile"), () -> saveAsFile(recovered)),
                new Notice.Action(Wording.of("recovered.discard"), () -> discard(recovered)))));
  }

  private void restore(Recovered recovered) {
    disk.run(
        kept -> kept.adopt(recovered),
        text -> {
          page.replace(text);
          offerNext();
        });
  }

  private void saveAsFile(Recovered recovered) {
    disk.run(
        kept -> saveAsFile(kept, recovered),
        sentence -> {
          notices.show(Notice.of("aside", sentence));
          offerNext();
        });
  }

  private static String saveAsFile(OpenText kept, Recovered recovered) {
    try {
      return Wording.of("recovered.saved", kept.setAside(recovered));
    } catch (UnusablePath e) {
      return String.valueOf(e.getMessage());
    }
  }

  private void discard(Recovered recovered) {
    disk.run(
        kept -> {
          kept.drop(recovered);
          return recovered;
        },
        discarded -> offerNext());
  }
}
