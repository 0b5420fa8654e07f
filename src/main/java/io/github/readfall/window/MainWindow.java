package io.github.readfall.window;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Installation;
import io.github.readfall.series.autosave.BackgroundThread;
import io.github.readfall.series.autosave.SideFileLocks;
import io.github.readfall.series.autosave.WindowBox;
import io.github.readfall.series.autosave.WindowStateFile;
import io.github.readfall.window.export.ExportAction;
import io.github.readfall.window.findings.FindingController;
import io.github.readfall.window.languages.LanguageModels;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.ModelThreads;
import io.github.readfall.window.model.StripScenes;
import io.github.readfall.window.parts.Focus;
import io.github.readfall.window.parts.Notice;
import io.github.readfall.window.parts.NoticeBar;
import io.github.readfall.window.plan.PartsWriting;
import io.github.readfall.window.plan.PlanController;
import io.github.readfall.window.strip.LayoutActions;
import io.github.readfall.window.workplace.EditorPage;
import io.github.readfall.window.workplace.EpisodeOpener;
import io.github.readfall.window.workplace.EpisodeStarter;
import io.github.readfall.window.workplace.FileDrop;
import io.github.readfall.window.workplace.OpenEpisode;
import io.github.readfall.window.workplace.SavedWindowState;
import io.github.readfall.window.workplace.StartView;
import io.github.readfall.window.workplace.Workplace;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Frame;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** The frame and what is in it: the start while nothing is open, else script, strip and phone. */
final class MainWindow {

  private static final String START = "start";
  private static final String WORK = "work";

  /** Where a first run stands, on a screen that is large enough. House default, no source. */
  private static final WindowBox FIRST = new WindowBox(60, 40, 1480, 920);

  private final Launch launch;
  private final Runnable closed;
  private final JFrame frame = new JFrame(Wording.of("window.title"));
  private final CardLayout cards = new CardLayout();
  private final JPanel body = new JPanel(cards);
  private final NoticeBar notices = new NoticeBar();
  private final BackgroundThread keeping = new BackgroundThread("readfall-keeping");
  private final Executor disk =
      Executors.newSingleThreadExecutor(job -> thread("readfall-disk", job));
  private final SideFileLocks claims;
  private final SavedWindowState memory;
  private final EpisodeModel desk;
  private final Workplace workplace;
  private final WorkView work;
  private final StartView start;
  private final EpisodeStarter starting;
  private final ViewRestoring returning;
  private final OutsideChanges watching;
  private final LanguageViews languages;
  private final TranslatedLine line;
  private final ExportAction writeOut;
  private final LayoutActions layoutWays;
  private final ScreenMeasuring measuring;
  private final StripController bench;
  private final PlanController planning;
  private final PartsWriting partsMaking;

  /**
   * A window that is not open yet.
   *
   * @param closed is told when it has been closed
   */
  MainWindow(Launch launch, Runnable closed) {
    this.launch = launch;
    this.closed = closed;
    claims = SideFileLocks.in(launch.stateFolder());
    memory = new SavedWindowState(WindowStateFile.in(launch.stateFolder()), disk, this::complain);
    desk =
        new EpisodeModel(
            proofer(), ModelThreads.real(SwingUtilities::invokeLater), new StripScenes()::of);
    work = new WorkView(files -> line().leave(() -> workplace().open(files)));
    EpisodeOpener opener = new EpisodeOpener(launch.faces(), claims, keeping, this::complain);
    starting = new EpisodeStarter(frame, disk, this::open, notices::tell);
    LayoutModel strip = new LayoutModel(desk, new SharedUndo(work.editor()), this::complain);
    workplace =
        new Workplace(opener, desk, notices, disk, new EditorPage(work.editor(), starting), strip);
    ViewLinking linking = new ViewLinking(desk, work);
    ViewUpdater showing = new ViewUpdater(desk, work, linking);
    LanguageModels desks =
        LanguageModels.with(
            disk, sentence -> notices.tell(TranslatedLine.trouble(sentence)), this::fault);
    line = new TranslatedLine(desk, desks, work, linking, notices);
    languages = new LanguageViews(desk, desks, work, showing, line);
    StylePage.in(work, workplace, desk, disk, this::fault);
    writeOut = new ExportAction(frame, disk, proofer(), this::complain, this::fault);
    layoutWays =
        new LayoutActions(
            Executors.newSingleThreadExecutor(job -> thread("readfall-placing", job)),
            proofer(),
            desk,
            strip,
            notices::tell);
    bench = new StripController(desk, strip, work, notices, layoutWays);
    new FindingController(desk, strip, disk, notices::tell, () -> workplace().surroundingsChanged())
        .serve(work.findings().bar());
    measuring = new ScreenMeasuring(frame, memory, work.phoneColumn().trueSize());
    planning =
        new PlanController(
            desk,
            work.plan(),
            work.strip(),
            Executors.newSingleThreadExecutor(job -> thread("readfall-planning", job)));
    partsMaking =
        new PartsWriting(
            planning,
            disk,
            launch.faces(),
            notice -> SwingUtilities.invokeLater(() -> notices.tell(notice)),
            this::open);
    watching = new OutsideChanges(workplace, showing, notices);
    returning = new ViewRestoring(memory, work, workplace);
    start = new StartView(startWays(), this::open);
    WindowMenus menus = new WindowMenus(this, work, memory, languages);
    frame.setJMenuBar(menus.bar());
    wire(linking);
    lay();
  }

  private static Thread thread(String name, Runnable job) {
    Thread thread = new Thread(job, name);
    thread.setDaemon(true);
    return thread;
  }

  private Proofer proofer() {
    return new Proofer(launch.faces(), System::nanoTime);
  }

  private void wire(ViewLinking linking) {
    work.editor().onTextChange(workplace::typed);
    work.phoneColumn().onChosen(work.stripColumn()::setPhone);
    work.findings().onChosen(linking::show);
    work.below()
        .matrix()
        .onChosen(
            (at, language) -> {
              language.ifPresent(languages::show);
              linking.show(at);
            });
    work.below()
        .readers()
        .onChosen(
            (phone, at) -> {
              work.phoneColumn().see(phone);
              linking.show(at);
            });
    desk.onFault(this::fault);
    desk.onSnapshot((shown, picture) -> returning.stripIsThere());
    workplace.onOpened(opened -> languages.open(launch.translations().of(opened.files())));
    workplace.onOpened(this::opened);
    workplace.onOpened(opened -> planning.clear());
    work.plan().onMake(this::makeParts);
    workplace.onSaved(this::savedOrNot);
    workplace.onLeaving(returning::remember);
    workplace.onSurrounded(around -> work.phoneColumn().offer(around, work.phoneColumn().phone()));
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            leave();
          }

          @Override
          public void windowActivated(WindowEvent event) {
            watching.lookSoon();
            languages.lookAgain();
          }
        });
  }

  private void lay() {
    JPanel content = new JPanel(new BorderLayout());
    content.add(notices, BorderLayout.NORTH);
    body.add(start, START);
    body.add(work, WORK);
    content.add(body);
    frame.setContentPane(content);
    frame.setName("readfall");
    frame.setIconImages(AppIcon.images());
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    FileDrop.on(frame.getRootPane(), this::open);
  }

  private List<Notice.Action> startWays() {
    return List.of(
        new Notice.Action(Wording.of("start.open"), starting::choose),
        new Notice.Action(Wording.of("start.new"), starting::newSeries),
        new Notice.Action(Wording.of("start.sample"), this::sample));
  }

  /** Opens the window, and in it what is asked for, else what was open last. */
  void open() {
    WindowBox box = memory.now().window().orElse(FIRST).onScreen(screens());
    frame.setBounds(box.x(), box.y(), box.width(), box.height());
    if (memory.now().maximised()) {
      frame.setExtendedState(Frame.MAXIMIZED_BOTH);
    }
    showStart();
    frame.setVisible(true);
    work.divide(memory.now().splits());
    memory.trouble().ifPresent(this::complain);
    launch.path().or(() -> memory.now().last()).ifPresent(this::open);
  }

  private static List<WindowBox> screens() {
    return Arrays.stream(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
        .map(GraphicsDevice::getDefaultConfiguration)
        .map(screen -> box(screen.getBounds()))
        .toList();
  }

  private static WindowBox box(Rectangle r) {
    return new WindowBox(r.x, r.y, Math.max(1, r.width), Math.max(1, r.height));
  }

  private void showStart() {
    start.show(memory.now().recent());
    cards.show(body, START);
    frame.setTitle(Wording.of("window.title"));
    Focus.into(start);
  }

  /** Opens what lies at a path. */
  void open(Path path) {
    line.leave(() -> workplace.open(path, memory.now().last()));
  }

  /** Opens a copy of the sample. */
  void sample() {
    try {
      starting.sample(Installation.sample(), launch.stateFolder().resolve("sample"));
    } catch (UnusablePath e) {
      complain(String.valueOf(e.getMessage()));
    }
  }

  /** Asks for something to open. */
  void choose() {
    starting.choose();
  }

  /** Starts a series. */
  void newSeries() {
    starting.newSeries();
  }

  /** Starts the next episode of the series that is open. */
  void newEpisode() {
    workplace
        .opened()
        .flatMap(opened -> opened.files().seriesFolder())
        .ifPresentOrElse(
            starting::newEpisode,
            () -> notices.tell(Notice.of("making", Wording.of("episode.noSeries"))));
  }

  private void opened(OpenEpisode opened) {
    memory.change(remembered -> remembered.opened(opened.files().script()));
    starting.beside(opened.files());
    work.scriptColumn().show(opened);
    cards.show(body, WORK);
    work.divide(memory.now().splits());
    returning.restore(opened);
    watching.watch(opened);
    work.editor().focusText();
  }

  private void savedOrNot() {
    boolean all = !workplace.hasUnsaved();
    work.scriptColumn().saved(all);
    frame.getRootPane().putClientProperty("Window.documentModified", !all);
    workplace
        .opened()
        .ifPresent(
            o ->
                frame.setTitle(
                    Wording.of(all ? "window.open" : "window.unsaved", o.files().script())));
  }

  /** Puts the episode away. */
  void closeEpisode() {
    line.leave(() -> workplace.leave(this::putAway));
  }

  private void putAway() {
    returning.remember();
    watching.stop();
    workplace.close();
    languages.close();
    notices.clear();
    memory.change(remembered -> remembered.closed());
    showStart();
  }

  /** Saves the script, and what is written in other languages. */
  void save() {
    workplace.save();
    line.save();
  }

  /** Asks what the strip is to be written out as. */
  void writeOut() {
    whenSaved(files -> writeOut.open(files, language()));
  }

  LayoutActions layoutWays() {
    return layoutWays;
  }

  /** Measures the screen that the window is on. */
  void measureScreen() {
    measuring.measure();
  }

  StripController bench() {
    return bench;
  }

  /** Offers to write the parts that the episode is split into. */
  void makeParts() {
    whenSaved(files -> partsMaking.offer(files, this::makeParts));
  }

  private void whenSaved(Consumer<EpisodeFiles> then) {
    line.leave(
        () ->
            workplace.saved(
                () -> workplace.opened().ifPresent(opened -> then.accept(opened.files()))));
  }

  private String language() {
    return desk.shown().map(shown -> shown.episode().script().language()).orElse("en");
  }

  /** Leaves the program. */
  void leave() {
    line.leave(() -> workplace.leave(this::close));
  }

  private void close() {
    returning.remember();
    Rectangle now = frame.getBounds();
    boolean maximised = (frame.getExtendedState() & Frame.MAXIMIZED_BOTH) != 0;
    WindowBox box = maximised ? memory.now().window().orElse(FIRST) : box(now);
    memory.change(remembered -> remembered.placed(box, maximised));
    watching.stop();
    workplace.close();
    frame.dispose();
    disk.execute(
        () -> {
          keeping.close();
          claims.close();
          closed.run();
        });
  }

  private void fault(Throwable fault) {
    StackTraceElement[] trace = fault.getStackTrace();
    String where = trace.length > 0 ? trace[0].toString() : "";
    notices.tell(Notice.of("fault", Wording.of("fault", fault.toString(), where)));
  }

  /** Says what went wrong; from any thread. */
  private void complain(String sentence) {
    SwingUtilities.invokeLater(() -> notices.tell(Notice.of("trouble", sentence)));
  }

  NoticeBar notices() {
    return notices;
  }

  Workplace workplace() {
    return workplace;
  }

  WorkView work() {
    return work;
  }

  EpisodeModel desk() {
    return desk;
  }

  private TranslatedLine line() {
    return line;
  }

  PlanController planning() {
    return planning;
  }

  LanguageViews languages() {
    return languages;
  }

  JFrame frame() {
    return frame;
  }
}
