#include "qml/print/figure_strip.h"

#include <QtGui/QPaintDevice>
#include <QtGui/QPainter>
#include <algorithm>

#include "core/figure/figure.h"
#include "qml/paint/drawing_painter.h"
#include "qml/print/sheet_language.h"

namespace newel::print {
namespace {

constexpr int kPoses = 3;
constexpr double kGapMm = 3;

class FigureStrip : public PaperBlock {
 public:
  FigureStrip(Figure figure, double highest_mm)
      : m_figure(std::move(figure)), m_moments(m_figure.keyMoments(kPoses)), m_highest_mm(highest_mm) {}

  double layOut(QPaintDevice& device, double width) override {
    const double mm = device.logicalDpiX() / 25.4;
    m_gap = kGapMm * mm;
    m_cell = (width - (kPoses - 1) * m_gap) / kPoses;
    m_height = std::min(m_highest_mm * mm, m_cell / m_figure.aspect());
    return m_height + m_gap;
  }

  void paint(QPainter& painter, double from, double) override {
    for (std::size_t i = 0; i < m_moments.size(); ++i) {
      // The first pose stands where reading begins.
      const auto place = static_cast<double>(m_right_to_left ? kPoses - 1 - i : i);
      const QRectF cell(place * (m_cell + m_gap), -from, m_cell, m_height);
      m_painter.paint(painter, m_figure.draw(m_moments[i]), cell);
    }
  }

  // Never cut: it is lower than any page.
  double cutBefore(double, double at) const override { return at; }

 private:
  Figure m_figure;
  std::vector<Moment> m_moments;
  paint::DrawingPainter m_painter;
  double m_highest_mm;
  bool m_right_to_left = sheetReadsRightToLeft();
  double m_gap = 0;
  double m_cell = 0;
  double m_height = 0;
};

}  // namespace

std::unique_ptr<PaperBlock> figureStrip(const v1::Timeline& timeline, const v1::Person& person,
                                        const Catalogue& catalogue, double highest_mm) {
  FigureOptions options = lettered({}, timeline.language());
  options.support = timeline.support();
  auto figure =
      Figure::make(timeline.exercise_id(), bodyOf(person, timeline.prosthesis(), {}), options, catalogue);
  if (!figure.ok()) return nullptr;
  return std::make_unique<FigureStrip>(*std::move(figure), highest_mm);
}

}  // namespace newel::print
