// newel-hub as a whole, on either store: closed by default, a log that says who did what and nothing about
// anybody's health, and an end that loses no call.
#include <grpcpp/create_channel.h>
#include <grpcpp/security/credentials.h>
#include <sys/stat.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <future>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <sstream>
#include <thread>

#include "sync/common/pinned_channel.h"
#include "sync/hub/demo_clinic.h"
#include "sync/protocol/desk_service.grpc.pb.h"
#include "tests/sync/hub/program_fixture.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

// "address:port" in the kernel's hex of every socket on which the process listens. Linux, proc(5).
std::set<std::string> listening(pid_t pid) {
  std::set<std::string> inodes;
  const std::string process = "/proc/" + std::to_string(pid);
  for (const auto& entry : fs::directory_iterator(process + "/fd")) {
    std::error_code error;
    const std::string target = fs::read_symlink(entry.path(), error).string();
    if (target.rfind("socket:[", 0) == 0) inodes.insert(target.substr(8, target.size() - 9));
  }
  std::set<std::string> found;
  for (const char* table : {"/net/tcp", "/net/tcp6"}) {
    std::ifstream stream(process + table);
    for (std::string line; std::getline(stream, line);) {
      std::istringstream words(line);
      std::string slot;
      std::string local;
      std::string remote;
      std::string state;
      std::string skipped;
      std::string inode;
      words >> slot >> local >> remote >> state;
      for (int i = 0; i < 5; ++i) words >> skipped;
      words >> inode;
      if (state == "0A" && inodes.contains(inode)) found.insert(local);
    }
  }
  return found;
}

std::vector<nlohmann::json> linesOf(const std::string& text) {
  std::vector<nlohmann::json> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) {
    lines.push_back(nlohmann::json::parse(line, nullptr, false));
    EXPECT_TRUE(lines.back().is_object()) << "no JSON: " << line;
  }
  return lines;
}

class FreshHub : public test::ProgramClinic {};

TEST_F(FreshHub, listensOnThisMachineOnlyAndOverTlsOnly) {
  init();
  const test::ServedHub hub(place(), m_folder.path());
  char port[5] = {};
  std::snprintf(port, sizeof(port), "%04X", hub.port());
  // 127.0.0.1 as the kernel writes it on a little-endian machine, or the same in IPv6's clothes.
  const std::string loopback = std::string("0100007F:") + port;
  const std::set<std::string> sockets = listening(hub.pid());
  ASSERT_EQ(sockets.size(), 1U) << "and nothing else";
  EXPECT_TRUE(*sockets.begin() == loopback || *sockets.begin() == "0000000000000000FFFF0000" + loopback)
      << *sockets.begin();
  const auto plain = grpc::CreateChannel(hub.address(), grpc::InsecureChannelCredentials());
  grpc::ClientContext context;
  setDeadline(context, absl::Seconds(5));
  v1::SignInReply reply;
  EXPECT_FALSE(v1::DeskService::NewStub(plain)->SignIn(&context, v1::SignInRequest(), &reply).ok());
  EXPECT_TRUE(desk(hub, pin())) << "over TLS it answers";
  for (const auto& line : linesOf(hub.logged())) {
    const std::string event = line.value("event", "");
    EXPECT_TRUE(event == "hub.started" || event == "network.failed") << line;
  }
}

TEST_F(FreshHub, hasNoAccountAndNoDefaultPassword) {
  init();
  const test::ServedHub hub(place(), m_folder.path());
  const auto one = desk(hub, pin());
  ASSERT_TRUE(one);
  for (const char* name : {kDemoUserName, "admin", "administrator", "root", "newel"}) {
    for (const char* password : {"", kDemoPassword, "admin", "password", "newel"}) {
      const auto status = one->signIn(name, password).status();
      EXPECT_TRUE(absl::IsUnauthenticated(status) || absl::IsResourceExhausted(status)) << status;
    }
  }
  EXPECT_TRUE(absl::IsUnauthenticated(one->caseload().status()));
}

// Even where whoever runs it has a mask that lets everybody read.
TEST_F(FreshHub, letsNobodyElseReadItsFiles) {
  const mode_t before = umask(0);
  init();
  addUser("l.lead");
  {
    test::ServedHub hub(place(), m_folder.path(),
                        {"--log-file", m_folder.path("hub.log"), "--audit-heads", m_folder.path("heads")});
    const auto one = desk(hub, pin());
    EXPECT_TRUE(one && one->signIn("l.lead", test::kPassword).ok());
    for (const char* part : {"hub", "heads"}) {
      if (!fs::exists(m_folder.path(part))) continue;  // PostgreSQL keeps its files itself
      EXPECT_EQ(fs::status(m_folder.path(part)).permissions() & fs::perms::mask, fs::perms::owner_all)
          << part;
      for (const auto& entry : fs::directory_iterator(m_folder.path(part))) {
        EXPECT_EQ(entry.status().permissions() & fs::perms::mask,
                  fs::perms::owner_read | fs::perms::owner_write)
            << entry.path();
      }
    }
    EXPECT_EQ(fs::status(m_folder.path("hub.log")).permissions() & fs::perms::mask,
              fs::perms::owner_read | fs::perms::owner_write);
    EXPECT_EQ(hub.stop(), 0);
  }
  umask(before);
}

class EndOfServing : public test::ProgramClinic {
 protected:
  void SetUp() override {
    init();
    addUser("l.lead");
    m_hub = std::make_unique<test::ServedHub>(place(), m_folder.path());
    m_pin = pin();
  }
  std::unique_ptr<test::ServedHub> m_hub;
  std::string m_pin;
};

TEST_F(EndOfServing, streamsAreToldCallsUnderWayFinishAndTheExitIsClean) {
  const auto one = desk(*m_hub, m_pin);
  const auto session = one->signIn("l.lead", test::kPassword);
  ASSERT_TRUE(session.ok()) << session.status();
  const auto pinned = connectPinned(m_hub->address(), {m_pin}, absl::Seconds(10));
  ASSERT_TRUE(pinned.ok()) << pinned.status();
  const auto stub = v1::DeskService::NewStub(pinned->channel);
  grpc::ClientContext context;
  context.AddMetadata("authorization", "Bearer " + session->session());
  const auto stream = stub->Watch(&context, v1::WatchRequest());
  v1::DeskNudge nudge;
  ASSERT_TRUE(stream->Read(&nudge));
  // Two who sign in again and again, each a tenth of a second of Argon2id and more: whenever the signal
  // comes, one is in the middle of it.
  using Time = std::chrono::steady_clock::time_point;
  std::atomic<int> signed_in{0};
  const auto signInUntilRefused = [&](DeskClient* client) {
    Time last_good;
    while (true) {
      const absl::Status status = client->signIn("l.lead", test::kPassword).status();
      if (!status.ok()) return std::pair(status, last_good);
      last_good = std::chrono::steady_clock::now();
      ++signed_in;
    }
  };
  const auto second = desk(*m_hub, m_pin);
  std::vector<std::future<std::pair<absl::Status, Time>>> calls;
  for (DeskClient* client : {one.get(), second.get()})
    calls.push_back(std::async(std::launch::async, signInUntilRefused, client));
  while (signed_in < 3) std::this_thread::sleep_for(std::chrono::milliseconds(5));
  const Time begun = std::chrono::steady_clock::now();
  m_hub->tell(SIGTERM);
  while (stream->Read(&nudge)) {
  }
  const grpc::Status why = stream->Finish();
  EXPECT_EQ(why.error_code(), grpc::StatusCode::UNAVAILABLE);
  EXPECT_EQ(why.error_message(), "the hub is stopping");
  EXPECT_EQ(m_hub->wait(std::chrono::seconds(30)), 0);
  // Five seconds for calls that hang, and a machine that has much else to do.
  EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(12));
  int finished = 0;
  for (auto& call : calls) {
    const auto [status, last_good] = call.get();
    EXPECT_TRUE(absl::IsUnavailable(status)) << status << ": cut off in the middle";
    finished += last_good > begun ? 1 : 0;
  }
  EXPECT_GT(finished, 0) << "what was under way was answered";
  EXPECT_NE(m_hub->said().find("Stopped.\n"), std::string::npos);
  EXPECT_TRUE(absl::IsUnavailable(one->caseload().status())) << "nobody is there any more";
}

TEST_F(EndOfServing, withNothingUnderWayItIsAtOnce) {
  const auto begun = std::chrono::steady_clock::now();
  m_hub->tell(SIGINT);
  EXPECT_EQ(m_hub->wait(std::chrono::seconds(10)), 0);
  EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(3));
}

int countOf(const std::vector<nlohmann::json>& lines, const std::string& event, const std::string& call,
            const std::string& outcome) {
  return static_cast<int>(std::count_if(lines.begin(), lines.end(), [&](const nlohmann::json& line) {
    return line.value("event", "") == event && line.value("call", "") == call &&
           line.value("outcome", "") == outcome;
  }));
}

class LoggedHub : public test::ProgramClinic {
 protected:
  void SetUp() override {
    init();
    addUser("l.lead");
    addUser("a.auditor", "auditor");
    m_hub = std::make_unique<test::ServedHub>(place(), m_folder.path());
    m_desk = desk(*m_hub, pin());
  }
  std::string stopped() {
    EXPECT_EQ(m_hub->stop(), 0);
    return m_hub->logged();
  }
  std::unique_ptr<test::ServedHub> m_hub;
  std::unique_ptr<DeskClient> m_desk;
};

// OWASP ASVS 5.0 16.2.1 (when, where, who, what), 16.2.2 (UTC), 16.3.1 to 16.3.4.
TEST_F(LoggedHub, saysWhoDidWhatAndWhenEachOnce) {
  EXPECT_FALSE(m_desk->caseload().ok());
  EXPECT_FALSE(m_desk->signIn("l.lead", "wrong password").ok());
  EXPECT_FALSE(m_desk->signIn("nobody", "wrong password").ok());
  const auto lead = m_desk->signIn("l.lead", test::kPassword);
  ASSERT_TRUE(lead.ok());
  const std::string person = addPerson(*m_desk, test::transfemoralLeft(), "Tilda");
  const auto one = phone("one");
  ASSERT_EQ(one->pair(ticket(*m_desk, person)), absl::OkStatus());
  PairingTicket guess = ticket(*m_desk, person);
  guess.code[0] = guess.code[0] == 'A' ? 'B' : 'A';
  EXPECT_FALSE(phone("two")->pair(guess).ok());
  EXPECT_FALSE(m_desk->putPerson({}).ok());
  EXPECT_EQ(m_desk->revokeDevice(m_desk->devices(person)->at(0).id()), absl::OkStatus());
  EXPECT_FALSE(one->syncOnce().ok());
  const auto auditor = m_desk->signIn("a.auditor", test::kPassword);
  ASSERT_TRUE(auditor.ok());
  EXPECT_FALSE(m_desk->revokeDevice(test::idOf(1)).ok());
  EXPECT_EQ(m_desk->signOut(), absl::OkStatus());
  const auto lines = linesOf(stopped());
  EXPECT_EQ(countOf(lines, "hub.started", "", ""), 1);
  EXPECT_EQ(countOf(lines, "call.refused", "DeskService/ListCaseload", "UNAUTHENTICATED"), 1);
  EXPECT_EQ(countOf(lines, "call.refused", "DeskService/SignIn", "UNAUTHENTICATED"), 2);
  EXPECT_EQ(countOf(lines, "call.done", "DeskService/SignIn", "OK"), 2);
  EXPECT_EQ(countOf(lines, "call.done", "DeskService/CreatePairing", "OK"), 2);
  EXPECT_EQ(countOf(lines, "call.done", "HomeService/Pair", "OK"), 1);
  EXPECT_EQ(countOf(lines, "call.refused", "HomeService/Pair", "NOT_FOUND"), 1);
  EXPECT_EQ(countOf(lines, "call.invalid", "DeskService/PutPerson", "INVALID_ARGUMENT"), 1);
  EXPECT_EQ(countOf(lines, "call.done", "DeskService/RevokeDevice", "OK"), 1);
  EXPECT_GE(countOf(lines, "call.refused", "HomeService/Fetch", "PERMISSION_DENIED") +
                countOf(lines, "call.refused", "HomeService/Listen", "PERMISSION_DENIED"),
            1);
  EXPECT_EQ(countOf(lines, "call.refused", "DeskService/RevokeDevice", "PERMISSION_DENIED"), 1);
  EXPECT_EQ(countOf(lines, "call.done", "DeskService/SignOut", "OK"), 1);
  EXPECT_EQ(countOf(lines, "hub.stopping", "", ""), 1);
  EXPECT_EQ(countOf(lines, "hub.stopped", "", ""), 1);
  static const std::regex kUtc(R"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z)");
  int by_lead = 0;
  for (const auto& line : lines) {
    EXPECT_TRUE(std::regex_match(line.value("t", ""), kUtc)) << line;
    if (line.contains("call")) {
      EXPECT_EQ(line.value("from", ""), "ipv4:127.0.0.1") << line;
    }
    by_lead += line.value("who", "") == lead->therapist().id() ? 1 : 0;
    if (line.value("call", "") == "DeskService/RevokeDevice" && line.value("event", "") == "call.refused") {
      EXPECT_EQ(line.value("who", ""), auditor->therapist().id());
    }
  }
  EXPECT_GE(by_lead, 5) << "and whom a wrong password was tried for";
}

// What a person types, and what is secret, with line ends and a terminal's escapes in it.
TEST_F(LoggedHub, holdsNoNameNoSecretAndNoWordAboutAnybody) {
  const std::string nasty = "\n{\"event\":\"forged\"}\n\x1b[31mCANARY";
  const auto session = m_desk->signIn("l.lead", test::kPassword);
  ASSERT_TRUE(session.ok());
  const std::string person = addPerson(*m_desk, test::transfemoralLeft(), "Canarina" + nasty);
  EXPECT_FALSE(desk(*m_hub, pin())->signIn("CANARY-NAME" + nasty, "CANARY-PASSWORD" + nasty).ok());
  v1::SendMessageRequest message;
  message.set_person_id(person);
  message.set_text("CANARY-MESSAGE the stump hurts" + nasty);
  message.set_id(test::idOf(77));
  EXPECT_TRUE(m_desk->sendMessage(message).ok());
  v1::SignProgrammeRequest programme;
  programme.mutable_draft()->set_person_id(person);
  programme.mutable_draft()->set_id("CANARY-ID" + nasty);
  EXPECT_FALSE(m_desk->signProgramme(programme).ok());
  v1::IssueHoldRequest hold;
  hold.set_person_id(person);
  hold.set_reason("CANARY-HOLD skin is open" + nasty);
  EXPECT_TRUE(m_desk->issueHold(hold).ok());
  EXPECT_FALSE(m_desk->person("CANARY-PERSON" + nasty).ok());
  const PairingTicket code = ticket(*m_desk, person);
  HomeEngine::Options options;
  options.folder = m_folder.path("phone");
  options.clock = &m_clock;
  options.random = &m_random;
  options.app_version = "CANARY-APP";
  options.device_name = "CANARY-DEVICE" + nasty;
  options.store_key = std::string(32, 'k');
  const auto engine = *HomeEngine::open(options);
  ASSERT_EQ(engine->pair(code), absl::OkStatus());
  ASSERT_EQ(engine->writeMessage("CANARY-WORDS" + nasty), absl::OkStatus());
  EXPECT_EQ(engine->syncOnce(), absl::OkStatus());
  std::this_thread::sleep_for(std::chrono::milliseconds(300));
  const std::string log = stopped() + m_hub->said();
  EXPECT_GT(log.size(), 500U) << "there is something to look through";
  for (const std::string& word :
       {std::string("CANARY"), std::string("Canarina"), std::string("Tilda"), std::string("Invented"),
        std::string("forged"), std::string("stump"), std::string("skin"), std::string("\x1b"),
        std::string(test::kPassword), session->session(), code.code, std::string("l.lead"),
        std::string("transfemoral")}) {
    EXPECT_EQ(log.find(word), std::string::npos) << word;
  }
}

}  // namespace
}  // namespace newel
