#include "sync/home/export.h"

#include <nlohmann/json.hpp>

#include "core/records/message.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/record_text.h"
#include "core/records/reminder.pb.h"
#include "sync/home/device_store.h"
#include "sync/home/inbox.h"
#include "sync/home/journal.h"
#include "sync/home/outbox.h"
#include "sync/home/wear_log.h"

namespace newel {
namespace {

using Json = nlohmann::ordered_json;

Json jsonOf(const google::protobuf::Message& message) {
  return Json::parse(toJson(message), nullptr, /*allow_exceptions=*/false);
}

template <typename Record>
Json listOf(const std::vector<Record>& records) {
  Json list = Json::array();
  for (const auto& record : records) list.push_back(jsonOf(record));
  return list;
}

template <typename Record>
Json parsedFrom(const std::string& bytes) {
  Record record;
  return record.ParseFromString(bytes) ? jsonOf(record) : Json();
}

Json contentOf(const SetAside& record) {
  switch (record.kind) {
    case v1::RECORD_KIND_PRACTICE:
      return parsedFrom<v1::Practice>(record.content);
    case v1::RECORD_KIND_WEAR_BLOCK:
      return parsedFrom<v1::WearBlock>(record.content);
    case v1::RECORD_KIND_RECEIPT:
      return parsedFrom<v1::Receipt>(record.content);
    case v1::RECORD_KIND_MESSAGE:
      return parsedFrom<v1::Message>(record.content);
    default:
      return {};
  }
}

Json setAsideOf(Database& database) {
  Json list = Json::array();
  for (const auto& record : setAsideRecords(database)) {
    list.push_back({{"kind", v1::RecordKind_Name(record.kind)},
                    {"reason", record.reason},
                    {"record", contentOf(record)}});
  }
  return list;
}

Json refusedOf(Database& database) {
  Json list = Json::array();
  for (const auto& arrival : refusedArrivals(database)) {
    list.push_back(
        {{"kind", v1::RecordKind_Name(arrival.kind)}, {"id", arrival.id}, {"reason", arrival.reason}});
  }
  return list;
}

}  // namespace

std::string exportStore(Database& database) {
  const DeviceSettings settings = loadSettings(database);
  Json all;
  all["name"] = settings.greeting_name;
  all["person"] = parsedFrom<v1::Person>(settings.person);
  all["clinic"] = parsedFrom<v1::ClinicCard>(settings.clinic);
  all["programmes"] = listOf(keptProgrammes(database));
  all["hold_orders"] = listOf(keptHoldOrders(database));
  all["messages"] = listOf(keptMessages(database));
  all["practices"] = listOf(keptPractices(database));
  all["wearing_time"] = listOf(keptWearBlocks(database));
  all["measures"] = listOf(keptMeasures(database));
  const auto journal = unfinishedJournal(database);
  all["practice_under_way"] = journal.has_value() ? listOf(journal->lines) : Json::array();
  all["reminders"] = parsedFrom<v1::ReminderBook>(loadSetting(database, kRemindersSetting));
  all["waiting_to_be_sent"] = queuedCount(database);
  all["not_taken_by_the_clinic"] = setAsideOf(database);
  all["arrived_and_refused"] = refusedOf(database);
  return all.dump(2, ' ', /*ensure_ascii=*/false, Json::error_handler_t::replace) + "\n";
}

}  // namespace newel
