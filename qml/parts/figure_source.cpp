#include "qml/parts/figure_source.h"

#include <google/protobuf/util/message_differencer.h>

#include <algorithm>
#include <cmath>

namespace newel::parts {
namespace {

constexpr int kStills = 3;

using google::protobuf::util::MessageDifferencer;

bool sameLimb(const LimbState& a, const LimbState& b) {
  return a.level == b.level && a.knee == b.knee && a.prosthesis_on == b.prosthesis_on;
}

bool same(const FigureAsked& a, const FigureAsked& b) {
  return a.exercise_id == b.exercise_id && a.support == b.support && a.language == b.language &&
         a.body.weaker == b.body.weaker && sameLimb(a.body.left, b.body.left) &&
         sameLimb(a.body.right, b.body.right) &&
         MessageDifferencer::Equals(a.body.appearance, b.body.appearance) &&
         MessageDifferencer::Equals(a.timeline, b.timeline);
}

// Start, half-way or end of a movement; a quarter of a round.
double stepped(double fraction, bool round) {
  const double steps = round ? 4 : 2;
  return std::clamp(round ? std::floor(fraction * steps) / steps : std::round(fraction * steps) / steps, 0.0,
                    1.0);
}

}  // namespace

FigureAsked figureOf(const v1::Timeline& timeline, const v1::Person& person,
                     const v1::Appearance& appearance) {
  FigureAsked asked;
  asked.exercise_id = timeline.exercise_id();
  asked.body = bodyOf(person, timeline.prosthesis(), appearance);
  asked.support = timeline.support();
  asked.language = timeline.language();
  asked.timeline = timeline;
  return asked;
}

void FigureSource::show(const FigureAsked& asked) {
  if (m_asked.has_value() && same(*m_asked, asked)) return;
  m_asked = asked;
  make(m_dark);
  emit changed();
  emit wordsChanged();
}

void FigureSource::clear() {
  if (!m_asked.has_value()) return;
  m_asked.reset();
  m_figure.reset();
  m_moving = false;
  emit changed();
  emit wordsChanged();
}

void FigureSource::make(bool dark) {
  m_dark = dark;
  m_figure.reset();
  if (!m_asked.has_value()) return;
  FigureOptions options = lettered({}, m_asked->language);
  options.support = m_asked->support;
  options.dark = dark;
  absl::StatusOr<Figure> figure = Figure::make(m_asked->exercise_id, m_asked->body, options);
  if (figure.ok()) m_figure.emplace(*std::move(figure));
}

void FigureSource::setMoving(bool moving) {
  if (m_moving == moving) return;
  m_moving = moving;
  emit changed();
}

void FigureSource::jumped() {
  emit jump();
  emit wordsChanged();
}

double FigureSource::aspect() const { return m_figure.has_value() ? m_figure->aspect() : 1; }

int FigureSource::stills() const {
  return m_figure.has_value() ? static_cast<int>(m_figure->keyMoments(kStills).size()) : 0;
}

Moment FigureSource::momentNow(bool stepping) const {
  if (m_asked->timeline.beats().empty() || !m_clock) return momentOfStill(0);
  Moment moment = m_figure->momentAt(m_asked->timeline, m_clock());
  if (stepping && moment.phase >= 0) {
    const SceneKeys& scene = m_figure->choreography(moment.side_a).scenes[moment.scene];
    moment.fraction = stepped(moment.fraction, scene.phases[moment.phase].goesRound());
  }
  return moment;
}

Moment FigureSource::momentOfStill(int index) const {
  const std::vector<Moment> moments = m_figure->keyMoments(kStills);
  return moments[std::clamp(index, 0, static_cast<int>(moments.size()) - 1)];
}

const Drawing& FigureSource::draw(const Moment& moment, bool dark) {
  if (dark != m_dark) make(dark);
  return m_figure->draw(moment);
}

QString FigureSource::describe(const Moment& moment) const {
  return QString::fromStdString(m_figure->describe(moment, m_asked->language));
}

QString FigureSource::words() const { return m_figure.has_value() ? describe(momentNow(true)) : QString(); }

}  // namespace newel::parts
