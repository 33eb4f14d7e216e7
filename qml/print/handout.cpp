#include "qml/print/handout.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QSet>
#include <cmath>

#include "core/library/settings.h"
#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "qml/print/figure_strip.h"
#include "qml/print/paper.h"
#include "qml/print/record_words.h"
#include "qml/print/tick_grid.h"

namespace newel::print {
namespace {

constexpr double kMsPerMinute = 60000;

QString say(const char* words) { return QCoreApplication::translate("Handout", words); }
QString safe(const QString& text) {
  return text.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>"));
}

QString factRow(const QString& what, const QString& value) {
  return QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>").arg(safe(what), safe(value));
}

QString bullets(const QString& head, const QStringList& lines) {
  if (lines.isEmpty()) return {};
  QString html = QStringLiteral("<h3>%1</h3><ul>").arg(safe(head));
  for (const QString& line : lines) html += QStringLiteral("<li>%1</li>").arg(safe(line));
  return html + QStringLiteral("</ul>");
}

// A box with a border and no colour: it must read on a grey printer.
QString boxed(const QString& html) {
  return QStringLiteral(
             "<table class=\"box\" width=\"100%\" border=\"1\" cellspacing=\"0\" "
             "style=\"border-style:solid; border-color:#000000;\"><tr><td>%1</td></tr></table>")
      .arg(html);
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
      line += say(" Hold %1 s.").arg(beat.length_ms() / 1000);
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
  absl::Status addTo(Paper& paper, int number) const {
    const auto timeline = compileTimeline(m_entry, m_input.person, m_catalogue, m_input.person.language());
    if (!timeline.ok()) return timeline.status();
    if (m_words == nullptr) return absl::NotFoundError("exercise " + m_entry.exercise_id() + " has no words");
    const QString head = QStringLiteral("<h2>%1. %2</h2><p>%3</p>")
                             .arg(number)
                             .arg(safe(text(timeline->title())), safe(resolved(m_words->purpose())));
    auto strip = figureStrip(*timeline, m_input.person, m_catalogue);
    if (strip == nullptr) {
      paper.add(head + body(*timeline));
      return absl::OkStatus();
    }
    paper.add(head);
    paper.keepWithNext();
    paper.add(std::move(strip));
    paper.keepWithNext();
    paper.add(body(*timeline));
    return absl::OkStatus();
  }

 private:
  // The therapist's photo and clip are not printed: the paper says where they are to be seen.
  QString onThePhone() const {
    const char* words = "";
    if (m_entry.has_photo()) words = "A photo from your therapist is on your phone, with your programme.";
    if (m_entry.has_clip()) words = "A clip from your therapist is on your phone, with your programme.";
    if (m_entry.has_photo() && m_entry.has_clip())
      words = "A photo and a clip from your therapist are on your phone, with your programme.";
    return words[0] == '\0' ? QString() : QStringLiteral("<p>%1</p>").arg(safe(say(words)));
  }

  QString body(const v1::Timeline& timeline) const {
    QString html = facts(timeline);
    if (!m_entry.note().empty()) {
      html += boxed(
          QStringLiteral("<b>%1</b> %2").arg(safe(say("From your therapist:")), safe(text(m_entry.note()))));
    }
    html += onThePhone();
    html += QStringLiteral("<h3>%1</h3><p>%2</p><ol>")
                .arg(safe(say("How to do it")), safe(resolved(m_words->start())));
    for (const QString& line : cueLines(timeline)) html += QStringLiteral("<li>%1</li>").arg(safe(line));
    html += QStringLiteral("</ol>");
    if (!m_words->breathing().empty())
      html += QStringLiteral("<p>%1</p>").arg(safe(resolved(m_words->breathing())));
    html += bullets(say("What good looks like"), all(m_words->good()));
    html += bullets(say("Take care"), cautions());
    html += bullets(say("Stop this exercise if"), stops());
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

  QString facts(const v1::Timeline& timeline) const {
    const int minutes =
        std::max(1, static_cast<int>(std::ceil(static_cast<double>(timeline.total_ms()) / kMsPerMinute)));
    QString html = QStringLiteral("<table>");
    const QString pace = paceWords(m_entry.dose());
    html += factRow(say("How much"),
                    doseWords(m_entry.dose()) +
                        (pace.isEmpty() ? QString() : QStringLiteral(" (") + pace + QLatin1Char(')')));
    html += factRow(say("When"), scheduleWords(m_entry.schedule()));
    html += factRow(say("Time"), minutes == 1 ? say("about 1 minute") : say("about %1 minutes").arg(minutes));
    if (m_entry.side_policy() != v1::SIDE_POLICY_WHOLE_BODY)
      html += factRow(say("Sides"), words(m_entry.side_policy()));
    html += factRow(say("Hands"), text(timeline.support_words()));
    html +=
        factRow(say("Prosthesis"), m_entry.prosthesis() == v1::PROSTHESIS_USE_OFF ? say("off") : say("on"));
    return html + QStringLiteral("</table>");
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
    lines << say("Pain passes %1 of 10, or rises by %2 or more.")
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
    html += boxed(
        QStringLiteral("<b>%1</b> %2").arg(safe(say("From your therapist:")), safe(text(entry.note()))));
  }
  html += bullets(say("What to do"), lines(card->steps()));
  html += bullets(say("Whom to phone"), lines(card->call_if()));
  return html;
}

QString callBox(const v1::ClinicCard& clinic) {
  QString html = QStringLiteral("<b>%1</b> %2, <b>%3</b>")
                     .arg(safe(say("Whom to call:")), safe(text(clinic.name())), safe(text(clinic.phone())));
  if (!clinic.hours().empty()) html += QStringLiteral(" (%1)").arg(safe(text(clinic.hours())));
  html += QStringLiteral("<br><b>%1</b> %2")
              .arg(safe(say("In an emergency:")), safe(text(clinic.emergency_number())));
  return boxed(html);
}

QString headHtml(const HandoutInput& input) {
  const auto& programme = input.programme;
  QString html = QStringLiteral("<h1>%1</h1>")
                     .arg(safe(input.name.isEmpty() ? say("Home programme")
                                                    : say("Home programme for %1").arg(input.name)));
  html += QStringLiteral("<table>");
  html += factRow(say("Limb loss"), limbsWords(input.person));
  html +=
      factRow(say("Programme"), say("number %1, from %2 to %3")
                                    .arg(programme.number())
                                    .arg(dayWords(programme.effective_day()), dayWords(programme.end_day())));
  html += factRow(say("Signed by"), text(programme.signer_name()));
  html += QStringLiteral("</table>");
  html += callBox(input.clinic);
  if (!programme.changes().empty()) {
    html +=
        QStringLiteral("<h3>%1</h3><p>%2</p>").arg(safe(say("What is new")), safe(text(programme.changes())));
  }
  if (!programme.advice().empty()) {
    html += QStringLiteral("<h3>%1</h3><p>%2</p>").arg(safe(say("Advice")), safe(text(programme.advice())));
  }
  html += bullets(say("Before you start"), intendedUse());
  return html;
}

}  // namespace

absl::StatusOr<int> writeHandout(const HandoutInput& input, const HandoutOptions& options,
                                 const Catalogue& catalogue, const RuleBook& rules, const QString& file) {
  for (const absl::Status& status : {check(input.programme), check(input.person), check(input.clinic)}) {
    if (!status.ok()) return status;
  }
  PaperOptions paper_options;
  paper_options.size = options.size;
  paper_options.body_pt = options.body_pt;
  paper_options.title = say("Home programme %1").arg(input.programme.number());
  paper_options.foot = say("Stop if something feels wrong. Clinic %1. Emergency %2.")
                           .arg(text(input.clinic.phone()), text(input.clinic.emergency_number()));
  if (!input.name.isEmpty()) paper_options.foot.prepend(input.name + QStringLiteral(". "));
  Paper paper(paper_options);
  paper.add(headHtml(input));
  for (int i = 0; i < input.programme.entries_size(); ++i) {
    const absl::Status added =
        EntryText(input, input.programme.entries(i), catalogue, rules).addTo(paper, i + 1);
    if (!added.ok()) return added;
  }
  for (const v1::AdviceEntry& card : input.programme.cards()) paper.add(cardHtml(card, input, catalogue));
  auto weeks = tickWeeks(input.programme, catalogue, input.person.language(), options.most_weeks);
  if (!weeks.ok()) return weeks.status();
  paper.newPage();
  paper.add(QStringLiteral("<h2>%1</h2><p>%2</p>")
                .arg(safe(say("Tick what you did")),
                     safe(say("One box for each time. A day left out is not made up for later."))));
  for (auto& week : *weeks) paper.add(tickBlock(std::move(week), options.body_pt));
  const absl::Status status = paper.write(file);
  if (!status.ok()) return status;
  return paper.pages();
}

}  // namespace newel::print
