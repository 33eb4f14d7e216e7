#include "qml/home/advice_model.h"

#include <algorithm>

#include "core/library/wording.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

const QString kAfterAFall = QStringLiteral("after-a-fall");  // core/library/cards

}  // namespace

AdviceModel::AdviceModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts) {
  connect(&bridge, &EngineBridge::news, this, &AdviceModel::changed);
}

std::string AdviceModel::language() const { return languageOf(m_parts); }

const v1::AdviceWords* AdviceModel::words() const {
  return cardWordsOrEnglish(*m_parts.catalogue, m_card, language());
}

QString AdviceModel::filled(const std::string& words_of) const {
  return text(withSettings(words_of, m_parts.settings));
}

QVariantList AdviceModel::rows(bool today_only) const {
  QVariantList rows;
  const auto programme = m_parts.engine->programme();
  if (!programme.has_value()) return rows;
  const auto due = cardsDueOn(*programme, todayOf(m_parts));
  for (const v1::AdviceEntry& card : programme->cards()) {
    if (today_only && std::find(due.begin(), due.end(), card.card_id()) == due.end()) continue;
    const auto* card_words = cardWordsOrEnglish(*m_parts.catalogue, card.card_id(), language());
    if (card_words == nullptr) continue;  // a card of a newer program
    rows << QVariantMap{{"id", text(card.card_id())}, {"title", text(card_words->title())}};
  }
  return rows;
}

QVariantList AdviceModel::today() const { return rows(true); }
QVariantList AdviceModel::all() const { return rows(false); }

QVariantList AdviceModel::besidesFall() const {
  QVariantList others = all();
  others.removeIf([](const QVariant& card) { return card.toMap()[QStringLiteral("id")] == kAfterAFall; });
  return others;
}

QString AdviceModel::title() const { return words() == nullptr ? QString() : text(words()->title()); }
QString AdviceModel::why() const { return words() == nullptr ? QString() : filled(words()->why()); }

QStringList AdviceModel::steps() const {
  QStringList lines;
  if (words() == nullptr) return lines;
  for (const std::string& step : words()->steps()) lines << filled(step);
  return lines;
}

QStringList AdviceModel::callIf() const {
  QStringList lines;
  if (words() == nullptr) return lines;
  for (const std::string& line : words()->call_if()) lines << filled(line);
  return lines;
}

QString AdviceModel::note() const {
  const auto programme = m_parts.engine->programme();
  if (!programme.has_value()) return QString();
  for (const v1::AdviceEntry& card : programme->cards()) {
    if (card.card_id() == m_card) return text(card.note());
  }
  return QString();
}

QString AdviceModel::question() const {
  return words() == nullptr ? QString() : text(words()->log_question());
}

bool AdviceModel::otherLanguage() const {
  return words() != nullptr && !servesLanguage(words()->language(), language());
}

void AdviceModel::open(const QString& card_id) {
  m_card = card_id.toStdString();
  m_sent.clear();
  m_error.clear();
  emit opened();
}

void AdviceModel::write(const QString& words_of) {
  const QString said = words_of.trimmed();
  if (said.isEmpty()) return;
  const absl::Status status =
      m_parts.engine->writeMessage((title() + QStringLiteral(": ") + said).toStdString());
  m_error = errorWords(status);
  m_sent = status.ok() ? tr("Written down and sent to the clinic: %1").arg(said) : QString();
  m_parts.engine->syncSoon();
  emit opened();
}

}  // namespace newel::home
