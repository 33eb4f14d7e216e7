// What a FigureView shows: one exercise drawn for one person, at the moment its owner's clock says. Filled by
// the phone's practice, by the desk's preview, by lists of exercises. UI thread only.
// Not here: painting and the pace of pictures (figure_view.h).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QString>
#include <functional>
#include <optional>

#include "core/figure/figure.h"
#include "core/records/timeline.pb.h"

namespace newel::parts {

struct FigureAsked {
  std::string exercise_id;
  FigureBody body;
  v1::Support support = v1::SUPPORT_UNSPECIFIED;
  std::string language = "en";
  // Empty: still pictures only.
  v1::Timeline timeline;
};
// What the figure of `entry` needs, as `timeline` tells it. `appearance`: how the person wants to be drawn.
FigureAsked figureOf(const v1::Timeline& timeline, const v1::Person& person,
                     const v1::Appearance& appearance);

class FigureSource : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("given by a model")
  Q_PROPERTY(bool there READ there NOTIFY changed)          // false: this exercise has no drawing
  Q_PROPERTY(bool moving READ moving NOTIFY changed)        // the clock runs
  Q_PROPERTY(double aspect READ aspect NOTIFY changed)      // width over height of every picture
  Q_PROPERTY(QString words READ words NOTIFY wordsChanged)  // for who does not see it
  Q_PROPERTY(int stills READ stills NOTIFY changed)         // how many still pictures tell it, at most 3

 public:
  explicit FigureSource(QObject* parent = nullptr) : QObject(parent) {}

  // The same again changes nothing. An exercise without a drawing leaves nothing there.
  void show(const FigureAsked& asked);
  void clear();
  // Milliseconds of active time in the timeline, asked at every picture.
  void setClock(std::function<std::int64_t()> active_ms) { m_clock = std::move(active_ms); }
  void setMoving(bool moving);
  // The clock jumped while it does not run.
  void jumped();

  bool there() const { return m_figure.has_value(); }
  bool moving() const { return m_moving; }
  double aspect() const;
  QString words() const;
  int stills() const;

  // Now; in steps from key pose to key pose where `stepping`.
  Moment momentNow(bool stepping) const;
  // Of still picture `index`, from 0.
  Moment momentOfStill(int index) const;
  // Valid until the next call; there() only.
  const Drawing& draw(const Moment& moment, bool dark);
  QString describe(const Moment& moment) const;

 signals:
  void changed();
  void wordsChanged();
  void jump();

 private:
  void make(bool dark);

  std::optional<FigureAsked> m_asked;
  std::optional<Figure> m_figure;
  bool m_dark = false;
  bool m_moving = false;
  std::function<std::int64_t()> m_clock;
};

}  // namespace newel::parts
