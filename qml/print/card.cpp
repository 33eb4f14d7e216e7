#include "qml/print/card.h"

#include <QtCore/QFile>
#include <QtGui/QAbstractTextDocumentLayout>
#include <QtGui/QPainter>
#include <QtGui/QTextDocument>
#include <QtGui/QTextOption>
#include <algorithm>
#include <memory>

#include "core/records/check.h"
#include "qml/print/paper.h"
#include "qml/print/record_words.h"
#include "qml/print/sheet_html.h"
#include "qml/print/sheet_language.h"

namespace newel::print {
namespace {

constexpr double kCardWidthMm = 85.6;
constexpr double kCardHeightMm = 53.98;
constexpr double kInsetMm = 4;
constexpr double kMostPt = 8.5;
constexpr double kLeastPt = 5.5;  // still read at arm's length with glasses; common practice, no source
constexpr double kStepPt = 0.25;

QString line(const QString& what, const QString& value) {
  return QStringLiteral("<p><b>%1</b> %2</p>").arg(safe(what), safe(value));
}

QString limbLine(const v1::LimbLoss& limb) {
  QStringList parts{words(limb.side()), words(limb.level())};
  if (limb.has_prosthesis()) {
    if (limb.knee() != v1::KNEE_KIND_OWN_KNEE && limb.knee() != v1::KNEE_KIND_UNSPECIFIED)
      parts << sheetWords("Card", "knee: %1").arg(words(limb.knee()));
    if (limb.foot() != v1::FOOT_KIND_NOT_KNOWN && limb.foot() != v1::FOOT_KIND_UNSPECIFIED)
      parts << sheetWords("Card", "foot: %1").arg(words(limb.foot()));
  } else {
    parts << sheetWords("Card", "no prosthesis");
  }
  return joined(parts);
}

QString frontHtml(const CardInput& input) {
  QString html = QStringLiteral("<p class=\"name\">%1</p>")
                     .arg(input.name.isEmpty() ? QStringLiteral("____________________") : safe(input.name));
  html += plain(sheetWords("Card", "I live with limb loss."));
  for (const auto& limb : input.person.limbs()) html += line(QStringLiteral("·"), limbLine(limb));
  const auto& conditions = input.person.conditions();
  const auto has = [&conditions](v1::Condition one) {
    return std::find(conditions.begin(), conditions.end(), one) != conditions.end();
  };
  // What whoever helps after a fall has to know at once.
  QStringList mind;
  for (const auto one : {v1::CONDITION_BLOOD_THINNERS, v1::CONDITION_INSULIN, v1::CONDITION_DIABETES,
                         v1::CONDITION_SEIZURES, v1::CONDITION_HEART_DISEASE}) {
    if (has(one)) mind << words(one);
  }
  if (!mind.isEmpty()) html += line(sheetWords("Card", "Mind:"), joined(mind));
  html += line(sheetWords("Card", "Emergency:"), dialled(text(input.clinic.emergency_number())));
  html += line(text(input.clinic.name()), dialled(text(input.clinic.phone())));
  if (!input.clinic.hours().empty()) html += plain(text(input.clinic.hours()));
  return html;
}

QString backHtml(const CardInput& input) {
  QString html = line(sheetWords("Card", "After a fall"),
                      sheetWords("Card",
                                 "Stay still. Look for pain. Hurt, or a knock on the head: call for help. "
                                 "Look at the prosthesis and the skin before you stand on it."));
  html += line(sheetWords("Card", "Leave the prosthesis off and call the clinic"),
               sheetWords("Card",
                          "if the skin is open, blistered or bruised, pain rises, the limb swells, is cold, "
                          "numb or changes colour, or you have a fever."));
  if (input.thresholds.pain_stop_0_10() > 0) {
    html += line(
        sheetWords("Card", "Stop an exercise"),
        sheetWords("Card", "if pain passes %1 of 10 or rises by %2 or more, or you feel dizzy or unsteady.")
            .arg(input.thresholds.pain_stop_0_10())
            .arg(input.thresholds.pain_rise_0_10()));
  }
  return html + plain(sheetWords("Card",
                                 "Chest pain, a faint, bad breathlessness, sudden weakness or trouble with "
                                 "speech: call %1 at once.")
                          .arg(dialled(text(input.clinic.emergency_number()))));
}

// One face; as large as fits.
class Face {
 public:
  Face(QPaintDevice& device, const QString& html, double width, double height) {
    m_document.documentLayout()->setPaintDevice(&device);
    m_document.setDocumentMargin(0);
    QTextOption option = m_document.defaultTextOption();
    option.setTextDirection(sheetReadsRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    m_document.setDefaultTextOption(option);
    for (double points = kMostPt; points >= kLeastPt; points -= kStepPt) {
      m_document.setDefaultFont(paperFont(points));
      m_document.setDefaultStyleSheet(
          QStringLiteral("p { margin: 0 0 2px 0; } .name { font-size: %1pt; font-weight: bold; }")
              .arg(points * 1.3));
      m_document.setHtml(html);
      m_document.setTextWidth(width);
      m_fits = m_document.size().height() <= height && m_document.idealWidth() <= width;
      if (m_fits) return;
    }
  }
  bool fits() const { return m_fits; }
  void paint(QPainter& painter) { m_document.drawContents(&painter); }

 private:
  QTextDocument m_document;
  bool m_fits = false;
};

class CardBlock : public PaperBlock {
 public:
  CardBlock(QString front, QString back) : m_front(std::move(front)), m_back(std::move(back)) {}

  double layOut(QPaintDevice& device, double) override {
    m_mm = device.logicalDpiX() / 25.4;
    const double width = (kCardWidthMm - 2 * kInsetMm) * m_mm;
    const double height = (kCardHeightMm - 2 * kInsetMm) * m_mm;
    m_faces[0] = std::make_unique<Face>(device, m_front, width, height);
    m_faces[1] = std::make_unique<Face>(device, m_back, width, height);
    return (kCardHeightMm * 2 + kInsetMm) * m_mm;
  }

  void paint(QPainter& painter, double from, double) override {
    painter.translate(0.5 * m_mm, 0.5 * m_mm - from);
    const QRectF whole(0, 0, kCardWidthMm * m_mm, 2 * kCardHeightMm * m_mm);
    painter.setPen(QPen(Qt::black, 0.25 * m_mm));
    painter.drawRect(whole);
    QPen fold(Qt::black, 0.2 * m_mm);
    fold.setStyle(Qt::DashLine);
    painter.setPen(fold);
    painter.drawLine(QPointF(0, kCardHeightMm * m_mm), QPointF(whole.width(), kCardHeightMm * m_mm));
    for (int face = 0; face < 2; ++face) {
      painter.save();
      painter.translate(kInsetMm * m_mm, (kInsetMm + face * kCardHeightMm) * m_mm);
      m_faces[face]->paint(painter);
      painter.restore();
    }
  }

  double cutBefore(double, double at) const override { return at; }
  bool fits() const { return m_faces[0]->fits() && m_faces[1]->fits(); }

 private:
  QString m_front;
  QString m_back;
  double m_mm = 0;
  std::unique_ptr<Face> m_faces[2];
};

}  // namespace

absl::StatusOr<int> writeCard(const CardInput& input, const CardOptions& options, const QString& file) {
  for (const absl::Status& status : {check(input.person), check(input.clinic)}) {
    if (!status.ok()) return status;
  }
  const SheetLanguage language(options.language.empty() ? input.person.language() : options.language);
  PaperOptions paper_options;
  paper_options.size = options.size;
  paper_options.title = sheetWords("Card", "Card for the wallet");
  paper_options.foot = sheetWords("Card", "It does not replace what your clinic told you.");
  Paper paper(paper_options);
  paper.add(head(sheetWords("Card", "Card for the wallet")) +
            plain(sheetWords("Card", "Cut along the line, fold along the dashes, keep it with you.")));
  auto card = std::make_unique<CardBlock>(frontHtml(input), backHtml(input));
  const CardBlock* kept = card.get();
  paper.add(std::move(card));
  const absl::Status status = paper.write(file);
  if (!status.ok()) return status;
  if (!kept->fits()) {
    // Half a sentence about when to call would be worse than no card.
    QFile::remove(file);
    return absl::InvalidArgumentError("clinic: its name, hours and phone are too long for a card");
  }
  return paper.pages();
}

}  // namespace newel::print
