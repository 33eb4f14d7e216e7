#include "qml/desk/start_model.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/library/default_entry.h"
#include "core/library/templates.h"
#include "core/library/wording.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "sync/common/record_id.h"

namespace newel::desk {
namespace {

QString phraseOf(const Catalogue& catalogue, v1::Purpose purpose, const std::string& language) {
  QString words =
      print::text(catalogue.phrase(phraseKey("purpose", v1::Purpose_Name(purpose), "PURPOSE_"), language));
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

QString sourcesOf(const v1::ProgrammeTemplate& one) {
  QStringList lines;
  for (const auto& source : one.sources()) lines << print::text(source.text());
  return lines.join(QLatin1Char('\n'));
}

}  // namespace

StartModel::StartModel(DeskContext& context, DraftModel& draft, QObject* parent)
    : QObject(parent), m_context(context), m_draft(draft) {
  connect(&m_draft, &DraftModel::changed, this, &StartModel::draftChanged);
  // What was not taken belongs to a beginning that is gone.
  connect(&m_draft, &DraftModel::steppedBack, this, [this] { tell(QString(), {}); });
}

void StartModel::begin() {
  tell(QString(), {});
  say(QString());
  ask(QString());
  refresh();
}

void StartModel::take(std::vector<v1::ProgrammeTemplate> own) {
  m_own = std::move(own);
  refresh();
}

void StartModel::refresh() {
  const PersonFile* file = m_draft.file();
  m_choices.clear();
  m_suggested.clear();
  m_fitting = 0;
  if (file != nullptr) {
    QVariantList others;
    const auto sort = [&](const v1::ProgrammeTemplate& one) {
      const QVariantMap choice = choiceOf(one);
      (choice[QStringLiteral("fits")].toBool() ? m_choices : others) << choice;
    };
    for (const auto& one : m_own) sort(one);
    for (const auto& one : m_context.catalogue->templates()) sort(one);
    m_fitting = static_cast<int>(m_choices.size());
    m_choices += others;
    m_suggested = suggestedFor(file->person, *m_context.catalogue, *m_context.rules);
  }
  emit choicesChanged();
}

QString StartModel::nameOf(const v1::ProgrammeTemplate& one) const {
  const v1::TemplateWords* words = wordsOf(one, m_context.language);
  return words == nullptr ? QString() : print::text(words->name());
}

QString StartModel::lengthWords(double minutes, int weeks) {
  return weeks == 1 ? tr("%1 min on the fullest day, 1 week").arg(minutes)
                    : tr("%1 min on the fullest day, %2 weeks").arg(minutes).arg(weeks);
}

QVariantMap StartModel::choiceOf(const v1::ProgrammeTemplate& one) const {
  const v1::Person& person = m_draft.file()->person;
  const Beginning beginning = beginFrom(one, person, *m_context.catalogue, *m_context.rules);
  QStringList titles;
  for (const auto& entry : beginning.entries)
    titles << print::titleOf(*m_context.catalogue, entry.exercise_id(), m_context.language);
  QStringList left_out;
  for (const auto& left : beginning.left_out)
    left_out << print::titleOf(*m_context.catalogue, left.exercise_id, m_context.language);
  v1::Programme draft = programmeFrom(one, beginning);
  for (int i = 0; i < draft.entries_size(); ++i)
    draft.mutable_entries(i)->set_id(newRecordId(*m_context.clock, *m_context.random));
  const auto review =
      reviewProgramme(draft, person, nullptr, *m_context.catalogue, *m_context.rules, m_context.language);
  const double most =
      review.ok() ? *std::max_element(review->minutes_by_weekday.begin(), review->minutes_by_weekday.end())
                  : 0;
  const v1::TemplateWords* words = wordsOf(one, m_context.language);
  const bool own = isOwnTemplate(one);
  QString facts = most > 0 ? lengthWords(std::ceil(most), static_cast<int>(one.weeks())) : QString();
  if (one.measures_size() > 0) facts += QLatin1String(" · ") + tr("asks for measures");
  if (bringsWear(one)) facts += QLatin1String(" · ") + tr("with wearing time");
  return {{QStringLiteral("id"), print::text(one.id())},
          {QStringLiteral("name"), nameOf(one)},
          {QStringLiteral("forWhom"), words == nullptr ? QString() : print::text(words->for_whom())},
          {QStringLiteral("own"), own},
          {QStringLiteral("fits"), fitsPerson(one, person) && !beginning.entries.empty()},
          {QStringLiteral("titles"), titles.join(QStringLiteral(" · "))},
          {QStringLiteral("minutes"), facts},
          {QStringLiteral("leftOut"),
           left_out.isEmpty() ? QString()
                              : tr("Not for this person: %1").arg(left_out.join(QStringLiteral(", ")))},
          {QStringLiteral("sources"), sourcesOf(one)},
          {QStringLiteral("written"),
           own ? tr("Written by %1, %2")
                     .arg(print::text(one.author_name()),
                          print::dayWords(localDayAt(toTime(one.written_at()), m_context.zone)))
               : QString()}};
}

bool StartModel::bringsWear(const v1::ProgrammeTemplate& from) const {
  return from.has_wear_plan() && ownsProsthesis(m_draft.file()->person) &&
         !m_draft.startingPoint().has_wear_plan();
}

// Pain limits and wearing time are about the person and go on; advice and cards belong to what is done.
v1::Programme StartModel::programmeFrom(const v1::ProgrammeTemplate& from, const Beginning& beginning) const {
  v1::Programme programme = m_draft.startingPoint();
  programme.clear_entries();
  for (const auto& entry : beginning.entries) *programme.add_entries() = entry;
  programme.clear_advice();
  *programme.mutable_cards() = from.cards();
  const auto first = parseLocalDay(programme.effective_day());
  if (first.ok()) programme.set_end_day(formatLocalDay(*first + absl::civil_diff_t{7} * from.weeks() - 1));
  askMeasures(from, programme);
  // Wearing time that is planned already is this person's, and what the skin said of it stands.
  if (bringsWear(from)) *programme.mutable_wear_plan() = wearFor(from, programme);
  return programme;
}

QVariantList StartModel::suggestions() const {
  QVariantList rows;
  if (m_draft.file() == nullptr) return rows;
  QString before;
  for (const v1::Exercise* exercise : m_suggested) {
    const QString group = phraseOf(*m_context.catalogue, exercise->purpose(), m_context.language);
    const v1::ExerciseWords* words = wordsOrEnglish(*m_context.catalogue, exercise->id(), m_context.language);
    rows << QVariantMap{
        {QStringLiteral("exerciseId"), print::text(exercise->id())},
        {QStringLiteral("group"), group},
        {QStringLiteral("first"), group != before},
        {QStringLiteral("title"), print::titleOf(*m_context.catalogue, exercise->id(), m_context.language)},
        {QStringLiteral("why"), words == nullptr ? QString() : print::text(words->purpose())},
        {QStringLiteral("dose"), print::doseWords(exercise->default_dose())}};
    before = group;
  }
  return rows;
}

QStringList StartModel::taken() const {
  QStringList ids;
  for (const auto& entry : m_draft.programme().entries()) ids << print::text(entry.exercise_id());
  return ids;
}

QString StartModel::lastWords() const {
  const v1::Programme* last = m_draft.file() == nullptr ? nullptr : lastProgramme(*m_draft.file());
  return last == nullptr ? QString() : tr("Programme %1, the last one").arg(last->number());
}

const v1::ProgrammeTemplate* StartModel::find(const QString& id) const {
  const std::string wanted = id.toStdString();
  const auto in = [&wanted](const std::vector<v1::ProgrammeTemplate>& list) -> const v1::ProgrammeTemplate* {
    const auto found =
        std::find_if(list.begin(), list.end(), [&wanted](const auto& one) { return one.id() == wanted; });
    return found == list.end() ? nullptr : &*found;
  };
  const v1::ProgrammeTemplate* own = in(m_own);
  return own != nullptr ? own : in(m_context.catalogue->templates());
}

void StartModel::tell(const QString& took, const QVariantList& left_out) {
  m_took = took;
  m_left_out = left_out;
  emit startedChanged();
}

void StartModel::say(const QString& problem) {
  m_problem = problem;
  emit problemChanged();
}

void StartModel::startBlank() {
  v1::Programme blank = m_draft.startingPoint();
  blank.clear_entries();
  blank.clear_advice();
  blank.clear_cards();
  m_draft.beginWith(std::move(blank));
  tell(QString(), {});
}

void StartModel::startLast() {
  m_draft.startAgain();
  tell(QString(), {});
  emit started();
}

QVariantMap StartModel::leftOutRow(const LeftOut& left) const {
  const QString title = print::titleOf(*m_context.catalogue, left.exercise_id, m_context.language);
  QString why = print::text(left.words);
  if (left.why == LeftOut::Why::NoMeaning)
    why = tr("It cannot be done with this person's limbs or prosthesis.");
  if (left.why == LeftOut::Why::NotThere) why = tr("The catalogue does not have it like this any more.");
  return {{QStringLiteral("title"), title}, {QStringLiteral("why"), why}};
}

void StartModel::startFrom(const QString& template_id) {
  const v1::ProgrammeTemplate* one = find(template_id);
  if (one == nullptr || m_draft.file() == nullptr) return;
  const Beginning beginning = beginFrom(*one, m_draft.file()->person, *m_context.catalogue, *m_context.rules);
  QVariantList left_out;
  for (const auto& left : beginning.left_out) left_out << leftOutRow(left);
  m_draft.beginWith(programmeFrom(*one, beginning));
  const int all = one->entries_size();
  const int taken = static_cast<int>(beginning.entries.size());
  const QString name = nameOf(*one);
  QString told = taken == all
                     ? tr("Begun from \"%1\".").arg(name)
                     : tr("Begun from \"%1\": %2 of %3 exercises taken.").arg(name).arg(taken).arg(all);
  if (one->has_wear_plan() && !bringsWear(*one))
    told +=
        QLatin1Char(' ') + tr("Its wearing time was not taken: this person has their own, or no prosthesis.");
  tell(told, left_out);
  emit started();
}

void StartModel::ask(const QString& template_id) {
  m_asked = template_id;
  emit askedChanged();
}

void StartModel::keepAs(const QString& name) {
  if (m_draft.file() == nullptr || !mayKeep()) return;
  if (name.trimmed().isEmpty()) {
    say(tr("The template needs a name."));
    return;
  }
  v1::ProgrammeTemplate value = templateOf(m_draft.programme(), m_draft.file()->person,
                                           name.trimmed().toStdString(), m_context.language);
  value.set_id(newRecordId(*m_context.clock, *m_context.random));
  send(std::move(value), 0, tr("Kept for the clinic: %1.").arg(name.trimmed()));
}

void StartModel::rename(const QString& template_id, const QString& name) {
  const v1::ProgrammeTemplate* one = find(template_id);
  if (one == nullptr || !isOwnTemplate(*one)) return;
  if (name.trimmed().isEmpty()) {
    say(tr("The template needs a name."));
    return;
  }
  v1::ProgrammeTemplate value = *one;
  for (auto& [language, words] : *value.mutable_words()) words.set_name(name.trimmed().toStdString());
  send(std::move(value), one->revision(), tr("Renamed: %1.").arg(name.trimmed()));
}

void StartModel::send(v1::ProgrammeTemplate value, std::uint32_t base, const QString& done) {
  v1::PutTemplateRequest request;
  *request.mutable_programme_template() = std::move(value);
  request.set_base_revision(base);
  say(QString());
  m_context.worker->run(
      this, tr("Keeping the template"),
      [request](DeskClient* client) -> absl::StatusOr<v1::ProgrammeTemplate> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->putTemplate(request);
      },
      [this, done](const absl::StatusOr<v1::ProgrammeTemplate>& reply) {
        if (!reply.ok()) {
          say(problemWords(reply.status(), tr("keep the template")));
        } else {
          hold(*reply);
          emit kept(done);
        }
        emit libraryChanged();
      });
}

// As the hub has it now, without waiting to read all of them again.
void StartModel::hold(const v1::ProgrammeTemplate& value) {
  drop(value.id());
  m_own.push_back(value);
  refresh();
}

void StartModel::drop(const std::string& id) {
  m_own.erase(std::remove_if(m_own.begin(), m_own.end(), [&id](const auto& one) { return one.id() == id; }),
              m_own.end());
}

void StartModel::withdraw(const QString& template_id) {
  const v1::ProgrammeTemplate* one = find(template_id);
  if (one == nullptr || !isOwnTemplate(*one)) return;
  ask(QString());
  say(QString());
  m_context.worker->run(
      this, tr("Withdrawing the template"),
      [id = one->id(), revision = one->revision()](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->withdrawTemplate(id, revision);
      },
      [this, id = one->id(), name = nameOf(*one)](const absl::Status& status) {
        if (!status.ok()) {
          say(problemWords(status, tr("withdraw the template")));
        } else {
          drop(id);
          refresh();
          emit kept(tr("Withdrawn: %1.").arg(name));
        }
        emit libraryChanged();
      });
}

}  // namespace newel::desk
