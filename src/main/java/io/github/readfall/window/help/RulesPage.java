package io.github.readfall.window.help;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePages;
import io.github.readfall.window.parts.Listen;
import io.github.readfall.window.parts.ProportionalSplit;
import io.github.readfall.window.parts.SeverityIcon;
import io.github.readfall.window.parts.WrittenPage;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The list of all rules with a filter, and the page of the selected one. */
final class RulesPage extends JPanel {

  private static final long serialVersionUID = 1;

  private final transient List<RulePage> all =
      Stream.concat(RulePages.rules().stream(), RulePages.others().stream()).toList();
  private final DefaultListModel<RulePage> rows = new DefaultListModel<>();
  private final JList<RulePage> list = new JList<>(rows);
  private final JTextField words = new JTextField(14);
  private final WrittenPage page = new WrittenPage("help.rule", Wording.of("help.rule"));

  RulesPage() {
    super(new BorderLayout());
    words.setName("help.words");
    words.putClientProperty("JTextField.placeholderText", Wording.of("help.filter"));
    words.putClientProperty("JTextField.showClearButton", true);
    words.getAccessibleContext().setAccessibleName(Wording.of("help.filter"));
    Listen.toText(words, this::filter);
    list.setName("help.rules");
    list.getAccessibleContext().setAccessibleName(Wording.of("help.rules"));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new Entry());
    list.addListSelectionListener(event -> explain());
    layOut();
    filter();
  }

  private void layOut() {
    JPanel left =
        new JPanel(new MigLayout("insets 10 0 0 0, gap 0 8, fill, wrap 1", "[grow,fill]"));
    left.add(words, "gapx 12 12");
    JScrollPane scroll = new JScrollPane(list);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    left.add(scroll, "grow, push");
    add(new ProportionalSplit("help", ProportionalSplit.HORIZONTAL_SPLIT, left, page, 0.36));
  }

  private void filter() {
    RulePage before = list.getSelectedValue();
    String wanted = words.getText().strip().toLowerCase(Locale.ROOT);
    List<RulePage> seen = all.stream().filter(rule -> says(rule, wanted)).toList();
    rows.clear();
    rows.addAll(seen);
    if (before != null && seen.contains(before)) {
      list.setSelectedValue(before, true);
    } else if (!seen.isEmpty()) {
      list.setSelectedIndex(0);
    } else {
      explain();
    }
  }

  private static boolean says(RulePage rule, String wanted) {
    return Stream.concat(Stream.of(rule.id()), rule.parts().values().stream())
        .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(wanted));
  }

  private void explain() {
    RulePage rule = list.getSelectedValue();
    if (rule != null) {
      String title = "<p><b>" + WrittenPage.escaped(rule.id()) + "</b></p>";
      page.show(title + WrittenPage.parts(rule));
    } else {
      String none = WrittenPage.escaped(Wording.of("help.noRule"));
      page.show("<p class=quiet>" + none + "</p>");
    }
  }

  /** The component that gets the focus. */
  JComponent first() {
    return words;
  }

  private static final class Entry extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean chosen, boolean focused) {
      super.getListCellRendererComponent(list, "", index, chosen, focused);
      if (value instanceof RulePage rule) {
        setText(rule.id());
        setIcon(new SeverityIcon(rule.severity(), list.getFont().getSize() * 3 / 4));
        setIconTextGap(8);
        getAccessibleContext()
            .setAccessibleName(Wording.of("help.entry", rule.id(), rule.severity().word()));
      }
      return this;
    }
  }
}
