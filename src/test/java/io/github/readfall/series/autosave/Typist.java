package io.github.readfall.series.autosave;

import java.nio.file.Path;
import java.util.SplittableRandom;

/** A program that types, and saves now and then, until it is killed. It says what it has done. */
final class Typist {

  private Typist() {}

  /**
   * Types.
   *
   * @param args the script, the state folder, the seed, and after how many keys to save; 0 for
   *     never
   */
  public static void main(String[] args) throws Exception {
    long seed = Long.parseLong(args[2]);
    int saveEvery = Integer.parseInt(args[3]);
    SplittableRandom pauses = new SplittableRandom(-seed);
    OpenText kept =
        OpenText.open(
            Path.of(args[0]),
            SideFileLocks.in(Path.of(args[1])),
            new BackgroundThread("keeping"),
            sentence -> say("trouble", sentence));
    Scheduler saver = new BackgroundThread("saving");
    Typing typing = new Typing(seed, kept.openedText());
    for (int keys = 1; ; keys++) {
      typing.key();
      kept.changed(typing.text());
      say("typed", keys);
      if (saveEvery > 0 && keys % saveEvery == 0) {
        int of = keys;
        String text = typing.text();
        saver.after(0, () -> save(kept, text, of)); // typing goes on meanwhile
      }
      Thread.sleep(pauses.nextInt(3, 40));
    }
  }

  private static void save(OpenText kept, String text, int keys) {
    say("saving", keys);
    say(kept.save(text) instanceof SaveResult.Saved ? "saved" : "trouble", keys);
  }

  private static synchronized void say(String what, Object about) {
    System.out.println(what + " " + about);
    System.out.flush();
  }
}
