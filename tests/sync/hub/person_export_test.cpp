// What the hub gathers is what was kept, on either store: an invented history goes in record by record and
// comes out as the same file. And the command around it: audited before it exists, or not there at all.
#include "sync/hub/person_export.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <sstream>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/hub/audit_trail.h"
#include "sync/hub/hub_commands.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_store.h"
#include "tests/sync/export/history_maker.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

class PersonExport : public testing::Test {
 protected:
  PersonExport() {
    fs::create_directories(m_folder.path("hub"));
    auto store = m_place->open();
    if (!store.ok()) throw std::runtime_error(std::string(store.status().message()));
    m_store = *std::move(store);
  }

  std::string nextId() { return test::idOf(900000000 + m_next++); }

  void addReceipts(HubTransaction& t, const std::string& person_id, int of, const std::string& ref_id,
                   const Receipts& receipts) {
    const auto add = [&](v1::ReceiptState state, const std::optional<absl::Time>& at) {
      if (!at.has_value()) return;
      v1::Receipt receipt;
      receipt.set_id(nextId());
      receipt.set_person_id(person_id);
      receipt.set_of(static_cast<v1::ReceiptOf>(of));
      receipt.set_ref_id(ref_id);
      receipt.set_state(state);
      *receipt.mutable_at() = toTimestamp(*at);
      t.addReceipt({receipt.id(), person_id, of, ref_id, 0, state, toBytes(receipt), sha256(receipt.id())},
                   t.takeSequence(), *at);
    };
    add(v1::RECEIPT_STATE_ARRIVED, receipts.arrived_at);
    add(v1::RECEIPT_STATE_SEEN, receipts.seen_at);
  }

  template <typename Record>
  v1::Envelope envelope(HubTransaction& t, v1::RecordKind kind, const Record& record) {
    v1::Envelope made = makeEnvelope(kind, record.id(), record.revision(), toBytes(record));
    made.set_sequence(t.takeSequence());
    *made.mutable_received_at() = toTimestamp(m_clock.wall());
    return made;
  }

  // The phones of `history`, so that the last contact is theirs, and its lines of the trail among others'
  // lines.
  void keepBeside(HubTransaction& t, PersonHistory& history) {
    const std::string id = history.person.id();
    // Pairing is a contact too, also of a phone that was revoked since.
    if (!history.last_contact.has_value()) history.phones.clear();
    for (auto& phone : history.phones) {
      phone.revoked = true;
      phone.last_contact = phone.paired_at;
    }
    if (history.last_contact.has_value())
      history.phones.push_back(
          {nextId(), "phone", "test", *history.last_contact, history.last_contact, false});
    for (const auto& phone : history.phones) {
      t.addDevice({phone.id, id, phone.name, phone.app_version, sha256(phone.id), phone.paired_at,
                   phone.last_contact, false});
      if (phone.revoked) t.revokeDevice(phone.id);
    }
    for (auto& line : history.audit) {
      const auto last = t.lastAudit();
      line.n = last.has_value() ? last->n + 1 : 1;
      const bool is_phone = std::any_of(history.phones.begin(), history.phones.end(),
                                        [&](const PairedPhone& phone) { return phone.id == line.who; });
      line.who_is = line.who.empty() ? AuditLine::Who::Nobody
                    : is_phone       ? AuditLine::Who::Phone
                                     : AuditLine::Who::Unknown;
      t.addAudit({line.n, auditEntry({line.action, line.who, id, line.record, line.field}, line.n, line.at),
                  std::string(32, 'h')});
      t.addAudit({line.n + 1, auditEntry({"person.see", id, nextId(), id, ""}, line.n + 1, line.at),
                  std::string(32, 'h')});
    }
  }

  // Later things first, as phones that were offline send them. Returns the history as it is kept.
  PersonHistory keep(PersonHistory history) {
    const std::string id = history.person.id();
    const absl::Status kept = m_store->write([&](HubTransaction& t) {
      t.putPerson(id, {1, toBytes(history.person)});
      for (const auto& kept : history.programmes) {
        const v1::Programme& programme = kept.programme;
        t.addProgramme({id, programme.number(), programme.id(), toBytes(programme), kept.signature,
                        kept.key_id, "", programme.end_day()},
                       t.takeSequence());
        addReceipts(t, id, v1::RECEIPT_OF_PROGRAMME, programme.id(), kept.receipts);
      }
      for (const auto& kept : history.holds) {
        t.addHoldOrder({id, kept.order.number(), kept.order.id(), toBytes(kept.order), kept.signature,
                        kept.key_id, kept.order.lifts_id(), ""},
                       t.takeSequence());
        addReceipts(t, id, v1::RECEIPT_OF_HOLD_ORDER, kept.order.id(), kept.receipts);
      }
      for (auto kept = history.messages.rbegin(); kept != history.messages.rend(); ++kept) {
        const v1::Message& message = kept->message;
        t.addMessage(
            {message.id(), id, message.sender() == v1::SENDER_PERSON, toBytes(message), sha256(message.id())},
            t.takeSequence(), m_clock.wall());
        addReceipts(t, id, v1::RECEIPT_OF_MESSAGE, message.id(), kept->receipts);
      }
      std::vector<PracticeRow> rows;
      for (auto practice = history.practices.rbegin(); practice != history.practices.rend(); ++practice) {
        rows.push_back({id, test::idOf(7), envelope(t, v1::RECORD_KIND_PRACTICE, *practice), false});
      }
      if (!rows.empty()) t.addPractices(rows);
      for (const auto& block : history.wear_blocks)
        t.addRecord(id, envelope(t, v1::RECORD_KIND_WEAR_BLOCK, block));
      for (const auto& measure : history.measures)
        t.addRecord(id, envelope(t, v1::RECORD_KIND_MEASURE, measure));
      keepBeside(t, history);
      return absl::OkStatus();
    });
    EXPECT_EQ(kept, absl::OkStatus());
    putInOrder(history);
    return history;
  }

  absl::StatusOr<PersonHistory> gathered(const std::string& person_id, absl::Time as_of,
                                         const ExportProgress& progress = {}) {
    absl::StatusOr<PersonHistory> history = absl::InternalError("not read");
    const absl::Status read = m_store->read([&](HubTransaction& t) {
      history = gatherHistory(t, person_id, as_of, progress);
      return absl::OkStatus();
    });
    EXPECT_EQ(read, absl::OkStatus());
    return history;
  }

  std::vector<std::string> exportLines() {
    std::vector<std::string> lines;
    const absl::Status read = m_store->read([&](HubTransaction& t) {
      lines.clear();
      for (const auto& row : t.auditAfter(0, 1000)) {
        if (row.entry.find("person.export") != std::string::npos) lines.push_back(row.entry);
      }
      return absl::OkStatus();
    });
    EXPECT_EQ(read, absl::OkStatus());
    return lines;
  }

  int run(ExportCommand command) {
    m_out.str("");
    m_err.str("");
    return exportCommand(m_machine, m_place->address(), command);
  }

  test::TempFolder m_folder;
  test::TestClock m_clock;
  RealRandom m_random;
  std::unique_ptr<test::TestStore> m_place = test::testStoreMaker()(m_folder.path("hub"));
  std::unique_ptr<HubStore> m_store;
  std::ostringstream m_out;
  std::ostringstream m_err;
  HubMachine m_machine{&m_clock, &m_random, &m_out, &m_err};
  std::uint64_t m_next = 0;
};

TEST_F(PersonExport, whatIsGatheredIsWhatWasKept) {
  ExportOptions options;
  options.with_words = true;
  std::size_t phones = 0;
  std::size_t lines = 0;
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    const PersonHistory history = keep(test::anyHistory(seed));
    const auto read = gathered(history.person.id(), history.as_of);
    ASSERT_TRUE(read.ok()) << read.status();
    phones += read->phones.size();
    lines += read->audit.size();
    for (const auto format : {ExportFormat::Fhir, ExportFormat::Csv}) {
      const auto before = makeExport(history, format, options);
      const auto after = makeExport(*read, format, options);
      ASSERT_TRUE(before.ok() && after.ok()) << before.status() << after.status();
      ASSERT_EQ(before->size(), after->size());
      for (std::size_t i = 0; i < before->size(); ++i) EXPECT_EQ((*before)[i].text, (*after)[i].text) << seed;
    }
  }
  EXPECT_GT(phones, 40U);
  EXPECT_GT(lines, 40U);
}

// More than one page of practices.
TEST_F(PersonExport, aLongRecordIsWhole) {
  PersonHistory history = test::yearOfHistory(1);
  const std::vector<v1::Practice> year = history.practices;
  for (std::uint64_t copy = 1; copy <= 7; ++copy) {
    for (v1::Practice practice : year) {
      practice.set_id(nextId());
      history.practices.push_back(std::move(practice));
    }
  }
  putInOrder(history);
  keep(history);
  const auto read = gathered(history.person.id(), history.as_of);
  ASSERT_TRUE(read.ok()) << read.status();
  EXPECT_EQ(read->practices.size(), 8 * year.size());
  EXPECT_GT(read->practices.size(), 1000U);
}

TEST_F(PersonExport, nobodyAndWhatCannotBeReadAreErrors) {
  EXPECT_EQ(gathered(test::idOf(77), m_clock.wall()).status().message(), "person: nobody has this id");
  const PersonHistory history = test::yearOfHistory(1);
  keep(history);
  const absl::Status spoilt = m_store->write([&](HubTransaction& t) {
    v1::Measure measure;
    measure.set_id(test::idOf(78));
    measure.set_revision(1);
    v1::Envelope bad = envelope(t, v1::RECORD_KIND_MEASURE, measure);
    bad.set_content("\xff\xff\xff");
    t.addRecord(history.person.id(), bad);
    return absl::OkStatus();
  });
  ASSERT_EQ(spoilt, absl::OkStatus());
  const auto read = gathered(history.person.id(), m_clock.wall());
  EXPECT_TRUE(absl::IsDataLoss(read.status())) << read.status();
  EXPECT_EQ(read.status().message(), "measure " + test::idOf(78) + ": not to be read");
}

TEST_F(PersonExport, theCommandWritesEachFormatAndSaysSoInTheTrail) {
  const PersonHistory history = test::yearOfHistory(2);
  keep(history);
  const std::string id = history.person.id();
  for (const std::string format : {"fhir", "ical", "csv"}) {
    const std::string out = m_folder.path("out-" + format);
    EXPECT_EQ(run({.person_id = id, .format = format, .out = out}), 0) << m_err.str();
    EXPECT_EQ(fs::is_directory(out), format == "csv");
    EXPECT_EQ(fs::status(out).permissions() & (fs::perms::group_all | fs::perms::others_all),
              fs::perms::none);
    EXPECT_FALSE(fs::exists(out + ".part"));
    const auto lines = exportLines();
    ASSERT_FALSE(lines.empty());
    EXPECT_NE(lines.back().find(id), std::string::npos);
    EXPECT_NE(lines.back().find("\"" + format + "\""), std::string::npos) << lines.back();
  }
  EXPECT_EQ(exportLines().size(), 3U);
}

// Nothing exists, and no line says that it does.
TEST_F(PersonExport, whatIsLeftOrRefusedLeavesNothing) {
  const PersonHistory history = test::yearOfHistory(1);
  keep(history);
  const std::string out = m_folder.path("out");
  const ExportCommand good{.person_id = history.person.id(), .format = "fhir", .out = out};
  int asked = 0;
  ExportCommand left = good;
  left.asked_to_stop = [&asked] { return ++asked > 1000000; };
  EXPECT_EQ(run(left), 0);
  fs::remove(out);
  const int times = asked;
  ASSERT_GT(times, 20);
  for (int stop_at = times; stop_at > 0; stop_at -= 1 + times / 15) {
    asked = 0;
    left.asked_to_stop = [&asked, stop_at] { return ++asked >= stop_at; };
    EXPECT_EQ(run(left), 1);
    EXPECT_NE(m_err.str().find("cancelled; nothing was written"), std::string::npos) << m_err.str();
    EXPECT_FALSE(fs::exists(out));
    EXPECT_FALSE(fs::exists(out + ".part"));
  }
  const auto refused = [&](ExportCommand command, const std::string& words) {
    EXPECT_EQ(run(command), 1);
    EXPECT_NE(m_err.str().find(words), std::string::npos) << m_err.str();
    EXPECT_FALSE(fs::exists(out));
  };
  ExportCommand bad = good;
  bad.format = "pdf";
  refused(bad, "format: fhir, ical or csv");
  bad = good;
  bad.person_id = test::idOf(5);
  refused(bad, "person: nobody has this id");
  bad = good;
  bad.from = "2026-02-30";
  refused(bad, "from: ");
  bad = good;
  bad.from = "2026-02-03";
  bad.to = "2026-02-02";
  refused(bad, "to: is before from");
  bad = good;
  bad.format = "ical";
  bad.options.programme_number = 8;
  refused(bad, "programme: there is no number 8");
  bad = good;
  bad.out = m_folder.path("no/such/folder/out");
  EXPECT_EQ(run(bad), 1);
  EXPECT_EQ(exportLines().size(), 1U) << "of the one that was left to run";
}

TEST_F(PersonExport, whatIsThereIsNeverReplaced) {
  const PersonHistory history = test::yearOfHistory(1);
  keep(history);
  const std::string out = m_folder.path("out");
  fs::create_directories(out);
  EXPECT_EQ(run({.person_id = history.person.id(), .format = "csv", .out = out}), 1);
  EXPECT_NE(m_err.str().find("is there already"), std::string::npos);
  EXPECT_TRUE(fs::is_empty(out));
  EXPECT_TRUE(exportLines().empty());
}

// An earlier attempt that a crash cut off is in nobody's way.
TEST_F(PersonExport, aLeftoverIsNoHindrance) {
  const PersonHistory history = test::yearOfHistory(1);
  keep(history);
  const std::string out = m_folder.path("out");
  fs::create_directories(out + ".part/deep");
  EXPECT_EQ(run({.person_id = history.person.id(), .format = "ical", .out = out}), 0) << m_err.str();
  EXPECT_TRUE(fs::is_regular_file(out));
}

}  // namespace
}  // namespace newel
