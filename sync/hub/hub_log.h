// What the hub says about its own work while it serves: one JSON object a line, in UTC. Who is an account's
// or a device's id, from where an address, what the name of a call; never a name, a password, a code, a
// token, a word of a record, nor the words of an error, which may repeat something of those. Not here: who
// saw and changed what (audit_trail.h), which is kept with the records and chained.
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <string>

#include "core/time/clock.h"

namespace newel {

enum class LogLevel { Info, Warning, Error };

struct LogLine {
  LogLevel level = LogLevel::Info;
  std::string event{};    // from a closed list, "call.refused"
  std::string call{};     // "DeskService/SignIn"
  std::string who{};      // account or device id
  std::string from{};     // the peer's address, no port
  std::string outcome{};  // a status code's name
  std::string detail{};   // of starts and stops only: a port, a path
};

// The line as JSON, without its newline: {"event":..,"level":..,"t":"2026-11-29T21:00:00.000Z", ..}. Whatever
// is in the parts stays inside them: line ends and controls come out escaped, other bytes than UTF-8
// replaced.
std::string logText(const LogLine& line, absl::Time at);

// Thread-safe. A line that cannot be written is lost and stops nothing.
class HubLog {
 public:
  // `clock` outlives this. `file` empty: standard error. Otherwise a file that nobody else may read (0600);
  // at 10 MiB it becomes file.1, and so on up to five. kPermissionDenied: it cannot be written.
  static absl::StatusOr<std::unique_ptr<HubLog>> open(const Clock* clock, const std::string& file);
  ~HubLog();

  void write(const LogLine& line);

 private:
  class Impl;
  explicit HubLog(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> m_impl;
};

// While it lives, what gRPC itself complains of (a handshake that failed) goes into `log`, as the place in
// gRPC's source and not in its words; without it gRPC writes lines of its own form to standard error. One at
// a time.
class GrpcComplaints {
 public:
  explicit GrpcComplaints(HubLog* log);
  ~GrpcComplaints();
  GrpcComplaints(const GrpcComplaints&) = delete;
  GrpcComplaints& operator=(const GrpcComplaints&) = delete;
};

}  // namespace newel
