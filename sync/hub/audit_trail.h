// Who saw and changed what, in a chain: each line's hash covers the one before it, so that a line that is
// changed, dropped, moved or put in is found, and a cut tail against a head kept elsewhere.
// Lines carry ids and the names of fields, never a name, a word or a figure about anybody's health.
#pragma once

#include <absl/status/status.h>
#include <absl/time/time.h>

#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

#include "core/time/clock.h"
#include "sync/hub/hub_store.h"

namespace newel {

struct AuditEvent {
  std::string action{};  // "programme.sign", "offer.refused" ...
  std::string who{};     // account or device id; empty: nobody known
  std::string person{};  // person id
  std::string record{};  // record id
  std::string field{};   // of a refusal
};

// h_n = SHA-256(h_(n-1) || entry), h_0 = 32 zero bytes; `entry` is canonical JSON (RFC 8785).
std::string chainHash(const std::string& previous_hash, const std::string& entry);
// The line as canonical JSON: keys in order, no spaces; empty parts are left out.
std::string auditEntry(const AuditEvent& event, std::uint64_t n, absl::Time at);

struct AuditHead {
  std::uint64_t n = 0;
  std::string hash;  // 32 bytes; zeros at n = 0
};
// The chain, line by line from the first.
class AuditChecker {
 public:
  // kDataLoss names the line that is wrong; the head stays before it.
  absl::Status add(const AuditRow& row);
  const AuditHead& head() const { return m_head; }  // of what was right so far

 private:
  AuditHead m_head{0, std::string(32, '\0')};
};
// `rows` from 1, in order; `expected`: a head noted down earlier. kDataLoss names the first line that is
// wrong.
absl::Status verifyAudit(const std::vector<AuditRow>& rows, const std::optional<AuditHead>& expected);

class AuditTrail {
 public:
  // `clock` outlives this.
  explicit AuditTrail(const Clock* clock) : m_clock(clock) {}

  // In the transaction of the change itself, so that neither is without the other.
  void add(HubTransaction& transaction, const AuditEvent& event) const;
  // A refusal, which changes nothing else. At most 30 a minute of one action by one caller: a flood of bad
  // calls must not fill the disk. Failing to write it is not an error of the call.
  void refusal(HubStore& store, const AuditEvent& event);
  // Somebody looked: once in five minutes for the same who, action and person.
  void sight(HubStore& store, const AuditEvent& event);

 private:
  bool mayWrite(const std::string& key, int most, absl::Duration in);

  struct Window {
    absl::Duration began;
    int count = 0;
  };
  const Clock* m_clock;
  std::mutex m_mutex;
  std::map<std::string, Window> m_windows;
};

}  // namespace newel
