// `newel export` and `newel import`, through the functions and through the program itself.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <memory>
#include <nlohmann/json.hpp>
#include <sstream>

#include "core/records/record_text.h"
#include "sync/export/export_files.h"
#include "sync/export/record_words.h"
#include "sync/tool/export_commands.h"
#include "sync/tool/tool_io.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/export/history_maker.h"

namespace newel::tool {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using testing::HasSubstr;

class Leaving : public testing::Test {
 protected:
  void SetUp() override {
    m_folder =
        fs::temp_directory_path() /
        ("newel-leaving-" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()));
    fs::remove_all(m_folder);
    fs::create_directories(m_folder);
  }
  void TearDown() override { fs::remove_all(m_folder); }

  std::string path(const std::string& name) const { return (m_folder / name).string(); }
  std::string file(const std::string& name, const std::string& text) const {
    std::ofstream(m_folder / name, std::ios::binary) << text;
    return path(name);
  }
  static std::string text(const std::string& path) {
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
  }
  template <typename List>
  std::vector<std::string> files(const std::string& name, const List& records) {
    std::vector<std::string> paths;
    for (const auto& record : records)
      paths.push_back(file(name + std::to_string(paths.size()) + ".json", toJson(record)));
    return paths;
  }
  // A history that `newel` can read: with no signatures, and every record as a file.
  ExportFilesOptions recordsOf(const PersonHistory& history) {
    ExportFilesOptions options;
    options.person = file("person.json", toJson(history.person));
    std::vector<v1::Programme> programmes;
    for (const auto& kept : history.programmes) programmes.push_back(kept.programme);
    std::vector<v1::HoldOrder> holds;
    for (const auto& kept : history.holds) holds.push_back(kept.order);
    std::vector<v1::Message> messages;
    for (const auto& kept : history.messages) messages.push_back(kept.message);
    v1::WearLog log;
    for (const auto& block : history.wear_blocks) *log.add_blocks() = block;
    options.programmes = files("programme", programmes);
    options.holds = files("hold", holds);
    options.messages = files("message", messages);
    options.practices = files("practice", history.practices);
    options.measures = files("measure", history.measures);
    if (log.blocks_size() > 0) options.wear_logs = {file("wear.json", toJson(log))};
    options.as_of = isoInstant(history.as_of);
    return options;
  }
  static PersonHistory unsignedHistory(std::uint64_t seed) {
    PersonHistory history = test::anyHistory(seed);
    for (auto& kept : history.programmes) {
      kept.signature.clear();
      kept.key_id.clear();
      kept.receipts = {};
    }
    for (auto& kept : history.holds) {
      kept.signature.clear();
      kept.key_id.clear();
      kept.receipts = {};
    }
    for (auto& kept : history.messages) kept.receipts = {};
    // The hub's alone.
    history.phones.clear();
    history.audit.clear();
    history.last_contact = history.as_of;
    return history;
  }
  Output output(bool as_json = false) {
    m_out.str("");
    m_err.str("");
    return {m_out, m_err, as_json};
  }
  std::string out() const { return m_out.str(); }
  std::string err() const { return m_err.str(); }

  fs::path m_folder;
  std::ostringstream m_out, m_err;
};

// As the phone writes it for its owner to take along.
std::string takeAlong(const PersonHistory& history) {
  const auto of = [](const google::protobuf::Message& record) { return json::parse(toJson(record)); };
  json all = {{"name", "Dora"}, {"person", of(history.person)}, {"programmes", json::array()}};
  for (const auto& kept : history.programmes) all["programmes"].push_back(of(kept.programme));
  for (const auto& kept : history.holds) all["hold_orders"].push_back(of(kept.order));
  for (const auto& kept : history.messages) all["messages"].push_back(of(kept.message));
  for (const auto& practice : history.practices) all["practices"].push_back(of(practice));
  for (const auto& block : history.wear_blocks) all["wearing_time"].push_back(of(block));
  for (const auto& measure : history.measures) all["measures"].push_back(of(measure));
  return all.dump();
}

TEST_F(Leaving, fromFilesIsTheSameAsFromMemory) {
  for (const std::uint64_t seed : {3U, 4U, 5U, 6U, 7U}) {
    SetUp();
    const PersonHistory history = unsignedHistory(seed);
    ExportFilesOptions options = recordsOf(history);
    options.options.with_words = true;
    for (const std::string format : {"fhir", "csv"}) {
      options.format = format;
      options.out = path("out-" + format);
      ASSERT_EQ(runExport(options, output()), kFine) << err();
      const auto expected = makeExport(history, *parseExportFormat(format), options.options);
      ASSERT_TRUE(expected.ok());
      for (const auto& one : *expected) {
        EXPECT_EQ(text(one.name.empty() ? options.out : options.out + "/" + one.name), one.text)
            << seed << " " << one.name;
      }
    }
  }
}

TEST_F(Leaving, fromWhatThePhoneGaveIsTheSameToo) {
  const PersonHistory history = unsignedHistory(8);
  ExportFilesOptions options;
  options.record = file("all.json", takeAlong(history));
  options.as_of = isoInstant(history.as_of);
  options.format = "fhir";
  options.out = path("out");
  ASSERT_EQ(runExport(options, output()), kFine) << err();
  EXPECT_EQ(text(options.out), (*makeExport(history, ExportFormat::Fhir, {}))[0].text);
  EXPECT_EQ(text(options.out).find("Dora"), std::string::npos);
}

// The real thing: what a phone that was paired, has a programme and a practice, gives its owner.
TEST_F(Leaving, aRealPhonesFileIsRead) {
  test::TestClinic clinic;
  const v1::Person person = test::transfemoralLeft();
  clinic.addPerson(person, "Dora");
  clinic.sign(person);
  const auto phone = clinic.pairedPhone("phone", person.id());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_TRUE(phone->closePractice(test::samplePractice(phone->newId(), person.id())).ok());
  ASSERT_TRUE(phone->writeMessage("The liner pinches.").ok());
  ExportFilesOptions options;
  options.record = file("all.json", phone->exportAll());
  options.as_of = isoInstant(clinic.clock().wall());
  options.format = "fhir";
  options.out = path("out");
  ASSERT_EQ(runExport(options, output()), kFine) << err();
  std::map<std::string, int> types;
  const json bundle = json::parse(text(options.out));
  for (const auto& entry : bundle["entry"]) ++types[entry["resource"]["resourceType"]];
  for (const char* type : {"Patient", "CarePlan", "ServiceRequest", "Procedure", "Communication"})
    EXPECT_GE(types[type], 1) << type;
  EXPECT_EQ(text(options.out).find("Dora"), std::string::npos);
}

TEST_F(Leaving, whatIsWrongIsNamed) {
  const PersonHistory history = unsignedHistory(3);
  ExportFilesOptions good = recordsOf(history);
  good.format = "fhir";
  good.out = path("out");
  const auto complaint = [this](const ExportFilesOptions& options) {
    EXPECT_EQ(runExport(options, output()), kBadInput);
    EXPECT_FALSE(fs::exists(path("out")));
    return err();
  };
  ExportFilesOptions bad = good;
  bad.format = "xml";
  EXPECT_THAT(complaint(bad), HasSubstr("--format: fhir, ical or csv"));
  bad = good;
  bad.as_of = "today";
  EXPECT_THAT(complaint(bad), HasSubstr("--as-of: not like"));
  bad = good;
  bad.from = "2026-13-01";
  EXPECT_THAT(complaint(bad), HasSubstr("--from: "));
  bad = good;
  bad.person = path("nobody.json");
  EXPECT_THAT(complaint(bad), HasSubstr("nobody.json"));
  bad = good;
  bad.record = bad.person;
  EXPECT_THAT(complaint(bad), HasSubstr("either --record or --person"));
  bad = good;
  v1::Person other = history.person;
  other.set_id("0193a1c0-0000-7000-8000-000000000099");
  bad.person = file("other.json", toJson(other));
  if (!history.practices.empty() || !history.programmes.empty()) {
    EXPECT_THAT(complaint(bad), HasSubstr("person_id: is another person's"));
  }
  bad = ExportFilesOptions();
  bad.format = "fhir";
  bad.out = path("out");
  bad.as_of = good.as_of;
  bad.record = file("odd.json", R"({"person": {"id": "x"}, "practices": 3})");
  EXPECT_THAT(complaint(bad), HasSubstr("practices: is no list"));
  bad.record = file("odd.json", R"({"programmes": []})");
  EXPECT_THAT(complaint(bad), HasSubstr("person: is missing"));
}

constexpr char kWish[] = R"({"resourceType": "Bundle", "type": "collection", "entry": [
  {"resource": {"resourceType": "Patient", "id": "p", "name": [{"family": "Specimen", "given": ["Dora"]}], "gender": "female"}},
  {"resource": {"resourceType": "ServiceRequest", "status": "active", "intent": "order",
    "subject": {"reference": "Patient/p"}, "code": {"text": "Balance training"}}}]})";

TEST_F(Leaving, importShowsWhatIsTakenAndWhatIsNot) {
  EXPECT_EQ(runImport(file("wish.json", kWish), output()), kFine) << err();
  EXPECT_THAT(out(), HasSubstr("Specimen"));
  EXPECT_THAT(out(), HasSubstr("Balance training"));
  EXPECT_THAT(out(), HasSubstr("for the therapist to choose"));
  EXPECT_THAT(out(), HasSubstr("entry[0].resource.gender: not taken over"));
  EXPECT_EQ(runImport(path("wish.json"), output(true)), kFine);
  const json read = json::parse(out());
  EXPECT_EQ(read["identity"]["family_name"], "Specimen");
  EXPECT_EQ(read["requests"][0]["title"], "Balance training");
  EXPECT_TRUE(read["requests"][0]["entry"].is_null());
}

TEST_F(Leaving, importSaysNoToWhatIsRefusedOrHasToBeReadFirst) {
  EXPECT_EQ(runImport(file("bad.json", "{}"), output()), kSaysNo);
  EXPECT_THAT(err(), HasSubstr("no FHIR resource"));
  std::string wish = kWish;
  wish.replace(wish.find("\"status\""), 0, "\"doNotPerform\": true, ");
  EXPECT_EQ(runImport(file("not.json", wish), output()), kSaysNo);
  EXPECT_THAT(out(), HasSubstr("NOT to be done"));
  EXPECT_EQ(runImport(path("nothing.json"), output()), kBadInput);
}

struct Ran {
  int code = -1;
  std::string text;
};

Ran program(const std::string& arguments) {
  Ran ran;
  const std::string command = std::string(NEWEL_BINARY_DIR) + "/bin/newel " + arguments + " 2>&1";
  FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return ran;
  char part[4096];
  while (const std::size_t size = fread(part, 1, sizeof part, pipe)) ran.text.append(part, size);
  const int status = pclose(pipe);
  ran.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  return ran;
}

TEST_F(Leaving, templatesLeaveWithNobodysRecord) {
  ExportFilesOptions options;
  options.templates = true;
  options.format = "fhir";
  options.as_of = "2026-11-30T12:00:00Z";
  options.out = path("templates.json");
  ASSERT_EQ(runExport(options, output()), kFine) << err();
  const json bundle = json::parse(text(options.out));
  EXPECT_EQ(bundle["entry"][0]["resource"]["resourceType"], "ActivityDefinition");
  EXPECT_THAT(text(options.out), HasSubstr("PlanDefinition"));
  options.out = path("more");
  options.format = "csv";
  EXPECT_EQ(runExport(options, output()), kBadInput);
  EXPECT_THAT(err(), HasSubstr("--templates: in fhir alone"));
  options.format = "fhir";
  options.person = "person.json";
  EXPECT_EQ(runExport(options, output()), kBadInput);
  EXPECT_FALSE(fs::exists(options.out));
}

// Asked to stop at any point: neither the file nor a part of it is there; and it says how far it is, once a
// second at most.
TEST_F(Leaving, canBeStoppedOnTheWay) {
  std::uint64_t seed = 1;
  while (unsignedHistory(seed).practices.empty()) ++seed;
  const PersonHistory history = unsignedHistory(seed);
  ExportFilesOptions options;
  options.record = file("all.json", takeAlong(history));
  options.as_of = isoInstant(history.as_of);
  for (const std::string format : {"fhir", "csv", "ical"}) {
    options.format = format;
    options.out = path("out-" + format);
    int asked = 0;
    int stop_at = 0;
    const auto run = [&] {
      asked = 0;
      const LongWork work{[&] { return ++asked == stop_at; }, {}};
      Output watched = output();
      watched.long_work = &work;
      return runExport(options, watched);
    };
    for (stop_at = 1; run() != kFine; ++stop_at) {
      ASSERT_THAT(err(), HasSubstr("cancelled; nothing was written"));
      ASSERT_FALSE(fs::exists(options.out)) << stop_at;
      ASSERT_FALSE(fs::exists(options.out + ".part")) << stop_at;
    }
    EXPECT_GT(stop_at, format == "ical" ? 2 : 4) << format;
    EXPECT_TRUE(fs::exists(options.out));
  }
  absl::Duration now;
  Output watched = output();
  const LongWork work{{}, [&now] { return now += absl::Milliseconds(400); }};
  watched.long_work = &work;
  options.format = "fhir";
  options.out = path("again");
  ASSERT_EQ(runExport(options, watched), kFine);
  EXPECT_THAT(err(), HasSubstr(" % done\n"));
}

// Ctrl-C: the signal waits until the program asks.
TEST_F(Leaving, theProgramIsLeftByASignal) {
  const PersonHistory history = unsignedHistory(8);
  const std::string record = file("all.json", takeAlong(history));
  const std::string made = path("left.json");
  const std::string as_of = isoInstant(history.as_of);
  const std::string binary = std::string(NEWEL_BINARY_DIR) + "/bin/newel";
  const pid_t child = fork();
  if (child == 0) {
    sigset_t signals;
    sigemptyset(&signals);
    sigaddset(&signals, SIGINT);
    sigprocmask(SIG_BLOCK, &signals, nullptr);
    kill(getpid(), SIGINT);  // pending, and kept over exec
    execl(binary.c_str(), "newel", "export", "--record", record.c_str(), "--as-of", as_of.c_str(), "--format",
          "fhir", "--out", made.c_str(), static_cast<char*>(nullptr));
    _exit(127);
  }
  int status = 0;
  ASSERT_EQ(waitpid(child, &status, 0), child);
  EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == kBadInput) << status;
  EXPECT_FALSE(fs::exists(made));
  EXPECT_FALSE(fs::exists(made + ".part"));
}

TEST_F(Leaving, theProgramDoesTheSame) {
  const PersonHistory history = unsignedHistory(8);
  const std::string record = file("all.json", takeAlong(history));
  const std::string common = "export --record '" + record + "' --as-of " + isoInstant(history.as_of);
  const Ran made = program(common + " --format fhir --out '" + path("out.json") + "'");
  EXPECT_EQ(made.code, 0) << made.text;
  EXPECT_EQ(text(path("out.json")), (*makeExport(history, ExportFormat::Fhir, {}))[0].text);
  const Ran tables = program(common + " --format csv --out '" + path("tables") + "'");
  EXPECT_EQ(tables.code, 0) << tables.text;
  EXPECT_THAT(tables.text, HasSubstr("17 files"));
  const Ran again = program(common + " --format csv --out '" + path("tables") + "'");
  EXPECT_EQ(again.code, 2);
  EXPECT_THAT(again.text, HasSubstr("is there already"));
  // What left comes in again.
  const Ran back = program("import '" + path("out.json") + "'");
  EXPECT_TRUE(back.code == 0 || back.code == 1) << back.text;
  EXPECT_THAT(back.text, HasSubstr("not taken over"));
  for (const char* name : {"export", "import"}) {
    const Ran help = program(std::string(name) + " --help");
    EXPECT_EQ(help.code, 0);
    EXPECT_THAT(program("--help").text, HasSubstr(name));
  }
}

}  // namespace
}  // namespace newel::tool
