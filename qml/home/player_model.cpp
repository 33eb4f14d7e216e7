#include "qml/home/player_model.h"

#include <QtCore/QLocale>
#include <algorithm>
#include <optional>

#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

// One press of "Longer rest" (common practice, no source).
constexpr absl::Duration kLonger = absl::Seconds(30);

bool isWork(const v1::Beat& beat) {
  return beat.kind() == v1::BEAT_KIND_MOVE || beat.kind() == v1::BEAT_KIND_HOLD ||
         beat.kind() == v1::BEAT_KIND_RETURN;
}

int secondsUp(absl::Duration left) {
  return static_cast<int>(absl::ToInt64Seconds(absl::Ceil(left, absl::Seconds(1))));
}

// From here on seconds are no longer read at a glance: whole minutes are shown.
constexpr int kMinutesFrom = 100;

constexpr absl::Duration kSayAgain = absl::Seconds(10);

QString countWords(int seconds) {
  return QLocale().toString(seconds < kMinutesFrom ? seconds : (seconds + 59) / 60);
}

}  // namespace

PlayerModel::PlayerModel(PracticeSession& session, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_session(session), m_parts(parts) {
  connect(&session, &PracticeSession::changed, this, [this] {
    if (player() != nullptr && player()->state() == PlayerState::Running) m_paused_by_person = false;
    showFigure();
    emit changed();
    emit ticked();
  });
  connect(&session, &PracticeSession::ticked, this, &PlayerModel::ticked);
  connect(this, &PlayerModel::ticked, this, &PlayerModel::sayCount);
  m_figure.setClock([this] { return activeMs(); });
}

// Follows what is played: whose body, which exercise, whether time runs.
void PlayerModel::showFigure() {
  if (player() == nullptr) return m_figure.clear();
  m_figure.show(parts::figureOf(player()->timeline(), m_session.input().person, appearanceOf(m_parts)));
  m_figure.setMoving(player()->state() == PlayerState::Running);
  m_figure.jumped();
}

// How far the timeline is; a rest that was made longer stays at its end.
std::int64_t PlayerModel::activeMs() const {
  if (beat() == nullptr) return 0;
  if (leadingIn()) return beat()->start_ms();
  const std::int64_t left = absl::ToInt64Milliseconds(player()->leftInBeat(m_session.now()));
  // Slower than planned, the pictures take as long as the person does.
  const std::int64_t length = absl::ToInt64Milliseconds(player()->beatLength());
  const std::int64_t into = (length - left) * beat()->length_ms() / std::max<std::int64_t>(1, length);
  return beat()->start_ms() + std::clamp<std::int64_t>(into, 0, beat()->length_ms() - 1);
}

const v1::Beat* PlayerModel::beat() const {
  const Player* const at = player();
  if (at == nullptr || static_cast<int>(at->beat()) >= at->timeline().beats_size()) return nullptr;
  return &at->timeline().beats(static_cast<int>(at->beat()));
}

bool PlayerModel::leadingIn() const {
  return player() != nullptr && player()->leadInLeft(m_session.now()) > absl::ZeroDuration();
}

int PlayerModel::entryNumber() const {
  return run() == nullptr ? 0 : static_cast<int>(run()->entryIndex()) + 1;
}

int PlayerModel::entryCount() const { return run() == nullptr ? 0 : static_cast<int>(run()->entryCount()); }

QString PlayerModel::title() const {
  return player() == nullptr ? QString() : text(player()->timeline().title());
}

QString PlayerModel::cue() const { return beat() == nullptr ? QString() : text(beat()->screen()); }

QString PlayerModel::next() const {
  if (beat() == nullptr) return QString();
  const v1::Timeline& timeline = player()->timeline();
  const auto index = static_cast<int>(player()->beat()) + 1;
  if (index >= timeline.beats_size()) return tr("Then: this exercise is done");
  const v1::Beat& coming = timeline.beats(index);
  if (coming.screen() == beat()->screen()) return QString();
  return tr("Then: %1").arg(text(coming.screen()));
}

QString PlayerModel::support() const {
  return player() == nullptr ? QString() : text(player()->timeline().support_words());
}

int PlayerModel::repetitionsOfSet(const v1::Beat& at) const {
  std::uint32_t most = 0;
  for (const v1::Beat& other : player()->timeline().beats()) {
    if (other.set() == at.set()) most = std::max(most, other.repetition());
  }
  return static_cast<int>(most);
}

int PlayerModel::stepsOfPart(const v1::Beat& at) const {
  std::uint32_t most = 0;
  for (const v1::Beat& other : player()->timeline().beats()) {
    if (other.set() == at.set() && other.repetition() == at.repetition() && other.part_id() == at.part_id()) {
      most = std::max(most, other.step());
    }
  }
  return static_cast<int>(most);
}

// Seconds that the number counts down; nullopt where it counts times or steps.
std::optional<int> PlayerModel::secondsShown() const {
  if (beat() == nullptr) return std::nullopt;
  if (leadingIn()) return secondsUp(player()->leadInLeft(m_session.now()));
  if (beat()->kind() == v1::BEAT_KIND_HOLD) return secondsUp(player()->leftInPhase(m_session.now()));
  if (!isWork(*beat())) return secondsUp(player()->leftInBeat(m_session.now()));
  return std::nullopt;
}

QString PlayerModel::number() const {
  if (beat() == nullptr) return QString();
  const std::optional<int> seconds = secondsShown();
  if (seconds.has_value()) return countWords(*seconds);
  return QLocale().toString(beat()->step() > 0 ? beat()->step() : beat()->repetition());
}

void PlayerModel::sayCount() {
  const absl::Duration now = m_session.now();
  if (beat() == nullptr) {
    m_count_said_at = -absl::InfiniteDuration();
    return;
  }
  if (now - m_count_said_at < kSayAgain) return;
  const QString words = number() + QStringLiteral(" ") + numberOf();
  if (words == m_count_said) return;
  m_count_said = words;
  m_count_said_at = now;
  emit countSaidChanged();
}

bool PlayerModel::canSlow() const {
  if (player() == nullptr || player()->timeline().by_person()) return false;
  return player()->pacePercent() < kSlowestPacePercent;
}

QString PlayerModel::numberOf() const {
  if (beat() == nullptr) return QString();
  const std::optional<int> seconds = secondsShown();
  if (!seconds.has_value()) {
    if (beat()->step() > 0) return tr("of %Ln step(s)", nullptr, stepsOfPart(*beat()));
    return tr("of %Ln time(s)", nullptr, repetitionsOfSet(*beat()));
  }
  const bool minutes = *seconds >= kMinutesFrom;
  const bool ready = leadingIn() || beat()->kind() == v1::BEAT_KIND_GET_READY;
  if (ready) return minutes ? tr("minutes to get ready") : tr("seconds to get ready");
  if (beat()->kind() == v1::BEAT_KIND_HOLD) return minutes ? tr("minutes to hold") : tr("seconds to hold");
  if (beat()->kind() == v1::BEAT_KIND_REST) return minutes ? tr("minutes of rest") : tr("seconds of rest");
  return minutes ? tr("minutes to change side") : tr("seconds to change side");
}

QString PlayerModel::setWords() const {
  if (beat() == nullptr || beat()->set() == 0) return QString();
  QStringList words;
  const int times = repetitionsOfSet(*beat());
  if (beat()->last_of_set() && beat()->repetition() > 1 && isWork(*beat())) words << tr("last one");
  if (beat()->kind() == v1::BEAT_KIND_HOLD && beat()->repetition() > 0 && times > 1) {
    words << tr("time %L1 of %L2").arg(beat()->repetition()).arg(times);
  }
  const std::uint32_t sets = std::max(player()->timeline().sets(), beat()->set());
  const bool by_sets = run()->entry(run()->entryIndex()).dose().has_sets();
  if (sets > 1)
    words << (by_sets ? tr("set %L1 of %L2") : tr("round %L1 of %L2")).arg(beat()->set()).arg(sets);
  return words.join(tr(", "));
}

QString PlayerModel::sideWordsNow() const {
  return beat() == nullptr ? QString() : sideWords(*m_parts.catalogue, *beat(), player()->timeline());
}

double PlayerModel::fraction() const {
  if (beat() == nullptr || leadingIn()) return 0;
  // A bout of minutes is several beats and one hold: the ring shows all of it.
  const v1::Timeline& timeline = player()->timeline();
  const HoldSpan span = holdSpanAt(timeline, player()->beat());
  std::int64_t whole = absl::ToInt64Milliseconds(player()->beatLength());
  for (std::uint32_t i = span.first; i <= span.last; ++i) {
    if (i != player()->beat()) whole += timeline.beats(static_cast<int>(i)).length_ms();
  }
  const bool holding = beat()->kind() == v1::BEAT_KIND_HOLD;
  const absl::Duration left =
      holding ? player()->leftInPhase(m_session.now()) : player()->leftInBeat(m_session.now());
  return std::clamp(1 - absl::FDivDuration(left, absl::Milliseconds(std::max<std::int64_t>(1, whole))), 0.0,
                    1.0);
}

bool PlayerModel::resting() const { return beat() != nullptr && (!isWork(*beat()) || leadingIn()); }

bool PlayerModel::canLengthen() const { return beat() != nullptr && beat()->kind() == v1::BEAT_KIND_REST; }

bool PlayerModel::canSkipBeat() const {
  return beat() != nullptr &&
         (leadingIn() || beat()->kind() == v1::BEAT_KIND_REST || beat()->kind() == v1::BEAT_KIND_GET_READY);
}

bool PlayerModel::waiting() const {
  return beat() != nullptr && player()->timeline().by_person() && beat()->kind() == v1::BEAT_KIND_MOVE &&
         !leadingIn();
}

bool PlayerModel::paused() const { return player() != nullptr && player()->state() == PlayerState::Paused; }

QString PlayerModel::pausedWhy() const {
  if (!paused() || m_paused_by_person) return QString();
  if (m_session.soundLost()) {
    return tr(
        "The headphones or the loudspeaker are gone, so the practice waited. Connect them again, or go on "
        "with "
        "the sound of the phone.");
  }
  return tr(
      "The phone was away or asleep, so the practice waited. What you were in the middle of is done again.");
}

QString PlayerModel::soundNote() const {
  const std::string problem = m_session.soundProblem();
  if (problem.empty()) return QString();
  if (m_session.vibrates()) {
    if (problem == "speech.no-voice")
      return tr("No voice for your language on this phone: read the words; it vibrates at every change.");
    if (problem == "speech.broken")
      return tr("The voice does not work just now: read the words; the phone vibrates at every change.");
    return tr("This phone has no sound just now: read the words; it vibrates at every change.");
  }
  if (problem == "speech.no-voice")
    return tr("No voice for your language on this phone: read the words, hear the tones.");
  if (problem == "speech.broken")
    return tr("The voice does not work just now: read the words, hear the tones.");
  return tr("This phone has no sound just now: read the words.");
}

QVariantList PlayerModel::posts() const {
  QVariantList posts;
  if (run() == nullptr) return posts;
  for (std::size_t i = 0; i < run()->entryCount(); ++i) {
    const int treads = run()->timeline(i).beats_size();
    int done = 0;
    if (i < run()->entryIndex()) done = treads;
    if (i == run()->entryIndex() && player() != nullptr) done = static_cast<int>(player()->beat());
    posts << QVariantMap{{"treads", treads}, {"done", done}, {"leftOut", run()->entryLeftOut(i)}};
  }
  return posts;
}

int PlayerModel::at() const { return run() == nullptr ? 0 : static_cast<int>(run()->entryIndex()); }

void PlayerModel::stop() { m_session.stopPressed(); }

void PlayerModel::pause() {
  m_paused_by_person = true;
  m_session.apply([](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.pause(wall, now); });
}

void PlayerModel::goOn() {
  m_session.apply(
      [](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.resume(wall, now); });
}

void PlayerModel::done() {
  m_session.apply(
      [](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.tapDone(wall, now); });
}

void PlayerModel::sayAgain() { m_session.repeatWords(); }

void PlayerModel::longer() {
  m_session.apply([](PracticeRun& run, absl::Time wall, absl::Duration now) {
    return run.lengthenRest(kLonger, wall, now);
  });
}

void PlayerModel::slower() {
  const bool slowed = m_session.apply(
      [](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.slower(wall, now); });
  if (slowed && paused()) goOn();
}

void PlayerModel::now() {
  m_session.apply(
      [](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.skipBeat(wall, now); });
}

}  // namespace newel::home
