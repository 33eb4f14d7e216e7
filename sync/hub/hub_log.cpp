#include "sync/hub/hub_log.h"

#include <grpc/support/log.h>
#include <spdlog/logger.h>
#include <spdlog/sinks/rotating_file_sink.h>
#include <spdlog/sinks/stdout_sinks.h>

#include <filesystem>
#include <mutex>
#include <nlohmann/json.hpp>
#include <utility>

#include "sync/common/database.h"

namespace newel {
namespace {

// Ours, no source: weeks of a small clinic, and no more disk than a photo album.
constexpr std::size_t kLargestFile = std::size_t{10} << 20U;
constexpr std::size_t kFilesKept = 5;

const char* wordFor(LogLevel level) {
  switch (level) {
    case LogLevel::Info:
      return "info";
    case LogLevel::Warning:
      return "warning";
    case LogLevel::Error:
      return "error";
  }
  return "error";
}

spdlog::level::level_enum spdlogLevel(LogLevel level) {
  switch (level) {
    case LogLevel::Info:
      return spdlog::level::info;
    case LogLevel::Warning:
      return spdlog::level::warn;
    case LogLevel::Error:
      return spdlog::level::err;
  }
  return spdlog::level::err;
}

// spdlog makes its file with the program's own mask; here nobody else may read it whatever that is.
absl::Status makeFile(const std::string& file) {
  if (std::filesystem::exists(file)) return absl::OkStatus();
  absl::Status made = writePrivateFile(file, "");
  return made.ok() ? made : absl::PermissionDeniedError("log: cannot write " + file);
}

}  // namespace

std::string logText(const LogLine& line, absl::Time at) {
  nlohmann::json object;
  object["t"] = absl::FormatTime("%Y-%m-%dT%H:%M:%E3SZ", at, absl::UTCTimeZone());
  object["level"] = wordFor(line.level);
  object["event"] = line.event;
  const std::pair<const char*, const std::string*> parts[] = {{"call", &line.call},
                                                              {"who", &line.who},
                                                              {"from", &line.from},
                                                              {"outcome", &line.outcome},
                                                              {"detail", &line.detail}};
  for (const auto& [name, value] : parts) {
    if (!value->empty()) object[name] = *value;
  }
  // ASCII only, so that no terminal takes anything in it for more than text.
  return object.dump(-1, ' ', /*ensure_ascii=*/true, nlohmann::json::error_handler_t::replace);
}

class HubLog::Impl {
 public:
  Impl(const Clock* clock, spdlog::sink_ptr sink) : m_clock(clock), m_logger("hub", std::move(sink)) {
    m_logger.set_pattern("%v");
    m_logger.flush_on(spdlog::level::info);
  }
  void write(const LogLine& line) {
    m_logger.log(spdlogLevel(line.level), "{}", logText(line, m_clock->wall()));
  }

 private:
  const Clock* m_clock;
  spdlog::logger m_logger;
};

HubLog::HubLog(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
HubLog::~HubLog() = default;

absl::StatusOr<std::unique_ptr<HubLog>> HubLog::open(const Clock* clock, const std::string& file) {
  spdlog::sink_ptr sink;
  if (file.empty()) {
    sink = std::make_shared<spdlog::sinks::stderr_sink_mt>();
  } else {
    const absl::Status made = makeFile(file);
    if (!made.ok()) return made;
    try {
      sink = std::make_shared<spdlog::sinks::rotating_file_sink_mt>(file, kLargestFile, kFilesKept);
    } catch (const spdlog::spdlog_ex&) {
      return absl::PermissionDeniedError("log: cannot write " + file);
    }
  }
  return std::unique_ptr<HubLog>(new HubLog(std::make_unique<Impl>(clock, std::move(sink))));
}

void HubLog::write(const LogLine& line) { m_impl->write(line); }

namespace {

// gRPC calls it from any thread and has room for no other state.
std::mutex& complaintsMutex() {
  static std::mutex mutex;
  return mutex;
}
HubLog* g_complaints_to = nullptr;

void hearGrpc(gpr_log_func_args* args) {
  if (args->severity != GPR_LOG_SEVERITY_ERROR) return;
  const std::string place =
      std::filesystem::path(args->file).filename().string() + ":" + std::to_string(args->line);
  const std::lock_guard lock(complaintsMutex());
  if (g_complaints_to != nullptr)
    g_complaints_to->write({.level = LogLevel::Warning, .event = "network.failed", .detail = place});
}

void setComplaintsTo(HubLog* log) {
  const std::lock_guard lock(complaintsMutex());
  g_complaints_to = log;
}

}  // namespace

GrpcComplaints::GrpcComplaints(HubLog* log) {
  setComplaintsTo(log);
  gpr_set_log_function(hearGrpc);
}

GrpcComplaints::~GrpcComplaints() {
  setComplaintsTo(nullptr);
  gpr_set_log_function(nullptr);  // gRPC's own again
}

}  // namespace newel
