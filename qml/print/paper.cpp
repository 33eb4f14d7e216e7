#include "qml/print/paper.h"

#include <QtCore/QSaveFile>
#include <QtGui/QAbstractTextDocumentLayout>
#include <QtGui/QPainter>
#include <QtGui/QTextBlock>
#include <QtGui/QTextDocument>
#include <QtGui/QTextLayout>
#include <algorithm>

#include "qml/print/sheet_language.h"

namespace newel::print {
namespace {

constexpr int kDotsPerInch = 300;
constexpr double kMarginMm = 15;
constexpr double kFootMm = 13;

class TextBlock : public PaperBlock {
 public:
  TextBlock(QString html, double points) : m_html(std::move(html)), m_points(points) {}

  double layOut(QPaintDevice& device, double width) override {
    m_document.documentLayout()->setPaintDevice(&device);
    m_document.setDefaultFont(paperFont(m_points));
    m_document.setDocumentMargin(0);
    QTextOption option = m_document.defaultTextOption();
    option.setTextDirection(sheetReadsRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    m_document.setDefaultTextOption(option);
    m_document.setDefaultStyleSheet(styleSheet());
    m_document.setHtml(m_html);
    m_document.setTextWidth(width);
    return m_document.size().height();
  }

  void paint(QPainter& painter, double from, double height) override {
    painter.save();
    painter.translate(0, -from);
    m_document.drawContents(&painter, QRectF(0, from, m_document.textWidth(), height));
    painter.restore();
  }

  double cutBefore(double from, double at) const override {
    double cut = from;
    for (QTextBlock block = m_document.begin(); block.isValid(); block = block.next()) {
      const QRectF whole = m_document.documentLayout()->blockBoundingRect(block);
      for (int line = 0; line < block.layout()->lineCount(); ++line) {
        const QRectF rect = block.layout()->lineAt(line).rect().translated(whole.topLeft());
        if (rect.bottom() <= at) cut = std::max(cut, rect.bottom());
      }
    }
    return cut > from ? cut : at;
  }

 private:
  // Lengths other than type are pixels of 1/96 inch, which the layout scales to the device; it reads no pt
  // there.
  QString styleSheet() const {
    const double px = m_points * 96 / 72;
    // Arabic letters come with tall lines of their own; closer, a page holds as much as in other languages.
    const QString closer =
        sheetReadsRightToLeft() ? QStringLiteral("p, li, td, h2, h3 { line-height: 76%; }") : QString();
    return closer +
           QStringLiteral(
               "h1 { font-size: %1pt; margin: 0 0 %5px 0; } h2 { font-size: %2pt; margin: %6px 0 %5px 0; }"
               "h3 { font-size: %3pt; margin: %5px 0 0 0; } p { margin: 0 0 %5px 0; }"
               "ol, ul { margin: 0 0 %5px 0; } td, th { padding: 1px %6px 1px 0; vertical-align: top; }"
               "th { text-align: left; } table.lines td, table.lines th { padding: 3px 6px; }"
               "table.box td { padding: 6px; } .soft { color: #404040; font-size: %4pt; }")
               .arg(m_points * 1.7)
               .arg(m_points * 1.3)
               .arg(m_points)
               .arg(m_points * 0.88)
               .arg(px * 0.28)
               .arg(px * 0.7);
  }

  QString m_html;
  double m_points;
  QTextDocument m_document;
};

}  // namespace

QFont paperFont(double points) {
  QFont font;
  // Named one by one: with a single family Arabic falls back to whatever is installed.
  font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Arabic")});
  font.setPointSizeF(points);
  return font;
}

void Paper::add(const QString& html) { add(std::make_unique<TextBlock>(html, m_options.body_pt)); }

void Paper::add(std::unique_ptr<PaperBlock> block) {
  m_items.push_back({std::move(block), m_next_on_new_page, false});
  m_next_on_new_page = false;
}

void Paper::newPage() { m_next_on_new_page = true; }

void Paper::keepWithNext() {
  if (!m_items.empty()) m_items.back().with_next = true;
}

double Paper::together(const std::vector<double>& heights, std::size_t item) const {
  double sum = heights[item];
  while (m_items[item].with_next && item + 1 < m_items.size()) sum += heights[++item];
  return sum;
}

void Paper::prepare(QPdfWriter& writer) const {
  writer.setResolution(kDotsPerInch);
  writer.setPageSize(QPageSize(m_options.size));
  writer.setPageMargins(QMarginsF(kMarginMm, kMarginMm, kMarginMm, kMarginMm), QPageLayout::Millimeter);
  writer.setTitle(m_options.title);
  writer.setCreator(QStringLiteral("Newel"));
}

std::vector<Paper::Placed> Paper::place(QPaintDevice& device, double width, double height) {
  std::vector<Placed> placed;
  int page = 0;
  double y = 0;
  std::vector<double> heights;
  heights.reserve(m_items.size());
  for (auto& item : m_items) heights.push_back(item.block->layOut(device, width));
  bool kept = false;  // with the one before: the page was chosen for both
  for (std::size_t i = 0; i < m_items.size(); ++i) {
    auto& item = m_items[i];
    const double whole = heights[i];
    const bool fits = y + (kept ? whole : together(heights, i)) <= height;
    // What is longer than a page begins where it is and is cut.
    const bool stays = fits || (kept && whole > height / 2);
    kept = item.with_next;
    if (y > 0 && (item.new_page || !stays)) {
      ++page;
      y = 0;
    }
    double from = 0;
    while (whole - from > height - y) {
      const double cut = item.block->cutBefore(from, from + height - y);
      placed.push_back({page++, y, from, cut - from, item.block.get()});
      from = cut;
      y = 0;
    }
    placed.push_back({page, y, from, whole - from, item.block.get()});
    y += whole - from;
  }
  m_pages = page + 1;
  return placed;
}

absl::Status Paper::write(const QString& file) {
  QSaveFile target(file);
  if (!target.open(QIODevice::WriteOnly)) {
    return absl::UnavailableError("cannot write " + file.toStdString() + ": " +
                                  target.errorString().toStdString());
  }
  {
    QPdfWriter writer(&target);
    prepare(writer);
    QPainter painter;
    if (!painter.begin(&writer)) return absl::UnavailableError("cannot begin " + file.toStdString());
    const double mm = kDotsPerInch / 25.4;
    const double width = writer.width();
    const double height = writer.height() - kFootMm * mm;
    int page = 0;
    const auto placed = place(writer, width, height);
    const auto foot = [&] {
      painter.setFont(paperFont(std::min(m_options.body_pt * 0.8, 12.0)));
      const QRectF room(0, height + 2 * mm, width, (kFootMm - 2) * mm);
      const QString number = sheetWords("Paper", "Page %1 of %2").arg(page + 1).arg(m_pages);
      painter.setPen(QPen(Qt::black, 0.2 * mm));
      painter.drawLine(room.topLeft(), room.topRight());
      QRectF used;
      const bool mirrored = sheetReadsRightToLeft();
      painter.setLayoutDirection(mirrored ? Qt::RightToLeft : Qt::LeftToRight);
      constexpr int kLeft = static_cast<int>(Qt::AlignLeft) | static_cast<int>(Qt::AlignAbsolute);
      constexpr int kRight = static_cast<int>(Qt::AlignRight) | static_cast<int>(Qt::AlignAbsolute);
      const double aside = 4 * mm;
      painter.drawText(room.adjusted(0, mm, 0, 0), mirrored ? kLeft : kRight, number, &used);
      const double taken = used.width() + aside;
      painter.drawText(room.adjusted(mirrored ? taken : 0, mm, mirrored ? 0 : -taken, 0),
                       (mirrored ? kRight : kLeft) | static_cast<int>(Qt::TextWordWrap), m_options.foot);
    };
    for (const auto& piece : placed) {
      if (piece.page > page) {
        foot();
        writer.newPage();
        page = piece.page;
      }
      painter.save();
      painter.translate(0, piece.y);
      painter.setClipRect(QRectF(-2 * mm, 0, width + 4 * mm, piece.height));
      piece.block->paint(painter, piece.from, piece.height);
      painter.restore();
    }
    foot();
    painter.end();
  }
  if (!target.commit()) {
    return absl::UnavailableError("cannot write " + file.toStdString() + ": " +
                                  target.errorString().toStdString());
  }
  return absl::OkStatus();
}

}  // namespace newel::print
