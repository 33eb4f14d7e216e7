#include "sync/export/person_history.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "core/records/check.h"
#include "core/records/uuid7.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

absl::TimeZone zoneOf(const std::string& name) {
  auto zone = loadZone(name);
  return zone.ok() ? *zone : absl::UTCTimeZone();
}

template <typename Record, typename Instant>
void keepLastRevisions(std::vector<Record>& records, const Instant& instant) {
  std::map<std::string, Record> last;
  for (auto& record : records) {
    auto& kept = last[record.id()];
    if (kept.id().empty() || kept.revision() < record.revision()) kept = std::move(record);
  }
  records.clear();
  for (auto& [id, record] : last) records.push_back(std::move(record));
  std::stable_sort(records.begin(), records.end(), [&instant](const Record& left, const Record& right) {
    return toTime(instant(left)) < toTime(instant(right));
  });
}

// The first thing wrong with one record of a list.
template <typename Record>
absl::Status checkOne(const std::string& list, std::size_t index, const Record& record,
                      const std::string& person_id) {
  const std::string path = list + "[" + std::to_string(index) + "]";
  const absl::Status good = check(record);
  if (!good.ok()) return absl::InvalidArgumentError(path + "." + std::string(good.message()));
  if (record.person_id() == person_id) return absl::OkStatus();
  return absl::InvalidArgumentError(path + ".person_id: is another person's");
}

template <typename List, typename RecordOf>
absl::Status checkList(const std::string& name, const List& list, const std::string& person_id,
                       const RecordOf& record_of) {
  for (std::size_t i = 0; i < list.size(); ++i) {
    absl::Status good = checkOne(name, i, record_of(list[i]), person_id);
    if (!good.ok()) return good;
  }
  return absl::OkStatus();
}

absl::Status checkNumbers(const PersonHistory& history) {
  for (std::size_t i = 0; i < history.programmes.size(); ++i) {
    const v1::Programme& programme = history.programmes[i].programme;
    const std::string path = "programmes[" + std::to_string(i) + "].";
    const auto zone = loadZone(programme.zone());
    if (!zone.ok()) return absl::InvalidArgumentError(path + "zone: " + std::string(zone.status().message()));
    if (i > 0 && programme.number() <= history.programmes[i - 1].programme.number())
      return absl::InvalidArgumentError(path + "number: is given twice");
  }
  return absl::OkStatus();
}

// What the hub keeps beside the records is its own; an id that is none would be no resource's id.
absl::Status checkPhones(const std::vector<PairedPhone>& phones) {
  for (std::size_t i = 0; i < phones.size(); ++i) {
    if (!isUuid7(phones[i].id))
      return absl::InvalidArgumentError("phones[" + std::to_string(i) + "].id: is no id");
  }
  return absl::OkStatus();
}

void note(const v1::Receipt& receipt, Receipts& receipts) {
  const absl::Time at = toTime(receipt.at());
  const auto earlier = [at](std::optional<absl::Time>& known) { known = known ? std::min(*known, at) : at; };
  earlier(receipts.arrived_at);
  if (receipt.state() == v1::RECEIPT_STATE_SEEN) earlier(receipts.seen_at);
}

}  // namespace

void putInOrder(PersonHistory& history) {
  std::stable_sort(history.programmes.begin(), history.programmes.end(),
                   [](const KeptProgramme& left, const KeptProgramme& right) {
                     return left.programme.number() < right.programme.number();
                   });
  std::stable_sort(
      history.holds.begin(), history.holds.end(),
      [](const KeptHold& left, const KeptHold& right) { return left.order.number() < right.order.number(); });
  std::stable_sort(history.messages.begin(), history.messages.end(),
                   [](const KeptMessage& left, const KeptMessage& right) {
                     return toTime(left.message.written_at()) < toTime(right.message.written_at());
                   });
  std::stable_sort(history.phones.begin(), history.phones.end(),
                   [](const PairedPhone& left, const PairedPhone& right) {
                     return std::tie(left.paired_at, left.id) < std::tie(right.paired_at, right.id);
                   });
  std::stable_sort(history.audit.begin(), history.audit.end(),
                   [](const AuditLine& left, const AuditLine& right) { return left.n < right.n; });
  keepLastRevisions(history.practices, [](const v1::Practice& one) { return one.started_at(); });
  keepLastRevisions(history.wear_blocks, [](const v1::WearBlock& one) { return one.put_on_at(); });
  keepLastRevisions(history.measures, [](const v1::Measure& one) { return one.taken_at(); });
}

void addReceipts(const std::vector<v1::Receipt>& receipts, PersonHistory& history) {
  for (const auto& receipt : receipts) {
    if (receipt.of() == v1::RECEIPT_OF_PROGRAMME) {
      for (auto& kept : history.programmes) {
        if (kept.programme.id() == receipt.ref_id()) note(receipt, kept.receipts);
      }
    } else if (receipt.of() == v1::RECEIPT_OF_HOLD_ORDER) {
      for (auto& kept : history.holds) {
        if (kept.order.id() == receipt.ref_id()) note(receipt, kept.receipts);
      }
    } else if (receipt.of() == v1::RECEIPT_OF_MESSAGE) {
      for (auto& kept : history.messages) {
        if (kept.message.id() == receipt.ref_id()) note(receipt, kept.receipts);
      }
    }
  }
}

absl::Status checkHistory(const PersonHistory& history) {
  const absl::Status person = check(history.person);
  if (!person.ok()) return absl::InvalidArgumentError("person." + std::string(person.message()));
  const auto zone = loadZone(history.person.zone());
  if (!zone.ok()) return absl::InvalidArgumentError("person.zone: " + std::string(zone.status().message()));
  const std::string& id = history.person.id();
  const auto itself = [](const auto& record) -> const auto& { return record; };
  for (const absl::Status& good :
       {checkList(
            "programmes", history.programmes, id,
            [](const KeptProgramme& kept) -> const auto& { return kept.programme; }),
        checkList(
            "holds", history.holds, id, [](const KeptHold& kept) -> const auto& { return kept.order; }),
        checkList(
            "messages", history.messages, id,
            [](const KeptMessage& kept) -> const auto& { return kept.message; }),
        checkList("practices", history.practices, id, itself),
        checkList("wear_blocks", history.wear_blocks, id, itself),
        checkList("measures", history.measures, id, itself), checkPhones(history.phones),
        checkNumbers(history)}) {
    if (!good.ok()) return good;
  }
  return absl::OkStatus();
}

bool tellsOf(const PersonHistory& history, const std::string& local_day) {
  // Days of the form YYYY-MM-DD sort as text.
  return history.first_day <= local_day && local_day <= history.last_day;
}

std::string localDayOf(const PersonHistory& history, absl::Time at) {
  return formatLocalDay(localDayAt(at, zoneOf(history.person.zone())));
}

absl::CivilDay lastCountingDay(const PersonHistory& history, std::size_t index) {
  absl::CivilDay last = *parseLocalDay(history.programmes[index].programme.end_day());
  for (std::size_t i = index + 1; i < history.programmes.size(); ++i) {
    last = std::min(last, *parseLocalDay(history.programmes[i].programme.effective_day()) - 1);
  }
  return last;
}

ProgrammeState programmeState(const PersonHistory& history, std::size_t index) {
  const v1::Programme& programme = history.programmes[index].programme;
  const absl::CivilDay today = localDayAt(history.as_of, zoneOf(programme.zone()));
  const absl::CivilDay last = lastCountingDay(history, index);
  if (last < *parseLocalDay(programme.effective_day())) return ProgrammeState::Replaced;  // it never counted
  if (today < *parseLocalDay(programme.effective_day())) return ProgrammeState::NotBegun;
  if (today <= last) return ProgrammeState::Active;
  return last < *parseLocalDay(programme.end_day()) ? ProgrammeState::Replaced : ProgrammeState::Completed;
}

std::optional<absl::Time> liftedAt(const PersonHistory& history, const KeptHold& hold) {
  for (const auto& other : history.holds) {
    if (other.order.lifts_id() == hold.order.id()) return toTime(other.order.issued_at());
  }
  return std::nullopt;
}

bool standsNow(const PersonHistory& history, const KeptHold& hold) {
  return hold.order.lifts_id().empty() && !liftedAt(history, hold).has_value();
}

absl::StatusOr<Adherence> adherenceIn(const PersonHistory& history) {
  if (history.programmes.empty()) return Adherence{};
  std::vector<v1::Programme> programmes;
  std::vector<v1::HoldOrder> orders;
  absl::CivilDay first = absl::CivilDay::max();
  absl::CivilDay last = absl::CivilDay::min();
  for (std::size_t i = 0; i < history.programmes.size(); ++i) {
    programmes.push_back(history.programmes[i].programme);
    const auto begins = parseLocalDay(programmes.back().effective_day());
    if (!begins.ok()) return begins.status();
    first = std::min(first, *begins);
    last = std::max(last, lastCountingDay(history, i));
  }
  for (const auto& hold : history.holds) orders.push_back(hold.order);
  const absl::TimeZone zone = zoneOf(history.person.zone());
  const absl::CivilDay today = localDayAt(history.as_of, zone);
  HeardDays heard(history.last_contact.has_value() ? localDayAt(*history.last_contact, zone) : first - 1);
  if (!history.phones.empty()) {
    const auto earliest = std::min_element(
        history.phones.begin(), history.phones.end(),
        [](const PairedPhone& one, const PairedPhone& other) { return one.paired_at < other.paired_at; });
    heard.from = heardFrom(localDayAt(earliest->paired_at, zone), history.practices);
  }
  auto adherence =
      adherenceOf(programmes, history.practices, first, last, today, heard, heldDaysOf(orders, zone));
  if (!adherence.ok()) return adherence;
  std::erase_if(adherence->occasions, [&history](const OccasionResult& occasion) {
    return !tellsOf(history, occasion.ref.local_day());
  });
  return adherence;
}

const KeptProgramme* programmeOn(const PersonHistory& history, const std::string& local_day) {
  for (std::size_t i = history.programmes.size(); i-- > 0;) {
    const KeptProgramme& kept = history.programmes[i];
    if (kept.programme.effective_day() <= local_day &&
        local_day <= formatLocalDay(lastCountingDay(history, i)))
      return &kept;
  }
  return nullptr;
}

const v1::Entry* entryIn(const PersonHistory& history, std::uint32_t programme_number,
                         const std::string& entry_id) {
  const v1::Entry* latest = nullptr;
  for (const auto& kept : history.programmes) {
    for (const auto& entry : kept.programme.entries()) {
      if (entry.id() != entry_id) continue;
      if (kept.programme.number() == programme_number) return &entry;
      latest = &entry;
    }
  }
  return latest;
}

absl::Status askProgress(const ExportProgress& progress, int percent) {
  if (!progress || progress(percent)) return absl::OkStatus();
  return absl::CancelledError("cancelled; nothing was written");
}

}  // namespace newel
