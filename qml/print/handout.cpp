#include "qml/print/handout.h"

#include <QtCore/QSet>
#include <cmath>

#include "core/library/dose_words.h"
#include "core/library/settings.h"
#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "qml/print/figure_strip.h"
#include "qml/print/paper.h"
#include "qml/print/record_words.h"
#include "qml/print/sheet_html.h"
#include "qml/print/sheet_language.h"
#include "qml/print/tick_grid.h"

namespace newel::print {
namespace {

constexpr double kMsPerMinute = 60000;
constexpr double kHighStripMm = 46;
constexpr double kLowStripMm = 28;  // also where letters are taller

// Rests stand with the dose.
QString tempoWords(const v1::Dose& dose) {
  const auto seconds = [](std::uint32_t count) { return sheetWords("Handout", "%1 s").arg(count); };
  if (dose.has_sets())
    return sheetWords("Handout", "%1 out, %2 back")
        .arg(seconds(dose.sets().move_s()), seconds(dose.sets().return_s()));
  return dose.has_passes() ? sheetWords("Handout", "%1 a step").arg(seconds(dose.passes().step_s()))
                           : QString();
}

// Each different sentence of the first set once, in the order the phone says them.
QStringList cueLines(const v1::Timeline& timeline) {
  QStringList lines;
  QSet<QString> seen;
  for (const auto& beat : timeline.beats()) {
    if (beat.set() > 1) break;
    const QString words = text(beat.screen());
    if (words.isEmpty() || seen.contains(words)) continue;
    seen.insert(words);
    QString line = words;
    if (beat.kind() == v1::BEAT_KIND_HOLD && beat.length_ms() < 60000) {
      line += sheetWords("Handout", " Hold %1 s.").arg(beat.length_ms() / 1000);
    }
    lines << line;
  }
  return lines;
}

class EntryText {
 public:
  EntryText(const HandoutInput& input, const v1::Entry& entry, const Catalogue& catalogue,
            const RuleBook& rules)
      : m_input(input), m_entry(entry), m_catalogue(catalogue), m_rules(rules) {
    m_context.catalogue = &catalogue;
    m_context.person = &input.person;
    m_context.entry = &entry;
    m_words =
        wordsOrEnglish(catalogue, entry.exercise_id(), input.person.language(), entry.exercise_revision());
    if (m_words != nullptr) m_context.language = m_words->language();
  }

  // Adds the exercise: its name, how it looks, how it is done.
  absl::Status addTo(Paper& paper, int number, HandoutLayout layout) const {
    const auto timeline = compileTimeline(m_entry, m_input.person, m_catalogue, m_input.person.language());
    if (!timeline.ok()) return timeline.status();
    if (m_words == nullptr) return absl::NotFoundError("exercise " + m_entry.exercise_id() + " has no words");
    const QString head = QStringLiteral("<h2>%1. %2</h2><p>%3</p>")
                             .arg(number)
                             .arg(safe(text(timeline->title())), safe(resolved(m_words->purpose())));
    const bool compact = layout == HandoutLayout::Compact;
    auto strip = figureStrip(*timeline, m_input.person, m_catalogue,
                             compact || sheetReadsRightToLeft() ? kLowStripMm : kHighStripMm);
    // A page holds several: a little air before each.
    const QString air =
        compact && number > 1 ? QStringLiteral("<p style=\"font-size:4pt\">&nbsp;</p>") : QString();
    paper.add(air + head + notInTheLanguage(*timeline));
    paper.keepWithNext();
    if (strip != nullptr) {
      paper.add(std::move(strip));
      paper.keepWithNext();
    }
    paper.add(compact ? shortBody(*timeline) : body(*timeline));
    return absl::OkStatus();
  }

 private:
  // The therapist's photo and clip are not printed: the paper says where they are to be seen.
  QString onThePhone() const {
    const char* words = "";
    if (m_entry.has_photo())
      words =
          QT_TRANSLATE_NOOP("Handout", "A photo from your therapist is on your phone, with your programme.");
    if (m_entry.has_clip())
      words =
          QT_TRANSLATE_NOOP("Handout", "A clip from your therapist is on your phone, with your programme.");
    if (m_entry.has_photo() && m_entry.has_clip())
      words = QT_TRANSLATE_NOOP(
          "Handout", "A photo and a clip from your therapist are on your phone, with your programme.");
    return words[0] == '\0' ? QString() : QStringLiteral("<p>%1</p>").arg(safe(sheetWords("Handout", words)));
  }

  // Whole in another language rather than mixed; who cannot read it is told whom to ask.
  static QString notInTheLanguage(const v1::Timeline& timeline) {
    if (!timeline.fell_back()) return {};
    return plain(sheetWords(
        "Handout", "This exercise is not in your language yet. Ask your therapist to read it with you."));
  }

  QString note() const {
    if (m_entry.note().empty()) return {};
    return boxed(QStringLiteral("<b>%1</b> %2")
                     .arg(safe(sheetWords("Handout", "From your therapist:")), safe(text(m_entry.note()))));
  }

  // What cannot be left out: how much, how, what to mind, when to stop.
  QString shortBody(const v1::Timeline& timeline) const {
    return factLine(timeline) + note() +
           plain(resolved(m_words->start()) + QLatin1Char(' ') + cueLines(timeline).join(QLatin1Char(' '))) +
           QStringLiteral("<p><b>%1</b> %2</p>")
               .arg(safe(sheetWords("Handout", "Take care")), safe(cautions().join(QLatin1Char(' ')))) +
           QStringLiteral("<p><b>%1</b> %2</p>")
               .arg(safe(sheetWords("Handout", "Stop this exercise if")),
                    safe(stops().join(QLatin1Char(' '))));
  }

  QString body(const v1::Timeline& timeline) const {
    QString html = factTable(factRows(timeline)) + note() + onThePhone();
    html += QStringLiteral("<h3>%1</h3><p>%2</p><ol>")
                .arg(safe(sheetWords("Handout", "How to do it")), safe(resolved(m_words->start())));
    for (const QString& line : cueLines(timeline)) html += QStringLiteral("<li>%1</li>").arg(safe(line));
    html += QStringLiteral("</ol>");
    if (!m_words->breathing().empty())
      html += QStringLiteral("<p>%1</p>").arg(safe(resolved(m_words->breathing())));
    html += bullets(sheetWords("Handout", "What good looks like"), all(m_words->good()));
    html += bullets(sheetWords("Handout", "Take care"), cautions());
    html += bullets(sheetWords("Handout", "Stop this exercise if"), stops());
    return html;
  }

  // A sentence that has no meaning for this person is left out rather than shown with a hole in it.
  QString resolved(const std::string& words) const {
    const auto plain = resolveWords(words, m_context);
    return plain.ok() ? text(*plain) : QString();
  }

  QStringList all(const google::protobuf::RepeatedPtrField<std::string>& lines) const {
    QStringList out;
    for (const auto& line : lines) {
      const QString words = resolved(line);
      if (!words.isEmpty()) out << words;
    }
    return out;
  }

  // What and its value, in the order of reading.
  QList<QPair<QString, QString>> facts(const v1::Timeline& timeline) const {
    const int minutes =
        std::max(1, static_cast<int>(std::ceil(static_cast<double>(timeline.total_ms()) / kMsPerMinute)));
    QList<QPair<QString, QString>> list;
    list << qMakePair(
        sheetWords("Handout", "How much"),
        text(newel::doseWords(m_entry.dose(), m_entry.side_policy(), m_catalogue, m_context.language)));
    const QString tempo = tempoWords(m_entry.dose());
    if (!tempo.isEmpty()) list << qMakePair(sheetWords("Handout", "Speed"), tempo);
    list << qMakePair(sheetWords("Handout", "When"), scheduleWords(m_entry.schedule()));
    list << qMakePair(sheetWords("Handout", "Time"),
                      sheetWords("Handout", "about %n minute(s)", nullptr, minutes));
    if (m_entry.side_policy() != v1::SIDE_POLICY_WHOLE_BODY)
      list << qMakePair(sheetWords("Handout", "Sides"), words(m_entry.side_policy()));
    list << qMakePair(sheetWords("Handout", "Hands"), text(timeline.support_words()));
    list << qMakePair(sheetWords("Handout", "Prosthesis"), m_entry.prosthesis() == v1::PROSTHESIS_USE_OFF
                                                               ? sheetWords("Handout", "off")
                                                               : sheetWords("Handout", "on"));
    return list;
  }

  QString factRows(const v1::Timeline& timeline) const {
    QString html;
    for (const auto& [what, value] : facts(timeline)) html += factRow(what, value);
    return html;
  }

  QString factLine(const v1::Timeline& timeline) const {
    QStringList parts;
    for (const auto& [what, value] : facts(timeline))
      parts << QStringLiteral("<b>%1</b> %2").arg(safe(what), safe(value));
    return QStringLiteral("<p>%1</p>").arg(parts.join(QStringLiteral(" · ")));
  }

  QStringList cautions() const {
    QStringList lines = all(m_words->cautions());
    const auto findings = m_rules.check(m_entry, m_input.person, m_catalogue);
    if (findings.ok()) {
      const auto caution = shownCaution(*findings);
      if (caution && !caution->person().empty()) lines.prepend(text(caution->person()));
    }
    return lines;
  }

  QStringList stops() const {
    QStringList lines = all(m_words->stop_if());
    const auto& limits = thresholdsOf(m_input.programme, m_entry);
    lines << sheetWords("Handout", "Pain passes %1 of 10, or rises by %2 or more.")
                 .arg(limits.pain_stop_0_10())
                 .arg(limits.pain_rise_0_10());
    return lines;
  }

  const HandoutInput& m_input;
  const v1::Entry& m_entry;
  const Catalogue& m_catalogue;
  const RuleBook& m_rules;
  const v1::ExerciseWords* m_words = nullptr;
  WordingContext m_context;
};

// A card of advice as a section of its own, with the days it is for.
QString cardHtml(const v1::AdviceEntry& entry, const HandoutInput& input, const Catalogue& catalogue) {
  const v1::AdviceWords* card = cardWordsOrEnglish(catalogue, entry.card_id(), input.person.language());
  if (card == nullptr) return QString();  // a card of a newer program: the phone has it, paper does not
  const SettingValues settings = settingValues(input.clinic.settings(), catalogue);
  const auto lines = [&settings](const google::protobuf::RepeatedPtrField<std::string>& list) {
    QStringList filled;
    for (const std::string& line : list) filled << text(withSettings(line, settings));
    return filled;
  };
  v1::Schedule days;
  *days.mutable_weekdays() = entry.days();
  days.add_windows()->set_to_min(1440);
  QString html = QStringLiteral("<h2>%1</h2><p>%2 (%3)</p>")
                     .arg(safe(text(card->title())), safe(text(withSettings(card->why(), settings))),
                          safe(scheduleWords(days)));
  if (!entry.note().empty()) {
    html += boxed(QStringLiteral("<b>%1</b> %2")
                      .arg(safe(sheetWords("Handout", "From your therapist:")), safe(text(entry.note()))));
  }
  html += bullets(sheetWords("Handout", "What to do"), lines(card->steps()));
  html += bullets(sheetWords("Handout", "Whom to phone"), lines(card->call_if()));
  return html;
}

QString callBox(const v1::ClinicCard& clinic) {
  QString html = QStringLiteral("<b>%1</b> %2, <b>%3</b>")
                     .arg(safe(sheetWords("Handout", "Whom to call:")), safe(text(clinic.name())),
                          safe(dialled(text(clinic.phone()))));
  if (!clinic.hours().empty()) html += QStringLiteral(" (%1)").arg(safe(text(clinic.hours())));
  html += QStringLiteral("<br><b>%1</b> %2")
              .arg(safe(sheetWords("Handout", "In an emergency:")),
                   safe(dialled(text(clinic.emergency_number()))));
  return boxed(html);
}

QString headHtml(const HandoutInput& input) {
  const auto& programme = input.programme;
  QString html =
      QStringLiteral("<h1>%1</h1>")
          .arg(safe(input.name.isEmpty() ? sheetWords("Handout", "Home programme")
                                         : sheetWords("Handout", "Home programme for %1").arg(input.name)));
  QString rows;
  rows += factRow(sheetWords("Handout", "Limb loss"), limbsWords(input.person));
  rows += factRow(sheetWords("Handout", "Programme"),
                  sheetWords("Handout", "number %1, from %2 to %3")
                      .arg(programme.number())
                      .arg(dayWords(programme.effective_day()), dayWords(programme.end_day())));
  rows += factRow(sheetWords("Handout", "Signed by"), text(programme.signer_name()));
  html += factTable(rows);
  html += callBox(input.clinic);
  if (!programme.changes().empty()) {
    html += QStringLiteral("<h3>%1</h3><p>%2</p>")
                .arg(safe(sheetWords("Handout", "What is new")), safe(text(programme.changes())));
  }
  if (!programme.advice().empty()) {
    html += QStringLiteral("<h3>%1</h3><p>%2</p>")
                .arg(safe(sheetWords("Handout", "Advice")), safe(text(programme.advice())));
  }
  html += bullets(sheetWords("Handout", "Before you start"), intendedUse());
  return html;
}

}  // namespace

absl::StatusOr<int> writeHandout(const HandoutInput& asked, const HandoutOptions& options,
                                 const Catalogue& catalogue, const RuleBook& rules, const QString& file) {
  for (const absl::Status& status : {check(asked.programme), check(asked.person), check(asked.clinic)}) {
    if (!status.ok()) return status;
  }
  HandoutInput input = asked;
  if (!options.language.empty()) input.person.set_language(options.language);
  const SheetLanguage language(input.person.language());
  PaperOptions paper_options;
  paper_options.size = options.size;
  paper_options.body_pt = options.body_pt;
  paper_options.title = sheetWords("Handout", "Home programme %1").arg(input.programme.number());
  paper_options.foot =
      sheetWords("Handout", "Stop if something feels wrong. Clinic %1. Emergency %2.")
          .arg(dialled(text(input.clinic.phone())), dialled(text(input.clinic.emergency_number())));
  if (!input.name.isEmpty()) paper_options.foot.prepend(input.name + QStringLiteral(". "));
  Paper paper(paper_options);
  paper.add(headHtml(input));
  for (int i = 0; i < input.programme.entries_size(); ++i) {
    // One or two to a page: each begins a page unless there is room for all of it.
    const absl::Status added =
        EntryText(input, input.programme.entries(i), catalogue, rules).addTo(paper, i + 1, options.layout);
    if (!added.ok()) return added;
  }
  for (const v1::AdviceEntry& card : input.programme.cards()) paper.add(cardHtml(card, input, catalogue));
  auto weeks = tickWeeks(input.programme, catalogue, input.person.language(), options.most_weeks);
  if (!weeks.ok()) return weeks.status();
  if (options.layout == HandoutLayout::Roomy) paper.newPage();
  paper.add(head(sheetWords("Handout", "Tick what you did")) +
            plain(sheetWords("Handout", "One box for each time. A day left out is not made up for later.")));
  paper.keepWithNext();
  for (auto& week : *weeks) paper.add(tickBlock(std::move(week), options.body_pt));
  const absl::Status status = paper.write(file);
  if (!status.ok()) return status;
  return paper.pages();
}

}  // namespace newel::print
