// The cards of advice in a draft.
#include <algorithm>

#include "core/library/wording.h"
#include "qml/desk/draft_model.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

v1::AdviceEntry* entryOf(v1::Programme& draft, const std::string& card_id) {
  for (auto& entry : *draft.mutable_cards()) {
    if (entry.card_id() == card_id) return &entry;
  }
  return nullptr;
}

const v1::AdviceEntry* entryOf(const v1::Programme& draft, const std::string& card_id) {
  for (const auto& entry : draft.cards()) {
    if (entry.card_id() == card_id) return &entry;
  }
  return nullptr;
}

}  // namespace

QVariantList DraftModel::cards() const {
  QVariantList rows;
  for (const v1::AdviceCard& card : m_context.catalogue->cards()) {
    const v1::AdviceWords* words = cardWordsOrEnglish(*m_context.catalogue, card.id(), m_context.language);
    if (words == nullptr) continue;
    const v1::AdviceEntry* entry = entryOf(m_draft.value(), card.id());
    QVariantList days;
    if (entry != nullptr) {
      for (const int day : entry->days().days()) days << day;
    }
    rows << QVariantMap{{QStringLiteral("id"), print::text(card.id())},
                        {QStringLiteral("title"), print::text(words->title())},
                        {QStringLiteral("why"), print::text(withSettings(words->why(), m_context.settings))},
                        {QStringLiteral("sent"), entry != nullptr},
                        {QStringLiteral("days"), days},
                        {QStringLiteral("note"), entry == nullptr ? QString() : print::text(entry->note())}};
  }
  return rows;
}

void DraftModel::toggleCard(const QString& card_id) {
  const v1::AdviceCard* card = m_context.catalogue->card(card_id.toStdString());
  if (card == nullptr) return;
  change("", [card](v1::Programme& draft) {
    auto& cards = *draft.mutable_cards();
    const auto found = std::find_if(cards.begin(), cards.end(), [card](const v1::AdviceEntry& entry) {
      return entry.card_id() == card->id();
    });
    if (found != cards.end()) {
      cards.erase(found);
      return;
    }
    v1::AdviceEntry& entry = *draft.add_cards();
    entry.set_card_id(card->id());
    entry.set_card_revision(card->revision());
    *entry.mutable_days() = card->usual_days();
  });
}

void DraftModel::toggleCardDay(const QString& card_id, int weekday) {
  change("", [&](v1::Programme& draft) {
    v1::AdviceEntry* entry = entryOf(draft, card_id.toStdString());
    if (entry == nullptr) return;
    auto& days = *entry->mutable_days()->mutable_days();
    const auto found = std::find(days.begin(), days.end(), weekday);
    if (found == days.end()) {
      days.Add(weekday);
      std::sort(days.begin(), days.end());
    } else if (days.size() > 1) {  // a card on no day would be a card that is not sent
      days.erase(found);
    }
  });
}

void DraftModel::setCardNote(const QString& card_id, const QString& note) {
  change("card." + card_id.toStdString(), [&](v1::Programme& draft) {
    v1::AdviceEntry* entry = entryOf(draft, card_id.toStdString());
    if (entry != nullptr) entry->set_note(note.toStdString());
  });
}

}  // namespace newel::desk
