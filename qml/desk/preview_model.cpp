#include "qml/desk/preview_model.h"

#include <google/protobuf/util/message_differencer.h>

#include <algorithm>

#include "core/practice/compile.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

QString clockOf(std::int64_t ms) {
  return QStringLiteral("%1:%2").arg(ms / 60000).arg(ms / 1000 % 60, 2, 10, QLatin1Char('0'));
}

}  // namespace

PreviewModel::PreviewModel(DraftModel& draft, const DeskContext& context, QObject* parent)
    : QAbstractListModel(parent), m_draft(draft), m_context(context) {
  connect(&draft, &DraftModel::changed, this, &PreviewModel::refresh);
  connect(&draft, &DraftModel::selectedChanged, this, &PreviewModel::refresh);
  m_next.setSingleShot(true);
  m_next.setTimerType(Qt::PreciseTimer);
  connect(&m_next, &QTimer::timeout, this, &PreviewModel::advance);
  m_count.setInterval(200);
  connect(&m_count, &QTimer::timeout, this, &PreviewModel::factsChanged);
  connect(this, &PreviewModel::atChanged, this, &PreviewModel::factsChanged);
  m_figure.setClock([this] { return activeMs(); });
}

QHash<int, QByteArray> PreviewModel::roleNames() const {
  return {{Start, "start"}, {Words, "words"}, {Spoken, "spoken"}, {What, "what"}};
}

void PreviewModel::refresh() {
  v1::Timeline timeline;
  QString problem;
  const v1::Entry* entry = m_draft.selectedEntry();
  if (entry != nullptr && m_draft.file() != nullptr) {
    const auto& person = m_draft.file()->person;
    m_phone.use(person.language());
    auto compiled = compileTimeline(*entry, person, *m_context.catalogue, person.language());
    if (compiled.ok()) {
      timeline = *std::move(compiled);
    } else {
      problem = print::text(std::string(compiled.status().message()));
    }
  }
  if (problem == m_problem && google::protobuf::util::MessageDifferencer::Equals(timeline, m_timeline)) {
    emit shownChanged();  // the person's phone may have said something new
    emit atChanged();     // the entry's place among the others may be another one
    return;
  }
  const bool other = timeline.entry_id() != m_timeline.entry_id();
  beginResetModel();
  m_timeline = std::move(timeline);
  m_problem = problem;
  m_at = other ? 0 : std::clamp(m_at, 0, std::max(0, count() - 1));
  endResetModel();
  setPlaying(false);
  showFigure();
  emit shownChanged();
  emit atChanged();
}

void PreviewModel::setAt(int at) {
  const int kept = std::clamp(at, 0, std::max(0, count() - 1));
  if (kept == m_at) return;
  m_at = kept;
  if (m_playing) begin();
  m_figure.jumped();
  emit atChanged();
}

void PreviewModel::showFigure() {
  if (count() == 0 || m_draft.file() == nullptr) return m_figure.clear();
  m_figure.show(parts::figureOf(m_timeline, m_draft.file()->person, {}));
}

// A still beat shows its movement half done, else there would be nothing to see of it.
std::int64_t PreviewModel::activeMs() const {
  if (m_at >= count()) return 0;
  const v1::Beat& beat = m_timeline.beats(m_at);
  const std::int64_t into = m_playing ? m_since.elapsed() : beat.length_ms() / 2;
  return beat.start_ms() + std::min<std::int64_t>(into, beat.length_ms() - 1);
}

void PreviewModel::begin() {
  m_since.start();
  m_next.start(static_cast<int>(m_timeline.beats(m_at).length_ms()));
}

void PreviewModel::setPlaying(bool playing) {
  if (playing && m_at + 1 >= count()) m_at = 0;
  playing = playing && count() > 0;
  if (playing == m_playing) return;
  m_playing = playing;
  if (playing) {
    begin();
    m_count.start();
  } else {
    m_next.stop();
    m_count.stop();
  }
  m_figure.setMoving(playing);
  m_figure.jumped();
  emit atChanged();
  emit playingChanged();
}

void PreviewModel::advance() {
  if (m_at + 1 >= count()) return setPlaying(false);
  setAt(m_at + 1);
}

QString PreviewModel::language() const {
  if (count() == 0) return {};
  return m_timeline.fell_back() ? tr("in English: the words are not there yet in the person's language")
                                : tr("in the person's language (%1)").arg(print::text(m_timeline.language()));
}

int PreviewModel::repetitionsOfSet(const v1::Beat& beat) const {
  std::uint32_t most = 0;
  for (const auto& other : m_timeline.beats()) {
    if (other.set() == beat.set()) most = std::max(most, other.repetition());
  }
  return static_cast<int>(most);
}

QString PreviewModel::number(const v1::Beat& beat) const {
  const bool counts = isWork(beat.kind()) && beat.kind() != v1::BEAT_KIND_HOLD;
  if (!counts) {
    const std::int64_t left = m_playing ? beat.length_ms() - m_since.elapsed() : beat.length_ms();
    return QString::number((std::max<std::int64_t>(0, left) + 999) / 1000);
  }
  return QString::number(beat.step() > 0 ? beat.step() : beat.repetition());
}

QString PreviewModel::numberOf(const v1::Beat& beat) const {
  switch (beat.kind()) {
    case v1::BEAT_KIND_HOLD:
      return say("seconds to hold");
    case v1::BEAT_KIND_REST:
      return say("seconds of rest");
    case v1::BEAT_KIND_CHANGE_SIDE:
      return say("seconds to change side");
    case v1::BEAT_KIND_GET_READY:
      return say("seconds to get ready");
    default:
      break;
  }
  if (beat.step() > 0) {
    std::uint32_t most = 0;
    for (const auto& other : m_timeline.beats()) {
      if (other.set() == beat.set() && other.repetition() == beat.repetition() &&
          other.part_id() == beat.part_id()) {
        most = std::max(most, other.step());
      }
    }
    return say("of %Ln step(s)", static_cast<int>(most));
  }
  return say("of %Ln time(s)", repetitionsOfSet(beat));
}

QString PreviewModel::setWords(const v1::Beat& beat) const {
  const v1::Entry* entry = m_draft.selectedEntry();
  if (beat.set() == 0 || entry == nullptr) return {};
  QStringList words;
  const int times = repetitionsOfSet(beat);
  if (beat.last_of_set() && beat.repetition() > 1 && isWork(beat.kind())) words << say("last one");
  if (beat.kind() == v1::BEAT_KIND_HOLD && beat.repetition() > 0 && times > 1)
    words << say("time %L1 of %L2").arg(beat.repetition()).arg(times);
  const std::uint32_t sets = std::max(m_timeline.sets(), beat.set());
  if (sets > 1)
    words << (entry->dose().has_sets() ? say("set %L1 of %L2") : say("round %L1 of %L2"))
                 .arg(beat.set())
                 .arg(sets);
  return words.join(say(", "));
}

QString PreviewModel::sideWords(const v1::Beat& beat) const {
  if (beat.side() == v1::SIDE_UNSPECIFIED) return {};
  const std::string key = beat.side() == v1::SIDE_LEFT ? "leg.left" : "leg.right";
  const std::string own = m_context.catalogue->phrase(key, m_timeline.language());
  const QString leg = print::text(own.empty() ? m_context.catalogue->phrase(key, "en") : own);
  const char* const words = beat.role() == v1::LIMB_ROLE_SOUND                 ? "%1, sound limb"
                            : m_timeline.prosthesis() == v1::PROSTHESIS_USE_ON ? "%1, prosthesis"
                                                                               : "%1, residual limb";
  return m_phone.say("Phrasing", words).arg(leg);
}

QVariant PreviewModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= count()) return {};
  const v1::Beat& beat = m_timeline.beats(index.row());
  switch (role) {
    case Start:
      return clockOf(beat.start_ms());
    case Words:
      return print::text(beat.screen());
    case Spoken:
      return print::text(beat.spoken());
    case What: {
      QStringList parts{tr("%1 s").arg(beat.length_ms() / 1000), setWords(beat), sideWords(beat)};
      parts.removeAll(QString());
      return parts.join(QStringLiteral(" · "));
    }
    default:
      return {};
  }
}

QString PreviewModel::say(const char* words, int count) const {
  return m_phone.say("newel::home::PlayerModel", words, count);
}

QVariantMap PreviewModel::labels() const {
  QVariantMap labels;
  for (const char* words : {"Pause", "Done, go on", "Longer rest", "Go on now", "%L1 of %L2"})
    labels[QString::fromLatin1(words)] = m_phone.say("PracticeView", words);
  labels[QStringLiteral("Stop")] = m_phone.say("StopButton", "Stop");
  return labels;
}

QVariantMap PreviewModel::facts() const {
  if (m_at >= count()) return {};
  const v1::Beat& beat = m_timeline.beats(m_at);
  QString next = say("Then: this exercise is done");
  if (m_at + 1 < count()) {
    const auto& coming = m_timeline.beats(m_at + 1);
    next = coming.screen() == beat.screen() ? QString() : say("Then: %1").arg(print::text(coming.screen()));
  }
  QVariantList posts;
  for (int i = 0; i < m_draft.programme().entries_size(); ++i) {
    const bool here = i == m_draft.selected();
    posts << QVariantMap{{QStringLiteral("treads"), here ? count() : 0},
                         {QStringLiteral("done"), here ? m_at : 0}};
  }
  return {{QStringLiteral("entryNumber"), m_draft.selected() + 1},
          {QStringLiteral("entryCount"), m_draft.programme().entries_size()},
          {QStringLiteral("title"), print::text(m_timeline.title())},
          {QStringLiteral("cue"), print::text(beat.screen())},
          {QStringLiteral("next"), next},
          {QStringLiteral("support"), print::text(m_timeline.support_words())},
          {QStringLiteral("number"), number(beat)},
          {QStringLiteral("numberOf"), numberOf(beat)},
          {QStringLiteral("setWords"), setWords(beat)},
          {QStringLiteral("sideWords"), sideWords(beat)},
          {QStringLiteral("fraction"), m_playing ? std::min(1.0, static_cast<double>(m_since.elapsed()) /
                                                                     static_cast<double>(beat.length_ms()))
                                                 : 0.0},
          {QStringLiteral("resting"), !isWork(beat.kind())},
          {QStringLiteral("canLengthen"), beat.kind() == v1::BEAT_KIND_REST},
          {QStringLiteral("canGoNow"),
           beat.kind() == v1::BEAT_KIND_REST || beat.kind() == v1::BEAT_KIND_GET_READY},
          {QStringLiteral("waiting"), m_timeline.by_person() && beat.kind() == v1::BEAT_KIND_MOVE},
          {QStringLiteral("posts"), posts},
          {QStringLiteral("at"), m_draft.selected()}};
}

}  // namespace newel::desk
