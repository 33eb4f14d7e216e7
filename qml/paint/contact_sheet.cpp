#include "qml/paint/contact_sheet.h"

#include <QtGui/QPainter>

#include "core/library/wording.h"
#include "qml/paint/drawing_painter.h"

namespace newel::paint {
namespace {

constexpr int kPoses = 3;
constexpr int kColumns = 3;
constexpr int kCell = 220;
constexpr int kCaption = 30;
constexpr int kRowWidth = kPoses * kCell;
constexpr int kRowHeight = kCell + kCaption;
constexpr int kInset = 4;

FigureBody dressed(FigureBody body, v1::ProsthesisUse use) {
  for (LimbState* limb : {&body.left, &body.right})
    limb->prosthesis_on = limb->lost() && use != v1::PROSTHESIS_USE_OFF;
  return body;
}

class SheetPainter {
 public:
  SheetPainter(const FigureBody& body, const std::string& language, bool dark)
      : m_body(body), m_language(language), m_dark(dark) {}

  absl::StatusOr<QImage> paint() {
    const auto& clips = ClipBook::builtIn().clips();
    const int rows = (static_cast<int>(clips.size()) + kColumns - 1) / kColumns;
    QImage image(kColumns * kRowWidth, rows * kRowHeight, QImage::Format_RGB32);
    image.fill(m_dark ? QColor(0x12, 0x19, 0x1a) : QColor(0xfa, 0xf6, 0xee));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    for (int i = 0; i < static_cast<int>(clips.size()); ++i) {
      const QPoint corner(i % kColumns * kRowWidth, i / kColumns * kRowHeight);
      const absl::Status painted =
          paintRow(painter, corner, clips[static_cast<std::size_t>(i)].exercise_id());
      if (!painted.ok()) return painted;
    }
    return image;
  }

 private:
  absl::Status paintRow(QPainter& painter, QPoint corner, const std::string& id) {
    const Catalogue& catalogue = Catalogue::builtIn();
    const v1::Exercise* exercise = catalogue.find(id);
    if (exercise == nullptr) return absl::NotFoundError("exercise_id: there is no exercise \"" + id + "\"");
    FigureOptions options = lettered({}, m_language);
    options.dark = m_dark;
    auto figure = Figure::make(id, dressed(m_body, exercise->prosthesis()), options);
    if (!figure.ok()) return figure.status();
    int column = 0;
    for (const Moment& moment : figure->keyMoments(kPoses)) {
      const QRectF cell(corner.x() + column++ * kCell, corner.y(), kCell, kCell);
      const QRectF place = cell.adjusted(kInset, kInset, -kInset, -kInset);
      painter.fillRect(place, m_dark ? QColor(0x1c, 0x26, 0x27) : QColor(Qt::white));
      m_painter.paint(painter, figure->draw(moment), place);
    }
    const v1::ExerciseWords* words = wordsOrEnglish(catalogue, id, m_language);
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(16);
    painter.setFont(font);
    painter.setPen(m_dark ? QColor(0xe8, 0xe2, 0xd4) : QColor(0x1d, 0x2b, 0x2a));
    painter.drawText(QRect(corner.x() + 2 * kInset, corner.y() + kCell, kRowWidth - 4 * kInset, kCaption),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     QString::fromStdString(words == nullptr ? id : words->title()));
    return absl::OkStatus();
  }

  const FigureBody& m_body;
  const std::string& m_language;
  bool m_dark;
  DrawingPainter m_painter;
};

}  // namespace

absl::StatusOr<QImage> contactSheet(const FigureBody& body, const std::string& language, bool dark) {
  return SheetPainter(body, language, dark).paint();
}

}  // namespace newel::paint
