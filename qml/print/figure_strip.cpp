#include "qml/print/figure_strip.h"

#include <QtGui/QPaintDevice>
#include <QtGui/QPainter>
#include <algorithm>

#include "core/figure/figure.h"
#include "qml/paint/drawing_painter.h"

namespace newel::print {
namespace {

constexpr int kPoses = 3;
constexpr double kHighestMm = 46;
constexpr double kGapMm = 3;

class FigureStrip : public PaperBlock {
 public:
  explicit FigureStrip(Figure figure) : m_figure(std::move(figure)), m_moments(m_figure.keyMoments(kPoses)) {}

  double layOut(QPaintDevice& device, double width) override {
    const double mm = device.logicalDpiX() / 25.4;
    m_gap = kGapMm * mm;
    m_cell = (width - (kPoses - 1) * m_gap) / kPoses;
    m_height = std::min(kHighestMm * mm, m_cell / m_figure.aspect());
    return m_height + m_gap;
  }

  void paint(QPainter& painter, double from, double) override {
    for (std::size_t i = 0; i < m_moments.size(); ++i) {
      const QRectF cell(static_cast<double>(i) * (m_cell + m_gap), -from, m_cell, m_height);
      m_painter.paint(painter, m_figure.draw(m_moments[i]), cell);
    }
  }

  // Never cut: it is lower than any page.
  double cutBefore(double, double at) const override { return at; }

 private:
  Figure m_figure;
  std::vector<Moment> m_moments;
  paint::DrawingPainter m_painter;
  double m_gap = 0;
  double m_cell = 0;
  double m_height = 0;
};

}  // namespace

std::unique_ptr<PaperBlock> figureStrip(const v1::Timeline& timeline, const v1::Person& person,
                                        const Catalogue& catalogue) {
  FigureOptions options = lettered({}, timeline.language());
  options.support = timeline.support();
  auto figure =
      Figure::make(timeline.exercise_id(), bodyOf(person, timeline.prosthesis(), {}), options, catalogue);
  if (!figure.ok()) return nullptr;
  return std::make_unique<FigureStrip>(*std::move(figure));
}

}  // namespace newel::print
