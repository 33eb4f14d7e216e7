#include "qml/home/messages_model.h"

#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {

MessagesModel::MessagesModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts), m_media(*parts.engine) {
  connect(&bridge, &EngineBridge::news, this, &MessagesModel::changed);
}

QVariantList MessagesModel::rows() const {
  QVariantList rows;
  const std::vector<v1::Message> messages = m_parts.engine->messages();
  for (auto message = messages.rbegin(); message != messages.rend() && rows.size() < kMost; ++message) {
    const bool mine = message->sender() == v1::SENDER_PERSON;
    const bool arrived = !mine || m_parts.engine->deliveryOf(message->id()) == Delivery::Arrived;
    const QString when = momentWords(toTime(message->written_at()), zoneOf(m_parts), todayOf(m_parts));
    QString title = mine ? tr("You, %1").arg(when) : tr("%1, %2").arg(text(message->sender_name()), when);
    if (mine) title += QStringLiteral(" · ") + (arrived ? tr("arrived at the clinic") : tr("not sent yet"));
    rows << QVariantMap{{"title", title},
                        {"words", text(message->text())},
                        {"mine", mine},
                        {"arrived", arrived},
                        {"media", m_media.rowOf(*message)}};
  }
  return rows;
}

bool MessagesModel::write(const QString& words) {
  const std::string line = words.trimmed().toStdString();
  const absl::Status kept = m_parts.engine->writeMessage(line);
  m_error =
      absl::IsInvalidArgument(kept) ? tr("This is too long to send. Please write less.") : errorWords(kept);
  if (kept.ok()) m_parts.engine->syncSoon();
  emit changed();
  return kept.ok();
}

}  // namespace newel::home
