package io.github.readfall.window;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Installation;
import io.github.readfall.series.Surroundings;
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
import java.awt.KeyboardFocusManager;
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

/** The frame and its contents: the start page if nothing is open, else script, strip and phone. */
final class MainWindow {

  private static final String START = "start";
  private static final String WORK = "work";

  /** The position and size at the first start, if the screen is large enough. House default. */
  private static final WindowBox FIRST_BOX = new WindowBox(60, 40, 1480, 920);

  private final Launch launch;
  private final Runnable closedListener;
  private final JFrame frame = new JFrame(Wording.of("window.title"));
  private final MenuLetters menuLetters = new MenuLetters();
  private final CardLayout cards = new CardLayout();
  private final JPanel body = new JPanel(cards);
  private final NoticeBar notices = new NoticeBar();
  private final WorkView work = new WorkView();
  private final BackgroundThread autosave = new BackgroundThread("readfall-autosave");
  private final Executor disk = thread("readfall-disk");
  private final SideFileLocks locks;
  private final SavedWindowState state;
  private final EpisodeModel model;
  private final EpisodeStarter starter;
  private final Workplace workplace;
  private final ViewLinking linking;
  private final TranslatedLine line;
  private final LanguageViews languages;
  private final StylePage style;
  private final ExportAction exportAction;
  private final LayoutActions layoutActions;
  private final StripController stripController;
  private final ScreenMeasuring screenMeasuring;
  private final PlanController planController;
  private final PartsWriting partsWriting;
  private final OutsideChanges outsideChanges;
  private final ViewRestoring viewRestoring;
  private final StartView start;

  /**
   * A window that is not open yet.
   *
   * @param closedListener called after it has been closed
   */
  MainWindow(Launch launch, Runnable closedListener) {
    this.launch = launch;
    this.closedListener = closedListener;
    locks = SideFileLocks.in(launch.stateFolder());
    state = new SavedWindowState(WindowStateFile.in(launch.stateFolder()), disk, this::showProblem);
    start = new StartView(startActions(), this::open);

    // The episode that is open
    model = new EpisodeModel(proofer(), threads(), new StripScenes()::of);
    starter = new EpisodeStarter(frame, disk, this::open, notices::show);
    EpisodeOpener opener = new EpisodeOpener(launch.faces(), locks, autosave, this::showProblem);
    EditorPage editor = new EditorPage(work.editor(), starter);
    LayoutModel layout = new LayoutModel(model, new SharedUndo(work.editor()), this::showProblem);
    workplace = new Workplace(opener, model, notices, disk, editor, layout);

    // Views of the script, the strip and the phone
    linking = new ViewLinking(model, work);
    ViewUpdater updater = new ViewUpdater(model, work, linking);
    viewRestoring = new ViewRestoring(state, work, workplace);
    outsideChanges = new OutsideChanges(workplace, updater, notices);
    screenMeasuring = new ScreenMeasuring(frame, state, work.phoneColumn().trueSize());

    // Other languages
    Consumer<String> translationProblems =
        sentence -> notices.show(TranslatedLine.problem(sentence));
    LanguageModels languageModels = LanguageModels.with(disk, translationProblems, this::showFault);
    line = new TranslatedLine(model, languageModels, work, linking, notices);
    languages = new LanguageViews(model, languageModels, work, updater, line);

    // Work on the strip, its style, its plan and its findings
    style = new StylePage(workplace, disk, this::showFault);
    Executor placing = thread("readfall-placing");
    layoutActions = new LayoutActions(placing, proofer(), model, layout, notices::show);
    stripController = new StripController(model, layout, work, notices, layoutActions);
    Executor planning = thread("readfall-planning");
    planController = new PlanController(model, work.plan(), work.strip(), planning);
    FindingController findings =
        new FindingController(model, layout, disk, notices::show, workplace::surroundingsChanged);

    // Files that are made from it
    exportAction = new ExportAction(frame, disk, proofer(), this::showProblem, this::showFault);
    partsWriting =
        new PartsWriting(planController, disk, launch.faces(), this::showLater, this::open);

    connectEpisode();
    connectViews();
    findings.connect(work.findings().bar());
    layOut();
  }

  private static Executor thread(String name) {
    return Executors.newSingleThreadExecutor(
        job -> {
          Thread thread = new Thread(job, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  private static ModelThreads threads() {
    return ModelThreads.real(SwingUtilities::invokeLater);
  }

  private Proofer proofer() {
    return new Proofer(launch.faces(), System::nanoTime);
  }

  private List<Notice.Action> startActions() {
    return List.of(
        new Notice.Action(Wording.of("start.open"), this::choose),
        new Notice.Action(Wording.of("start.new"), this::newSeries),
        new Notice.Action(Wording.of("start.sample"), this::sample));
  }

  private void connectEpisode() {
    work.editor().onTextChange(workplace::typed);
    work.scriptColumn().onChosen(files -> line.leave(() -> workplace.open(files)));
    workplace.onOpened(this::opened);
    workplace.onSaved(this::showSaved);
    workplace.onLeaving(viewRestoring::remember);
    workplace.onSurroundings(this::surroundingsRead);
    model.onFault(this::showFault);
    model.onSettled(style::settled);
    model.onSnapshot((shown, scene) -> viewRestoring.stripShown());
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            leave();
          }

          @Override
          public void windowActivated(WindowEvent event) {
            outsideChanges.checkSoon();
            languages.readChanges();
          }
        });
  }

  private void connectViews() {
    work.phoneColumn().onChosen(work.stripColumn()::setPhone);
    work.findings().onChosen(linking::show);
    work.plan().onWriteParts(this::writeParts);
    work.lowerPane()
        .matrix()
        .onChosen(
            (at, language) -> {
              language.ifPresent(languages::show);
              linking.show(at);
            });
    work.lowerPane()
        .readers()
        .onChosen(
            (phone, at) -> {
              work.phoneColumn().see(phone);
              linking.show(at);
            });
  }

  private void layOut() {
    work.side().page("style", style.view());
    body.add(start, START);
    body.add(work, WORK);
    JPanel content = new JPanel(new BorderLayout());
    content.add(notices, BorderLayout.NORTH);
    content.add(body);
    frame.setContentPane(content);
    frame.setJMenuBar(new WindowMenus(this, work, state, languages).bar());
    frame.setName("readfall");
    frame.setIconImages(AppIcon.images());
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    FileDrop.on(frame.getRootPane(), this::open);
  }

  /** Opens the window, and in it what was asked for, else what was open last. */
  void open() {
    KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(menuLetters);
    WindowBox box = state.now().window().orElse(FIRST_BOX).onScreen(screens());
    frame.setBounds(box.x(), box.y(), box.width(), box.height());
    if (state.now().maximised()) {
      frame.setExtendedState(Frame.MAXIMIZED_BOTH);
    }
    showStart();
    frame.setVisible(true);
    work.setShares(state.now().splits());
    state.problem().ifPresent(this::showProblem);
    launch.path().or(() -> state.now().last()).ifPresent(this::open);
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
    start.show(state.now().recent());
    cards.show(body, START);
    frame.setTitle(Wording.of("window.title"));
    Focus.into(start);
  }

  /** Opens a script, an episode folder or a series folder. */
  void open(Path path) {
    line.leave(() -> workplace.open(path, state.now().last()));
  }

  /** Opens a copy of the sample. */
  void sample() {
    try {
      starter.sample(Installation.sample(), launch.stateFolder().resolve("sample"));
    } catch (UnusablePath e) {
      showProblem(String.valueOf(e.getMessage()));
    }
  }

  /** Asks for something to open. */
  void choose() {
    starter.choose();
  }

  /** Starts a series. */
  void newSeries() {
    starter.newSeries();
  }

  /** Starts the next episode of the series that is open. */
  void newEpisode() {
    workplace
        .opened()
        .flatMap(opened -> opened.files().seriesFolder())
        .ifPresentOrElse(
            starter::newEpisode,
            () -> notices.show(Notice.of("making", Wording.of("episode.noSeries"))));
  }

  /** Shows an episode in place of the previous one, part by part. */
  private void opened(OpenEpisode opened) {
    style.open(opened.files());
    languages.open(launch.translations().of(opened.files()));
    state.change(remembered -> remembered.opened(opened.files().script()));
    starter.setNeighbour(opened.files());
    work.scriptColumn().show(opened);
    cards.show(body, WORK);
    work.setShares(state.now().splits());
    viewRestoring.restore(opened);
    outsideChanges.watch(opened);
    work.editor().focusText();
    planController.clear();
  }

  /** Another program has changed the series or the files around the script. */
  private void surroundingsRead(Surroundings surroundings) {
    style.readAgain();
    outsideChanges.surroundingsRead(surroundings);
    work.phoneColumn().offer(surroundings, work.phoneColumn().phone());
  }

  private void showSaved() {
    boolean isAllSaved = !workplace.hasUnsaved();
    work.scriptColumn().showSaved(isAllSaved);
    frame.getRootPane().putClientProperty("Window.documentModified", !isAllSaved);
    String title = isAllSaved ? "window.open" : "window.unsaved";
    workplace.opened().ifPresent(o -> frame.setTitle(Wording.of(title, o.files().script())));
  }

  /** Closes the episode, and shows the start page. */
  void closeEpisode() {
    line.leave(() -> workplace.leave(this::backToStart));
  }

  private void backToStart() {
    viewRestoring.remember();
    outsideChanges.stop();
    workplace.close();
    languages.close();
    notices.clear();
    state.change(remembered -> remembered.closed());
    showStart();
  }

  /** Saves the script, the layout and the translations. */
  void save() {
    workplace.save();
    line.save();
  }

  /** Saves everything, and opens the export dialog. */
  void export() {
    whenSaved(files -> exportAction.open(files, language()));
  }

  /** Measures the screen that the window is on. */
  void measureScreen() {
    screenMeasuring.measure();
  }

  /** Saves everything, and offers to write the parts that the episode is split into. */
  void writeParts() {
    whenSaved(files -> partsWriting.offer(files, this::writeParts));
  }

  private void whenSaved(Consumer<EpisodeFiles> then) {
    line.leave(
        () ->
            workplace.saved(
                () -> workplace.opened().ifPresent(opened -> then.accept(opened.files()))));
  }

  private String language() {
    return model.shown().map(shown -> shown.episode().script().language()).orElse("en");
  }

  /** Quits the program. */
  void leave() {
    line.leave(() -> workplace.leave(this::close));
  }

  private void close() {
    viewRestoring.remember();
    boolean isMaximised = (frame.getExtendedState() & Frame.MAXIMIZED_BOTH) != 0;
    WindowBox box = isMaximised ? state.now().window().orElse(FIRST_BOX) : box(frame.getBounds());
    state.change(remembered -> remembered.placed(box, isMaximised));
    outsideChanges.stop();
    workplace.close();
    frame.dispose();
    KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(menuLetters);
    disk.execute(
        () -> {
          autosave.close();
          locks.close();
          closedListener.run();
        });
  }

  private void showFault(Throwable fault) {
    StackTraceElement[] trace = fault.getStackTrace();
    String where = trace.length > 0 ? trace[0].toString() : "";
    notices.show(Notice.of("fault", Wording.of("fault", fault.toString(), where)));
  }

  /** Shows a notice; may be called on any thread. */
  private void showLater(Notice notice) {
    SwingUtilities.invokeLater(() -> notices.show(notice));
  }

  /** Shows what went wrong; may be called on any thread. */
  private void showProblem(String sentence) {
    showLater(Notice.of("trouble", sentence));
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

  EpisodeModel model() {
    return model;
  }

  StripController stripController() {
    return stripController;
  }

  LayoutActions layoutActions() {
    return layoutActions;
  }

  PlanController planController() {
    return planController;
  }

  LanguageViews languages() {
    return languages;
  }

  JFrame frame() {
    return frame;
  }
}
