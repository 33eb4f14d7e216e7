// PreviewModel: how large the text is on the person's phone.
#include <algorithm>
#include <set>

#include "core/time/local_day.h"
#include "qml/desk/preview_model.h"
#include "qml/print/record_words.h"

namespace newel::desk {

int PreviewModel::saidPercent() const {
  const v1::Device* last = nullptr;
  if (m_draft.file() == nullptr) return 0;
  for (const v1::Device& device : m_draft.file()->devices) {
    if (device.revoked() || device.text_percent() == 0) continue;
    if (last == nullptr || toTime(device.last_contact()) > toTime(last->last_contact())) last = &device;
  }
  return last == nullptr ? 0 : static_cast<int>(last->text_percent());
}

int PreviewModel::textPercent() const {
  const int said = saidPercent();
  const bool looked_at =
      m_text_percent != 0 && m_draft.file() != nullptr && m_text_of == m_draft.file()->person.id();
  return looked_at ? m_text_percent : said != 0 ? said : 100;
}

void PreviewModel::setTextPercent(int percent) {
  if (m_draft.file() == nullptr || percent == textPercent()) return;
  m_text_percent = std::clamp(percent, 100, 200);
  m_text_of = m_draft.file()->person.id();
  emit shownChanged();
}

QString PreviewModel::textWords() const {
  const int said = saidPercent();
  if (said == 0) return tr("Size of text: their phone has not said it yet.");
  return said == textPercent() ? tr("Size of text as on their phone: %1 %").arg(said)
                               : tr("Size of text: another one than on their phone (%1 %)").arg(said);
}

QVariantList PreviewModel::textSizes() const {
  std::set<int> sizes = {100, 150, 200};
  if (const int said = saidPercent(); said != 0) sizes.insert(said);
  QVariantList list;
  for (const int size : sizes)
    list << QVariantMap{{QStringLiteral("value"), size}, {QStringLiteral("text"), tr("%1 %").arg(size)}};
  return list;
}

}  // namespace newel::desk
